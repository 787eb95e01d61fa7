import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from './indicator.js';
import { readIndicator } from './read-indicator.js';

/**
 * Defines an indicator.
 *
 * @param indicator - a transition from a lower to a higher pH, and two colours of which at most one is `colourless`
 * @returns the same data, plain and as good after a trip through JSON
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { defineIndicator } from 'protolysis';
 *
 * const redCabbage = defineIndicator({
 *   id: 'redCabbage',
 *   name: 'red cabbage juice (first change)',
 *   transition: { from: 3, to: 6 },
 *   acidColour: 'red',
 *   baseColour: 'violet',
 *   source: { kind: 'commonPractice', note: 'broad; differs from cabbage to cabbage' },
 * });
 * redCabbage.transition.to; // => 6
 * ```
 */
export function defineIndicator(indicator: Indicator): Indicator {
  const faults = new Faults('defineIndicator');
  const checked = readIndicator(indicator, '', faults);
  faults.done();
  return frozen(checked);
}
