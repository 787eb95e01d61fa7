import {
  type Ingredient,
  makeSolution,
  type Reagent,
  type Solution,
  type Titration,
  titrate,
} from 'protolysis';

type Part = readonly [reagent: Reagent, molar: number];

const contentsOf = (parts: readonly Part[]): Ingredient[] =>
  parts.map(([reagent, molar]) => ({ reagent, molar }));

/** 20 mL of what is to be titrated. */
export const beaker = (...parts: readonly Part[]): Solution =>
  makeSolution({ mL: 20, contents: contentsOf(parts) });

export const burette = (...parts: readonly Part[]): Solution => makeSolution({ contents: contentsOf(parts) });

/** 20 mL of one thing with another. */
export const titrationOf = (analyte: readonly Part[], titrant: readonly Part[]): Titration =>
  titrate({ analyte: beaker(...analyte), titrant: burette(...titrant) });
