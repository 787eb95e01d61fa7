import type { Vessel } from '../catalogue/glassware.js';

/** One dilution: a whole number of pipettes of a stock, made up to the mark of a flask. */
export interface Dilution {
  /** What is diluted. */
  readonly of: string;
  /** How many times the pipette is filled. */
  readonly times: number;
  readonly pipette: Vessel;
  readonly flask: Vessel;
  readonly glass: 'A' | 'B';
  /** mol/L that it gives. */
  readonly molar: number;
}

/** The vessels at hand, the smallest first, and their class. */
export interface VesselsAtHand {
  readonly pipettes: readonly Vessel[];
  readonly flasks: readonly Vessel[];
  readonly glass: 'A' | 'B';
}

/** At most as many times a pipette is filled for one dilution. */
const mostTimes = 4;

/** Volumes that differ by rounding alone are equal. */
const rounding = 1e-9;

/**
 * The dilutions that give a concentration in a flask: one if the pipettes at hand allow it, otherwise two; of several ways the
 * one with the least uncertainty.
 *
 * @param last - the flask of the last dilution
 * @returns undefined where neither one nor two dilutions give it
 * @internal
 */
export function dilutionTo(
  molar: number,
  stock: { readonly name: string; readonly molar: number },
  last: Vessel,
  vessels: VesselsAtHand,
): readonly Dilution[] | undefined {
  const { flasks, glass } = vessels;
  const inOne = oneDilution(molar, stock, last, vessels);
  if (inOne) return [inOne];
  const inTwo = flasks.flatMap((flask) =>
    vessels.pipettes.flatMap((pipette) =>
      Array.from({ length: mostTimes }, (_, k) => k + 1).flatMap((times) => {
        const middle = (stock.molar * times * pipette.mL) / flask.mL;
        if (!(times * pipette.mL < flask.mL && middle > molar)) return [];
        const first: Dilution = { of: stock.name, times, pipette, flask, glass, molar: middle };
        const second = oneDilution(molar, { name: 'the solution just made', molar: middle }, last, vessels);
        const enough = second && second.times * second.pipette.mL <= flask.mL;
        return enough ? [[first, second]] : [];
      }),
    ),
  );
  return inTwo.sort((first, second) => errorOf(first) - errorOf(second))[0];
}

function oneDilution(
  molar: number,
  stock: { readonly name: string; readonly molar: number },
  flask: Vessel,
  { pipettes, glass }: VesselsAtHand,
): Dilution | undefined {
  const mL = (molar * flask.mL) / stock.molar;
  const ways = pipettes.flatMap((pipette) => {
    const times = Math.round(mL / pipette.mL);
    const fits = times >= 1 && times <= mostTimes && Math.abs(times * pipette.mL - mL) <= rounding * mL;
    return fits ? [{ of: stock.name, times, pipette, flask, glass, molar }] : [];
  });
  return ways.sort((first, second) => errorOf([first]) - errorOf([second]))[0];
}

/** The relative uncertainty of a way, but for a common factor. */
const errorOf = (dilutions: readonly Dilution[]): number =>
  Math.hypot(
    ...dilutions.flatMap(({ pipette, flask, glass }) => [
      pipette.tolerance[glass] / pipette.mL,
      flask.tolerance[glass] / flask.mL,
    ]),
  );
