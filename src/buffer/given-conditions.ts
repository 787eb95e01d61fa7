import { type Conditions, conditionsWanted, readConditions } from '../equilibrium/conditions.js';
import type { Faults } from '../input/faults.js';

/**
 * Conditions as the caller gave them, noting every fault: what is left out stays left out, so that another
 * temperature can take the place of the default.
 *
 * @internal
 */
export function givenConditions(value: unknown, path: string, faults: Faults): Conditions {
  if (value === undefined) return {};
  const given = faults.object(value, path, conditionsWanted);
  readConditions(given, path, faults);
  return given as Conditions;
}
