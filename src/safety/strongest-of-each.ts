import type { Solution } from '../solution/solution.js';

/**
 * Of each reagent the solution that holds most of it in a millilitre, in the order in which the reagents first occur.
 *
 * @param except - the names of reagents that are left out
 * @internal
 */
export function strongestOfEach(solutions: readonly Solution[], except: readonly string[]): Solution[] {
  const strongest = new Map<string, { readonly molar: number; readonly solution: Solution }>();
  for (const { mL, contents } of solutions)
    for (const content of contents) {
      const { name } = content.reagent;
      const molar = content.mmol / mL;
      const before = strongest.get(name);
      if (except.includes(name) || (before && before.molar >= molar)) continue;
      strongest.set(name, { molar, solution: { mL, contents: [content] } });
    }
  return [...strongest.values()].map(({ solution }) => solution);
}
