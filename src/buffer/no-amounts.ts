import type { Precipitate } from '../equilibrium/precipitates.js';
import type { PH } from '../equilibrium/quantities.js';
import { fourDigits } from '../print-number.js';
import type { AmountsWanted } from './amounts-wanted.js';
import { bufferLimits } from './buffer-defaults.js';
import { isNeutralSalt } from './ion-charge.js';
import type { ImpossibleBuffer } from './recipe.js';

/**
 * Why no amounts give the pH, from the pH at both ends of the part of the line that fits into the volume.
 *
 * @param overall - the pH at both ends of the whole line; where one lies beyond the target, the stocks are what is in
 * the way
 * @internal
 */
export function outOfReach(
  wanted: AmountsWanted,
  [atStart, atEnd]: readonly [PH, PH],
  overall: readonly [PH, PH],
): ImpossibleBuffer {
  const { pH, ingredients, brings } = wanted;
  const reachable = { from: Math.min(atStart, atEnd), to: Math.max(atStart, atEnd) };
  const beyondStart = Math.abs(atStart - pH) <= Math.abs(atEnd - pH);
  const [end, over] = beyondStart ? [atStart, overall[0]] : [atEnd, overall[1]];
  if ((over - pH) * (end - pH) <= 0) return tooDilute(wanted, reachable);
  const [first, second] = ingredients;
  const adjusts = brings[1] === 0;
  const why = () => {
    if (adjusts && second.unit.every(({ reagent }) => isNeutralSalt(reagent)))
      return `${second.name} is neither acid nor base`;
    if (adjusts && !beyondStart)
      return `even ${second.stock ? 'the whole volume' : `${mostMolar} mol/L`} of ${second.name} is not enough`;
    return `it would take a negative amount of ${beyondStart ? second.name : first.name}`;
  };
  return {
    status: 'impossible',
    because: 'out-of-reach',
    reason: `these reach pH ${apart(reachable, pH)}: ${why()}`,
    reachable,
  };
}

/** Both ends and the pH asked for, with two decimals or as many more as tell it from the nearer end. */
function apart({ from, to }: { readonly from: PH; readonly to: PH }, pH: PH): string {
  const nearer = Math.min(Math.abs(pH - from), Math.abs(pH - to));
  const decimals = Math.min(Math.max(2, Math.ceil(-Math.log10(nearer))), mostDecimals);
  const asked = decimals > 2 ? pH.toFixed(decimals) : fourDigits(pH);
  return `${from.toFixed(decimals)} to ${to.toFixed(decimals)}, not ${asked}`;
}

/** Of a pH: the rounding of a double lies beyond. */
const mostDecimals = 12;

/** Why no amounts fit into the volume. @internal */
export function tooDilute(
  { mL, ingredients }: AmountsWanted,
  reachable: ImpossibleBuffer['reachable'],
): ImpossibleBuffer {
  const names = ingredients.map(({ name }) => name).join(' and ');
  return {
    status: 'impossible',
    because: 'too-dilute',
    reason: `${names} would fill more than ${fourDigits(mL)} mL: take more concentrated stocks, or a lower concentration`,
    reachable,
  };
}

/** Why amounts that fit still give no solution. @internal */
export const saturatedWith = ({ solid: { name, source } }: Precipitate): ImpossibleBuffer => ({
  status: 'impossible',
  because: 'saturated',
  reason: `${name} would not stay dissolved: its ions multiply to more than in its saturated solution at 25 °C`,
  reachable: null,
  source,
});

const [, mostMolar] = bufferLimits.molar;
