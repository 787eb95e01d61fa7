import { defineProtolyte, defineReagent, type Protolyte, type Reagent, type Source } from 'protolysis';

const source: Source = { kind: 'fromMemory', note: 'an input of a test, named there; not reference data' };

/** An acid with constants of the test's own, and the reagent that brings one of it and no ion. */
export function acidWith(
  id: string,
  topCharge: number,
  pKa: readonly number[],
): { protolyte: Protolyte; reagent: Reagent } {
  const protolyte = defineProtolyte({
    id,
    name: id,
    species: [...pKa, 0].map((_, lost) => ({
      formula: `${id}(${topCharge - lost})`,
      charge: topCharge - lost,
    })),
    steps: pKa.map((value) => ({ pKa: value, source })),
  });
  return {
    protolyte,
    reagent: defineReagent({ id, name: id, protolytes: [{ protolyte, count: 1 }], ions: [] }),
  };
}

/** The salt of such an acid: one of it with `count` strong ions. */
export const saltOf = (
  { protolyte }: { readonly protolyte: Protolyte },
  ion: { readonly formula: string; readonly charge: number },
  count = 1,
): Reagent =>
  defineReagent({
    id: `${protolyte.id} ${count} ${ion.formula}`,
    name: `salt of ${protolyte.name}`,
    protolytes: [{ protolyte, count: 1 }],
    ions: [{ ion, count }],
  });

export const sodium = { formula: 'Na+', charge: 1 } as const;
export const chloride = { formula: 'Cl-', charge: -1 } as const;

/** A strong ion as a reagent of its own: its counter-ion is H+ or OH-. */
export const strongIon = (formula: string, charge: number): Reagent =>
  defineReagent({
    id: `ion ${formula}`,
    name: formula,
    protolytes: [],
    ions: [{ ion: { formula, charge }, count: 1 }],
  });
