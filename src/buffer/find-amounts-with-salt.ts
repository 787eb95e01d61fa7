import { equilibrate } from '../equilibrium/equilibrate.js';
import { fourDigits } from '../print-number.js';
import { rootBetween } from '../solver/root-between.js';
import type { AmountsWanted } from './amounts-wanted.js';
import { rounding } from './dose.js';
import { type Amounts, findAmounts } from './find-amounts.js';
import { ionicStrengthOf } from './ionic-strength-of.js';
import type { MeasuredIngredient } from './read-ingredient.js';
import type { ImpossibleBuffer } from './recipe.js';

/**
 * The amounts with as much of a salt beside them as brings the ionic strength to a value: the root of I(salt) − I,
 * since the salt shifts the equilibrium, and with it what the buffer itself makes.
 *
 * @internal
 */
export function findAmountsWithSalt(
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
      reason: `the buffer alone has an ionic strength of ${fourDigits(own)} mol/L, above ${fourDigits(ionicStrength)}`,
      reachable: null,
      leastIonicStrength: own,
    };

  const withSalt = (units: number) => findAmounts(wanted, [{ ingredient: salt, units }]);
  const excess = (units: number) => {
    const amounts = withSalt(units);
    if (amounts.status === 'impossible') return 1; // takes the side of too much salt, so that less is tried
    const off = equilibrate(amounts.solution, wanted.conditions).ionicStrength / ionicStrength - 1;
    return Math.abs(off) <= rounding ? 0 : off;
  };
  const { reagent } = salt.unit[0] as (typeof salt.unit)[number];
  const enough = (ionicStrength * wanted.mL) / ionicStrengthOf(reagent); // by itself, without the buffer
  const root = rootBetween(excess, 0, enough);
  const nearest = withSalt(root.status === 'found' ? root.x : enough); // at a jump, it shows what is reached
  if (nearest.status === 'impossible') return nearest;
  const { ionicStrength: reached } = equilibrate(nearest.solution, wanted.conditions);
  if (Math.abs(reached / ionicStrength - 1) <= reachedWithin) return nearest;
  return {
    status: 'impossible',
    because: 'ionic-strength',
    reason: `with ${reagent.name} the ionic strength reaches ${fourDigits(reached)} mol/L, not ${fourDigits(ionicStrength)}: with more of it, no amounts give pH ${fourDigits(wanted.pH)} under this model of activity`,
    reachable: null,
    mostIonicStrength: reached,
  };
}

/** Of the ionic strength: the search ends at neighbouring doubles or within `rounding`, and a jump ends far outside. */
const reachedWithin = 1e-9;
