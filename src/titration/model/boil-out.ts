import { air } from '../../equilibrium/carbon-dioxide.js';
import { afterEscape } from '../../equilibrium/carbon-dioxide-escape.js';
import type { ConditionsInUse } from '../../equilibrium/conditions.js';
import { systemOf } from '../../equilibrium/system.js';
import type { Faults } from '../../input/faults.js';
import type { Solution } from '../../solution/solution.js';
import { readVolume } from '../sampling/curve.js';
import type { CurveModel } from './curve-model.js';
import type { MixtureModel } from './mixture-model.js';

/** The analyte is boiled, and cooled again, after a volume of titrant. */
export interface BoilOut {
  /** mL of titrant added before. */
  readonly mL: number;
  /** Partial pressure of CO2, atm, that the cooled solution has come to; that of `air` if left out. */
  readonly atm?: number;
}

/** Reads a boil-out from a caller's value, noting every fault. @internal */
export function readBoilOut(value: unknown, path: string, faults: Faults): Required<BoilOut> | null {
  if (value === undefined) return null;
  const unread = faults.object(value, path, 'a boil-out { mL, atm }', ['mL', 'atm']);
  const mL = readVolume(unread.mL, `${path}.mL`, faults);
  const atm =
    unread.atm === undefined
      ? air.atm
      : faults.number(unread.atm, `${path}.atm`, 'a partial pressure in atm', { from: 0, to: 100 });
  return { mL, atm };
}

/** Notes a fault where a beaker that is open to the air is boiled out. @internal */
export function readBoilOutUnder(
  { carbonDioxide }: ConditionsInUse,
  boilOut: BoilOut | null,
  path: string,
  faults: Faults,
): void {
  if (boilOut && carbonDioxide && carbonDioxide.escape === undefined)
    faults.add('conflict', path, 'no boil-out beside an analyte that is open to the air', boilOut);
}

/**
 * The titration that goes on after the boil-out: its analyte is what is in the beaker then, less the CO2 that had to
 * leave for the solution to be in equilibrium with `atm`.
 *
 * @internal
 */
export function boiledOut(
  mixture: MixtureModel,
  curveModel: CurveModel,
  solutions: readonly Solution[],
  { mL, atm }: Required<BoilOut>,
): MixtureModel {
  const { inUse } = mixture.system;
  const all = systemOf(solutions, {
    ...inUse,
    carbonDioxide: { ...inUse.carbonDioxide, atm, escape: 1 },
  });
  return { ...mixture, analyte: afterEscape(all, curveModel.columnAt(mL)) };
}
