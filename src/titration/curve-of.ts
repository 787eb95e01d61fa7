import type { Course } from './course.js';
import { type Additions, type Curve, equalAdditions } from './curve.js';

/** A curve as columns, at additions that have been read. @internal */
export function curveOf(course: Course, additions: Additions): Curve {
  if (additions.maxStep !== undefined) return course.curveUpTo(additions.upTo, additions.maxStep);
  const { every, upTo, volumes } = additions;
  return curveOver(course, every !== undefined ? equalAdditions(every, upTo) : Array.from(volumes));
}

/** A curve at these volumes, mL. @internal */
export function curveOver(course: Pick<Course, 'pHs' | 'slopeAt'>, mL: readonly number[]): Curve {
  const pH = new Float64Array(mL.length);
  course.pHs(mL, pH);
  return { mL, pH: Array.from(pH), slope: mL.map((volume, k) => course.slopeAt(volume, pH[k] as number)) };
}
