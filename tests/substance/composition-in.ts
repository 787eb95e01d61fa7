import type { Element } from '../../src/catalogue/atomic-weights.js';
import { Faults } from '../../src/input/faults.js';
import { readComposition } from '../../src/substance/formula.js';

/** The composition of a formula, or nothing where it is an abbreviation. */
export function compositionIn(formula: string): Map<Element, number> | undefined {
  const faults = new Faults('compositionIn');
  const composition = new Map(readComposition(formula, 'formula', faults));
  return faults.any ? undefined : composition;
}
