import { asSold } from '../catalogue/as-sold.js';
import type { Vessel } from '../catalogue/glassware.js';
import { entryOf } from '../entry-of.js';
import { fourDigits } from '../print-number.js';
import { asBought, volumeOf } from '../recipe/as-bought.js';
import type { RecipePart } from '../recipe/recipe.js';
import type { Solution } from '../solution/solution.js';
import { type Dilution, dilutionLimits, dilutionsTo } from './dilutions-to.js';
import type { ImpossibleSolution } from './preparation.js';
import type { ReadPreparation } from './read-preparation.js';
import { volumePercent } from './volume-percent.js';

/** The amounts of a recipe, before the work is planned. */
export interface FlaskAmounts {
  readonly parts: readonly [RecipePart];
  readonly waterToMakeUp: number;
  readonly dilutions: readonly Dilution[];
  readonly contributions: readonly { readonly of: string; readonly percent: number }[];
}

/**
 * Where an amount is no amount, all common practice: a weighing good to no better than 10 %, and more than a gram of
 * solid in each millilitre of solution, which is more than dissolves of almost anything.
 *
 * @internal
 */
export const amountLimits = { weighingPercent: 10, gramsPerML: 1 } as const;

/**
 * The amounts for one flask, from a bottle or from a stock.
 *
 *   m = c·V·M/w,   V_stock = c·V/c_stock                                                              (1)
 *
 * @internal
 */
export function amountsOf(read: ReadPreparation, flask: Vessel): FlaskAmounts | ImpossibleSolution {
  const { stock } = read.ingredient;
  return stock ? fromStock(read, stock, flask) : fromBottle(read, flask);
}

const impossible = (because: ImpossibleSolution['because'], reason: string): ImpossibleSolution => ({
  status: 'impossible',
  because,
  reason,
});

function fromBottle(
  { ingredient, reagent, molar, glass, weighing }: ReadPreparation,
  flask: Vessel,
): FlaskAmounts | ImpossibleSolution {
  const mmol = molar * flask.mL;
  const { purity, name } = ingredient;
  const grams = (mmol * (reagent.molarMass ?? 0)) / 1000 / purity;
  const sold = asBought(reagent, purity);
  const mL = sold ? volumeOf(sold, purity, grams) : null;
  const room = sold
    ? (mL ?? grams / (entryOf(asSold, reagent.id)?.density ?? 1))
    : grams / amountLimits.gramsPerML;
  if (room > flask.mL)
    return impossible(
      'too-strong',
      `${fourDigits(grams)} g of ${name} for ${flask.mL} mL ${sold ? 'are more than the flask holds' : 'are more than dissolve'}: ask for less than ${fourDigits(molar)} mol/L`,
    );
  const percent = (100 * Math.SQRT2 * weighing) / (1000 * grams);
  if (!(percent <= amountLimits.weighingPercent))
    return impossible(
      'too-little',
      `${fourDigits(1000 * grams)} mg of ${name} is too little to weigh with an uncertainty of ${weighing} mg: make a stronger stock, and dilute it`,
    );
  const measured = { name, reagent, mmol, purity, grams };
  return {
    parts: [sold ? { kind: 'liquid', ...measured, mL } : { kind: 'weighed', ...measured }],
    waterToMakeUp: flask.mL,
    dilutions: [],
    contributions: [
      { of: 'weighing', percent },
      { of: `flask of ${flask.mL} mL`, percent: volumePercent(flask, glass) },
    ],
  };
}

/** What a burette measures well, mL, and the strongest stock that is put into one, mol/L (common practice). */
const ofBurette = { from: 5, to: 50, molar: 2 } as const;

/** What to do where pipettes and flasks do not serve. Acid goes into water, so the flask is not dry. */
function insteadOfPipettes(poured: number, strength: number, flask: Vessel): string {
  if (strength > ofBurette.molar)
    return 'it is no stock for a burette: weigh it as its bottle holds it, { reagent, purity }, or take another concentration';
  if (poured < ofBurette.from || poured > ofBurette.to) return 'take another concentration or other vessels';
  return `measure ${fourDigits(poured)} mL with a burette into the ${flask.mL} mL flask, a third of it filled with water, or take another concentration`;
}

function fromStock(read: ReadPreparation, stock: Solution, flask: Vessel): FlaskAmounts | ImpossibleSolution {
  const { reagent, molar, pipettes, flasks, glass, ingredient } = read;
  const strength = (stock.contents.find(({ mmol }) => mmol > 0)?.mmol ?? 0) / stock.mL;
  if (molar > strength * (1 - 1e-9))
    return impossible(
      'too-dilute',
      `the stock has ${fourDigits(strength)} mol/L of ${reagent.name}, not more than the ${fourDigits(molar)} mol/L wanted`,
    );
  const poured = (molar * flask.mL) / strength;
  const dilutions = dilutionsTo(molar, { name: ingredient.name, molar: strength }, flask, {
    pipettes,
    flasks,
    glass,
  });
  if (!dilutions)
    return impossible(
      'no-vessel',
      `no pipettes and flasks at hand make ${fourDigits(molar)} mol/L of ${fourDigits(strength)} mol/L in ${dilutionLimits.dilutions} dilutions or fewer, with a pipette filled at most ${dilutionLimits.times} times: ${insteadOfPipettes(poured, strength, flask)}`,
    );
  return {
    parts: [{ kind: 'poured', name: ingredient.name, stock, mL: poured }],
    waterToMakeUp: flask.mL - poured,
    dilutions,
    contributions: dilutions.flatMap((dilution) => [
      { of: `pipette of ${dilution.pipette.mL} mL`, percent: volumePercent(dilution.pipette, glass) },
      { of: `flask of ${dilution.flask.mL} mL`, percent: volumePercent(dilution.flask, glass) },
    ]),
  };
}
