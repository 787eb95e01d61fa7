import { type Conditions, readConditions, readGas } from '../equilibrium/conditions.js';
import { Faults } from '../errors.js';
import type { Curve } from './curve.js';
import { titrationLimits } from './limits.js';
import { readBoilOutUnder, readSetup, type Titration, titrationOf } from './titrate.js';

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
 * Both curves are sampled so that pH changes by at most 0.05 from one volume to the next, from 0 to `upTo`; the greatest
 * difference is then sharpened between its neighbours. In a steep step a small shift along the volume makes a large difference in pH.
 *
 * @param conditions - one entry per comparison; each stands for itself and takes nothing over from the titration's own
 * @param options - `upTo`: mL; 1.5 times the last equivalence volume if left out, or twice the analyte where there is none
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
): ModelComparison[] {
  const faults = new Faults('compareModels');
  const { setup } = faults.object(titration, 'titration', 'a titration as titrate returns it');
  const read = readSetup(setup, 'titration.setup', faults);
  const others = faults.list(conditions, 'conditions', 'a list of conditions', 1, 100).map((one, k) => {
    const path = `conditions[${k}]`;
    const settled = readConditions(one, path, faults);
    readBoilOutUnder(settled, read.boilOut, path, faults);
    readGas([read.analyte, read.titrant], settled, path, faults);
    return { ...read, settled };
  });
  const unread = options === undefined ? {} : faults.object(options, 'options', 'options { upTo }', ['upTo']);
  const wanted =
    unread.upTo === undefined
      ? null
      : faults.number(unread.upTo, 'options.upTo', 'a volume in mL', { above: 0, to: titrationLimits.mL });
  faults.done();

  const own = titrationOf(read);
  const upTo = wanted ?? usualEnd(own);
  const volumes = own.curve({ maxStep: 0.05, upTo }).mL;
  return others.map(titrationOf).map((other) => {
    const both = [...new Set([...volumes, ...other.curve({ maxStep: 0.05, upTo }).mL])].sort((a, b) => a - b);
    return {
      conditions: other.setup.conditions ?? {},
      titration: other,
      curve: other.curve({ volumes: both }),
      largest: largestOf((mL) => other.pHAt(mL) - own.pHAt(mL), both),
    };
  });
}

function usualEnd({ equivalencePoints, setup }: Titration): number {
  const last = equivalencePoints.at(-1)?.mL;
  return Math.min(last === undefined ? 2 * setup.analyte.mL : 1.5 * last, titrationLimits.mL);
}

/** Where |f| is greatest: at the best of the volumes, then by golden sections between its neighbours. */
function largestOf(f: (mL: number) => number, volumes: readonly number[]): { mL: number; pH: number } {
  const sizes = volumes.map((mL) => Math.abs(f(mL)));
  const best = sizes.indexOf(Math.max(...sizes));
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = volumes[best - 1] ?? (volumes[best] as number);
  let high = volumes[best + 1] ?? (volumes[best] as number);
  for (let pass = 0; pass < 60; pass += 1) {
    const [inner, outer] = [high - golden * (high - low), low + golden * (high - low)];
    if (Math.abs(f(inner)) > Math.abs(f(outer))) high = outer;
    else low = inner;
  }
  const middle = low + (high - low) / 2;
  const mL = Math.abs(f(middle)) > (sizes[best] as number) ? middle : (volumes[best] as number);
  return { mL, pH: f(mL) };
}
