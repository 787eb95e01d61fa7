import { carbonic } from '../catalogue/acids/inorganic.js';
import { henryAt } from '../equilibrium/carbon-dioxide.js';
import { type Conditions, conditionDefaults } from '../equilibrium/conditions.js';
import type { Equilibrium } from '../equilibrium/equilibrium.js';
import { bufferDefaults } from './buffer-defaults.js';

/**
 * The notes on a finished buffer.
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

/** The capacity of a pair one pH unit from its pKa: below it, common practice does not call it a buffer. */
function weakness({ bufferCapacity, solution }: Equilibrium, total: number | null): string[] {
  if (total === null) return [];
  const peak = ((Math.LN10 / 4) * total) / solution.mL;
  if (bufferCapacity >= bufferDefaults.usefulShare * peak) return [];
  const percent = ((100 * bufferCapacity) / peak).toFixed(0);
  return [
    `This pH is far from any pKa: the capacity is ${percent} % of what the same concentration has at pH = pKa.`,
  ];
}

/** Above the pressure of the atmosphere, atm, carbon dioxide escapes in bubbles. */
function fizz({ species }: Equilibrium, { celsius = conditionDefaults.celsius }: Conditions): string[] {
  const gas = species.find(({ protolyteId }) => protolyteId === carbonic.id); // its first form is CO2
  const atm = (gas?.activity ?? 0) * 10 ** henryAt(celsius);
  if (!(atm > 1)) return [];
  return [
    `Carbon dioxide would stand at ${Number(atm.toPrecision(2))} atm: it leaves in bubbles, in a closed bottle under pressure, and the pH rises.`,
  ];
}

/** A gas that is exchanged with the air has no concentration that could be weighed. */
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
