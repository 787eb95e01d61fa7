import type { Vessel } from '../catalogue/glassware.js';
import { keeping } from '../catalogue/keeping.js';
import { standardisation } from '../catalogue/standardisation.js';
import { entryOf } from '../entry-of.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import { precipitatesOf } from '../equilibrium/precipitates.js';
import { frozenWithView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import { viewImpossible } from '../recipe/view-impossible.js';
import { viewRecipe } from '../recipe/view-recipe.js';
import { workOf } from '../recipe/work-of.js';
import type { Solution } from '../solution/solution.js';
import type { Reagent } from '../substance/reagent.js';
import { amountsOf } from './amounts-of.js';
import { dilutionWork } from './dilution-work.js';
import type {
  ImpossibleSolution,
  PreparationRequest,
  PreparedSolution,
  Standardisation,
} from './preparation.js';
import { checksBeforeUse, preparationNotes } from './preparation-notes.js';
import { type ReadPreparation, readPreparation } from './read-preparation.js';

/**
 * A recipe for a solution of one reagent: from the solid or liquid as it is sold, or from a stock by dilution.
 *
 * It is made in the smallest flask at hand that holds the volume needed. A stock is measured with pipettes at hand, in
 * as few dilutions as they allow. The uncertainty is that of a product: the relative ones add as squares (GUM, JCGM
 * 100:2008, 5.1.6). Limits of error are those of ISO 648 and ISO 1042, and each vessel carries its source. They count
 * as triangular, a/√6 (EURACHEM/CITAC CG 4; from memory). The purity of what is weighed and the concentration of a
 * stock count as exact.
 *
 * The cautions of the recipe defer to the safety data sheet, the local rules and a qualified supervisor.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { prepareSolution, reagents } from 'protolysis';
 *
 * const recipe = prepareSolution({ from: reagents.sodiumCarbonate, molar: 0.05, mL: 20, groups: 12 });
 * recipe.status === 'prepared' && recipe.mL; // => 250
 * recipe.status === 'prepared' && recipe.steps[2]; // => 'Weigh 1.325 g of sodium carbonate and add it in portions, stirring until it has dissolved.'
 * ```
 */
export function prepareSolution(request: PreparationRequest): PreparedSolution | ImpossibleSolution {
  const faults = new Faults('prepareSolution');
  const read = goodVesselsOf(readPreparation(request, faults));
  faults.done();
  const { reagent, molar } = read;

  const chosen = flaskFor(read);
  if ('status' in chosen) return chosen;
  const { flask, batches } = chosen;
  const amounts = amountsOf(read, flask);
  if ('status' in amounts) return impossible(amounts.because, amounts.reason);
  const solution: Solution = { mL: flask.mL, contents: [{ reagent, mmol: molar * flask.mL }] };
  const refusal = refusalOf(solution) ?? (read.ingredient.stock && refusalOf(read.ingredient.stock));
  if (refusal) return refusal;

  const known = standardisationOf(reagent);
  const { parts, waterToMakeUp, dilutions, contributions } = amounts;
  const checks = checksBeforeUse(known, read);
  const work = workOf({ parts, mL: flask.mL, waterToMakeUp, solution, checks });
  if (work.status === 'too-hot') return impossible('too-hot', work.reason, work.heat);
  const [part] = parts;
  const diluting = part.kind === 'poured' ? dilutionWork(part, dilutions, reagent) : null;
  if (diluting?.status === 'too-hot') return impossible('too-hot', diluting.reason, diluting.heat);
  const recipe: PreparedSolution = {
    ...work,
    ...(diluting && { heat: diluting.heat }),
    status: 'prepared',
    mL: flask.mL,
    waterToMakeUp,
    solution,
    molar,
    standardUncertainty: (molar * Math.hypot(...contributions.map(({ percent }) => percent))) / 100,
    contributions,
    needed: read.mL,
    flask,
    glass: read.glass,
    batches,
    standardisation: known,
    dilutions,
    steps: [...waterFor(reagent), ...(diluting ? [...diluting.steps, ...checks] : work.steps)],
    notes: [...preparationNotes(read, amounts, batches, known), ...(diluting?.notes ?? work.notes)],
  };
  return frozenWithView(recipe, viewRecipe);
}

/** More flasks of one solution than these are no preparation by hand (common practice). */
const mostBatches = 100;

/** The smallest flask that holds what is needed in as few batches as the largest one. */
function flaskFor({ flasks, mL: needed, vesselPercent }: ReadPreparation) {
  const largest = flasks.at(-1)?.mL ?? 0;
  const batches = Math.ceil(needed / largest - 1e-9);
  const flask = flasks.find(({ mL }) => mL * batches >= needed * (1 - 1e-9));
  if (!flask) return impossible('no-vessel', `no flask at hand is good to ${vesselPercent} % of its volume`);
  if (batches > mostBatches)
    return impossible(
      'no-vessel',
      `${Number(needed.toPrecision(12))} mL would take ${batches} flasks of ${flask.mL} mL: ask for less, or use larger flasks`,
    );
  return { flask, batches };
}

const impossible = (
  because: ImpossibleSolution['because'],
  reason: string,
  heat?: ImpossibleSolution['heat'],
): ImpossibleSolution =>
  frozenWithView({ status: 'impossible', because, reason, ...(heat && { heat }) }, viewImpossible);

function standardisationOf({ id, primaryStandard }: Reagent): Standardisation | null {
  if (primaryStandard) return { kind: 'primary', ...primaryStandard };
  const needed = entryOf(standardisation, id);
  return needed ? { kind: 'needed', ...needed } : null;
}

/** Only the vessels that are good enough. */
function goodVesselsOf(read: ReadPreparation): ReadPreparation {
  const { glass, vesselPercent } = read;
  const isGood = ({ mL, tolerance }: Vessel) => (100 * tolerance[glass]) / mL <= vesselPercent * (1 + 1e-9);
  return { ...read, flasks: read.flasks.filter(isGood), pipettes: read.pipettes.filter(isGood) };
}

/** Hydrofluoric acid from here on attacks glass within hours, mol/L (common practice). */
const attacksGlass = 1e-3;

/** Why a solution is not to be made, or not in glass. */
function refusalOf(solution: Solution): ImpossibleSolution | null {
  const equilibrium = equilibrate(solution);
  const [saturated] = precipitatesOf(equilibrium);
  if (saturated)
    return impossible(
      'saturated',
      `${saturated.solid.name} would not stay dissolved: its ions multiply to more than in its saturated solution at 25 °C`,
    );
  if (equilibrium.species.some(({ formula, molar }) => formula === 'HF' && molar >= attacksGlass))
    return impossible(
      'attacks-glass',
      'hydrofluoric acid attacks glass and is very toxic through the skin: no recipe here covers it; ask a qualified supervisor',
    );
  return null;
}

const waterFor = ({ id }: Reagent): string[] =>
  entryOf(keeping, id)?.boiledWater
    ? ['Take water free of carbon dioxide for all that follows: boiled, covered and cooled.']
    : [];
