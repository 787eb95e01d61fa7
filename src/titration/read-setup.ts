import { type ConditionsInUse, readConditions, readGas } from '../equilibrium/conditions.js';
import { kindKeyOf } from '../input/describe-value.js';
import { at, type Faults } from '../input/faults.js';
import { readSolutions } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import { type BoilOut, readBoilOut, readBoilOutUnder } from './model/boil-out.js';

/** A setup that has been read. */
export interface ReadSetup {
  readonly analyte: Solution;
  readonly titrant: Solution;
  readonly inUse: ConditionsInUse;
  readonly boilOut: Required<BoilOut> | null;
}

/** Reads a setup from a caller's value, noting every fault. @internal */
export function readSetup(value: unknown, path: string, faults: Faults): ReadSetup {
  const unread = faults.object(value, path, 'a setup { analyte, titrant }', [
    'analyte',
    'titrant',
    'conditions',
    'boilOut',
  ]);
  const [analyte, titrant] = readSolutions(
    [
      { value: unread.analyte, path: at(path, 'analyte'), isPoured: true },
      { value: unread.titrant, path: at(path, 'titrant') },
    ],
    faults,
  ) as [Solution, Solution];
  const inUse = readConditions(unread.conditions, at(path, 'conditions'), faults);
  const boilOut = readBoilOut(unread.boilOut, at(path, 'boilOut'), faults);
  readBoilOutUnder(inUse, boilOut, at(path, 'boilOut'), faults);
  readGas([analyte, titrant], inUse, at(path, 'conditions'), faults);
  return { analyte, titrant, inUse, boilOut };
}

/** Reads the setup of a titration from a caller's titration, noting every fault. @internal */
export function readSetupOf(titration: unknown, faults: Faults): ReadSetup {
  const what = 'a titration as titrate returns it';
  const { setup, ...others } = faults.object(titration, 'titration', what);
  const isOther = setup === undefined && kindKeyOf(others) !== undefined;
  if (isOther) faults.add('wrong-type', 'titration', what, titration);
  return readSetup(isOther ? nothing : setup, 'titration.setup', faults);
}

const water: Solution = { mL: 1, contents: [] };

/** Takes the place of the setup of what is no titration, until the faults are thrown. */
const nothing = { analyte: water, titrant: water };
