import { type MeasuredIngredient, readIngredient } from '../buffer/read-ingredient.js';
import { flasks as isoFlasks, pipettes as isoPipettes, type Vessel } from '../catalogue/glassware.js';
import { type StandardisationNeeded, standardisation } from '../catalogue/standardisation.js';
import { entryOf } from '../entry-of.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import { precipitatesOf } from '../equilibrium/precipitates.js';
import { frozen } from '../frozen.js';
import { frozenWithView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import { fourDigits } from '../print-number.js';
import { asBought, volumeOf } from '../recipe/as-bought.js';
import { fumes } from '../recipe/order-of-work.js';
import type { PouredPart, Recipe, RecipePart } from '../recipe/recipe.js';
import { viewImpossible } from '../recipe/view-impossible.js';
import { viewRecipe } from '../recipe/view-recipe.js';
import { workOf } from '../recipe/work-of.js';
import type { HeatOfMixing } from '../safety/heat-of-mixing.js';
import type { Solution } from '../solution/solution.js';
import type { PrimaryStandard } from '../substance/primary-standard.js';
import type { Reagent } from '../substance/reagent.js';
import { type Dilution, dilutionTo } from './dilution-to.js';

/** Which solution is wanted, from what, and with which vessels. */
export interface PreparationRequest {
  /** A reagent as sold, { reagent, purity } with the mass fraction on its bottle, or a stock solution of one reagent. */
  readonly from: Reagent | { readonly reagent: Reagent; readonly purity: number } | Solution;
  /** mol/L of the reagent. */
  readonly molar: number;
  /** Volume that is needed at least, mL. */
  readonly mL: number;
  /** Class of the glassware; A if left out. */
  readonly glass?: 'A' | 'B';
  /** Volumes of the volumetric flasks at hand, mL; those of ISO 1042 if left out. */
  readonly flasks?: readonly number[];
  /** Volumes of the pipettes at hand, mL; those of ISO 648 if left out. */
  readonly pipettes?: readonly number[];
  /** Standard uncertainty of a mass, mg; 0.2 if left out. */
  readonly weighing?: number;
}

/** A solution that can be made: plain data. */
export interface PreparedSolution extends Recipe {
  /** mol/L that it is expected to have. */
  readonly molar: number;
  /** Of that, mol/L, from the tolerances of the vessels and the weighing alone. */
  readonly standardUncertainty: number;
  /** What it comes from, in percent of the concentration. */
  readonly contributions: readonly { readonly of: string; readonly percent: number }[];
  /** The flask it is made up in, and the class of all its glassware. */
  readonly flask: Vessel;
  readonly glass: 'A' | 'B';
  /** How many flasks of it are made, one after the other. */
  readonly batches: number;
  /** Whether it is to be standardised, and against what; null where nothing is known. */
  readonly standardisation: Standardisation | null;
  /** The dilutions in order, where it is made from a stock. */
  readonly dilutions: readonly Dilution[];
}

/** Whether a solution of a reagent has the concentration that was weighed, or is to be standardised. */
export type Standardisation =
  | ({ readonly kind: 'primary' } & PrimaryStandard)
  | ({ readonly kind: 'needed' } & StandardisationNeeded);

/** Why a solution cannot be made from what was given. */
export interface ImpossibleSolution {
  readonly status: 'impossible';
  readonly because: 'too-dilute' | 'no-vessel' | 'saturated' | 'too-hot';
  readonly reason: string;
  readonly heat?: HeatOfMixing;
}

/** What `prepareSolution` takes by default: common practice. */
export const preparationDefaults = /*#__PURE__*/ frozen({ glass: 'A', weighing: 0.2 } as const);

/**
 * A recipe for a solution of one reagent: from the solid or liquid as it is sold, or from a stock by dilution.
 *
 *   m = c·V·M/w,   V_stock = c·V/c_stock                                                              (1)
 *
 * It is made in the smallest flask at hand that holds the volume needed. A stock is measured with pipettes at hand, in as many
 * dilutions, up to two, as it takes. The uncertainty is that of a product: the relative ones add as squares (GUM, JCGM
 * 100:2008, 5.1.6). Tolerances count as triangular, a/√6 (EURACHEM/CITAC CG 4; from memory). The purity of what is weighed and
 * the concentration of a stock count as exact.
 *
 * The cautions of the recipe defer to the safety data sheet, the local rules and a qualified supervisor.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { prepareSolution, reagents } from 'protolysis';
 *
 * const recipe = prepareSolution({ from: reagents.sodiumCarbonate, molar: 0.05, mL: 240 });
 * recipe.status === 'prepared' && recipe.mL; // => 250
 * recipe.status === 'prepared' && recipe.steps[1]; // => 'Weigh 1.325 g of sodium carbonate and add it in portions, stirring until it has dissolved.'
 * ```
 */
export function prepareSolution(request: PreparationRequest): PreparedSolution | ImpossibleSolution {
  const faults = new Faults('prepareSolution');
  const read = readRequest(request, faults);
  faults.done();
  const { ingredient, reagent, molar, flasks } = read;

  const largest = flasks.at(-1)?.mL ?? 0;
  const batches = Math.ceil(read.mL / largest - 1e-9);
  const flask = flasks.find(({ mL }) => mL * batches >= read.mL * (1 - 1e-9)) as Vessel;
  const mmol = molar * flask.mL;
  const made = ingredient.stock ? fromStock(read, ingredient.stock, flask) : fromBottle(read, flask);
  if ('status' in made) return impossible(made);

  const solution: Solution = { mL: flask.mL, contents: [{ reagent, mmol }] };
  const [saturated] = precipitatesOf(equilibrate(solution));
  if (saturated)
    return impossible({
      status: 'impossible',
      because: 'saturated',
      reason: `${saturated.solid.name} would not stay dissolved: its ions multiply to more than in its saturated solution at 25 °C`,
    });
  const known = standardisationOf(reagent);
  const { parts, waterToMakeUp, dilutions, contributions } = made;
  const work = workOf({ parts, mL: flask.mL, waterToMakeUp, solution, checks: checksOf(known) });
  if (work.status === 'too-hot')
    return impossible({ status: 'impossible', because: 'too-hot', reason: work.reason, heat: work.heat });
  const recipe: PreparedSolution = {
    ...work,
    status: 'prepared',
    mL: flask.mL,
    waterToMakeUp,
    solution,
    molar,
    standardUncertainty: (molar * Math.hypot(...contributions.map(({ percent }) => percent))) / 100,
    contributions,
    flask,
    glass: read.glass,
    batches,
    standardisation: known,
    dilutions,
    steps:
      dilutions.length > 0
        ? [
            ...dilutions.map((dilution, k) => stepOf(dilution, k === 0 && fumes(parts[0] as PouredPart))),
            ...checksOf(known),
          ]
        : work.steps,
    notes: [...notesOn(batches, known, isMuch(parts, flask.mL)), ...work.notes],
  };
  return frozenWithView(recipe, viewRecipe);
}

const impossible = (why: ImpossibleSolution): ImpossibleSolution => frozenWithView(why, viewImpossible);

function standardisationOf({ id, primaryStandard }: Reagent): Standardisation | null {
  if (primaryStandard) return { kind: 'primary', ...primaryStandard };
  const needed = entryOf(standardisation, id);
  return needed ? { kind: 'needed', ...needed } : null;
}

const notesOn = (batches: number, known: Standardisation | null, much: boolean): string[] => [
  ...(batches > 1 ? [`Make ${batches} flasks of it: the recipe is for one.`] : []),
  ...(known?.kind === 'primary' ? [`A primary standard for ${known.standardises}: ${known.treatment}.`] : []),
  ...(much ? ['Whether so much dissolves is not checked for this reagent: try it, or look it up.'] : []),
];

/** Whether more than 0.2 g of a solid goes into each millilitre (common practice for where to ask). */
const isMuch = ([part]: readonly RecipePart[], mL: number): boolean =>
  part?.kind === 'weighed' && (part.grams ?? 0) / mL > 0.2;

type Read = ReturnType<typeof readRequest>;

/** The amounts of a recipe, before the work is planned. */
interface Made {
  readonly parts: readonly RecipePart[];
  readonly waterToMakeUp: number;
  readonly dilutions: readonly Dilution[];
  readonly contributions: readonly { readonly of: string; readonly percent: number }[];
}

/** Half width of a triangular distribution to its standard uncertainty. */
const triangular = 1 / Math.sqrt(6);

const percentOf = ({ mL, tolerance }: Vessel, glass: 'A' | 'B'): number =>
  (100 * triangular * tolerance[glass]) / mL;

function fromBottle({ ingredient, reagent, molar, glass, weighing }: Read, flask: Vessel): Made {
  const mmol = molar * flask.mL;
  const { purity, name } = ingredient;
  const grams = (mmol * (reagent.molarMass ?? 0)) / 1000 / purity;
  const sold = asBought(reagent, purity);
  const measured = { name, reagent, mmol, purity, grams };
  const part: RecipePart = sold
    ? { kind: 'liquid', ...measured, mL: volumeOf(sold, purity, grams) }
    : { kind: 'weighed', ...measured };
  return {
    parts: [part],
    waterToMakeUp: flask.mL,
    dilutions: [],
    contributions: [
      { of: 'weighing', percent: (100 * Math.SQRT2 * weighing) / (1000 * grams) },
      { of: `flask of ${flask.mL} mL`, percent: percentOf(flask, glass) },
    ],
  };
}

function fromStock(read: Read, stock: Solution, flask: Vessel): Made | ImpossibleSolution {
  const { reagent, molar, pipettes, flasks, glass, ingredient } = read;
  const strength = (stock.contents[0]?.mmol ?? 0) / stock.mL;
  if (molar > strength * (1 - 1e-9))
    return {
      status: 'impossible',
      because: 'too-dilute',
      reason: `the stock has ${fourDigits(strength)} mol/L of ${reagent.name}, not more than the ${fourDigits(molar)} mol/L wanted`,
    };
  const dilutions = dilutionTo(molar, { name: ingredient.name, molar: strength }, flask, {
    pipettes,
    flasks,
    glass,
  });
  if (!dilutions)
    return {
      status: 'impossible',
      because: 'no-vessel',
      reason: `no pipettes and flasks at hand make ${fourDigits(molar)} mol/L of ${fourDigits(strength)} mol/L in two dilutions: take another concentration or a larger pipette`,
    };
  const contributions = dilutions.flatMap((dilution) => [
    { of: `pipette of ${dilution.pipette.mL} mL`, percent: percentOf(dilution.pipette, glass) },
    { of: `flask of ${dilution.flask.mL} mL`, percent: percentOf(dilution.flask, glass) },
  ]);
  const poured = (molar * flask.mL) / strength;
  return {
    parts: [{ kind: 'poured', name: ingredient.name, stock, mL: poured }],
    waterToMakeUp: flask.mL - poured,
    dilutions,
    contributions,
  };
}

function stepOf({ of, times, pipette, flask, glass, molar }: Dilution, isFuming: boolean): string {
  const often = times > 1 ? `${times} times ` : '';
  const begin = isFuming ? 'In the fume cupboard, put' : 'Put';
  return `${begin} water into a ${flask.mL} mL flask (class ${glass}) to about a third, add ${often}${pipette.mL} mL of ${of} slowly with a pipette (class ${glass}) and a filler, swirling, let it come to room temperature, make up to the mark with water and mix: ${fourDigits(molar)} mol/L.`;
}

/** `sodiumCarbonate` as `sodium carbonate`. */
const inWords = (id: string): string => id.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);

const checksOf = (known: Standardisation | null): string[] => [
  ...(known?.kind === 'needed'
    ? [`Standardise it before use against ${known.against.map(inWords).join(' or ')}, since ${known.reason}.`]
    : []),
  'Label it with its contents, concentration, hazard and date.',
];

function readRequest(value: unknown, faults: Faults) {
  const keys = ['from', 'molar', 'mL', 'glass', 'flasks', 'pipettes', 'weighing'];
  const unread = faults.object(value, 'request', 'a request { from, molar, mL }', keys);
  const ingredient: MeasuredIngredient = readIngredient(unread.from, 'from', faults);
  const held = ingredient.unit.filter(({ mmol }) => mmol > 0);
  const [content] = held;
  if (!faults.any && (content === undefined || held.length > 1))
    faults.add('conflict', 'from', 'a stock that holds one reagent', unread.from, ingredient.name);
  const reagent = content?.reagent as Reagent;
  if (!faults.any && !ingredient.stock && reagent.molarMass === undefined)
    faults.add(
      'missing',
      'from.molarMass',
      'a reagent with a molar mass or a formula, or a stock',
      undefined,
    );
  const { glass = preparationDefaults.glass } = unread;
  if (glass !== 'A' && glass !== 'B') faults.add('wrong-type', 'glass', "'A' or 'B'", glass);
  return {
    ingredient,
    reagent,
    molar: faults.number(unread.molar, 'molar', 'a concentration in mol/L', { from: 1e-6, to: 20 }),
    mL: faults.number(unread.mL, 'mL', 'a volume in mL', { from: 1, to: 1e5 }),
    glass: glass === 'B' ? ('B' as const) : ('A' as const),
    flasks: readVessels(unread.flasks, 'flasks', isoFlasks, faults),
    pipettes: readVessels(unread.pipettes, 'pipettes', isoPipettes, faults),
    weighing:
      unread.weighing === undefined
        ? preparationDefaults.weighing
        : faults.number(unread.weighing, 'weighing', 'an uncertainty in mg', { from: 0, to: 1e5 }),
  };
}

/** The vessels at hand, the smallest first. */
function readVessels(
  value: unknown,
  path: string,
  known: readonly Vessel[],
  faults: Faults,
): readonly Vessel[] {
  const sorted = [...known].sort((first, second) => first.mL - second.mL);
  if (value === undefined) return sorted;
  const sizes = faults.list(value, path, 'a list of volumes in mL', 1, 100);
  const volumes = sorted.map(({ mL }) => mL);
  const found = sizes.flatMap((size, k) => {
    const here = `${path}[${k}]`;
    const before = faults.count;
    const wanted = faults.number(size, here, 'a volume in mL');
    const vessel = sorted.find(({ mL }) => mL === wanted);
    if (vessel === undefined && faults.count === before)
      faults.add('out-of-range', here, `one of ${volumes.join(', ')} mL`, size);
    return vessel ?? [];
  });
  return found.sort((first, second) => first.mL - second.mL);
}
