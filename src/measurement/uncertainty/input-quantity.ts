import { shorten } from '../../input/describe-value.js';
import type { Faults } from '../../input/faults.js';
import type { Limits } from '../../input/limits.js';
import { nearestName } from '../../input/nearest-name.js';
import type { Estimate } from '../estimate.js';

/** How the values that a quantity may have are spread about its estimate. */
export type Distribution = 'normal' | 'rectangular' | 'triangular';

/** An estimate that a result is computed from (an input quantity of the GUM). */
export interface InputQuantity extends Estimate {
  /** Normal if left out. A normal one with finite degrees of freedom counts as Student's t in a simulation. */
  readonly distribution?: Distribution;
}

/** A quantity with its uncertainty, or a bare number that counts as exact. */
export type Measured = number | InputQuantity;

const distributions: readonly Distribution[] = ['normal', 'rectangular', 'triangular'];

const most = 1e100;

/**
 * Reads a quantity from a caller's value, noting every fault. A result, which has more keys than an estimate, will do; a key
 * that looks like `distribution` is a typing slip that would be lost.
 *
 * @param what - the quantity and its unit, such as `a volume in mL`
 * @internal
 */
export function readMeasured(
  value: unknown,
  path: string,
  what: string,
  faults: Faults,
  limits: Limits = { from: -most, to: most },
): InputQuantity {
  if (typeof value === 'number')
    return {
      value: faults.number(value, path, what, limits),
      standardUncertainty: 0,
      degreesOfFreedom: null,
    };
  const words = `${what}: a number, or an estimate { value, standardUncertainty, degreesOfFreedom }`;
  const unread = faults.object(value, path, words);
  for (const key of Object.keys(unread))
    if (key !== 'distribution' && nearestName(key, ['distribution', 'contributions']) === 'distribution')
      faults.add(
        'unknown-key',
        `${path}.${shorten(key)}`,
        'distribution, if that is meant',
        key,
        'not a key',
      );
  const { distribution = 'normal', degreesOfFreedom } = unread;
  if (!distributions.includes(distribution as Distribution))
    faults.add('wrong-type', `${path}.distribution`, `one of ${distributions.join(', ')}`, distribution);
  const freedom = 'degrees of freedom, or null for infinitely many';
  return {
    value: faults.number(unread.value, `${path}.value`, what, limits),
    standardUncertainty: faults.number(
      unread.standardUncertainty,
      `${path}.standardUncertainty`,
      `a standard uncertainty in the unit of ${what}`,
      { from: 0, to: most },
    ),
    degreesOfFreedom:
      degreesOfFreedom === null
        ? null
        : faults.number(degreesOfFreedom, `${path}.degreesOfFreedom`, freedom, { from: 1 }),
    distribution: distribution as Distribution,
  };
}
