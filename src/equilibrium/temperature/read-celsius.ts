import { frozen } from '../../frozen.js';
import type { Faults } from '../../input/faults.js';

/** Water is liquid at atmospheric pressure from 0 to 100 °C. */
export const celsiusLimits = /*#__PURE__*/ frozen([0, 100] as const);

/** Reads a temperature from a caller's value. @internal */
export function readCelsius(value: unknown, path: string, faults: Faults): number {
  const [from, to] = celsiusLimits;
  return faults.number(value, path, 'a temperature in °C', { from, to });
}
