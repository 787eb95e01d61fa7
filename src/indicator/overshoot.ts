import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from '../substance/indicator.js';
import type { Titration } from '../titration/titration.js';
import { titrationLimits } from '../titration/titration-limits.js';
import { type Colour, colourOf, readDye } from './colour-at.js';
import { errorOf, judged } from './score-indicator.js';
import { readPoints, readScoreOptions, type ScoreOptions } from './score-options.js';

/** The flask after some drops past the call. */
export interface OvershootDrop {
  /** Drops past the call; 0 at the call itself. */
  readonly drop: number;
  /** Titrant added in all, mL. */
  readonly mL: number;
  readonly pH: PH;
  readonly colour: Colour;
  /** Error of a reading taken here, in mL and in percent of the volume sought. */
  readonly error: { readonly mL: number; readonly percent: number };
}

/**
 * What each drop too many looks like and costs: the faint pink that persists against the deep one.
 *
 * The first row is the call of a careful observer, as {@link scoreIndicator} has it, the others follow drop by drop.
 *
 * @param options - `drops` past the call, 5 if left out, and those of {@link scoreIndicator}
 * @returns an empty list where the curve never gets to the call
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, overshoot, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const rows = overshoot(titration, indicators.phenolphthalein, { drops: 2 });
 * rows.map(({ colour }) => colour.name); // => ['faint pink', 'pink', 'pink']
 * rows[2]?.error; // => { mL: 0.10, percent: 0.40 }
 * ```
 */
export function overshoot(
  titration: Titration,
  indicator: Indicator,
  options?: ScoreOptions & { readonly drops?: number },
): readonly OvershootDrop[] {
  const faults = new Faults('overshoot');
  const read = readScoreOptions(titration, options, faults, ['drops']);
  const dye = readDye(indicator, 'indicator', faults);
  const drops =
    read.unread.drops === undefined
      ? overshootDefaults.drops
      : faults.number(read.unread.drops, 'drops', 'a number of drops', {
          from: 0,
          to: 10_000,
          integer: true,
        });
  readPoints(read, faults);
  faults.done();

  const { at, endpoint } = judged(read.titration, dye.indicator, read, 1e-7);
  if (endpoint === null) return frozen([]);
  return frozen(
    Array.from({ length: drops + 1 }, (_, drop) => {
      const mL = Math.min(endpoint.mL + drop * read.dropSize, titrationLimits.mL);
      const pH = drop === 0 ? endpoint.pH : read.titration.pHAt(mL);
      return { drop, mL, pH, colour: colourOf(dye, pH, read.indicatorDrops), error: errorOf(mL, at.mL) };
    }),
  );
}

/** Drops past the call. */
export const overshootDefaults = /*#__PURE__*/ frozen({ drops: 5 } as const);
