import type { Course } from './course.js';
import { type Additions, type Curve, equalAdditions } from './curve.js';

/** A curve as columns, at additions that have been read. @internal */
export function curveOf(course: Course, additions: Additions): Curve {
  if (additions.maxStep !== undefined) return course.curveUpTo(additions.upTo, additions.maxStep);
  const { every, upTo, volumes } = additions;
  return course.curveAt(every !== undefined ? equalAdditions(every, upTo) : Array.from(volumes));
}
