// How long a pH on a titration curve takes, beside plain halving of a bracket on the same charge balance written out by
// hand for this one case. Prints a ratio, which carries from one machine to the next better than a time does.
import { acids, makeSolution, reagents, titrate } from 'protolysis';
import { Bench } from 'tinybench';

const analyte = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, mmol: 1.8 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const pKw = 14;
const titration = titrate({ analyte, titrant, conditions: { pKw } });
const volumes = Float64Array.from({ length: 200 }, (_, i) => i / 4);

const [K1 = 0, K2 = 0] = acids.carbonic.steps.map(({ pKa }) => 10 ** -pKa);
const Kw = 10 ** -pKw;

/** @param {number} mL the acid added */
function pHByHalving(mL) {
  const carbonate = 1.8 / (50 + mL);
  const strong = (3.6 - 0.1 * mL) / (50 + mL);
  let low = -2;
  let high = 16;
  for (;;) {
    const pH = low + (high - low) / 2;
    if (pH === low || pH === high) return pH;
    const h = 10 ** -pH;
    const bound = (K1 * h + 2 * K1 * K2) / (h * h + K1 * h + K1 * K2);
    if (h - Kw / h + strong - carbonate * bound > 0) low = pH;
    else high = pH;
  }
}

const worst = Math.max(...titration.pHs(volumes).map((pH, i) => Math.abs(pH - pHByHalving(volumes[i] ?? 0))));
if (!(worst < 1e-9)) throw new Error(`the two disagree by ${worst}`);

const bench = new Bench({ time: 1000 });
bench.add('library', () => void titration.pHs(volumes));
bench.add('halving', () => void volumes.map(pHByHalving));
await bench.run();

const [library, halving] = bench.tasks.map(({ result }) =>
  result.state === 'completed' ? result.latency.p50 : Number.NaN,
);
console.log(`${volumes.length} pHs agree to ${worst.toExponential(1)}`);
console.log(`library / halving by hand: ${(Number(library) / Number(halving)).toFixed(2)} of the time`);
