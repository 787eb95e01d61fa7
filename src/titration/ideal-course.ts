import { emptyRoot, hydrogenIon } from '../equilibrium/hydrogen-ion.js';
import type { Course } from './course.js';
import { type Engine, hAt, mixtureAt, slopeAt, volumeAt } from './engine.js';
import { inflectionsOf } from './inflection-points.js';
import { titrationLimits } from './limits.js';

/** The curve where γ = 1 and no CO2 escapes: V(pH) is explicit and single-valued (engine.ts). @internal */
export function idealCourse(engine: Engine): Course {
  const pHAt = (mL: number) => -Math.log10(hAt(engine, mL));
  return {
    pHAt,
    pHs(volumes, out) {
      const root = emptyRoot();
      for (let k = 0, guess = 0; k < volumes.length; k += 1, guess = root.h) {
        hydrogenIon(engine.setting.balance, mixtureAt(engine, volumes[k] as number), guess, root);
        out[k] = -Math.log10(root.h);
      }
    },
    pointAt(mL) {
      const h = hAt(engine, mL);
      return { mL, pH: -Math.log10(h), slope: slopeAt(engine, mL, h) };
    },
    slopeAt: (mL, pH) => slopeAt(engine, mL, 10 ** -pH),
    volumesAt(pH) {
      if (pH === pHAt(0)) return [0]; // where A is zero but for rounding
      const mL = volumeAt(engine, 10 ** -pH);
      return mL >= 0 && mL <= titrationLimits.mL ? [mL] : [];
    },
    inflections: () => inflectionsOf(engine),
    volumesUpTo(upTo, maxStep) {
      const [from, to] = [pHAt(0), pHAt(upTo)];
      const count = Math.ceil(Math.abs(to - from) / maxStep);
      const between = Array.from({ length: Math.max(count - 1, 0) }, (_, k) =>
        volumeAt(engine, 10 ** -(from + ((to - from) * (k + 1)) / count)),
      );
      return [0, ...between, upTo];
    },
    columnAt: (mL) => mixtureAt(engine, mL),
  };
}
