import { numberAt } from '../../solver/number-at.js';
import { inflectionsOf } from '../points/inflection-points.js';
import type { Curve } from '../sampling/curve.js';
import { writePHs } from '../sampling/ph-at-volumes.js';
import { titrationLimits } from '../titration-limits.js';
import type { CurveModel } from './curve-model.js';
import {
  chargesAt,
  columnAt,
  emptyCharges,
  hydrogenIonAt,
  type MixtureModel,
  slopeOfCharges,
  slopeOfMixture,
  volumeOfCharges,
  volumeOfMixture,
} from './mixture-model.js';

/** The curve where γ = 1 and no CO2 escapes: V(pH) is explicit and single-valued (mixture-model.ts). @internal */
export function idealModel(mixture: MixtureModel): CurveModel {
  const charges = emptyCharges();
  const pHAt = (mL: number) => -Math.log10(hydrogenIonAt(mixture, mL));
  return {
    pHAt,
    pHs: (volumes, out) => void writePHs(mixture, volumes, out),
    pointAt(mL) {
      const h = hydrogenIonAt(mixture, mL);
      return { mL, pH: -Math.log10(h), slope: slopeOfMixture(mixture, mL, h, charges) };
    },
    curveAt(mL) {
      const pH = Array.from(writePHs(mixture, mL, new Float64Array(mL.length)));
      return {
        mL,
        pH,
        slope: mL.map((volume, k) => slopeOfMixture(mixture, volume, 10 ** -numberAt(pH, k), charges)),
      };
    },
    volumesAt(pH) {
      if (pH === pHAt(0)) return [0]; // where A is zero but for rounding
      const mL = volumeOfMixture(mixture, 10 ** -pH, charges);
      return mL >= 0 && mL <= titrationLimits.mL ? [mL] : [];
    },
    jumps: () => [],
    inflections: () => inflectionsOf(mixture),
    curveUpTo: (upTo, maxStep) => adaptiveCurve(mixture, upTo, maxStep),
    columnAt: (mL) => columnAt(mixture, mL),
  };
}

/**
 * Levels of pH at equal distances between both ends. V(pH) is explicit and single-valued, so a point costs one
 * evaluation of the charge balance: volume and slope come from the same.
 */
function adaptiveCurve(mixture: MixtureModel, upTo: number, maxStep: number): Curve {
  const charges = emptyCharges();
  const [from, to] = [hydrogenIonAt(mixture, 0), hydrogenIonAt(mixture, upTo)];
  const [first, last] = [-Math.log10(from), -Math.log10(to)];
  const count = Math.ceil(Math.abs(last - first) / maxStep);
  const curve = { mL: [0], pH: [first], slope: [slopeOfMixture(mixture, 0, from, charges)] };
  for (let k = 1; k < count; k += 1) {
    const pH = first + ((last - first) * k) / count;
    const atPH = chargesAt(mixture, 10 ** -pH, charges);
    const mL = volumeOfCharges(atPH);
    curve.mL.push(mL);
    curve.pH.push(pH);
    curve.slope.push(slopeOfCharges(atPH, mL));
  }
  curve.mL.push(upTo);
  curve.pH.push(last);
  curve.slope.push(slopeOfMixture(mixture, upTo, to, charges));
  return curve;
}
