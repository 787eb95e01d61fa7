import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { at, Faults } from '../input/faults.js';
import { fixed, fourDigits } from '../print-number.js';
import { makeTitration } from '../titration/make-titration.js';
import { readSetupOf } from '../titration/read-setup.js';
import { usualLastVolume } from '../titration/sampling/usual-last-volume.js';
import type { Titration } from '../titration/titration.js';
import { titrationLimits } from '../titration/titration-limits.js';

/** How a titration is gone through at the bench. */
export interface AdditionOptions {
  /** mL of a coarse addition; 0.5 if left out. */
  readonly coarse?: number;
  /** mL of the smallest addition, a drop; 0.05 if left out. */
  readonly fine?: number;
  /** The greatest change of pH between readings, where additions can be made that small; 0.3 if left out. */
  readonly maxStep?: number;
  /**
   * The last volume, mL; if left out, 1.5 times the last equivalence volume, but the whole burette where that is less and
   * still a tenth beyond the point. Twice the analyte where there is no point.
   */
  readonly upTo?: number;
  /** Seconds of stirring before a reading; 12.5 if left out. */
  readonly settle?: number;
  /** Seconds for an addition and for writing down its reading; 15 if left out. */
  readonly handling?: number;
  /** Volume of the burette, mL; 50 if left out. */
  readonly burette?: number;
}

/** Additions in order, as plain columns. */
export interface AdditionPlan {
  /** Running totals, mL, from 0: what the burette shows, less its first reading. */
  readonly mL: readonly number[];
  /** What is added for each, mL; 0 for the first. */
  readonly added: readonly number[];
  /** The predicted pH at each. */
  readonly pH: readonly PH[];
  readonly readings: number;
  /** Time at the bench for additions and readings, minutes. */
  readonly minutes: number;
  /** How many times the burette is filled. */
  readonly fillings: number;
  readonly notes: readonly string[];
}

/**
 * What `planAdditions` takes by default: common practice is about 0.5 mL an addition and 10 to 15 s of stirring before
 * a reading; a drop of a burette is about 0.05 mL.
 */
export const additionDefaults = /*#__PURE__*/ frozen({
  coarse: 0.5,
  fine: 0.05,
  maxStep: 0.3,
  settle: 12.5,
  handling: 15,
  burette: 50,
} as const);

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
export function planOf(expected: Titration, how: How, path: string, faults: Faults): AdditionPlan {
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
  return frozen(scheduleOf((step) => expected.pHAt(volumeOf(step, how.fine)), steps, lastPoint, how));
}

/** One filling of the burette is enough where it passes the last point by a tenth. A choice of this package. */
const usualEnd = (usual: number, lastPoint: number | undefined, { burette }: How): number =>
  lastPoint !== undefined && burette >= 1.1 * lastPoint ? Math.min(usual, burette) : usual;

type How = ReturnType<typeof readAdditionOptions>;

/** Reads how a titration is gone through, noting every fault. @internal */
export function readAdditionOptions(value: unknown, path: string, faults: Faults) {
  const keys = [...Object.keys(additionDefaults), 'upTo'];
  const unread = faults.object(value, path, `options { ${keys.join(', ')} }`, keys);
  const read = (key: keyof typeof additionDefaults, what: string, limits: object): number =>
    unread[key] === undefined
      ? additionDefaults[key]
      : faults.number(unread[key], at(path, key), what, limits);
  const volume = { from: 1e-4, to: 1e4 };
  const seconds = { from: 0, to: 3600 };
  const fine = read('fine', 'a volume in mL', volume);
  const coarse = read('coarse', 'a volume in mL', volume);
  const perCoarse = Math.round(coarse / fine);
  if (!faults.any && !(perCoarse >= 1 && Math.abs(coarse / fine - perCoarse) < 1e-9))
    faults.add('conflict', at(path, 'coarse'), `a whole number of fine additions of ${fine} mL`, coarse);
  const upTo =
    unread.upTo === undefined
      ? null
      : faults.number(unread.upTo, at(path, 'upTo'), 'a volume in mL', { above: 0, to: titrationLimits.mL });
  if (!faults.any && upTo !== null && upTo < fine)
    faults.add('conflict', at(path, 'upTo'), `no less than one fine addition of ${fine} mL`, upTo);
  return {
    fine,
    coarse,
    perCoarse,
    upTo,
    maxStep: read('maxStep', 'a change of pH', { from: 0.01, to: 14 }),
    settle: read('settle', 'a time in seconds', seconds),
    handling: read('handling', 'a time in seconds', seconds),
    burette: read('burette', 'a volume in mL', { from: 0.1, to: 1e4 }),
  };
}

/** A whole number of fine additions, mL, as one would write it down: 0.3, not 0.30000000000000004. */
const volumeOf = (step: number, fine: number): number => Number((step * fine).toPrecision(12));

function scheduleOf(
  pHAt: (step: number) => PH,
  last: number,
  lastPoint: number | undefined,
  how: How,
): AdditionPlan {
  const plan = { mL: [0], added: [0], pH: [pHAt(0)] };
  let sharpest = { mL: 0, change: 0 };
  for (let step = 0; step < last; ) {
    const before = plan.pH.at(-1) ?? Number.NaN;
    const size = greatestStep(
      (more) => Math.abs(pHAt(step + more) - before),
      Math.min(how.perCoarse, last - step),
      how,
    );
    step += size;
    const pH = pHAt(step);
    plan.mL.push(volumeOf(step, how.fine));
    plan.added.push(volumeOf(size, how.fine));
    plan.pH.push(pH);
    const change = Math.abs(pH - before);
    if (change > sharpest.change) sharpest = { mL: volumeOf(step, how.fine), change };
  }
  const readings = plan.mL.length;
  const total = plan.mL.at(-1) ?? 0;
  const fillings = Math.max(1, Math.ceil(total / how.burette - 1e-9));
  return {
    ...plan,
    readings,
    minutes: (readings * how.settle + (readings - 1) * how.handling) / 60,
    fillings,
    notes: notesOn(sharpest, fillings, lastPoint, how),
  };
}

/**
 * The greatest number of fine additions, up to `most`, that changes the pH by at most `maxStep`, or one. Found by
 * halving, so that it is the greatest where the pH goes one way only; what it finds keeps the limit in any case.
 *
 * Invariant   `few` additions keep the limit, or are one; `many` do not.
 */
function greatestStep(changeAfter: (steps: number) => number, most: number, { maxStep }: How): number {
  if (changeAfter(most) <= maxStep) return most;
  let [few, many] = [1, most];
  while (many - few > 1) {
    const middle = Math.floor((few + many) / 2);
    if (changeAfter(middle) <= maxStep) few = middle;
    else many = middle;
  }
  return few;
}

function notesOn(
  sharpest: { mL: number; change: number },
  fillings: number,
  lastPoint: number | undefined,
  how: How,
): string[] {
  const steep =
    sharpest.change > how.maxStep
      ? [
          `One addition of ${how.fine} mL changes the pH by ${fixed(sharpest.change, 1)}, at ${fixed(sharpest.mL, 2)} mL: no smaller one is planned.`,
        ]
      : [];
  const enough =
    lastPoint !== undefined && lastPoint < how.burette
      ? ` Up to ${how.burette} mL one filling does, and still passes the last equivalence point, at ${fixed(lastPoint, 2)} mL.`
      : '';
  const refill =
    fillings > 1
      ? [
          `The burette of ${how.burette} mL is filled ${fillings} times: write down its readings before and after, so that the totals go on.${enough}`,
        ]
      : [];
  return [...steep, ...refill];
}
