import { frozen } from '../frozen.js';
import { at, type Faults } from '../input/faults.js';
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

/** Options that have been read. @internal */
export type AdditionsInUse = ReturnType<typeof readAdditionOptions>;

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
