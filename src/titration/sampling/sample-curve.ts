import type { CurveModel } from '../model/curve-model.js';
import { type Additions, type Curve, equalAdditions } from './curve.js';

/** A curve as columns, at additions that have been read. @internal */
export function sampleCurve(curveModel: CurveModel, additions: Additions): Curve {
  if (additions.maxStep !== undefined) return curveModel.curveUpTo(additions.upTo, additions.maxStep);
  const { every, upTo, volumes } = additions;
  return curveModel.curveAt(every !== undefined ? equalAdditions(every, upTo) : Array.from(volumes));
}
