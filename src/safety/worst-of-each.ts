import type { GasSetFree } from './gases-from.js';

/** Of each gas the case with the highest pressure, in the order in which the gases first occur. @internal */
export function worstOfEach(found: readonly GasSetFree[]): readonly GasSetFree[] {
  const worst = new Map<string, GasSetFree>();
  for (const gas of found) {
    const before = worst.get(gas.name);
    if (before === undefined || (gas.atm ?? 0) > (before.atm ?? 0)) worst.set(gas.name, gas);
  }
  return [...worst.values()];
}
