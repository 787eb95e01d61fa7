import type { ConditionsInUse } from '../conditions.js';
import type { ActivityModel } from './activity-model.js';
import { activityLimits } from './coefficients.js';

/**
 * The ionic strength, mol/L, above which a pH of this library is not to be used: common practice. Laws of the kind of
 * Debye and Hückel end between 0.1 and 0.5 mol/L; above about 1 mol/L, interactions between particular ions and the
 * water they bind count as much as their charge.
 */
const mostUsableStrength = 1;

/** A strength above a limit by the rounding of sums alone counts as being at the limit. */
const rounding = 1e-9;

/** What is uncertain about activity coefficients at an ionic strength, mol/L. @internal */
export function notesOnStrength(
  { activity }: ConditionsInUse,
  ionicStrength: number,
  ceiling: number = activityLimits.ionicStrength,
): string[] {
  return [
    ...beyondRange(activity, ionicStrength),
    ...held(ionicStrength, ceiling),
    ...beyondAnyLaw(ionicStrength),
  ];
}

/**
 * The note on a capacity, mol/L per unit of pH, that is not above zero: there the law of activity is far beyond its
 * range.
 *
 * @internal
 */
export const notesOnCapacity = (...capacities: readonly number[]): string[] =>
  capacities.some((capacity) => !(capacity > 0))
    ? [
        'The buffer capacity is not above zero: pH would fall as base is added. The law of activity does not describe this solution.',
      ]
    : [];

function beyondRange(
  { name, upTo = Number.POSITIVE_INFINITY }: ActivityModel,
  ionicStrength: number,
): string[] {
  if (!(ionicStrength > upTo * (1 + rounding))) return [];
  return [`${name}: ionic strength ${short(ionicStrength)} mol/L is beyond its range, up to ${upTo} mol/L.`];
}

function held(ionicStrength: number, ceiling: number): string[] {
  if (!(ionicStrength > ceiling)) return [];
  return [`Activity coefficients are held at what they are at ionic strength ${short(ceiling)} mol/L.`];
}

function beyondAnyLaw(ionicStrength: number): string[] {
  if (!(ionicStrength > mostUsableStrength * (1 + rounding))) return [];
  return [
    `Do not use this pH as a number: at ionic strength ${short(ionicStrength)} mol/L no law of activity here holds (common practice: none above ${mostUsableStrength} mol/L).`,
  ];
}

const short = (strength: number): number => Number(strength.toPrecision(3));
