import { sum } from '../solver/sum.js';
import type { Protolyte } from '../substance/protolyte.js';
import type { Ion } from '../substance/reagent.js';
import type { Solution } from './solution.js';

/** The amounts of each protolyte and each ion in a solution, from all its reagents. */
export interface Totals {
  readonly protolytes: readonly { readonly protolyte: Protolyte; readonly mmol: number }[];
  readonly ions: readonly { readonly ion: Ion; readonly mmol: number }[];
  /** Net charge of the ions, mmol of elementary charges, summed without loss where they cancel. */
  readonly charge: number;
}

/** The totals of a solution that has been read. @internal */
export function totalsOf(solution: Solution): Totals {
  const protolytes = new Map<string, { protolyte: Protolyte; parts: number[] }>();
  const ions = new Map<string, { ion: Ion; parts: number[] }>();
  const charges: number[] = [];
  for (const { reagent, mmol } of solution.contents) {
    for (const { protolyte, count } of reagent.protolytes) {
      const entry = protolytes.get(protolyte.id) ?? { protolyte, parts: [] };
      protolytes.set(protolyte.id, entry);
      entry.parts.push(count * mmol);
    }
    for (const { ion, count } of reagent.ions) {
      const entry = ions.get(keyOf(ion)) ?? { ion, parts: [] };
      ions.set(keyOf(ion), entry);
      entry.parts.push(count * mmol);
      charges.push(ion.charge * (count * mmol));
    }
  }
  return {
    protolytes: [...protolytes.values()].map(({ protolyte, parts }) => ({ protolyte, mmol: sum(parts) })),
    ions: [...ions.values()].map(({ ion, parts }) => ({ ion, mmol: sum(parts) })),
    charge: sum(charges),
  };
}

const keyOf = ({ formula, charge }: Ion) => `${formula} ${charge}`;
