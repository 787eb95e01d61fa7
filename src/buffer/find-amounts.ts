import { pHOf } from '../equilibrium/ph-of.js';
import type { Solution } from '../solution/solution.js';
import { rootBetween } from '../solver/root-between.js';
import type { AmountsWanted } from './amounts-wanted.js';
import { bufferLimits } from './buffer-defaults.js';
import { compose, type Dose, poured, rounding } from './dose.js';
import { firstCrossing, offTarget } from './first-crossing.js';
import { outOfReach, tooDilute } from './no-amounts.js';
import type { ImpossibleBuffer } from './recipe.js';

/** Amounts that give the pH, and the finished solution. */
export interface Amounts {
  readonly status: 'found';
  readonly doses: readonly Dose[];
  readonly solution: Solution;
}

/**
 * The amounts of two ingredients that give a pH at a total concentration, beside others that are fixed.
 *
 *   n₁(t) = (1 − t)·n₁(0) + t·n₁(1),   n₂(t) = t·n₂(1),   0 ≤ t ≤ 1                                      (1)
 *
 * runs along the line on which the total concentration holds: from the first ingredient alone to the second alone, or,
 * where only the first brings the protolyte, to ever more of the second beside it. At one pH the charge of every
 * ingredient is fixed, so in the ideal case the charge balance is linear in t: each pH occurs once, and pH is monotone
 * along the line. With a model of activity the first crossing counts (first-crossing.ts).
 *
 * @internal
 */
export function findAmounts(wanted: AmountsWanted, fixed: readonly Dose[]): Amounts | ImpossibleBuffer {
  const { pH, mL, ingredients, conditions } = wanted;
  const { start, end } = lineOf(wanted);
  const dosesAt = (t: number): Dose[] => [
    { ingredient: ingredients[0], units: (1 - t) * start + t * end[0] },
    { ingredient: ingredients[1], units: t * end[1] },
    ...fixed,
  ];
  const part = partThatFits(mL, poured(dosesAt(0)), poured(dosesAt(1)));
  if (part === undefined) return tooDilute(wanted, null);

  const [from, to] = part;
  const pHAt = (t: number) => pHOf(compose(mL, dosesAt(t)), conditions);
  const off = offTarget(pH, (more) => pHAt(Math.min(from + more, to)));
  const bracket = firstCrossing(off, to - from);
  const crossing = bracket && rootBetween(off, ...bracket);
  if (crossing?.status !== 'found') return outOfReach(wanted, [pHAt(from), pHAt(to)], [pHAt(0), pHAt(1)]);

  const doses = dosesAt(Math.min(from + crossing.x, to));
  return { status: 'found', doses, solution: compose(mL, doses) };
}

/** Both ends of (1): units of the first ingredient at the start, and of both at the end. */
interface Line {
  readonly start: number;
  readonly end: readonly [number, number];
}

function lineOf({ mL, total, ingredients, brings }: AmountsWanted): Line {
  if (total === null) return { start: mL, end: [0, mL] };
  const start = total / brings[0];
  if (brings[1] > 0) return { start, end: [0, total / brings[1]] };
  return { start, end: [start, ingredients[1].stock ? mL : mostMolar * mL] };
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
