import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { rectangularHalfWidth, triangularHalfWidth } from '../../solver/half-widths.js';
import type { InputQuantity } from './input-quantity.js';

/**
 * An estimate of which only limits are known, value ± limit: a tolerance, a resolution, a purity on a label.
 *
 *   rectangular   u = limit/√3   any value within the limits is as likely as another
 *   triangular    u = limit/√6   values about the middle are likelier, such as for volumetric glassware
 *
 * The degrees of freedom count as infinite (GUM, G.4.2 and G.4.3).
 *
 * @param value - in any unit
 * @param options.limit - half of the width, in the unit of the value
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { estimateWithin } from 'protolysis/measurement';
 *
 * const purity = estimateWithin(1, { limit: 0.0005, distribution: 'rectangular' });
 * purity.standardUncertainty; // => 0.000289
 * ```
 */
export function estimateWithin(
  value: number,
  options: { readonly limit: number; readonly distribution: 'rectangular' | 'triangular' },
): InputQuantity {
  const faults = new Faults('estimateWithin');
  const middle = faults.number(value, 'value', 'a value', { from: -1e100, to: 1e100 });
  const unread = faults.object(options, 'options', 'options { limit, distribution }', [
    'limit',
    'distribution',
  ]);
  const limit = faults.number(unread.limit, 'options.limit', 'half of the width', { from: 0, to: 1e100 });
  const { distribution } = unread;
  if (distribution !== 'rectangular' && distribution !== 'triangular')
    faults.add('wrong-type', 'options.distribution', "'rectangular' or 'triangular'", distribution);
  faults.done();
  return frozen(within(middle, limit, distribution as 'rectangular' | 'triangular'));
}

/** The same for values that have been read. @internal */
export const within = (
  value: number,
  limit: number,
  distribution: 'rectangular' | 'triangular',
): InputQuantity => ({
  value,
  standardUncertainty: limit / (distribution === 'triangular' ? triangularHalfWidth : rectangularHalfWidth),
  degreesOfFreedom: null,
  distribution,
});
