// How long a pH on a titration curve takes with Davies' activity coefficients, and with CO2 that escapes, beside the ideal
// curve. Prints ratios, which carry from one machine to the next better than times do.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { air, davies, debyeHuckelExtended, makeSolution, reagents, titrate } from 'protolysis';
import { carbonic } from 'protolysis/acids';
import { Bench } from 'tinybench';

const analyte = makeSolution({
  mL: 50,
  contents: [{ reagent: reagents.sodiumCarbonate, mmol: 1.8 }],
});
const titrant = makeSolution({
  contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }],
});
const volumes = Float64Array.from({ length: 200 }, (_, i) => i / 4);

const curves = {
  ideal: titrate({ analyte, titrant }),
  Davies: titrate({ analyte, titrant, conditions: { activity: davies } }),
  'Debye–Hückel extended': titrate({
    analyte,
    titrant,
    conditions: { activity: debyeHuckelExtended },
  }),
  'half of the CO2 escaping': titrate({
    analyte,
    titrant,
    conditions: { carbonDioxide: { ...air, escape: 0.5 } },
  }),
};

const bench = new Bench({ time: 1000 });
for (const [name, titration] of Object.entries(curves)) bench.add(name, () => void titration.pHs(volumes));
await bench.run();

const times = bench.tasks.map(({ name, result }) => ({
  name,
  time: result.state === 'completed' ? result.latency.p50 : Number.NaN,
}));
const [{ time: ideal } = { time: Number.NaN }] = times;
console.log(`ideal: ${((1e6 * ideal) / volumes.length).toFixed(0)} ns a point`);
for (const { name, time } of times.slice(1))
  console.log(`${name} / ideal: ${(time / ideal).toFixed(1)} times`);

// SciPy on the same two equations, each point from the one before; left out where Python or SciPy is absent.
const { Davies } = curves;
const job = {
  V0: 50,
  // the law is A·(…) with 0.3·I inside, here at 0.1 mol/L
  A: -davies.log10Gamma(1, 0.1, 25, 'H+') / (Math.sqrt(0.1) / (1 + Math.sqrt(0.1)) - 0.03),
  Kw: 10 ** -Number(Davies.constants[0]?.value),
  K: carbonic.steps.map(({ pKa }) => 10 ** -pKa),
  acid: 0.1,
  base: 1.8,
  volumes: Array.from(volumes),
};
const script = fileURLToPath(new URL('real-rivals.py', import.meta.url));
const { status, stdout } = spawnSync('python3', [script], {
  input: JSON.stringify(job),
  encoding: 'utf8',
});
const ours = times.find(({ name }) => name === 'Davies')?.time ?? Number.NaN;
if (status === 0)
  for (const [name, { ns, pH }] of Object.entries(JSON.parse(stdout))) {
    const pHs = Davies.pHs(volumes);
    const off = Math.max(...pHs.map((ph, k) => Math.abs(ph - pH[k])));
    const slower = (ns / ((1e6 * ours) / volumes.length)).toFixed(0);
    console.log(`SciPy ${name} / Davies: ${slower} times, pH off by ${off.toExponential(0)} at most`);
  }
