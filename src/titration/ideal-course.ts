import type { Course } from './course.js';
import type { Curve } from './curve.js';
import { chargesAt, type Engine, emptyCharges, hAt, mixtureAt, slopeAt, volumeAt } from './engine.js';
import { inflectionsOf } from './inflection-points.js';
import { titrationLimits } from './limits.js';
import { writePHs } from './p-hs.js';

/** The curve where γ = 1 and no CO2 escapes: V(pH) is explicit and single-valued (engine.ts). @internal */
export function idealCourse(engine: Engine): Course {
  const room = emptyCharges();
  const pHAt = (mL: number) => -Math.log10(hAt(engine, mL));
  return {
    pHAt,
    pHs: (volumes, out) => void writePHs(engine, volumes, out),
    pointAt(mL) {
      const h = hAt(engine, mL);
      return { mL, pH: -Math.log10(h), slope: slopeAt(engine, mL, h, room) };
    },
    curveAt(mL) {
      const pH = Array.from(writePHs(engine, mL, new Float64Array(mL.length)));
      return {
        mL,
        pH,
        slope: mL.map((volume, k) => slopeAt(engine, volume, 10 ** -(pH[k] as number), room)),
      };
    },
    volumesAt(pH) {
      if (pH === pHAt(0)) return [0]; // where A is zero but for rounding
      const mL = volumeAt(engine, 10 ** -pH, room);
      return mL >= 0 && mL <= titrationLimits.mL ? [mL] : [];
    },
    inflections: () => inflectionsOf(engine),
    curveUpTo: (upTo, maxStep) => adaptiveCurve(engine, upTo, maxStep),
    columnAt: (mL) => mixtureAt(engine, mL),
  };
}

/**
 * Levels of pH at equal distances between both ends. V(pH) is explicit and single-valued, so a point costs one evaluation of the
 * charge balance: volume and slope come from the same.
 */
function adaptiveCurve(engine: Engine, upTo: number, maxStep: number): Curve {
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
