// The job that the examples share: titration curves of an invented pool pH-raiser powder, each known by its number.
import { pHsOf } from 'protolysis';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';

/** 0.2 g of the powder in 50 mL of water, titrated to 45 mL. */
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

/** The pH of `count` curves from number `from` on: of curve `from + k` at volume v it stands at v·count + k. */
export function pHsOfCurves({ from, count }) {
  const curves = Array.from({ length: count }, (_, k) => curveOf(from + k));
  return pHsAlong({
    purity: Float64Array.from(curves, ({ purity }) => purity),
    molar: Float64Array.from(curves, ({ molar }) => molar),
  });
}

/**
 * The pH of curves given as columns, one row for each: mass fraction of sodium carbonate in the powder, and mol/L of the acid.
 * Volume by volume, since neighbouring rows are alike in this order, which is the fastest for `pHsOf`.
 */
export function pHsAlong({ purity, molar }) {
  const count = purity.length;
  const mmol = (sample.grams / sodiumCarbonate.molarMass) * 1000;
  const column = (of) =>
    Float64Array.from({ length: volumes.length * count }, (_, row) =>
      of(volumes[Math.floor(row / count)], row % count),
    );
  return pHsOf({
    contents: [
      { reagent: sodiumCarbonate, molar: column((mL, k) => (purity[k] * mmol) / (sample.mL + mL)) },
      { reagent: hydrochloricAcid, molar: column((mL, k) => (molar[k] * mL) / (sample.mL + mL)) },
    ],
  });
}
