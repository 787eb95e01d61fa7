import { numberAt } from '../solver/number-at.js';
import type { IonColumn, RealSystem } from './activity/real-system.js';
import { gasForms } from './gas-forms.js';
import { realSystemOrNull, solveSolution } from './solve-solution.js';
import type { System } from './system.js';

/**
 * What is left in a column once CO2 has escaped.
 *
 *   n = n₀ − e·(n₀ − n_open)   where n₀ > n_open, else n₀                                                (1)
 *
 * n₀ is the amount before, n_open the amount in equilibrium with the given pressure, e the share of the difference that
 * has escaped. Continuous in e, in the pressure and in composition, and a function of the present composition alone.
 *
 * @param real - that of `system.escape.open`, where many columns share it; overwritten
 * @internal
 */
export function afterEscape(
  { escape: leaving }: System,
  column: IonColumn,
  real: RealSystem | null = leaving && realSystemOrNull(leaving.open),
): IonColumn {
  if (!leaving) return column;
  const { family, share, open } = leaving;
  const before = numberAt(column.amounts, family);
  const solved = solveSolution(open, withoutFamily(column, family), real);
  const stays = column.volume * gasForms(open, solved, solved.h).reduce((total, one) => total + one, 0);
  if (!(before > stays)) return column;
  return withFamily(column, family, before - share * (before - stays));
}

/** A column of the system in which one family is a gas at fixed pressure. @internal */
export function withoutFamily(column: IonColumn, family: number): IonColumn {
  return { ...column, amounts: Array.from(column.amounts).filter((_, i) => i !== family) };
}

/** A column with another amount of one family. @internal */
export function withFamily(column: IonColumn, family: number, amount: number): IonColumn {
  return { ...column, amounts: Array.from(column.amounts, (n, i) => (i === family ? amount : n)) };
}
