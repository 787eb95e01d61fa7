import type { Solution } from '../solution/solution.js';
import { type Totals, totalsOf } from '../solution/totals.js';
import type { Protolyte } from '../substance/protolyte.js';
import { type Balance, balanceOf, type Column } from './charge-balance.js';
import type { Conditions } from './conditions.js';
import { familyOf } from './family.js';

/** Several solutions that share one set of protolytes, ready for the charge balance. */
export interface Setting {
  readonly protolytes: readonly Protolyte[];
  readonly balance: Balance;
  readonly totals: readonly Totals[];
  /** One per solution, in mmol and mL. */
  readonly columns: readonly Column[];
}

/** @internal */
export function settingOf(solutions: readonly Solution[], { pKw }: Required<Conditions>): Setting {
  const totals = solutions.map(totalsOf);
  const protolytes = new Map<string, Protolyte>();
  for (const { protolytes: present } of totals)
    for (const { protolyte } of present)
      if (!protolytes.has(protolyte.id)) protolytes.set(protolyte.id, protolyte);

  const columns = solutions.map(({ mL }, index) => {
    const { protolytes: present, charge } = totals[index] as Totals;
    const mmol = new Map(present.map((entry) => [entry.protolyte.id, entry.mmol]));
    return { volume: mL, charge, amounts: Float64Array.from(protolytes.keys(), (id) => mmol.get(id) ?? 0) };
  });
  return {
    protolytes: [...protolytes.values()],
    balance: balanceOf(10 ** -pKw, Array.from(protolytes.values(), familyOf)),
    totals,
    columns,
  };
}
