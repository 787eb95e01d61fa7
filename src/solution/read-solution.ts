import type { Faults } from '../input/faults.js';
import { readSource } from '../source.js';
import { readReagent } from '../substance/reagent.js';
import { type Given, readConflicts } from './conflicting-constants.js';
import { type Solution, solutionLimits } from './solution.js';

/** Reads a solution from a caller's value, noting every fault. @internal */
export function readSolution(value: unknown, path: string, faults: Faults): Solution {
  return readSolutions([{ value, path }], faults)[0] as Solution;
}

/** Reads solutions that come together: one id may not stand for two things among them. @internal */
export function readSolutions(
  values: readonly { readonly value: unknown; readonly path: string }[],
  faults: Faults,
): Solution[] {
  const given: Given[] = [];
  const solutions = values.map(({ value, path }) => {
    const unread = faults.object(value, path, 'a solution, as makeSolution makes it', keys);
    const mL = readSolutionVolume(unread.mL, `${path}.mL`, faults);
    const contents = faults
      .list(unread.contents, `${path}.contents`, 'a list of { reagent, mmol }')
      .map((item, index) => {
        const here = `${path}.contents[${index}]`;
        const content = faults.object(item, here, 'a content { reagent, mmol }', ['reagent', 'mmol']);
        const reagent = readGiven(content.reagent, `${here}.reagent`, given, faults);
        return { reagent, mmol: readAmount(content.mmol, `${here}.mmol`, mL, faults) };
      });
    return {
      mL,
      contents,
      ...(unread.name === undefined ? {} : { name: faults.text(unread.name, `${path}.name`, 'a name') }),
      ...(unread.source === undefined ? {} : { source: readSource(unread.source, `${path}.source`, faults) }),
    };
  });
  readConflicts(given, faults);
  return solutions;
}

const keys = ['mL', 'contents', 'name', 'source'];

/** Reads a reagent, and keeps it for the comparison with others if nothing is wrong with it. @internal */
export function readGiven(value: unknown, path: string, given: Given[], faults: Faults) {
  const before = faults.count;
  const reagent = readReagent(value, path, faults);
  if (faults.count === before) given.push({ reagent, path });
  return reagent;
}

/** Reads a solution's volume, mL. A wrong one gives the greatest volume, in which any amount fits. @internal */
export function readSolutionVolume(value: unknown, path: string, faults: Faults): number {
  const { leastML, mL: most } = solutionLimits;
  const before = faults.count;
  const mL = faults.number(value, path, 'a volume in mL', { from: leastML, to: most });
  return faults.count === before ? mL : most;
}

/** Rounding may put an aliquot of a solution at the limit just above it. */
const rounding = 1e-12;

/** Reads an amount in mmol that must fit into a volume. @internal */
export function readAmount(value: unknown, path: string, mL: number, faults: Faults): number {
  const { molar } = solutionLimits;
  const most = mL * molar;
  const rounds = typeof value === 'number' && value > most && value <= most * (1 + rounding);
  return faults.number(value, path, `an amount in mmol (no more than ${molar} mol/L of one reagent)`, {
    from: 0,
    to: rounds ? value : most,
  });
}
