import type { PH } from '../../equilibrium/quantities.js';
import { plainly } from '../../input/describe-value.js';
import type { Faults } from '../../input/faults.js';
import { titrationLimits } from '../titration-limits.js';

/** One point of a titration curve. */
export interface CurvePoint {
  /** Titrant added so far, mL: a running total, as a burette is read. */
  readonly mL: number;
  readonly pH: PH;
  /** dpH/dV per mL. */
  readonly slope: number;
}

/** A titration curve as plain columns: arrays of numbers that survive JSON and any dataframe. */
export interface Curve {
  readonly mL: readonly number[];
  readonly pH: readonly PH[];
  readonly slope: readonly number[];
}

/** At which volumes a curve is wanted, all in mL of titrant added in all. */
export type Additions =
  /** Equal additions, from 0 to no more than `upTo`. */
  | { readonly every: number; readonly upTo: number; readonly volumes?: never; readonly maxStep?: never }
  /** Running totals, in any order. */
  | {
      readonly volumes: ArrayLike<number>;
      readonly every?: never;
      readonly maxStep?: never;
      readonly upTo?: never;
    }
  /** As many as it takes for neighbours to differ by at most `maxStep` in pH, from 0 to `upTo`. */
  | { readonly maxStep: number; readonly upTo: number; readonly every?: never; readonly volumes?: never };

/** Reads additions from a caller's value, noting every fault. @internal */
export function readAdditions(value: unknown, faults: Faults, path = 'additions'): Additions {
  const what = 'additions { every, upTo }, { volumes } or { maxStep, upTo }';
  const unread = faults.object(value, path, what, ['every', 'volumes', 'maxStep', 'upTo']);
  const given = (['every', 'volumes', 'maxStep'] as const).filter((key) => unread[key] !== undefined);
  if (given.length > 1) faults.add('conflict', path, what, unread, `given as ${given.join(' and ')}`);
  if (given.length === 0) {
    faults.add('missing', path, what, undefined, 'without every, volumes or maxStep');
    if (unread.upTo !== undefined) readUpTo(unread.upTo, path, faults);
    return { volumes: [] };
  }
  if (given[0] === 'volumes') {
    if (unread.upTo !== undefined)
      faults.add('conflict', `${path}.upTo`, 'no upTo beside volumes', unread.upTo);
    return { volumes: readVolumes(unread.volumes, `${path}.volumes`, faults) };
  }
  const before = faults.count;
  const upTo = readUpTo(unread.upTo, path, faults);
  if (given[0] === 'maxStep') {
    const maxStep = faults.number(unread.maxStep, `${path}.maxStep`, 'a step in pH', {
      from: 1e-5,
      to: 20,
    });
    return { maxStep, upTo };
  }
  const every = faults.number(unread.every, `${path}.every`, 'a volume in mL', {
    above: 0,
    to: titrationLimits.mL,
  });
  if (faults.count === before && upTo / every > titrationLimits.points)
    faults.add(
      'out-of-range',
      `${path}.every`,
      `steps that make at most ${plainly(titrationLimits.points)} points`,
      unread.every,
    );
  return { every, upTo };
}

const readUpTo = (value: unknown, path: string, faults: Faults): number =>
  faults.number(value, `${path}.upTo`, 'a volume in mL', { above: 0, to: titrationLimits.mL });

/** Reads running totals, mL, from a list or a typed array. @internal */
export function readVolumes(value: unknown, path: string, faults: Faults): ArrayLike<number> {
  return faults.numbers(value, path, 'a volume in mL', volumeLimits, titrationLimits.points);
}

/** Reads one running total, mL. @internal */
export function readVolume(value: unknown, path: string, faults: Faults): number {
  return faults.number(value, path, 'a volume in mL', volumeLimits);
}

const volumeLimits = { from: 0, to: titrationLimits.mL };

/** Equal additions as the running totals that one would write down: 0.3, not 0.30000000000000004. @internal */
export function equalAdditions(every: number, upTo: number): number[] {
  const count = Math.floor((upTo / every) * (1 + 1e-12));
  return Array.from({ length: count + 1 }, (_, k) => Math.min(upTo, Number((k * every).toPrecision(15))));
}
