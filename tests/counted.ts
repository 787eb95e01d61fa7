import type { Balance } from '../src/equilibrium/charge-balance.js';
import type { Family } from '../src/equilibrium/family.js';
import type { Setting } from '../src/equilibrium/setting.js';

/**
 * A setting that counts how often its charge balance is evaluated: an evaluation takes the reciprocals of every family once, and
 * nothing else does. Exact, and the code under test does not know. Without a family there is nothing to watch.
 */
export function counted(setting: Setting): { setting: Setting; evaluations(): number } {
  let taken = 0;
  const [first, ...others] = setting.balance.families;
  if (first === undefined) return { setting, evaluations: () => Number.NaN };
  const watched: Family = {
    ...first,
    get reciprocals() {
      taken += 1;
      return first.reciprocals;
    },
  };
  const balance: Balance = { ...setting.balance, families: [watched, ...others] };
  return { setting: { ...setting, balance }, evaluations: () => taken };
}
