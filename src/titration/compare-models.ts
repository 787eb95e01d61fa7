import { type Conditions, readConditions, readGas } from '../equilibrium/conditions.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { leastBetween } from '../solver/least-between.js';
import { numberAt } from '../solver/number-at.js';
import { makeTitration } from './make-titration.js';
import { readBoilOutUnder } from './model/boil-out.js';
import { readSetupOf } from './read-setup.js';
import type { Curve } from './sampling/curve.js';
import { usualLastVolume } from './sampling/usual-last-volume.js';
import type { Titration } from './titration.js';
import { titrationLimits } from './titration-limits.js';

/** The same titration under other conditions. */
export interface ModelComparison {
  readonly conditions: Conditions;
  readonly titration: Titration;
  /** Under these conditions, at the volumes at which both curves were sampled. */
  readonly curve: Curve;
  /** Where pH differs most from the titration compared with, mL, and by how much: this one less that one. */
  readonly largest: { readonly mL: number; readonly pH: number };
}

/**
 * The same curve under several conditions: how far apart they are at most, and where.
 *
 * Both curves are sampled so that pH changes by at most 0.05 from one volume to the next, from 0 to `upTo`; the
 * greatest difference is then sharpened between its neighbours. In a steep step a small shift along the volume makes a
 * large difference in pH.
 *
 * @param conditions - one entry per comparison; nothing is taken over from the conditions of the titration
 * @param options - `upTo`: mL; 1.5 times the last equivalence volume if left out, or twice the analyte where there is
 * none
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { compareModels, davies, makeSolution, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const [real] = compareModels(titration, [{ activity: davies }]);
 * real?.largest.pH; // => -0.327
 * real?.largest.mL; // => 2.593
 * ```
 */
export function compareModels(
  titration: Titration,
  conditions: readonly Conditions[],
  options?: { readonly upTo?: number },
): readonly ModelComparison[] {
  const faults = new Faults('compareModels');
  const read = readSetupOf(titration, faults);
  const others = faults.list(conditions, 'conditions', 'a list of conditions', 1, 100).map((one, k) => {
    const path = `conditions[${k}]`;
    const inUse = readConditions(one, path, faults);
    readBoilOutUnder(inUse, read.boilOut, path, faults);
    readGas([read.analyte, read.titrant], inUse, path, faults);
    return { ...read, inUse };
  });
  const unread = options === undefined ? {} : faults.object(options, 'options', 'options { upTo }', ['upTo']);
  const wanted =
    unread.upTo === undefined
      ? null
      : faults.number(unread.upTo, 'options.upTo', 'a volume in mL', { above: 0, to: titrationLimits.mL });
  faults.done();

  const compared = makeTitration(read);
  const upTo = wanted ?? usualLastVolume(compared.equivalencePoints, read.analyte);
  const volumes = compared.curve({ maxStep: 0.05, upTo }).mL;
  return frozen(
    others.map(makeTitration).map((other) => {
      const both = [...new Set([...volumes, ...other.curve({ maxStep: 0.05, upTo }).mL])].sort(
        (a, b) => a - b,
      );
      const curve = other.curve({ volumes: both });
      const differences = compared.pHs(both).map((pH, k) => numberAt(curve.pH, k) - pH);
      return {
        conditions: other.setup.conditions ?? {},
        titration: other,
        curve,
        largest: largestOf((mL) => other.pHAt(mL) - compared.pHAt(mL), both, differences),
      };
    }),
  );
}

/** Where |f| is greatest: at one of the volumes, or between that and its neighbours. */
function largestOf(
  f: (mL: number) => number,
  volumes: readonly number[],
  known: Float64Array,
): { mL: number; pH: number } {
  const best = known.reduce((most, pH, k) => (Math.abs(pH) > Math.abs(numberAt(known, most)) ? k : most), 0);
  const at = numberAt(volumes, best);
  const between = leastBetween((mL) => -Math.abs(f(mL)), volumes[best - 1] ?? at, volumes[best + 1] ?? at);
  const mL =
    between.status === 'found' && Math.abs(f(between.x)) > Math.abs(numberAt(known, best)) ? between.x : at;
  return { mL, pH: f(mL) };
}
