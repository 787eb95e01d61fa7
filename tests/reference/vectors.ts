import { readFileSync } from 'node:fs';
import { defineProtolyte, defineReagent, type Protolyte, type Reagent, type Source } from 'protolysis';

/** The files of vectors/ as its README describes them; every number is decimal text. */
export interface FamilyInput {
  readonly name: string;
  readonly z0: number;
  readonly pKa: readonly string[];
}
export interface SystemInput {
  readonly pKw: string;
  readonly families: readonly (FamilyInput & { readonly C: string })[];
  readonly strong_ions: readonly { readonly name: string; readonly z: number; readonly C: string }[];
}
export interface TitrationInput {
  readonly pKw: string;
  readonly V0: string;
  readonly families: readonly (FamilyInput & { readonly C_sample: string; readonly C_titrant: string })[];
  readonly strong_ions: readonly {
    readonly name: string;
    readonly z: number;
    readonly C_sample: string;
    readonly C_titrant: string;
  }[];
}

export function casesOf<Case>(file: string): readonly Case[] {
  const text = readFileSync(new URL(`vectors/${file}`, import.meta.url), 'utf8');
  return (JSON.parse(text) as { cases: Case[] }).cases;
}

const source: Source = { kind: 'fromMemory', note: 'an input of a mathematical test, not reference data' };

/** A family as a reagent that brings one of it and no ion. */
export function familyReagent({ name, z0, pKa }: FamilyInput): { protolyte: Protolyte; reagent: Reagent } {
  const protolyte = defineProtolyte({
    id: name,
    name,
    species: [...pKa, ''].map((_, lost) => ({ formula: `${name}(${z0 - lost})`, charge: z0 - lost })),
    steps: pKa.map((text) => ({ pKa: Number(text), source })),
  });
  return {
    protolyte,
    reagent: defineReagent({ id: name, name, protolytes: [{ protolyte, count: 1 }], ions: [] }),
  };
}

/** A strong ion as a reagent of its own. */
export const ionReagent = (formula: string, charge: number): Reagent =>
  defineReagent({
    id: `ion ${formula}`,
    name: formula,
    protolytes: [],
    ions: [{ ion: { formula, charge }, count: 1 }],
  });

/** |answer − reference| may be 4 · (condition + 2.3e-16 · max(1, |reference|)): vectors/README.md, "condition". */
export const tolerance = (condition: string, reference: number): number =>
  4 * (Number(condition) + 2.3e-16 * Math.max(1, Math.abs(reference)));

/** Relative tolerance of a species n protons away from the prevailing one of its family: vectors/README.md. */
export const relativeTolerance = (
  condition: string,
  pH: number,
  protons: number,
  pKa: readonly string[],
): number =>
  4 *
  Math.LN10 *
  (Math.max(1, protons) * (Number(condition) + 2.3e-16 * Math.max(1, Math.abs(pH))) +
    2.3e-16 * pKa.reduce((sum, text) => sum + Math.abs(Number(text)), 0));
