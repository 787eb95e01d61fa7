import { carbonic } from '../catalogue/acids/inorganic.js';
import { henryAt } from '../equilibrium/carbon-dioxide.js';
import { type Conditions, conditionDefaults } from '../equilibrium/conditions.js';
import type { Equilibrium } from '../equilibrium/equilibrium.js';
import { bufferDefaults } from './buffer-defaults.js';

/**
 * What a finished buffer gives to think about.
 *
 * @param total - mmol of the buffering protolyte; null where that was not asked for
 * @internal
 */
export function recipeNotes(
  equilibrium: Equilibrium,
  total: number | null,
  conditions: Conditions,
): string[] {
  return [
    ...equilibrium.notes,
    ...weakness(equilibrium, total),
    ...fizz(equilibrium, conditions),
    ...exchange(equilibrium, conditions),
  ];
}

/** What a pair has left one pH unit from its pKa is where common practice stops calling it a buffer. */
function weakness({ bufferCapacity, solution }: Equilibrium, total: number | null): string[] {
  if (total === null) return [];
  const peak = ((Math.LN10 / 4) * total) / solution.mL;
  if (bufferCapacity >= bufferDefaults.usefulShare * peak) return [];
  const percent = ((100 * bufferCapacity) / peak).toFixed(0);
  return [
    `This pH is far from any pKa: the capacity is ${percent} % of what the same concentration has at pH = pKa.`,
  ];
}

/** Carbon dioxide under more than the pressure of the atmosphere leaves in bubbles. */
function fizz({ species }: Equilibrium, { celsius = conditionDefaults.celsius }: Conditions): string[] {
  const gas = species.find(
    ({ protolyteId, formula }) => protolyteId === carbonic.id && formula === carbonic.species[0]?.formula,
  );
  const atm = (gas?.activity ?? 0) * 10 ** henryAt(celsius);
  if (!(atm > 1)) return [];
  return [
    `Carbon dioxide would stand at ${Number(atm.toPrecision(2))} atm: it leaves in bubbles, in a closed bottle under pressure, and the pH rises.`,
  ];
}

/** What comes and goes with the air has no concentration that one could weigh out. */
function exchange({ solution }: Equilibrium, { carbonDioxide }: Conditions): string[] {
  const id = carbonDioxide && (carbonDioxide.protolyte ?? carbonic).id;
  const held = solution.contents.some(
    ({ reagent, mmol }) => mmol > 0 && reagent.protolytes.some(({ protolyte }) => protolyte.id === id),
  );
  if (!held) return [];
  return [
    'The concentration of carbonate is as weighed out; in the end the air decides how much of it stays.',
  ];
}
