// A worker's share of the sweep: some curves, and their pH as one array that is handed over rather than copied.
import { move } from 'piscina';
import { pHsOf } from 'protolysis';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';

/** 0.2 g of an invented pool pH-raiser powder in 50 mL of water, titrated to 45 mL. */
export const sample = { grams: 0.2, mL: 50 };
export const volumes = Float64Array.from({ length: 91 }, (_, k) => k / 2);

/**
 * The powder and the titrant of curve k: 93 to 97 % of sodium carbonate and 0.0995 to 0.1005 mol/L. The fractional parts of the
 * multiples of irrational numbers fill the square evenly (H. Weyl, Math. Ann. 77, 313 (1916)), so that a curve is the same
 * whichever worker computes it.
 */
export const curveOf = (k) => ({
  purity: 0.93 + 0.04 * ((k * Math.SQRT1_2) % 1),
  molar: 0.0995 + 0.001 * ((k * Math.sqrt(3)) % 1),
});

/**
 * The pH of some curves, volume by volume: of curve `from + k` at volume v it stands at v·count + k. Neighbouring rows are alike
 * in this order, which is the fastest for `pHsOf`.
 */
export default function chunk({ from, count }) {
  const curves = Array.from({ length: count }, (_, k) => curveOf(from + k));
  const columns = (of) =>
    Float64Array.from({ length: volumes.length * count }, (_, row) =>
      of(volumes[Math.floor(row / count)], curves[row % count]),
    );
  const mmol = (sample.grams / sodiumCarbonate.molarMass) * 1000;
  const pHs = pHsOf({
    contents: [
      { reagent: sodiumCarbonate, molar: columns((mL, { purity }) => (purity * mmol) / (sample.mL + mL)) },
      { reagent: hydrochloricAcid, molar: columns((mL, { molar }) => (molar * mL) / (sample.mL + mL)) },
    ],
  });
  return move(pHs);
}
