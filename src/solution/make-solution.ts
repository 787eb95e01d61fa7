import { plainly } from '../input/describe-value.js';
import { at, Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import type { Reagent } from '../substance/reagent.js';
import { type Given, readConflicts } from './conflicting-constants.js';
import { merged } from './merged.js';
import { ingredientKeys, readMeasure } from './read-measure.js';
import { readAmount, readGiven, readSolutionVolume } from './read-solution.js';
import { type Solution, type StockSolution, solutionDefaults, solutionLimits } from './solution.js';
import { handOut } from './view-solution.js';

/** One thing that goes into a solution, by mass, by amount or by its concentration in the final volume. */
export type Ingredient = { readonly reagent: Reagent } & (
  | {
      readonly grams: number;
      readonly purity?: number | undefined;
      readonly mmol?: undefined;
      readonly molar?: undefined;
    }
  | {
      readonly mmol: number;
      readonly grams?: undefined;
      readonly purity?: undefined;
      readonly molar?: undefined;
    }
  | {
      readonly molar: number;
      readonly grams?: undefined;
      readonly purity?: undefined;
      readonly mmol?: undefined;
    }
);

/** What goes into a solution, and up to which volume. */
export interface SolutionRecipe {
  /** Final volume, mL; 1000 if left out, where only concentrations matter. */
  readonly mL?: number;
  /** An empty list is pure water. */
  readonly contents: readonly Ingredient[];
}

/**
 * Makes a solution of a final volume from weighed solids, amounts or concentrations.
 *
 *   n = purity · m / M,   n = c · V
 *
 * `grams` needs a reagent with a formula or a molar mass. `purity` is a mass fraction from 0 to 1; the rest of the
 * solid is taken as inert and dropped. The amounts of a reagent that is named twice are added. Without `mL` the
 * solution is a `StockSolution`: its concentrations count, and it is refused as an analyte or in a mixture.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents } from 'protolysis';
 *
 * const sample = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }] });
 * sample.contents[0]?.mmol; // => 1.79266
 * ```
 */
export function makeSolution(recipe: SolutionRecipe & { readonly mL: number }): Solution;
export function makeSolution(recipe: SolutionRecipe & { readonly mL?: undefined }): StockSolution;
export function makeSolution(recipe: SolutionRecipe): Solution;
export function makeSolution(recipe: SolutionRecipe): Solution {
  const faults = new Faults('makeSolution');
  const solution = readSolutionRecipe(recipe, '', faults);
  faults.done();
  return handOut(solution);
}

/** Reads a recipe from a caller's value, noting every fault, and makes the solution. @internal */
export function readSolutionRecipe(value: unknown, path: string, faults: Faults): Solution {
  const unread = faults.object(value, path, 'a recipe { mL, contents }', ['mL', 'contents']);
  const isStock = unread.mL === undefined;
  const mL = isStock ? solutionDefaults.mL : readSolutionVolume(unread.mL, at(path, 'mL'), faults);
  const here = at(path, 'contents');
  const items = faults.list(unread.contents, here, 'a list of ingredients (an empty one for pure water)');
  const given: Given[] = [];
  const before = faults.count;
  const parts = items.map((item, index) => readIngredient(item, `${here}[${index}]`, mL, given, faults));
  readConflicts(given, faults);
  if (faults.count > before) return { mL, contents: [] };

  const contents = merged(parts);
  for (const { reagent, mmol } of contents)
    if (mmol > mL * solutionLimits.molar * (1 + 1e-12))
      faults.add(
        'out-of-range',
        here,
        `no more than ${solutionLimits.molar} mol/L of one reagent`,
        mmol,
        `${plainly(mmol / mL)} mol/L of ${reagent.name} in all`,
      );
  return { mL, contents, ...(isStock && { volume: 'assumed' }) };
}

function readIngredient(item: unknown, path: string, mL: number, given: Given[], faults: Faults) {
  const unread = faults.object(item, path, 'an ingredient { reagent, grams | mmol | molar }', ingredientKeys);
  const before = faults.count;
  const reagent = readGiven(unread.reagent, `${path}.reagent`, given, faults);
  const isSound = faults.count === before;
  if (isSound && unread.grams !== undefined && reagent.molarMass === undefined)
    faults.add(
      'missing',
      `${path}.reagent.molarMass`,
      'a molar mass or a formula, or mmol instead of grams',
      undefined,
    );
  return { reagent, mmol: readQuantity(unread, reagent, path, mL, faults) };
}

function readQuantity(unread: Unread, reagent: Reagent, path: string, mL: number, faults: Faults) {
  const measure = readMeasure(unread, path, faults);
  if (measure === undefined) return 0;
  if (measure === 'mmol') return readAmount(unread.mmol, `${path}.mmol`, mL, faults);
  if (measure === 'molar')
    return (
      mL *
      faults.number(unread.molar, `${path}.molar`, 'a concentration in mol/L', {
        from: 0,
        to: solutionLimits.molar,
      })
    );

  const purity =
    unread.purity === undefined
      ? solutionDefaults.purity
      : faults.number(unread.purity, `${path}.purity`, 'a mass fraction', { from: 0, to: 1 });
  const grams = faults.number(unread.grams, `${path}.grams`, 'a mass in g', { from: 0, to: 1e12 });
  const mmol = (1000 * grams * purity) / (reagent.molarMass ?? Number.POSITIVE_INFINITY);
  if (mmol > mL * solutionLimits.molar)
    faults.add(
      'out-of-range',
      `${path}.grams`,
      `a mass that stays below ${solutionLimits.molar} mol/L in ${mL} mL`,
      grams,
    );
  return mmol;
}
