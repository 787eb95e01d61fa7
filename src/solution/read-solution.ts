import type { Faults } from '../input/faults.js';
import { fieldsOf, type Unread } from '../input/safe-read.js';
import { readSource } from '../source.js';
import { readReagent } from '../substance/reagent.js';
import { type Given, readConflicts } from './conflicting-constants.js';
import { type Solution, solutionDefaults, solutionLimits } from './solution.js';

/** A value that should be a solution, and where the caller gave it. */
export interface GivenSolution {
  readonly value: unknown;
  readonly path: string;
  /** Whether its volume counts, so that one must have been stated. */
  readonly isPoured?: boolean;
}

/** Reads a solution from a caller's value, noting every fault. @internal */
export function readSolution(value: unknown, path: string, faults: Faults): Solution {
  return readSolutions([{ value, path }], faults)[0] as Solution;
}

/** Reads a solution whose volume counts. @internal */
export function readPouredSolution(value: unknown, path: string, faults: Faults): Solution {
  return readSolutions([{ value, path, isPoured: true }], faults)[0] as Solution;
}

/** Reads solutions that come together: one id may not stand for two things among them. @internal */
export function readSolutions(values: readonly GivenSolution[], faults: Faults): Solution[] {
  const given: Given[] = [];
  const solutions = values.map(({ value, path, isPoured = false }) => {
    const unread = faults.object(
      value,
      path,
      'a solution, as makeSolution makes it or a recipe holds it',
      keys,
    );
    const items = faults.list(unread.contents, `${path}.contents`, 'a list of { reagent, mmol }');
    if (items.some(isIngredient)) {
      faults.add('wrong-type', path, 'makeSolution of it, which works out the amounts', value, 'a recipe');
      return { mL: 1, contents: [] };
    }
    const volume = readVolume(unread, path, isPoured, faults);
    const contents = items.map((item, index) => {
      const here = `${path}.contents[${index}]`;
      const content = faults.object(item, here, 'a content { reagent, mmol }', ['reagent', 'mmol']);
      const reagent = readGiven(content.reagent, `${here}.reagent`, given, faults);
      return { reagent, mmol: readAmount(content.mmol, `${here}.mmol`, volume.mL, faults) };
    });
    return {
      ...volume,
      contents,
      ...(unread.name === undefined ? {} : { name: faults.text(unread.name, `${path}.name`, 'a name') }),
      ...(unread.source === undefined ? {} : { source: readSource(unread.source, `${path}.source`, faults) }),
    };
  });
  readConflicts(given, faults);
  return solutions;
}

/** Whether a content is measured as in a recipe for `makeSolution`. */
function isIngredient(content: unknown): boolean {
  const { grams, molar } = fieldsOf(content) ?? {};
  return grams !== undefined || molar !== undefined;
}

/** What a solution lacks that is poured and was made without a volume. @internal */
export const volumeOfPoured = 'mL to makeSolution, since this volume counts';

const keys = ['mL', 'contents', 'volume', 'name', 'source'];

/**
 * Reads the volume of a solution, and whether it was stated. A solution that assumes one holds the amounts of that
 * volume and of no other.
 */
function readVolume({ mL: given, volume }: Unread, path: string, isPoured: boolean, faults: Faults) {
  const before = faults.count;
  const mL = readSolutionVolume(given, `${path}.mL`, faults);
  if (volume === undefined) return { mL };
  if (faults.count > before) return { mL, volume: 'assumed' as const };
  if (volume !== 'assumed') faults.add('wrong-type', `${path}.volume`, "'assumed' or nothing", volume);
  else if (mL !== solutionDefaults.mL)
    faults.add(
      'conflict',
      `${path}.mL`,
      'the volume to makeSolution or aliquot, which bring the amounts to it',
      mL,
      'changed by hand',
    );
  else if (isPoured) faults.add('missing', `${path}.mL`, volumeOfPoured, mL, 'not stated');
  return { mL, volume: 'assumed' as const };
}

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
