import type { Faults } from '../errors.js';
import { readReagent } from '../substance/reagent.js';
import { type Solution, solutionLimits } from './solution.js';
import { readTotals } from './totals.js';

/** Reads a solution from a caller's value, noting every fault. @internal */
export function readSolution(value: unknown, path: string, faults: Faults): Solution {
  const before = faults.count;
  const unread = faults.object(value, path, 'a solution as makeSolution returns it');
  const mL = faults.number(unread.mL, `${path}.mL`, 'a volume in mL', { above: 0, to: solutionLimits.mL });
  const items = faults.list(unread.contents, `${path}.contents`, 'a list of { reagent, mmol }');
  for (const [index, item] of items.entries()) {
    const here = `${path}.contents[${index}]`;
    const content = faults.object(item, here, 'a content { reagent, mmol }');
    readReagent(content.reagent, `${here}.reagent`, faults);
    readAmount(content.mmol, `${here}.mmol`, mL, faults);
  }
  const solution = unread as unknown as Solution;
  if (faults.count === before && Array.isArray(unread.contents)) readTotals([solution], path, faults);
  return solution;
}

/** An aliquot of a solution at the limit may stand an ulp above it. */
const rounding = 1e-12;

/** Reads an amount in mmol that must fit into a volume. @internal */
export function readAmount(value: unknown, path: string, mL: number, faults: Faults): number {
  const most = solutionLimits.molar;
  return faults.number(value, path, `an amount in mmol (no more than ${most} mol/L of one reagent)`, {
    from: 0,
    to: mL * most * (1 + rounding),
  });
}
