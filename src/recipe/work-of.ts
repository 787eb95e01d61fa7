import { waterMass } from '../catalogue/atomic-weights.js';
import { toDigits } from '../print-number.js';
import { cautionsOf } from '../safety/cautions-of.js';
import { type HeatOfMixing, heatLimits, heatOfMixing, type Mixed } from '../safety/heat-of-mixing.js';
import type { Solution } from '../solution/solution.js';
import { asBought } from './as-bought.js';
import { inOrder, orderOfWork } from './order-of-work.js';
import type { Recipe, RecipePart } from './recipe.js';

/** What is known of a recipe before the work is. */
export interface Planned {
  readonly parts: readonly RecipePart[];
  /** Final volume, mL. */
  readonly mL: number;
  readonly waterToMakeUp: number;
  /** The finished solution. */
  readonly solution: Solution;
  /** The last steps. */
  readonly checks: readonly string[];
}

/** The part of a recipe that follows from its amounts, whatever the solution is for. */
export type PlannedWork = { readonly status: 'planned' } & Pick<
  Recipe,
  'parts' | 'steps' | 'cautions' | 'heat' | 'notes'
>;

/** Why amounts are not to be mixed. */
export interface TooHot {
  readonly status: 'too-hot';
  readonly reason: string;
  readonly heat: HeatOfMixing;
}

/**
 * The work at the bench for the amounts of any recipe: parts in their order, steps, cautions, heat. Refused where
 * mixing would warm it by more than `heatLimits.refused`, with the way to do it.
 *
 * @internal
 */
export function workOf({
  parts: unordered,
  mL,
  waterToMakeUp,
  solution,
  checks,
}: Planned): PlannedWork | TooHot {
  const parts = inOrder(unordered, mL, waterToMakeUp);
  // the last third of the water is not there yet: it comes when all has cooled (orderOfWork)
  const heat = heatOfMixing(parts.map(mixedOf), solution, mL - waterToMakeUp / 3);
  if (heat.kelvin >= heatLimits.refused) return tooHot(parts, heat);
  return {
    status: 'planned',
    parts,
    steps: orderOfWork({ parts, mL, waterToMakeUp, heat, checks }),
    cautions: cautionsOf({ parts: parts.map(handled), solution }),
    heat,
    notes: heatNotes(heat),
  };
}

function mixedOf(part: RecipePart): Mixed {
  if (part.kind === 'poured') {
    const share = part.mL / part.stock.mL;
    const contents = part.stock.contents.map(({ reagent, mmol }) => ({ reagent, mmol: mmol * share }));
    return { contents, mL: part.mL, water: null };
  }
  const { reagent, mmol, purity } = part;
  const isSolution = part.kind === 'liquid' && asBought(reagent, purity)?.form === 'solution';
  const { molarMass = 0 } = reagent;
  const water = isSolution ? ((1 / purity - 1) * molarMass) / waterMass : null;
  return { contents: [{ reagent, mmol }], mL: null, water };
}

const handled = (part: RecipePart) =>
  part.kind === 'poured' ? { stock: part.stock } : { reagent: part.reagent };

/** The refusal of parts whose mixing gives off too much heat, with a way to do it all the same. @internal */
export function tooHot(parts: readonly RecipePart[], heat: HeatOfMixing): TooHot {
  const names = parts.map(({ name }) => name).join(' and ');
  const share = toDigits(Math.floor((100 * heatLimits.refused) / heat.kelvin), 2);
  const way =
    parts.length > 1
      ? `dilute each of them first, the concentrated one slowly into cold water in ice, let both cool, and mix those stocks at no more than ${share} % of this concentration`
      : `ask for no more than ${share} % of this concentration, and put it slowly into cold water in ice`;
  return {
    status: 'too-hot',
    heat,
    reason: `mixing ${names} would warm it by about ${toDigits(heat.kelvin, 2)} K, and from ${heatLimits.refused} K on it may boil up and spit: ${way}`,
  };
}

/** What a recipe says of its heat: a note from `heatLimits.stated` on, none below. @internal */
export function heatNotes({ kJ, kelvin, notCounted }: HeatOfMixing): string[] {
  if (!(kelvin >= heatLimits.stated)) return [];
  const except = notCounted.length === 0 ? '' : `; not counted: ${notCounted.join(', ')}`;
  return [
    `Mixing gives off about ${toDigits(kJ, 2)} kJ: if none of it were lost, it would warm by about ${toDigits(kelvin, 2)} K (an estimate from neutralisation, dissolving and dilution${except}).`,
  ];
}
