import { type Additions, type Curve, equalAdditions } from './curve.js';
import { chargesAt, type Engine, emptyCharges, hAt, slopeAt } from './engine.js';
import { writePHs } from './p-hs.js';

/** A curve as columns, at additions that have been read. @internal */
export function curveOf(engine: Engine, additions: Additions): Curve {
  if (additions.maxStep !== undefined) return adaptiveCurve(engine, additions.maxStep, additions.upTo);
  const mL =
    additions.every !== undefined
      ? equalAdditions(additions.every, additions.upTo)
      : Array.from(additions.volumes);
  const pH = Array.from(writePHs(engine, mL, new Float64Array(mL.length)));
  const room = emptyCharges();
  return { mL, pH, slope: mL.map((volume, k) => slopeAt(engine, volume, 10 ** -(pH[k] as number), room)) };
}

/**
 * Levels of pH at equal distances between both ends. V(pH) is explicit and single-valued, so a point costs one evaluation of the
 * charge balance: volume and slope come from the same.
 */
function adaptiveCurve(engine: Engine, maxStep: number, upTo: number): Curve {
  const room = emptyCharges();
  const [from, to] = [hAt(engine, 0), hAt(engine, upTo)];
  const [first, last] = [-Math.log10(from), -Math.log10(to)];
  const count = Math.ceil(Math.abs(last - first) / maxStep);
  const curve = { mL: [0], pH: [first], slope: [slopeAt(engine, 0, from, room)] };
  for (let k = 1; k < count; k += 1) {
    const pH = first + ((last - first) * k) / count;
    const { analyte, titrant } = chargesAt(engine, 10 ** -pH, room);
    const mL = -analyte.net / titrant.net;
    curve.mL.push(mL);
    curve.pH.push(pH);
    curve.slope.push(titrant.net / (Math.LN10 * (analyte.slope + mL * titrant.slope)));
  }
  curve.mL.push(upTo);
  curve.pH.push(last);
  curve.slope.push(slopeAt(engine, upTo, to, room));
  return curve;
}
