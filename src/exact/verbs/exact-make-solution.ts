import { Faults } from '../../input/faults.js';
import { ingredientKeys, readMeasure } from '../../solution/read-measure.js';
import { solutionDefaults } from '../../solution/solution.js';
import { type Reagent, readReagent } from '../../substance/reagent.js';
import { checked, type ExactSolution, readExactVolume, written } from '../model/exact-solution.js';
import { type Exactly, exactly, readExactly } from '../numbers/exactly.js';
import { type Ratio, ratios } from '../numbers/ratio.js';

/** One thing that goes into a solution, by mass, by amount or by its concentration in the final volume. */
export type ExactIngredient =
  | { readonly reagent: Reagent; readonly grams: Exactly; readonly purity?: Exactly }
  | { readonly reagent: Reagent; readonly mmol: Exactly }
  | { readonly reagent: Reagent; readonly molar: Exactly };

/** A recipe that loses no digit. */
export interface ExactRecipe {
  /** Final volume, mL; 1000 if left out. */
  readonly mL?: Exactly;
  readonly contents: readonly ExactIngredient[];
}

/**
 * `makeSolution` that rounds nothing: amounts are kept as fractions of whole numbers.
 *
 *   n = purity · m / M,   n = c · V
 *
 * Reagents of the catalogue will do: their molar masses and constants are read as the decimals they were written as.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { makeSolution } from 'protolysis/exact';
 *
 * const sample = makeSolution({
 *   mL: '50',
 *   contents: [{ reagent: reagents.sodiumCarbonate, grams: '0.2000', purity: '0.95' }],
 * });
 * sample.contents[0]?.mmol; // => '15200/8479'
 * ```
 */
export function exactMakeSolution(recipe: ExactRecipe): ExactSolution {
  const faults = new Faults('makeSolution');
  const unread = faults.object(recipe, 'recipe', 'a recipe { mL, contents }', ['mL', 'contents']);
  const mL = readExactVolume(unread.mL ?? solutionDefaults.mL, 'mL', faults);
  const items = faults.list(unread.contents, 'contents', 'a list of ingredients', 0, 1000);
  const contents = items.map((item, index) => readIngredient(item, `contents[${index}]`, mL, faults));
  const solution = checked({ mL, contents }, '', faults);
  faults.done();
  return written(solution);
}

function readIngredient(item: unknown, path: string, mL: Ratio, faults: Faults) {
  const unread = faults.object(item, path, 'an ingredient { reagent, grams | mmol | molar }', ingredientKeys);
  const reagent = readReagent(unread.reagent, `${path}.reagent`, faults);
  const read = (key: string, what: string, to: number) =>
    readExactly(unread[key], `${path}.${key}`, what, { from: 0, to }, faults);

  const measure = readMeasure(unread, path, faults);
  if (measure === 'mmol') return { reagent, mmol: read('mmol', 'an amount in mmol', 1e12) };
  if (measure === 'molar')
    return { reagent, mmol: ratios.times(mL, read('molar', 'a concentration in mol/L', 1e3)) };
  if (measure !== 'grams') return { reagent, mmol: ratios.of(0) };

  const purity = unread.purity === undefined ? ratios.of(1) : read('purity', 'a mass fraction', 1);
  const milligrams = ratios.times(ratios.of(1000), ratios.times(purity, read('grams', 'a mass in g', 1e12)));
  if (reagent.molarMass === undefined)
    faults.add('missing', `${path}.reagent.molarMass`, 'a molar mass or a formula', undefined);
  if (faults.any) return { reagent, mmol: ratios.of(0) };
  return { reagent, mmol: ratios.over(milligrams, exactly(reagent.molarMass as number)) };
}
