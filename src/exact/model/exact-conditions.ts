import { type ActivityLaw, idealLaw } from '../../equilibrium/activity/activity-law.js';
import { modelOf } from '../../equilibrium/activity/debye-huckel-extended.js';
import { type CarbonDioxide, readCarbonDioxide } from '../../equilibrium/carbon-dioxide.js';
import { type ConditionsInUse, conditionDefaults, conditionLimits } from '../../equilibrium/conditions.js';
import { ownPKwAt } from '../../equilibrium/temperature/pkw-at.js';
import { waterAt25 } from '../../equilibrium/temperature/water-at-25.js';
import { frozen } from '../../frozen.js';
import { at, type Faults } from '../../input/faults.js';
import { type Exactly, exactly, numberOf, readExactly } from '../numbers/exactly.js';
import { compared, type Ratio, textOf } from '../numbers/ratio.js';
import { readLaw } from './exact-activity.js';

/** Under which conditions an exact equilibrium is set up; by default ideal, 25 °C, closed to the air. */
export interface ExactConditions {
  /** Temperature, °C, from 0 to 100; 25 by default. */
  readonly celsius?: Exactly;
  /** The law of activity coefficients; `ideal` by default. */
  readonly activity?: ActivityLaw;
  /** Left out, the solution is closed to the air. */
  readonly carbonDioxide?: ExactCarbonDioxide;
  /** −log10 of the ion product of water; left out, 13.995 at 25 °C, moved to other temperatures as `pKwAt` moves. */
  readonly pKw?: Exactly;
}

/**
 * Carbon dioxide at a partial pressure with which the solution is in equilibrium, such as `air`. A share that escapes
 * is refused.
 */
export interface ExactCarbonDioxide extends Pick<CarbonDioxide, 'protolyte' | 'year' | 'source'> {
  /** Partial pressure of CO2, atm. */
  readonly atm: Exactly;
  /** −log10 of Henry's constant, mol/(L·atm); by the formula of `pKHAt` if left out. */
  readonly pKH?: Exactly;
}

/** How many digits are wanted. */
export interface Digits {
  /** Digits after the decimal point of a pH or a volume, or digits in all of any other quantity; 50 if left out. */
  readonly digits?: number;
}

/** From 1 to 500 digits. */
export const exactLimits = /*#__PURE__*/ frozen({ digits: 500 } as const);

/** What the exact functions take for granted. */
export const exactDefaults = /*#__PURE__*/ frozen({ digits: 50 } as const);

/** Conditions that have been read. @internal */
export interface ReadExactConditions {
  readonly celsius: Ratio;
  readonly law: ActivityLaw;
  /** Undefined where it follows from the temperature. */
  readonly pKw: Ratio | undefined;
  readonly gas: { readonly atm: Ratio; readonly pKH: Ratio | undefined } | null;
  /** The same in doubles. */
  readonly inUse: ConditionsInUse;
}

/** The keys of conditions. @internal */
export const conditionKeys = /*#__PURE__*/ frozen(['celsius', 'activity', 'carbonDioxide', 'pKw']);

/** Whether the temperature is that of the constants as they were measured. @internal */
export const isReference = ({ celsius }: Pick<ReadExactConditions, 'celsius'>): boolean =>
  compared(celsius, exactly(conditionDefaults.celsius)) === 0;

/** Reads conditions among the keys of an object, noting every fault. @internal */
export function readExactConditions(
  unread: Readonly<Record<string, unknown>>,
  path: string,
  faults: Faults,
): ReadExactConditions {
  const read = (key: string, what: string, [from, to]: readonly [number, number]) =>
    readExactly(unread[key], at(path, key), what, { from, to }, faults);
  const celsius =
    unread.celsius === undefined
      ? exactly(conditionDefaults.celsius)
      : read('celsius', 'a temperature in °C', conditionLimits.celsius);
  const law =
    unread.activity === undefined ? idealLaw : readLaw(unread.activity, at(path, 'activity'), faults);
  const given = unread.pKw === undefined ? undefined : read('pKw', 'a pKw', conditionLimits.pKw);
  const pKw = given ?? (isReference({ celsius }) ? exactly(waterAt25.pKw) : undefined);
  const { gas, carbonDioxide } = readPressure(unread.carbonDioxide, at(path, 'carbonDioxide'), faults);

  const t = numberOf(celsius);
  const activity = modelOf(law);
  const inDoubles = {
    celsius: t,
    pKw: pKw ? numberOf(pKw) : ownPKwAt(t),
    activity,
    carbonDioxide,
  };
  return {
    celsius,
    law,
    pKw,
    gas,
    inUse: {
      ...inDoubles,
      given: { celsius: t, activity, pKw: inDoubles.pKw, ...(carbonDioxide ? { carbonDioxide } : {}) },
    },
  };
}

function readPressure(
  value: unknown,
  path: string,
  faults: Faults,
): { gas: ReadExactConditions['gas']; carbonDioxide: CarbonDioxide | null } {
  if (value === undefined) return { gas: null, carbonDioxide: null };
  const { escape: share, ...unread } = faults.object(value, path, 'carbon dioxide { atm }');
  if (share !== undefined)
    faults.add(
      'conflict',
      at(path, 'escape'),
      'no share that escapes: carbon dioxide is exact at a fixed pressure only',
      share,
    );
  const limits = { from: 0, to: 100 };
  const atm = readExactly(unread.atm, at(path, 'atm'), 'a partial pressure in atm', limits, faults);
  const pKH =
    unread.pKH === undefined
      ? undefined
      : readExactly(unread.pKH, at(path, 'pKH'), "a −log10 of Henry's constant", { from: -2, to: 5 }, faults);
  const inDoubles = { ...unread, atm: numberOf(atm), ...(pKH ? { pKH: numberOf(pKH) } : {}) };
  return { gas: { atm, pKH }, carbonDioxide: readCarbonDioxide(inDoubles, path, faults) };
}

/** The same as plain data. @internal */
export function writtenConditions({ celsius, law, pKw, gas, inUse }: ReadExactConditions): ExactConditions {
  return {
    celsius: textOf(celsius),
    ...(law.A25 === 0 ? {} : { activity: law }),
    ...(gas && {
      carbonDioxide: {
        ...inUse.carbonDioxide,
        atm: textOf(gas.atm),
        ...(gas.pKH && { pKH: textOf(gas.pKH) }),
      },
    }),
    ...(pKw && { pKw: textOf(pKw) }),
  };
}

/** Reads how many digits are wanted. @internal */
export const readDigits = (value: unknown, faults: Faults): number =>
  value === undefined
    ? exactDefaults.digits
    : faults.number(value, 'digits', 'a number of digits', {
        from: 1,
        to: exactLimits.digits,
        integer: true,
      });
