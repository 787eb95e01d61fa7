import { frozen } from '../frozen.js';
import { at, type Faults } from '../input/faults.js';
import { constantsAsText } from '../solution/conflicting-constants.js';
import type { Content } from '../solution/solution.js';
import type { ActivityModel } from './activity/activity-model.js';
import { ideal } from './activity/laws.js';
import { readActivityModel } from './activity/read-activity-model.js';
import { type CarbonDioxide, henryFit, readCarbonDioxide } from './carbon-dioxide.js';
import { ownPKwAt } from './temperature/pkw-at.js';
import { celsiusLimits, readCelsius } from './temperature/read-celsius.js';

/** Under which conditions an equilibrium is set up. */
export interface Conditions {
  /** Temperature, °C; 25 by default. */
  readonly celsius?: number;
  /** The law of activity coefficients; `ideal` by default. */
  readonly activity?: ActivityModel;
  /** Exchange of carbon dioxide with the air; none by default. */
  readonly carbonDioxide?: CarbonDioxide;
  /** −log10 of the ion product of water; left out, that of `pKwAt`: 13.995 at 25 °C. */
  readonly pKw?: number;
}

/** Conditions that have been read, with every default filled in. */
export interface ConditionsInUse {
  /** What was given, and the temperature. A pKw that was left out stays out, so that it follows another temperature. */
  readonly given: Conditions;
  readonly celsius: number;
  readonly pKw: number;
  readonly activity: ActivityModel;
  readonly carbonDioxide: CarbonDioxide | null;
}

/** Temperature, °C, of liquid water; pKw from 10 to 20: the range over which the solver's brackets are tested. */
export const conditionLimits = /*#__PURE__*/ frozen({ celsius: celsiusLimits, pKw: [10, 20] } as const);

/** What conditions are by default. */
export const conditionDefaults = /*#__PURE__*/ frozen({ celsius: 25, activity: ideal } as const);

const keys = ['celsius', 'activity', 'carbonDioxide', 'pKw'];

/** What to give for conditions. @internal */
export const conditionsWanted = 'conditions { celsius, activity, carbonDioxide, pKw }';

/** Reads conditions from a caller's value, noting every fault. @internal */
export function readConditions(value: unknown, path: string, faults: Faults): ConditionsInUse {
  const unread = value === undefined ? {} : faults.object(value, path, conditionsWanted, keys);
  const celsius =
    unread.celsius === undefined
      ? conditionDefaults.celsius
      : readCelsius(unread.celsius, `${path}.celsius`, faults);
  const activity =
    unread.activity === undefined
      ? conditionDefaults.activity
      : readActivityModel(unread.activity, `${path}.activity`, celsius, faults);
  const carbonDioxide =
    unread.carbonDioxide === undefined
      ? null
      : readCarbonDioxide(unread.carbonDioxide, `${path}.carbonDioxide`, faults);
  const [from, to] = conditionLimits.pKw;
  const pKw =
    unread.pKw === undefined
      ? ownPKwAt(celsius)
      : faults.number(unread.pKw, `${path}.pKw`, 'a pKw', { from, to });
  return {
    given: {
      celsius,
      ...(unread.activity === undefined ? {} : { activity }),
      ...(carbonDioxide ? { carbonDioxide } : {}),
      ...(unread.pKw === undefined ? {} : { pKw }),
    },
    celsius,
    pKw,
    activity,
    carbonDioxide,
  };
}

/** What is uncertain about conditions, whatever the solution. @internal */
export function notesOnConditions({ celsius, carbonDioxide }: ConditionsInUse): string[] {
  const [from, to] = henryFit.celsius;
  if (!carbonDioxide || carbonDioxide.pKH !== undefined || celsius <= to) return []; // water begins at 0 °C too
  return [`Carbon dioxide: ${celsius} °C is outside the range of Henry's constant, ${from} to ${to} °C.`];
}

/**
 * Notes a fault where the gas of conditions and a protolyte of the solutions share an id but not their constants.
 *
 * @internal
 */
export function readGas(
  solutions: readonly { readonly contents: readonly Pick<Content, 'reagent'>[] }[],
  { carbonDioxide }: ConditionsInUse,
  path: string,
  faults: Faults,
): void {
  const gas = carbonDioxide?.protolyte;
  if (!gas || faults.any) return;
  const present = solutions
    .flatMap(({ contents }) => contents.flatMap(({ reagent }) => reagent.protolytes))
    .filter(({ protolyte }) => protolyte.id === gas.id);
  if (present.some(({ protolyte }) => constantsAsText(protolyte) !== constantsAsText(gas)))
    faults.add(
      'conflict',
      at(path, 'carbonDioxide.protolyte'),
      `one set of constants for the protolyte '${gas.id}'`,
      gas,
      'another one under the same id',
    );
}
