import { compensatingChange } from './activity/compensating-change.js';
import type { IonColumn, RealSystem } from './activity/real-system.js';
import { emptyState, selfConsistent } from './activity/self-consistent.js';
import { type Balance, chargeAt, emptyCharge } from './charge-balance.js';
import { emptyRoot, hydrogenIon } from './hydrogen-ion.js';
import { isIdeal, realSystemOf, type System } from './system.js';

/** A solution at equilibrium, as far as pH and capacity go. */
export interface SolvedSolution {
  /** Concentration of H+, mol/L. */
  readonly h: number;
  /** Its activity, mol/L. */
  readonly activity: number;
  /** mol/L per unit of pH. */
  readonly capacity: number;
  /** With the constants that hold between concentrations here. */
  readonly balance: Balance;
  /** null where γ = 1 throughout. */
  readonly real: RealSystem | null;
  /** Whether the search ended at a root; false was never seen. */
  readonly isSolved: boolean;
}

/**
 * The equilibrium of one column of a system. CO2 that escapes must have left the column already: see `afterEscape`.
 *
 * Capacity: a strong base that adds dC of a cation of charge +1 shifts both equations of self-consistent.ts, the charge
 * balance by dC and the ionic strength by dC/2, so with d ln a/dC of compensating-change.ts
 *
 *   β = dC/dpH = −ln10/(d ln a/dC)        mol/L per unit of pH; ln10·⟨z, z⟩ where γ = 1                  (1)
 *
 * @param real - that of the system, where many columns share it; overwritten
 * @internal
 */
export function solveSolution(
  system: System,
  column: IonColumn,
  real: RealSystem | null = realSystemOrNull(system),
): SolvedSolution {
  const { balance } = system;
  const { volume } = column;
  if (!real) {
    const { h, ended } = hydrogenIon(balance, column, 0, emptyRoot());
    const { slope } = chargeAt(balance, column, h, emptyCharge());
    return {
      h,
      activity: h,
      capacity: (Math.LN10 * slope) / volume,
      balance,
      real: null,
      isSolved: ended !== 'passes',
    };
  }
  const { h, activity, moments, ended } = selfConsistent(real, column, emptyState());
  const capacity = -Math.LN10 / compensatingChange(moments, volume, 1, 1 / 2).activity / volume;
  return { h, activity, capacity, balance: real.conditional, real, isSolved: ended === 'root' };
}

/** null where γ = 1 throughout. @internal */
export const realSystemOrNull = (system: System): RealSystem | null =>
  isIdeal(system) ? null : realSystemOf(system);
