import type { Conditions } from '../equilibrium/conditions.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import { pHOf } from '../equilibrium/ph-of.js';
import type { PH } from '../equilibrium/quantities.js';
import type { Solution } from '../solution/solution.js';
import { rootBetween } from '../solver/root-between.js';
import type { Reagent } from '../substance/reagent.js';
import { bufferLimits } from './defaults.js';
import { firstCrossing, offTarget } from './first-crossing.js';
import { plus } from './plus.js';
import type { MeasuredIngredient } from './read-ingredient.js';
import type { ImpossibleBuffer } from './recipe.js';

/** What the amounts have to bring about. */
export interface AmountsWanted {
  readonly pH: PH;
  readonly mL: number;
  /** mmol of the buffering protolyte in all, or null: two stocks that fill the volume between them. */
  readonly total: number | null;
  /** The first brings the protolyte; the second does too, or is what adjusts the first. */
  readonly ingredients: readonly [MeasuredIngredient, MeasuredIngredient];
  /** mmol of the buffering protolyte per unit of each. */
  readonly brings: readonly [number, number];
  readonly conditions: Conditions;
}

/** So many units of an ingredient: mmol of a reagent, mL of a stock. */
export interface Dose {
  readonly ingredient: MeasuredIngredient;
  readonly units: number;
}

export interface Amounts {
  readonly status: 'found';
  readonly doses: readonly Dose[];
  readonly solution: Solution;
}

/**
 * The amounts of two ingredients that give a pH at a total concentration, beside others that are fixed.
 *
 *   n(t) = (1 − t)·n(0) + t·n(1),   0 ≤ t ≤ 1                                                           (1)
 *
 * runs along the line on which the total concentration holds: from the first ingredient alone to the second alone, or,
 * where only the first brings the protolyte, to ever more of the second beside it. At one pH the charge of every
 * ingredient is fixed, so in the ideal case the charge balance is linear in t: each pH comes but once, and pH is monotone
 * along the line. With a model of activity the first crossing counts (first-crossing.ts).
 *
 * @internal
 */
export function findAmounts(wanted: AmountsWanted, fixed: readonly Dose[]): Amounts | ImpossibleBuffer {
  const { pH, mL, ingredients, conditions } = wanted;
  const [start, end] = lineOf(wanted);
  const dosesAt = (t: number): Dose[] => [
    { ingredient: ingredients[0], units: (1 - t) * start[0] + t * end[0] },
    { ingredient: ingredients[1], units: (1 - t) * start[1] + t * end[1] },
    ...fixed,
  ];
  const part = partThatFits(mL, poured(dosesAt(0)), poured(dosesAt(1)));
  if (part === undefined) return tooDilute(wanted, null);

  const [from, to] = part;
  const pHAt = (t: number) => pHOf(compose(mL, dosesAt(t)), conditions);
  const off = offTarget(pH, (more) => pHAt(Math.min(from + more, to)));
  const bracket = firstCrossing(off, to - from);
  if (bracket === undefined) return outOfReach(wanted, part, [pHAt(from), pHAt(to)]);

  const doses = dosesAt(Math.min(from + rootBetween(off, ...bracket), to));
  return { status: 'found', doses, solution: compose(mL, doses) };
}

/**
 * The same with as much of a salt beside them as brings the ionic strength to a value: the root of I(salt) − I, since the
 * salt shifts the equilibrium, and with it what the buffer itself makes.
 *
 * @internal
 */
export function findAmountsAt(
  ionicStrength: number,
  salt: MeasuredIngredient,
  wanted: AmountsWanted,
): Amounts | ImpossibleBuffer {
  const alone = findAmounts(wanted, []);
  if (alone.status === 'impossible') return alone;
  const { ionicStrength: own } = equilibrate(alone.solution, wanted.conditions);
  if (own > ionicStrength * (1 + rounding))
    return {
      status: 'impossible',
      because: 'ionic-strength',
      reason: `the buffer alone has an ionic strength of ${show(own)} mol/L, above ${show(ionicStrength)}`,
      reachable: null,
    };

  const withSalt = (units: number) => findAmounts(wanted, [{ ingredient: salt, units }]);
  const excess = (units: number) => {
    const amounts = withSalt(units);
    if (amounts.status === 'impossible') return 1; // as if there were too much: look at less
    const off = equilibrate(amounts.solution, wanted.conditions).ionicStrength / ionicStrength - 1;
    return Math.abs(off) <= rounding ? 0 : off;
  };
  const { reagent } = salt.unit[0] as (typeof salt.unit)[number];
  return withSalt(rootBetween(excess, 0, (ionicStrength * wanted.mL) / ionicStrengthOf(reagent)));
}

/** What a salt of ions alone makes of ionic strength, mol/L per mol/L of it. @internal */
export const ionicStrengthOf = ({ ions }: Reagent): number =>
  ions.reduce((sum, { ion, count }) => sum + (count * ion.charge ** 2) / 2, 0);

/** So many units of each, made up to a volume. @internal */
export function compose(mL: number, doses: readonly Dose[]): Solution {
  const contents = doses.flatMap(({ ingredient, units }) =>
    ingredient.unit.map(({ reagent, mmol }) => ({ reagent, mmol: mmol * units })),
  );
  return plus({ mL, contents: [] }, contents);
}

/** mL of stock. @internal */
export const poured = (doses: readonly Dose[]): number =>
  doses.reduce((mL, { ingredient, units }) => mL + (ingredient.stock ? units : 0), 0);

/** Units of the first and of the second ingredient. */
type Pair = readonly [number, number];

/** Both ends of (1). */
function lineOf({ mL, total, ingredients, brings }: AmountsWanted): readonly [Pair, Pair] {
  if (total === null)
    return [
      [mL, 0],
      [0, mL],
    ];
  const first = total / brings[0];
  if (brings[1] > 0)
    return [
      [first, 0],
      [0, total / brings[1]],
    ];
  return [
    [first, 0],
    [first, ingredients[1].stock ? mL : mostMolar * mL],
  ];
}

const [, mostMolar] = bufferLimits.molar;

/** The part of the line on which the stocks do not overfill the volume. */
function partThatFits(mL: number, atStart: number, atEnd: number): [number, number] | undefined {
  const fits = (volume: number) => volume <= mL * (1 + rounding);
  if (fits(atStart) && fits(atEnd)) return [0, 1];
  if (!fits(atStart) && !fits(atEnd)) return undefined;
  const full = (mL - atStart) / (atEnd - atStart);
  return fits(atStart) ? [0, full] : [full, 1];
}

function outOfReach(
  wanted: AmountsWanted,
  [from, to]: readonly [number, number],
  [atStart, atEnd]: readonly [PH, PH],
): ImpossibleBuffer {
  const { pH, ingredients, brings, total } = wanted;
  const reachable = { from: Math.min(atStart, atEnd), to: Math.max(atStart, atEnd) };
  const beyondStart = Math.abs(atStart - pH) <= Math.abs(atEnd - pH);
  if (beyondStart ? from > 0 : to < 1) return tooDilute(wanted, reachable);
  const [first, second] = ingredients;
  const adjusts = total !== null && brings[1] === 0;
  const why =
    adjusts && !beyondStart
      ? `even ${second.stock ? 'the whole volume' : `${mostMolar} mol/L`} of ${second.name} is not enough`
      : `it would take a negative amount of ${beyondStart ? second.name : first.name}`;
  return {
    status: 'impossible',
    because: 'out-of-reach',
    reason: `these reach pH ${reachable.from.toFixed(2)} to ${reachable.to.toFixed(2)}, not ${show(pH)}: ${why}`,
    reachable,
  };
}

function tooDilute(
  { mL, ingredients }: AmountsWanted,
  reachable: ImpossibleBuffer['reachable'],
): ImpossibleBuffer {
  const names = ingredients.map(({ name }) => name).join(' and ');
  return {
    status: 'impossible',
    because: 'too-dilute',
    reason: `${names} would fill more than ${show(mL)} mL: take more concentrated stocks, or a lower concentration`,
    reachable,
  };
}

const show = (value: number) => String(Number(value.toPrecision(4)));

/** A stock taken whole may stand an ulp above the final volume; an ionic strength is good to as much. */
const rounding = 1e-12;
