import { frozen } from '../../frozen.js';
import { at, type Faults } from '../../input/faults.js';
import { readConflicts } from '../../solution/conflicting-constants.js';
import { merged } from '../../solution/merged.js';
import { volumeOfPoured } from '../../solution/read-solution.js';
import { solutionLimits } from '../../solution/solution.js';
import { type Reagent, readReagent } from '../../substance/reagent.js';
import { readExactly } from '../numbers/exactly.js';
import { type Ratio, ratios, textOf } from '../numbers/ratio.js';

/**
 * What a beaker holds, to the last digit: plain data that survives JSON. Quantities are texts, decimal where the
 * decimal ends (`'1.25'`), else a fraction in lowest terms (`'7600/4239.5'` is `'15200/8479'`); equal quantities have
 * equal texts.
 */
export interface ExactSolution {
  /** Volume, mL. */
  readonly mL: string;
  /** Each reagent once. */
  readonly contents: readonly { readonly reagent: Reagent; readonly mmol: string }[];
}

/** The same with its quantities as fractions. @internal */
export interface ReadSolution {
  readonly mL: Ratio;
  readonly contents: readonly { readonly reagent: Reagent; readonly mmol: Ratio }[];
}

/**
 * Reads an exact solution from a caller's value, noting every fault. One of the main entry will do; where it is poured
 * (`isPoured`), its volume must have been stated.
 *
 * @internal
 */
export function readExactSolution(
  value: unknown,
  path: string,
  faults: Faults,
  isPoured = false,
): ReadSolution {
  const what = 'a solution as makeSolution of protolysis/exact returns it';
  const unread = faults.object(value, path, what, ['mL', 'contents', 'volume']);
  if (unread.volume !== undefined && unread.volume !== 'assumed')
    faults.add('wrong-type', at(path, 'volume'), "'assumed' or nothing", unread.volume);
  else if (unread.volume !== undefined && isPoured)
    faults.add('missing', at(path, 'mL'), volumeOfPoured, unread.mL, 'not stated');
  const here = at(path, 'contents');
  const items = faults.list(unread.contents, here, 'a list of { reagent, mmol }', 0, 1000);
  const contents = items.map((item, index) => {
    const content = faults.object(item, `${here}[${index}]`, 'a content { reagent, mmol }');
    return {
      reagent: readReagent(content.reagent, `${here}[${index}].reagent`, faults),
      mmol: readExactly(content.mmol, `${here}[${index}].mmol`, 'an amount in mmol', { from: 0 }, faults),
    };
  });
  return checked({ mL: readExactVolume(unread.mL, at(path, 'mL'), faults), contents }, path, faults);
}

/** The volume of a solution. @internal */
export const readExactVolume = (value: unknown, path: string, faults: Faults): Ratio =>
  readExactly(value, path, 'a volume in mL', { from: solutionLimits.leastML, to: solutionLimits.mL }, faults);

/** A solution with each reagent once. Notes reagents in conflict, and amounts that no liquid holds. @internal */
export function checked({ mL, contents }: ReadSolution, path: string, faults: Faults): ReadSolution {
  if (faults.any) return { mL, contents };
  readConflicts(
    contents.map(({ reagent }) => ({ reagent, path })),
    faults,
  );
  const once = merged(contents.map(({ reagent }) => ({ reagent, mmol: 0 }))).map(({ reagent }) => ({
    reagent,
    mmol: contents
      .filter((content) => content.reagent.id === reagent.id)
      .reduce((total, content) => ratios.plus(total, content.mmol), ratios.of(0)),
  }));
  const most = ratios.times(mL, ratios.of(solutionLimits.molar));
  for (const { reagent, mmol } of once)
    if (ratios.minus(most, mmol).numerator < 0n)
      faults.add(
        'out-of-range',
        at(path, 'contents'),
        `no more than ${solutionLimits.molar} mol/L of one reagent`,
        `more ${reagent.name}`,
      );
  return { mL, contents: once };
}

/** The same as plain data. @internal */
export const written = ({ mL, contents }: ReadSolution): ExactSolution =>
  frozen({
    mL: textOf(mL),
    contents: contents.map(({ reagent, mmol }) => ({ reagent, mmol: textOf(mmol) })),
  });
