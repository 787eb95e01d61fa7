// What a pH on a curve costs beside what it must cost at least, and beside general-purpose ways of solving the same
// charge balance. Prints a table and then the same as JSON. Times are the least of several rounds: the machine may be shared.
//
// npm run bench            all
// npm run bench -- quick   without a million points and without Python
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
// @ts-expect-error: it comes without types
import newtonRaphson from 'newton-raphson-method';
import { pHsOf, reagents } from 'protolysis';
import { Bench } from 'tinybench';
import { growing, systems } from './systems.mjs';

/** Built from evaluations.ts by the script. */
const { evaluationsPerPoint } = /** @type {typeof import('./evaluations.js')} */ (
  await import(new URL('../coverage/bench/evaluations.js', import.meta.url).href)
);

const quick = process.argv.includes('quick');
const sizes = quick ? [91, 1000, 100_000] : [91, 1000, 100_000, 1_000_000];
const rounds = quick ? 2 : 3;

/** @param {number} upTo @param {number} points */
const volumesOf = (upTo, points) =>
  Float64Array.from({ length: points }, (_, k) => (upTo * k) / (points - 1));

/**
 * Nanoseconds of each task, the least over rounds in which they take turns.
 *
 * @param {Record<string, () => void>} tasks
 * @param {number} time ms for each in each round
 */
async function timesOf(tasks, time) {
  /** @type {Record<string, number>} */
  const least = {};
  for (let round = 0; round < rounds; round += 1) {
    const bench = new Bench({ time, iterations: 3, warmupTime: time / 4, warmupIterations: 1 });
    for (const [name, task] of Object.entries(tasks)) bench.add(name, task);
    await bench.run();
    for (const { name, result } of bench.tasks)
      if (result.state === 'completed')
        least[name] = Math.min(least[name] ?? Number.POSITIVE_INFINITY, result.latency.min * 1e6);
  }
  return least;
}

/**
 * The floor: one bare evaluation of the charge balance and one logarithm a point, at roots that are known.
 *
 * @param {import('./systems.mjs').System} system
 * @param {Float64Array} volumes
 */
function floorOf({ charge, titration }, volumes) {
  const roots = titration.pHs(volumes).map((pH) => 10 ** -pH);
  const out = new Float64Array(volumes.length);
  return () => {
    for (let k = 0; k < volumes.length; k += 1) {
      const h = /** @type {number} */ (roots[k]);
      out[k] = charge(h, /** @type {number} */ (volumes[k])) - Math.log10(h);
    }
  };
}

/** @param {import('./systems.mjs').System} system @param {number} points */
async function row(system, points) {
  const { charge, titration, upTo } = system;
  const volumes = volumesOf(upTo, points);
  const out = new Float64Array(points);
  /** @type {Record<string, () => void>} */
  const tasks = { floor: floorOf(system, volumes), library: () => void titration.pHs(volumes, out) };
  /** @type {Record<string, (mL: number, before: number) => number | false>} */
  const rivals = {
    'newton-raphson-method': (mL, before) =>
      newtonRaphson((/** @type {number} */ pH) => charge(10 ** -pH, mL), before, {
        tolerance: 1e-14,
        maxIterations: 100,
      }),
  };
  const wrong =
    points > 1000
      ? {}
      : Object.fromEntries(Object.entries(rivals).map(([name, solve]) => [name, missed(solve)]));
  if (points <= 1000)
    for (const [name, solve] of Object.entries(rivals))
      tasks[name] = () => {
        let pH = /** @type {number} */ (out[0]);
        for (let k = 0; k < points; k += 1) pH = solve(/** @type {number} */ (volumes[k]), pH) || pH;
      };

  /** How many points a rival gets wrong by more than 1e-6, or not at all. */
  /** @param {(mL: number, before: number) => number | false} solve */
  function missed(solve) {
    const right = titration.pHs(volumes);
    let before = /** @type {number} */ (right[0]);
    return right.reduce((count, pH, k) => {
      const found = solve(/** @type {number} */ (volumes[k]), before);
      before = found === false ? pH : found;
      return count + (found !== false && Math.abs(found - pH) < 1e-6 ? 0 : 1);
    }, 0);
  }

  const times = await timesOf(tasks, points > 1e5 ? 100 : 200);
  const perPoint = Object.fromEntries(Object.entries(times).map(([name, ns]) => [name, ns / points]));
  const evaluations = evaluationsPerPoint(titration.setup, volumes);
  return { system: system.name, points, evaluations, perPoint, wrong };
}

/** The slope of log y over log x by least squares. */
/** @param {readonly (readonly [number, number])[]} pairs */
function exponent(pairs) {
  const logs = pairs.map(([x, y]) => [Math.log(x), Math.log(y)]);
  const mean = (/** @type {number} */ axis) =>
    logs.reduce((sum, pair) => sum + (pair[axis] ?? 0), 0) / logs.length;
  const [x0, y0] = [mean(0), mean(1)];
  const over = logs.reduce((sum, [x = 0, y = 0]) => sum + (x - x0) * (y - y0), 0);
  return over / logs.reduce((sum, [x = 0]) => sum + (x - x0) ** 2, 0);
}

/** Bytes a point on the heap, over a million points, with room for all that might be allocated. */
/** @param {import('./systems.mjs').System} system */
function bytesPerPoint({ titration, upTo }) {
  const volumes = volumesOf(upTo, 1e6);
  const out = new Float64Array(1e6);
  for (let k = 0; k < 4; k += 1) titration.pHs(volumes, out); // until it is compiled
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  titration.pHs(volumes, out);
  return (process.memoryUsage().heapUsed - before) / 1e6;
}

/** Ten thousand curves of 91 points, the amount of carbonate off by a few per cent; rows volume by volume. */
async function monteCarlo() {
  const [curves, points] = [10_000, 91];
  const soda = new Float64Array(curves * points);
  const acid = new Float64Array(curves * points);
  const mmol = Float64Array.from({ length: curves }, (_, c) => 1 + 0.02 * Math.sin(c * c));
  for (let k = 0, row = 0; k < points; k += 1)
    for (let c = 0; c < curves; c += 1, row += 1) {
      const mL = (50 * k) / (points - 1);
      soda[row] = /** @type {number} */ (mmol[c]) / (50 + mL);
      acid[row] = (0.1 * mL) / (50 + mL);
    }
  const contents = [
    { reagent: reagents.sodiumCarbonate, molar: soda },
    { reagent: reagents.hydrochloricAcid, molar: acid },
  ];
  const system = /** @type {import('./systems.mjs').System} */ (systems[0]);
  const times = await timesOf(
    {
      floor: floorOf(system, volumesOf(50, curves * points)),
      library: () => void pHsOf({ contents }, { pKw: 14 }),
    },
    200,
  );
  return Object.fromEntries(Object.entries(times).map(([name, ns]) => [name, ns / (curves * points)]));
}

/** @param {import('./systems.mjs').System} system */
function python({ plain, upTo, titration }) {
  const points = sizes.filter((size) => size <= 100_000);
  const script = fileURLToPath(new URL('rivals.py', import.meta.url));
  const { status, stdout } = spawnSync('python3', [script], {
    input: JSON.stringify({ ...plain, upTo, points }),
    encoding: 'utf8',
  });
  if (status !== 0) return undefined; // no python3, or no SciPy
  /** @type {Record<string, Record<string, [number, number]>>} */
  const result = JSON.parse(stdout);
  const last = titration.pHAt(upTo);
  for (const row of Object.values(result))
    for (const [name, [, pH]] of Object.entries(row))
      if (!(Math.abs(pH - last) < 1e-9)) throw new Error(`${name} gives ${pH} for ${last}`);
  return result;
}

const ns = (/** @type {number | undefined} */ value) =>
  value === undefined ? '–' : value < 100 ? value.toFixed(1) : value.toFixed(0);
const ratio = (/** @type {number | undefined} */ a, /** @type {number | undefined} */ b) =>
  a === undefined || b === undefined ? '–' : (a / b).toFixed(1);
/** @param {readonly (readonly string[])[]} lines */
function print(lines) {
  const widths = (lines[0] ?? []).map((_, column) =>
    Math.max(...lines.map((line) => line[column]?.length ?? 0)),
  );
  for (const line of lines)
    console.log(
      line
        .map((cell, column) =>
          column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0),
        )
        .join('  '),
    );
  console.log();
}

/** @type {{ system: string, points: number, evaluations: number, wrong: Record<string, number>, perPoint: Record<string, number> }[]} */
const rows = [];
for (const system of systems) {
  const scipy = quick ? undefined : python(system);
  for (const points of sizes) {
    const { perPoint, wrong, ...rest } = await row(system, points);
    const { brentq, bisection } = scipy?.[points] ?? {};
    rows.push({
      ...rest,
      wrong,
      perPoint: {
        ...perPoint,
        ...(brentq && { brentq: brentq[0] }),
        ...(bisection && { bisection: bisection[0] }),
      },
    });
  }
}
const names = ['floor', 'library', 'brentq', 'bisection', 'newton-raphson-method'];
print([
  [
    'ns a point',
    'points',
    'evaluations',
    'floor',
    'library',
    'over floor',
    ...['SciPy brentq', 'NumPy bisection', 'newton-raphson'].flatMap((name) => [name, 'over library']),
  ],
  ...rows.map(({ system, points, evaluations, perPoint }) => [
    system,
    String(points),
    evaluations.toFixed(2),
    ns(perPoint.floor),
    ns(perPoint.library),
    ratio(perPoint.library, perPoint.floor),
    ...names.slice(2).flatMap((name) => [ns(perPoint[name]), ratio(perPoint[name], perPoint.library)]),
  ]),
]);
for (const { system, points, wrong } of rows)
  for (const [name, count] of Object.entries(wrong))
    if (count > 0) console.log(`${name} misses ${count} of ${points} points: ${system}`);

const byPoints = systems.map(({ name }) => ({
  system: name,
  exponent: exponent(
    rows
      .filter(({ system }) => system === name)
      .map(({ points, perPoint }) => [points, points * (perPoint.library ?? 0)]),
  ),
}));
const byFamilies = [];
for (const system of growing) {
  const volumes = volumesOf(system.upTo, 1000);
  const out = new Float64Array(1000);
  const times = await timesOf({ library: () => void system.titration.pHs(volumes, out) }, 200);
  byFamilies.push({ families: system.families, perPoint: (times.library ?? 0) / 1000 });
}
const families = exponent(byFamilies.map(({ families: count, perPoint }) => [count, perPoint]));
const bytes = globalThis.gc
  ? systems.map((system) => ({ system: system.name, bytes: bytesPerPoint(system) }))
  : [];
const simulated = await monteCarlo();

print([
  ['grows with points as', 'exponent'],
  ...byPoints.map((one) => [one.system, one.exponent.toFixed(3)]),
]);
print([
  ['families', 'ns a point'],
  ...byFamilies.map((one) => [String(one.families), ns(one.perPoint)]),
  ['exponent', families.toFixed(3)],
]);
print([['bytes a point', 'of a million'], ...bytes.map((one) => [one.system, one.bytes.toFixed(3)])]);
print([
  ['10 000 curves of 91 points', 'floor', 'library', 'over floor'],
  ['ns a point', ns(simulated.floor), ns(simulated.library), ratio(simulated.library, simulated.floor)],
]);
console.log(
  JSON.stringify({
    rows,
    byPoints,
    byFamilies: { times: byFamilies, exponent: families },
    bytes,
    monteCarlo: simulated,
  }),
);
