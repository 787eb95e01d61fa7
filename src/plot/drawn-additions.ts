import type { Faults } from '../input/faults.js';
import { equalAdditions, readAdditions } from '../titration/sampling/curve.js';
import type { Titration } from '../titration/titration.js';
import { pointsOf } from './drawn-curve.js';
import type { Dots } from './figure.js';
import { plotLimits } from './plot-options.js';

/** Equal additions, from 0 to no more than `upTo`, or running totals; mL. */
export type DrawnAdditions =
  | { readonly every: number; readonly upTo: number; readonly volumes?: never }
  | { readonly volumes: ArrayLike<number>; readonly every?: never; readonly upTo?: never };

const path = 'options.additions';

/**
 * Reads the additions that are drawn as dots, noting every fault: running totals in order; null where there are none.
 *
 * @internal
 */
export function readDrawnAdditions(
  value: unknown,
  upTo: number | null,
  faults: Faults,
): readonly number[] | null {
  if (value === undefined) return null;
  const before = faults.count;
  const read = readAdditions(value, faults, path);
  if (read.maxStep !== undefined)
    faults.add(
      'conflict',
      `${path}.maxStep`,
      'additions as one makes them, { every, upTo } or { volumes }',
      read.maxStep,
    );
  if (faults.count > before || read.maxStep !== undefined) return null;
  const count = read.volumes ? read.volumes.length : read.upTo / read.every + 1;
  if (!(count >= 1 && count <= plotLimits.points)) {
    faults.add('out-of-range', path, `1 to ${plotLimits.points} additions`, value, `${count} of them`);
    return null;
  }
  const volumes = read.volumes
    ? Array.from(read.volumes).sort((a, b) => a - b)
    : equalAdditions(read.every, read.upTo);
  const last = volumes.at(-1) as number;
  if (upTo !== null && last > upTo)
    faults.add('conflict', path, `no addition beyond options.upTo, ${upTo} mL`, last);
  return volumes;
}

/** The dots of additions on a curve. @internal */
export const dotsAt = (titration: Titration, volumes: readonly number[]): Dots => ({
  points: pointsOf(volumes, Array.from(titration.pHs(volumes))),
  name: '',
  isReading: false,
});
