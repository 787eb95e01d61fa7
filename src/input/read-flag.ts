import type { Faults } from './faults.js';

/** Reads what is on or off; off if left out. @internal */
export function readFlag(value: unknown, path: string, faults: Faults): boolean {
  if (value === undefined || typeof value === 'boolean') return value === true;
  faults.add('wrong-type', path, 'true or false', value);
  return false;
}
