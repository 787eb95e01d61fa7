import type { Faults } from '../errors.js';
import { sum } from '../solver/sum.js';
import type { Reagent } from '../substance/reagent.js';
import type { Content } from './solution.js';

/**
 * Contents with each reagent once, in the order of first mention. One id for two different reagents is a fault.
 *
 * @internal
 */
export function merged(contents: readonly Content[], path: string, faults: Faults): readonly Content[] {
  const byId = new Map<string, { reagent: Reagent; parts: number[] }>();
  for (const { reagent, mmol } of contents) {
    const entry = byId.get(reagent.id) ?? { reagent, parts: [] };
    byId.set(reagent.id, entry);
    entry.parts.push(mmol);
    if (makeUpOf(entry.reagent) !== makeUpOf(reagent))
      faults.add(
        'conflict',
        path,
        `one make-up for the reagent '${reagent.id}'`,
        'two reagents under one id',
      );
  }
  return [...byId.values()].map(({ reagent, parts }) => ({ reagent, mmol: sum(parts) }));
}

/** What a reagent gives to a solution, as text: a copy that came through JSON gives the same. */
function makeUpOf({ protolytes, ions, molarMass }: Reagent): string {
  return JSON.stringify([
    protolytes.map(({ protolyte, count }) => [protolyte.id, count]),
    ions.map(({ ion, count }) => [ion.formula, ion.charge, count]),
    molarMass ?? null,
  ]);
}
