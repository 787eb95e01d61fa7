import type { Settled } from '../conditions.js';
import type { ActivityModel } from './activity-model.js';
import { activityLimits } from './coefficients.js';

/** What is uncertain about activity coefficients at an ionic strength, mol/L. @internal */
export function notesOnStrength(
  { activity }: Settled,
  ionicStrength: number,
  ceiling: number = activityLimits.ionicStrength,
): string[] {
  return [...beyondRange(activity, ionicStrength), ...held(ionicStrength, ceiling)];
}

function beyondRange(
  { name, upTo = Number.POSITIVE_INFINITY }: ActivityModel,
  ionicStrength: number,
): string[] {
  if (!(ionicStrength > upTo)) return [];
  return [
    `${name}: ionic strength ${Number(ionicStrength.toPrecision(3))} mol/L is beyond its range, up to ${upTo} mol/L.`,
  ];
}

function held(ionicStrength: number, ceiling: number): string[] {
  if (!(ionicStrength > ceiling)) return [];
  return [
    `Activity coefficients are held at what they are at ionic strength ${Number(ceiling.toPrecision(3))} mol/L.`,
  ];
}
