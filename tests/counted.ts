import type { Balance } from '../src/equilibrium/charge-balance.js';
import type { Family } from '../src/equilibrium/family.js';
import type { System } from '../src/equilibrium/system.js';

/**
 * A system that counts how often its charge balance is evaluated: an evaluation takes the reciprocals of every family once, and
 * nothing else does. Exact, and the code under test does not know. Without a family there is nothing to watch.
 */
export function counted(system: System): { system: System; evaluations(): number } {
  let taken = 0;
  const [first, ...others] = system.balance.families;
  if (first === undefined) return { system, evaluations: () => Number.NaN };
  const watched: Family = {
    ...first,
    get reciprocals() {
      taken += 1;
      return first.reciprocals;
    },
  };
  const balance: Balance = { ...system.balance, families: [watched, ...others] };
  return { system: { ...system, balance }, evaluations: () => taken };
}
