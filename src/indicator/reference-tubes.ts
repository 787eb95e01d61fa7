import { equilibrate } from '../equilibrium/equilibrate.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { cautionsOf } from '../safety/cautions-of.js';
import { aliquot } from '../solution/aliquot.js';
import { mix } from '../solution/mix.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { Indicator } from '../substance/indicator.js';
import { type Colour, colourOf, readDye } from './colour-at.js';
import { indicatorDefaults, readDrops } from './score-options.js';

/** What goes into two reference tubes. */
export interface TubeRecipe {
  /** Water in each tube, mL. */
  readonly mL: number;
  /** Drops of acid into one tube, of base into the other. */
  readonly drops: number;
  readonly acid: Solution;
  readonly base: Solution;
  /** Volume of those drops, mL. */
  readonly dropSize?: number;
  /** Drops of indicator solution that would give the tube the strength of colour that the flask has. */
  readonly indicatorDrops?: number;
}

/** One tube, as predicted. */
export interface ReferenceTube {
  readonly pH: PH;
  readonly colour: Colour;
  /** How far beyond the transition it is, in pH; below zero where it is not. */
  readonly margin: number;
  /** Whether the margin is at least that of {@link tubeMargin}. */
  readonly safelyBeyond: boolean;
}

/** The two tubes between whose colours the end point lies, and what to mind when making them. */
export interface ReferenceTubes {
  readonly acid: ReferenceTube;
  readonly base: ReferenceTube;
  /**
   * Of the indicator, acid and base handled, deferring to the safety data sheet, local rules and a qualified
   * supervisor.
   */
  readonly cautions: readonly string[];
}

/** One unit of pH beyond the range, where the other form is down to about a hundredth: ours. */
export const tubeMargin = 1;

/**
 * The tubes that show the two colours of an indicator: a few mL of water with a drop or two of strong acid, or strong
 * base.
 *
 * Water free of carbon dioxide, ideal solutions at 25 °C. Strong acids and bases are corrosive even by the drop: read
 * the `cautions`, and follow the safety data sheet, local rules and a qualified supervisor.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, reagents, referenceTubes } from 'protolysis';
 *
 * const tubes = referenceTubes(indicators.bromothymolBlue, {
 *   mL: 5,
 *   drops: 2,
 *   acid: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *   base: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * tubes.acid.pH; // => 2.71
 * tubes.acid.colour.name; // => 'yellow'
 * tubes.base.safelyBeyond; // => true
 * ```
 */
export function referenceTubes(indicator: Indicator, recipe: TubeRecipe): ReferenceTubes {
  const faults = new Faults('referenceTubes');
  const dye = readDye(indicator, 'indicator', faults);
  const allowed = ['mL', 'drops', 'acid', 'base', 'dropSize', 'indicatorDrops'];
  const unread = faults.object(recipe, 'recipe', 'a recipe { mL, drops, acid, base }', allowed);
  const mL = faults.number(unread.mL, 'mL', 'a volume in mL', { above: 0, to: 1e6 });
  const drops = faults.number(unread.drops, 'drops', 'a number of drops', { above: 0, to: 10_000 });
  const dropSize =
    unread.dropSize === undefined
      ? indicatorDefaults.dropSize
      : faults.number(unread.dropSize, 'dropSize', 'a volume in mL', { above: 0, to: 10 });
  const indicatorDrops = readDrops(unread.indicatorDrops, 'indicatorDrops', faults);
  const acid = readSolution(unread.acid, 'acid', faults);
  const base = readSolution(unread.base, 'base', faults);
  faults.done();

  const water = { mL, contents: [] };
  const pHOfTube = (reagent: Solution): PH =>
    equilibrate(mix(water, aliquot(reagent, { mL: drops * dropSize }))).pH;
  const tube = (pH: PH, margin: number): ReferenceTube => ({
    pH,
    colour: colourOf(dye, pH, indicatorDrops),
    margin,
    safelyBeyond: margin >= tubeMargin,
  });
  const [low, high] = [pHOfTube(acid), pHOfTube(base)];
  return frozen({
    acid: tube(low, dye.indicator.transition.from - low),
    base: tube(high, high - dye.indicator.transition.to),
    cautions: cautionsOf([dye.indicator, acid, base]),
  });
}
