import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';

/** What an ingredient may hold. @internal */
export const ingredientKeys = /*#__PURE__*/ frozen(['reagent', 'grams', 'purity', 'mmol', 'molar'] as const);

/**
 * The one quantity by which an ingredient is measured; undefined, with a fault noted, where none or several are given.
 *
 * @internal
 */
export function readMeasure(
  unread: Unread,
  path: string,
  faults: Faults,
): 'grams' | 'mmol' | 'molar' | undefined {
  const given = (['grams', 'mmol', 'molar'] as const).filter((key) => unread[key] !== undefined);
  const allowed = 'one of grams, mmol and molar';
  if (given.length === 0) faults.add('missing', path, allowed, undefined, 'without an amount');
  if (given.length > 1) faults.add('conflict', path, allowed, unread, `given as ${given.join(' and ')}`);
  if (given.length !== 1) return undefined;
  if (unread.purity !== undefined && given[0] !== 'grams')
    faults.add('conflict', `${path}.purity`, 'purity only beside grams', unread.purity);
  return given[0];
}
