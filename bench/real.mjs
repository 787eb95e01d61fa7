// How long a pH on a titration curve takes with Davies' activity coefficients, and with CO2 that escapes, beside the ideal
// curve. Prints ratios, which carry from one machine to the next better than times do.
import { air, davies, debyeHuckelExtended, makeSolution, reagents, titrate } from 'protolysis';
import { Bench } from 'tinybench';

const analyte = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, mmol: 1.8 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const volumes = Float64Array.from({ length: 200 }, (_, i) => i / 4);

const curves = {
  ideal: titrate({ analyte, titrant }),
  Davies: titrate({ analyte, titrant, conditions: { activity: davies } }),
  'Debye–Hückel extended': titrate({ analyte, titrant, conditions: { activity: debyeHuckelExtended } }),
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
