import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Limits } from '../input/limits.js';
import type { Indicator } from '../substance/indicator.js';
import type { Curve } from '../titration/sampling/curve.js';
import { titrationLimits } from '../titration/titration-limits.js';
import { colourOf, readDye } from './colour-at.js';
import { readDrops } from './score-options.js';

/** The colours of a flask along a curve, as columns. */
export interface FlaskColours {
  /** Titrant added so far, mL. */
  readonly mL: readonly number[];
  readonly pH: readonly PH[];
  /** sRGB, such as `#f4d13a`. */
  readonly hex: readonly string[];
  /** In plain words. */
  readonly name: readonly string[];
}

/**
 * The colour of the flask along a titration curve, as an approximation; see {@link colourAt}. That the indicator thins
 * as the flask fills is left out: the light's path through the solution grows with it.
 *
 * @param curve - `mL` and `pH` columns, as `titration.curve(…)` gives them
 * @param options - `drops` of indicator solution in the flask; 2 if left out
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { flaskColours, indicators, makeSolution, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const curve = titration.curve({ volumes: [20, 24.95, 25, 25.05] });
 * flaskColours(curve, indicators.bromothymolBlue).name; // => ['yellow', 'yellow', 'green', 'blue']
 * ```
 */
export function flaskColours(
  curve: Pick<Curve, 'mL' | 'pH'>,
  indicator: Indicator,
  options?: { readonly drops?: number },
): FlaskColours {
  const faults = new Faults('flaskColours');
  const columns = faults.object(curve, 'curve', 'a curve { mL, pH }', ['mL', 'pH', 'slope']);
  const column = (key: 'mL' | 'pH', what: string, limits: Limits) =>
    faults
      .list(columns[key], `curve.${key}`, `a list: ${what}`, 0, titrationLimits.points)
      .map((one, k) => faults.number(one, `curve.${key}[${k}]`, what, limits));
  const mL = column('mL', 'a volume in mL', { from: 0, to: titrationLimits.mL });
  const pH = column('pH', 'a pH', titrationLimits.pH);
  if (mL.length !== pH.length && !faults.any)
    faults.add('conflict', 'curve.pH', `as many as there are volumes, ${mL.length}`, pH);
  const dye = readDye(indicator, 'indicator', faults);
  const unread =
    options === undefined ? {} : faults.object(options, 'options', 'options { drops }', ['drops']);
  const drops = readDrops(unread.drops, 'drops', faults);
  faults.done();

  const colours = pH.map((value) => colourOf(dye, value, drops));
  return frozen({ mL, pH, hex: colours.map(({ hex }) => hex), name: colours.map(({ name }) => name) });
}
