import { frozen } from '../frozen.js';
import { at, Faults } from '../input/faults.js';
import { fourDigits } from '../print-number.js';
import { makeTitration } from '../titration/make-titration.js';
import { readSetupOf } from '../titration/read-setup.js';
import { usualLastVolume } from '../titration/sampling/usual-last-volume.js';
import type { Titration } from '../titration/titration.js';
import { type AdditionOptions, type AdditionsInUse, readAdditionOptions } from './addition-options.js';
import { type AdditionPlan, scheduleOf, volumeOfSteps } from './addition-schedule.js';

/** At most as many additions in one plan. */
const mostAdditions = 10_000;

/**
 * A schedule of additions for a titration with a probe: coarse where the curve is flat, down to drops where it is
 * steep.
 *
 * Each addition is the greatest whole number of fine ones, at most a coarse one, after which the predicted pH has
 * changed by at most `maxStep`. It is one fine addition where even that changes it by more.
 *
 * @param titration - the titration that is expected
 * @throws InputError that lists every fault: also where a coarse addition is no whole number of fine ones, or the whole
 *   titration takes less than a fine one
 * @example
 * ```ts
 * import { makeSolution, planAdditions, reagents, titrate } from 'protolysis';
 *
 * const plan = planAdditions(
 *   titrate({
 *     analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
 *     titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *   }),
 * );
 * plan.mL.slice(0, 4); // => [0, 0.5, 1, 1.5]
 * plan.readings; // => 156
 * plan.fillings; // => 2
 * ```
 */
export function planAdditions(
  titration: Pick<Titration, 'setup'>,
  options: AdditionOptions = {},
): AdditionPlan {
  const faults = new Faults('planAdditions');
  const read = readSetupOf(titration, faults);
  const how = readAdditionOptions(options, 'options', faults);
  faults.done();
  return planOf(makeTitration(read), how, 'options', faults);
}

/** The schedule of a titration by options that have been read. @internal */
export function planOf(expected: Titration, how: AdditionsInUse, path: string, faults: Faults): AdditionPlan {
  const lastPoint = expected.equivalencePoints.at(-1)?.mL;
  const end =
    how.upTo ?? usualEnd(usualLastVolume(expected.equivalencePoints, expected.setup.analyte), lastPoint, how);
  const steps = Math.round(end / how.fine);
  if (steps < 1)
    faults.add(
      'conflict',
      at(path, 'fine'),
      `no more than the titration takes, ${fourDigits(end)} mL`,
      how.fine,
    );
  if (steps > mostAdditions * how.perCoarse)
    faults.add(
      'out-of-range',
      at(path, 'coarse'),
      `steps that make at most ${mostAdditions} additions`,
      how.coarse,
    );
  faults.done();
  return frozen(scheduleOf((step) => expected.pHAt(volumeOfSteps(step, how.fine)), steps, lastPoint, how));
}

/** One filling of the burette is enough where it passes the last point by a tenth. A choice of this package. */
const usualEnd = (usual: number, lastPoint: number | undefined, { burette }: AdditionsInUse): number =>
  lastPoint !== undefined && burette >= 1.1 * lastPoint ? Math.min(usual, burette) : usual;
