import { capitalised } from '../capitalised.js';
import { asSold } from '../catalogue/as-sold.js';
import { heatsOfSolution } from '../catalogue/heats.js';
import { entryOf } from '../entry-of.js';
import { toDigits } from '../print-number.js';
import { type HeatOfMixing, heatLimits } from '../safety/heat-of-mixing.js';
import type { Solution } from '../solution/solution.js';
import type { LiquidPart, PouredPart, RecipePart, WeighedPart } from './recipe.js';

/**
 * Parts in the order in which they go in: solids into water, then the liquids, the most dilute first, so that a
 * concentrated acid or base always goes into what is more dilute than it is.
 *
 * Where the stocks leave less than a third of the volume to water, the most dilute of them comes before the solids,
 * which would else not have enough to dissolve in.
 *
 * @internal
 */
export function inOrder(parts: readonly RecipePart[], mL: number, waterToMakeUp: number): RecipePart[] {
  const solids = parts.filter(({ kind }) => kind === 'weighed');
  const liquids = parts
    .flatMap((part) => (part.kind === 'weighed' ? [] : [part]))
    .sort((first, second) => molarOf(first) - molarOf(second));
  const begun = waterToMakeUp < mL / 3 ? liquids.filter(({ kind }) => kind === 'poured').slice(0, 1) : [];
  return [...begun, ...solids, ...liquids.filter((part) => !begun.includes(part))];
}

/** All that is in it, mol/L; of a bottle without a density as if a gram took up a millilitre. */
function molarOf(part: LiquidPart | PouredPart): number {
  if (part.kind === 'poured') return concentrationOf(part.stock);
  return part.mmol / (part.mL ?? part.grams ?? part.mmol);
}

const concentrationOf = ({ mL, contents }: Solution): number =>
  contents.reduce((sum, { mmol }) => sum + mmol, 0) / mL;

/** What the steps at the bench are made from. */
export interface Bench {
  /** In the order of work. */
  readonly parts: readonly RecipePart[];
  /** Final volume, mL. */
  readonly mL: number;
  readonly waterToMakeUp: number;
  readonly heat: HeatOfMixing;
  /** The last steps. */
  readonly checks: readonly string[];
}

/**
 * The steps at the bench. Water first, two thirds of it, and the last of it to the mark at room temperature, are common
 * practice. Four digits are what a balance and a burette give.
 *
 * @internal
 */
export function orderOfWork({ parts, mL, waterToMakeUp, heat, checks }: Bench): string[] {
  const water = (2 / 3) * Math.max(waterToMakeUp - volumeOfBottled(parts), 0);
  const beginning =
    water > 0 ? [`Put about ${toDigits(water, 2)} mL of water into a beaker, with a stirrer.`] : [];
  const cooling =
    heat.kelvin >= heatLimits.cooled
      ? [
          `Stand the beaker in ice water: all that follows would warm it by about ${toDigits(heat.kelvin, 2)} K. Add it in portions, and let it cool after each.`,
        ]
      : [];
  const middle = parts.map((part, k) => stepOf(part, k === 0 && water === 0));
  const end =
    waterToMakeUp > 0
      ? [
          'Let it come to room temperature.',
          `Transfer it to a volumetric flask, rinse the beaker into it, make up to ${Number(mL.toPrecision(12))} mL with water and mix.`,
        ]
      : ['Mix, and let it come to room temperature.'];
  return [...beginning, ...cooling, ...middle, ...end, ...checks];
}

/** mL of liquids from the bottle, about. */
const volumeOfBottled = (parts: readonly RecipePart[]): number =>
  parts.reduce((total, part) => total + (part.kind === 'liquid' ? (part.mL ?? part.grams ?? 0) : 0), 0);

function stepOf(part: RecipePart, first: boolean): string {
  if (part.kind === 'weighed') return solidStep(part);
  const how = first ? 'put it into a beaker, with a stirrer' : 'pour it in slowly, stirring';
  const amount =
    part.kind === 'poured'
      ? `measure ${toDigits(part.mL, 4)} mL of ${part.name} and ${how}`
      : `${liquidAmount(part)}, and ${how}`;
  const sentence = fumes(part) ? `in the fume cupboard, ${amount}.` : `${amount}.`;
  return capitalised(sentence);
}

function liquidAmount({ name, grams, mL, mmol }: LiquidPart): string {
  if (grams === null) return `measure ${toDigits(mmol, 4)} mmol of ${name}`;
  const volume = mL === null ? 'a liquid' : `a liquid of about ${toDigits(mL, 3)} mL`;
  return `weigh ${toDigits(grams, 4)} g of ${name}, ${volume}`;
}

function solidStep({ name, reagent, grams, mmol }: WeighedPart): string {
  if (grams === null) return `Add ${toDigits(mmol, 4)} mmol of ${name}, stirring until it has dissolved.`;
  const isHot = (entryOf(heatsOfSolution, reagent.id)?.kJ ?? 0) <= hot;
  const how = isHot
    ? 'add it to the cold water in small portions, stirring; it gets hot, so let it cool between them'
    : 'add it in portions, stirring until it has dissolved';
  return `Weigh ${toDigits(grams, 4)} g of ${name} and ${how}.`;
}

/** kJ/mol: of solids, the hydroxides and calcium chloride give off as much or more (common practice). */
const hot = -40;

/**
 * Whether a liquid belongs in the fume cupboard. A stock of half the strength of a fuming bottle or more counts as fuming
 * (common practice).
 *
 * @internal
 */
export function fumes(part: LiquidPart | PouredPart): boolean {
  if (part.kind === 'liquid') return entryOf(asSold, part.reagent.id)?.fumes ?? false;
  return part.stock.contents.some(({ reagent, mmol }) => {
    const sold = entryOf(asSold, reagent.id);
    if (!sold?.fumes || reagent.molarMass === undefined) return false;
    const ofBottle = (10 * sold.density * sold.massPercent) / reagent.molarMass;
    return mmol / part.stock.mL >= ofBottle / 2;
  });
}
