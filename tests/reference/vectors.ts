import { readFileSync } from 'node:fs';
import { makeSolution, pHOf, type Solution, type Titration, titrate } from 'protolysis';
import { acidWith, strongIon } from '../make.js';

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

/** A family as a reagent that brings one of it and no ion. */
export const familyReagent = ({ name, z0, pKa }: FamilyInput) => acidWith(name, z0, pKa.map(Number));

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

/** A system as a solution of one litre. */
export const solutionOf = ({ families, strong_ions }: SystemInput): Solution =>
  makeSolution({
    contents: [
      ...families.map((family) => ({ reagent: familyReagent(family).reagent, molar: Number(family.C) })),
      ...strong_ions.map(({ name, z, C }) => ({ reagent: strongIon(name, z), molar: Number(C) })),
    ],
  });

/** A titration of V0 mL of sample. */
export function titrationOf({ pKw, V0, families, strong_ions }: TitrationInput): Titration {
  const side = (mL: number, key: 'C_sample' | 'C_titrant'): Solution =>
    makeSolution({
      mL,
      contents: [
        ...families.map((family) => ({ reagent: familyReagent(family).reagent, molar: Number(family[key]) })),
        ...strong_ions.map((ion) => ({ reagent: strongIon(ion.name, ion.z), molar: Number(ion[key]) })),
      ],
    });
  return titrate({
    analyte: side(Number(V0), 'C_sample'),
    titrant: side(1000, 'C_titrant'),
    conditions: { pKw: Number(pKw) },
  });
}

/** The error of every pH of group A or B, in units of its tolerance. */
export function pHErrors(file: 'ideal.json' | 'titrations.json'): { id: string; ratio: number }[] {
  const ratio = (pH: number, reference: string, condition: string) =>
    Math.abs(pH - Number(reference)) / tolerance(condition, Number(reference));
  if (file === 'ideal.json')
    return casesOf<{ id: string; input: SystemInput; answer: { pH: string }; condition: string }>(file).map(
      (one) => ({
        id: one.id,
        ratio: ratio(
          pHOf(solutionOf(one.input), { pKw: Number(one.input.pKw) }),
          one.answer.pH,
          one.condition,
        ),
      }),
    );
  return casesOf<{
    id: string;
    input: TitrationInput;
    points: { V: string; pH: string; condition: string }[];
  }>(file).flatMap(({ id, input, points }) => {
    const titration = titrationOf(input);
    return points.map(({ V, pH, condition }) => ({
      id: `${id} at ${V} mL`,
      ratio: ratio(titration.pHAt(Number(V)), pH, condition),
    }));
  });
}
