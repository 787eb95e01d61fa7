import { conditionLimits, waterAt25 } from '../equilibrium/conditions.js';
import { at, type Faults } from '../errors.js';
import { type Exactly, readExactly } from './exactly.js';
import { type Ratio, textOf } from './ratio.js';

/** Under which conditions an exact equilibrium is set up: ideal, 25 °C, closed to the air. */
export interface ExactConditions {
  /** −log10 of the ion product of water; the value at 25 °C by default. */
  readonly pKw?: Exactly;
}

/** How many digits are wanted. */
export interface Digits {
  /** Digits after the decimal point of a pH or a volume, or digits in all of any other quantity; 50 if left out. */
  readonly digits?: number;
}

/** From 1 to 500 digits. */
export const exactLimits = { digits: 500 } as const;

/** What the exact functions take for granted. */
export const exactDefaults = { digits: 50 } as const;

/** @internal */
export interface ReadConditions {
  readonly pKw: Ratio;
}

/** The keys of conditions. @internal */
export const conditionKeys = ['pKw'];

/** Reads conditions among the keys of an object, noting every fault. @internal */
export function readConditions(
  unread: Readonly<Record<string, unknown>>,
  path: string,
  faults: Faults,
): ReadConditions {
  const [from, to] = conditionLimits.pKw;
  const { pKw = waterAt25.pKw } = unread;
  return { pKw: readExactly(pKw, at(path, 'pKw'), 'a pKw', { from, to }, faults) };
}

/** The same as plain data. @internal */
export const writtenConditions = ({ pKw }: ReadConditions): ExactConditions => ({ pKw: textOf(pKw) });

/** @internal */
export const readDigits = (value: unknown, faults: Faults): number =>
  value === undefined
    ? exactDefaults.digits
    : faults.number(value, 'digits', 'a number of digits', {
        from: 1,
        to: exactLimits.digits,
        integer: true,
      });
