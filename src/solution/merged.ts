import { sum } from '../solver/sum.js';
import type { Reagent } from '../substance/reagent.js';
import type { Content } from './solution.js';

/**
 * Contents with each reagent once, in the order of first mention.
 *
 * @internal
 */
export function merged(contents: readonly Content[]): readonly Content[] {
  const byId = new Map<string, { reagent: Reagent; parts: number[] }>();
  for (const { reagent, mmol } of contents) {
    const entry = byId.get(reagent.id) ?? { reagent, parts: [] };
    byId.set(reagent.id, entry);
    entry.parts.push(mmol);
  }
  return [...byId.values()].map(({ reagent, parts }) => ({ reagent, mmol: sum(parts) }));
}
