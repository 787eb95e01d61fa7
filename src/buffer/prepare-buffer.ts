import type { Conditions } from '../equilibrium/conditions.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import { pHOf } from '../equilibrium/ph-of.js';
import { precipitatesOf } from '../equilibrium/precipitates.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozenWithView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import { asBought, volumeOf } from '../recipe/as-bought.js';
import { viewImpossible } from '../recipe/view-impossible.js';
import { viewRecipe } from '../recipe/view-recipe.js';
import { workOf } from '../recipe/work-of.js';
import { addWater } from '../solution/dilute.js';
import type { Solution } from '../solution/solution.js';
import { checkByProbe } from './check-by-probe.js';
import { compose, type Dose, poured, rounding } from './dose.js';
import { findAmounts } from './find-amounts.js';
import { findAmountsWithSalt } from './find-amounts-with-salt.js';
import { saturatedWith } from './no-amounts.js';
import { readRequest } from './read-request.js';
import type { BufferPart, BufferRecipe, BufferRequest, ImpossibleBuffer } from './recipe.js';
import { recipeNotes } from './recipe-notes.js';

/**
 * A recipe for a buffer of given pH, concentration and volume, from two ingredients: a weak acid and its salt, either
 * of them and a strong acid or base, or two salts; each weighed or poured from a stock.
 *
 *   n₁·p₁ + n₂·p₂ = c·V,   n₁·f₁(h) + n₂·f₂(h) + V·(h − Kw/h) = 0                                      (1)
 *
 * with p the protolyte and f(h) the charge that one unit of an ingredient brings. The amounts fulfil the exact charge
 * balance under the conditions given, not the log-ratio formula. Volumes are additive; solids take up none. Open to the
 * air it is the finished buffer at equilibrium with it; the last of the `steps` says what the fresh one reads, and what
 * an ideal calculation leaves out.
 *
 * Cautions come with it: the reagents' own, and that the safety data sheet, the local rules and a qualified supervisor
 * come first. A reagent without a caution here may still be hazardous.
 *
 * @returns the recipe, or why there is none
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { davies, prepareBuffer, reagents } from 'protolysis';
 *
 * const recipe = prepareBuffer({
 *   pH: 7.2,
 *   molar: 0.1,
 *   mL: 500,
 *   from: [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
 *   conditions: { activity: davies },
 * });
 * if (recipe.status === 'prepared') for (const step of recipe.steps) console.log(step);
 * else console.log(recipe.reason);
 * ```
 * ```text
 * Put about 330 mL of water into a beaker, with a stirrer.
 * Weigh 1.723 g of sodium dihydrogen phosphate and add it in portions, stirring until it has dissolved.
 * Weigh 5.060 g of disodium hydrogen phosphate and add it in portions, stirring until it has dissolved.
 * Let it come to room temperature.
 * Transfer it to a volumetric flask, rinse the beaker into it, make up to 500 mL with water and mix.
 * Check with a calibrated probe at 25 °C: pH 7.20 is expected.
 * ```
 */
export function prepareBuffer(request: BufferRequest): BufferRecipe | ImpossibleBuffer {
  const faults = new Faults('prepareBuffer');
  const { wanted, ionicStrength, salt, temperatures, dilutions, errorPercent } = readRequest(request, faults);
  faults.done();

  const amounts =
    ionicStrength === null ? findAmounts(wanted, []) : findAmountsWithSalt(ionicStrength, salt, wanted);
  if (amounts.status === 'impossible') return impossible(amounts);
  const { solution } = amounts;
  const doses = amounts.doses.filter(({ units }) => units > 0);
  const { mL, conditions } = wanted;
  const equilibrium = equilibrate(solution, conditions);
  const [saturated] = precipitatesOf(equilibrium);
  if (saturated) return impossible(saturatedWith(saturated));

  const { pH } = equilibrium;
  const madeUp = wanted.total !== null;
  const water = mL - poured(doses);
  const waterToMakeUp = water > rounding * mL ? water : 0;
  const work = workOf({
    parts: doses.map(partOf),
    mL,
    waterToMakeUp,
    solution,
    checks: [checkByProbe(solution, pH, conditions)],
  });
  if (work.status === 'too-hot') {
    const { reason, heat } = work;
    return impossible({ status: 'impossible', because: 'too-hot', reason, reachable: null, heat });
  }
  const recipe: BufferRecipe = {
    ...work,
    status: 'prepared',
    mL,
    waterToMakeUp,
    solution,
    pH,
    capacity: equilibrium.bufferCapacity,
    ionicStrength: equilibrium.ionicStrength,
    errors: errorsOf(doses, mL, madeUp, errorPercent, (mixture) => pHOf(mixture, conditions) - pH),
    atTemperatures: atTemperatures(solution, conditions, temperatures),
    afterDilution: afterDilution(solution, conditions, dilutions),
    notes: [...recipeNotes(equilibrium, wanted.total, conditions), ...work.notes],
  };
  return frozenWithView(recipe, viewRecipe);
}

const impossible = (why: ImpossibleBuffer): ImpossibleBuffer => frozenWithView(why, viewImpossible);

const atTemperatures = (solution: Solution, conditions: Conditions, temperatures: readonly number[]) =>
  temperatures.map((celsius) => ({ celsius, pH: pHOf(solution, { ...conditions, celsius }) }));

const afterDilution = (solution: Solution, conditions: Conditions, dilutions: readonly number[]) =>
  dilutions.map((times) => ({
    times,
    pH: pHOf(addWater(solution, { mL: (times - 1) * solution.mL }), conditions),
  }));

function partOf({ ingredient: { name, unit, stock, purity }, units }: Dose): BufferPart {
  if (stock) return { kind: 'poured', name, stock, mL: units };
  const { reagent } = unit[0] as (typeof unit)[number];
  const { molarMass } = reagent;
  const grams = molarMass === undefined ? null : (units * molarMass) / 1000 / purity;
  const measured = { name, reagent, mmol: units, purity, grams };
  const sold = asBought(reagent, purity);
  return sold
    ? { kind: 'liquid', ...measured, mL: volumeOf(sold, purity, grams) }
    : { kind: 'weighed', ...measured };
}

/**
 * The effect of an error of so many percent in one dose, or in the final volume. Without a mark, a stock adds to the
 * volume.
 */
function errorsOf(
  doses: readonly Dose[],
  mL: number,
  madeUp: boolean,
  percent: number,
  pHShiftOf: (mixture: Solution) => PH,
) {
  const share = percent / 100;
  const ofDoses = doses.map((dose) => {
    const wrong = doses.map((other) =>
      other === dose ? { ...other, units: other.units * (1 + share) } : other,
    );
    const volume = madeUp ? mL : mL + poured(wrong) - poured(doses);
    return { of: dose.ingredient.name, percent, pHShift: pHShiftOf(compose(volume, wrong)) };
  });
  const ofVolume = { of: 'final volume', percent, pHShift: pHShiftOf(compose(mL * (1 + share), doses)) };
  return madeUp ? [...ofDoses, ofVolume] : ofDoses;
}
