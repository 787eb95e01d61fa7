// A fit of a titration: what it costs beside SciPy's least_squares on the same residuals, and whether its standard
// uncertainties are those of simulated runs.
//
// npm run bench:fit            ten thousand runs of each titration: some minutes
// npm run bench:fit -- quick   two hundred
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { acids, davies, makeSolution, reagents, tabulate, titrate } from 'protolysis';
import { fitTitration } from 'protolysis/measurement';

const runs = process.argv.includes('quick') ? 200 : 10_000;
const u = { pH: 0.01, mL: 0.02 };

/** Normal deviates: polar method of G. Marsaglia, T. A. Bray, SIAM Rev. 6, 260 (1964), over a fixed sequence. */
function normals() {
  let state = 20260101;
  const uniform = () => {
    state = (48271 * state) % 2147483647; // S. K. Park, K. W. Miller, Commun. ACM 31, 1192 (1988)
    return (2 * state) / 2147483647 - 1;
  };
  return () => {
    for (;;) {
      const [x, y] = [uniform(), uniform()];
      const square = x * x + y * y;
      if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
    }
  };
}

const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
const carbonate = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, mmol: 2 }] });
const acetic = makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol: 2.5 }] });
const strong = makeSolution({ mL: 25, contents: [{ reagent: reagents.hydrochloricAcid, mmol: 2.5 }] });

/** @type {{ name: string, analyte: import('protolysis').PouredSolution, titrant: import('protolysis').Solution, upTo: number, free: import('protolysis/measurement').FreeParameter[] }[]} */
const cases = [
  {
    name: 'Na2CO3',
    analyte: carbonate,
    titrant: acid,
    upTo: 50,
    free: ['sampleAmount', 'probeOffset', { pKa: 'carbonic', step: 2 }],
  },
  {
    name: 'acetic acid',
    analyte: acetic,
    titrant: base,
    upTo: 35,
    free: ['sampleAmount', 'probeOffset', { pKa: 'acetic', step: 1 }],
  },
  {
    name: 'HCl',
    analyte: strong,
    titrant: base,
    upTo: 35,
    free: ['sampleAmount', 'probeOffset', 'probeSlope'],
  },
];

/** @param {(typeof cases)[number]} of @param {() => number} normal */
function simulated({ analyte, titrant, upTo }, normal, conditions = {}) {
  const titration = titrate({ analyte, titrant, conditions });
  const mL = Array.from({ length: 60 }, (_, k) => (upTo * k) / 59);
  const draw = () => ({
    mL,
    pH: mL.map((v, k) => titration.pHAt(k === 0 ? 0 : Math.max(0, v + u.mL * normal())) + u.pH * normal()),
    notes: [],
  });
  return { titration, draw };
}

const rows = cases.flatMap((each) => {
  const { titration, draw } = simulated(each, normals());
  const sums = each.free.map(() => ({ error: 0, square: 0, variance: 0, covered: 0 }));
  for (let run = 0; run < runs; run += 1) {
    const { parameters, status } = fitTitration(draw(), { titration, free: each.free, uncertainty: u });
    if (status !== 'converged') throw new Error(`${each.name}: run ${run} ended as ${status}`);
    for (const [j, { value, expected, estimate }] of parameters.entries()) {
      const sum = /** @type {typeof sums[number]} */ (sums[j]);
      const deviation = /** @type {{ standardUncertainty: number }} */ (estimate).standardUncertainty;
      sum.error += value - expected;
      sum.square += (value - expected) ** 2;
      sum.variance += deviation ** 2;
      // 2.0025: Student's t at 97.5 % for 57 degrees of freedom
      if (Math.abs(value - expected) < 2.0025 * deviation) sum.covered += 1;
    }
  }
  return sums.map(({ error, square, variance, covered }, j) => ({
    flask: each.name,
    parameter: typeof each.free[j] === 'string' ? each.free[j] : 'pKa',
    bias: error / runs / Math.sqrt(square / runs),
    given: Math.sqrt(variance / square),
    covered: (100 * covered) / runs,
  }));
});
console.log(
  `\n${runs} simulated runs of 60 readings: bias in standard deviations, standard uncertainty given`,
);
console.log('in standard deviations seen, and how many percent of the 95 % intervals cover the truth');
console.log(tabulate(rows, { flask: 'text', parameter: 'text', bias: 3, given: 3, covered: 1 }));

/** ms of processor time, which a shared machine changes less than the clock. @param {() => void} task @param {number} count */
function costOf(task, count) {
  for (let k = 0; k < count / 4; k += 1) task();
  const before = process.cpuUsage();
  for (let k = 0; k < count; k += 1) task();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e3 / count;
}

const [first] = cases;
if (first) {
  const { titration, draw } = simulated(first, normals());
  const real = simulated(first, normals(), { activity: davies });
  const [readings, realReadings] = [draw(), real.draw()];
  const ideal = costOf(() => fitTitration(readings, { titration, free: first.free, uncertainty: u }), 200);
  const withDavies = costOf(
    () => fitTitration(realReadings, { titration: real.titration, free: first.free, uncertainty: u }),
    100,
  );
  console.log(
    `\nms of processor time for a fit of 60 readings with three free: ideal ${ideal.toFixed(2)}, Davies ${withDavies.toFixed(2)}`,
  );
  const rival = fileURLToPath(new URL('fit-rival.py', import.meta.url));
  const pKa = acids.carbonic.steps.map((step) => step.pKa);
  const input = JSON.stringify({ ...readings, pKa });
  const { status, stdout, error } = spawnSync('python3', [rival], { input, encoding: 'utf8' });
  if (error || status !== 0) console.log('SciPy: not here');
  else {
    const { ms, values } = JSON.parse(stdout);
    const own = fitTitration(readings, { titration, free: first.free, uncertainty: u }).parameters.map(
      ({ value }) => value,
    );
    console.log(
      `SciPy's least_squares on the same residuals: ${ms.toFixed(0)} ms, ${(ms / ideal).toFixed(0)} times as long`,
    );
    console.log(
      `its answers less ours: ${values.map((/** @type {number} */ v, /** @type {number} */ j) => (v - (own[j] ?? 0)).toExponential(1)).join(', ')}`,
    );
  }
}
