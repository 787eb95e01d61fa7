import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Protolyte } from './protolyte.js';
import { readProtolyte } from './read-protolyte.js';

/**
 * Defines a protolyte: one acid with all its conjugate bases.
 *
 * Steps whose pKa falls from one to the next are accepted, with a note: the species between them never prevails.
 *
 * Formulas are labels: any text will do, but `printFormula` sets plain notation in print, with one charge bare at the
 * end and several in brackets: `HCO3-`, `CO3(2-)`.
 *
 * @param protolyte - species from most to least protonated, charges falling by one; pKa from −10 to 20, at most 16
 * steps
 * @returns the same data, plain and as good after a trip through JSON, with a note if the steps are out of order
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { defineProtolyte } from 'protolysis';
 *
 * const sulfamic = defineProtolyte({
 *   id: 'sulfamic',
 *   name: 'sulfamic acid',
 *   species: [
 *     { formula: 'H3NSO3', charge: 0 },
 *     { formula: 'H2NSO3-', charge: -1 },
 *   ],
 *   steps: [{ pKa: 0.99, source: { kind: 'fromMemory', note: 'the usual handbook value' } }],
 * });
 * sulfamic.steps.length; // => 1
 * ```
 */
export function defineProtolyte<const Formula extends string>(
  protolyte: Protolyte<Formula>,
): Protolyte<Formula> {
  const faults = new Faults('defineProtolyte');
  const read = readProtolyte(protolyte, '', faults) as Protolyte<Formula>;
  faults.done();
  const notes = [...new Set([...(read.notes ?? []), ...notesOnOrder(read)])];
  return frozen(notes.length > 0 ? { ...read, notes } : read);
}

function notesOnOrder({ name, steps }: Protolyte): string[] {
  return steps.flatMap(({ pKa }, index) => {
    const before = steps[index - 1];
    if (before === undefined || !(pKa < before.pKa)) return [];
    return [`${name}: pKa ${index + 1} is below pKa ${index}, so the species between them never prevails.`];
  });
}
