import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { checkSmoothing, type EndpointOptions, readEndpointOptions } from './endpoint-options.js';
import type { Endpoints } from './endpoints.js';
import { endpointsBy } from './endpoints-by.js';
import { readReadingColumns } from './read-reading-columns.js';
import type { Readings } from './readings.js';

/**
 * The end points of a titration from its readings, by one method, each with its standard uncertainty.
 *
 * The slope methods take uneven steps and any titration with a step in it; their uncertainty is mostly the length of
 * the steepest interval. The Gran functions draw a line through readings away from the step; their uncertainty is the
 * scatter about the line, and they are off where their approximations are. docs/guides/readings.md has bias and spread
 * of each.
 *
 * @param readings - as from `readReadings`, with volumes that rise from reading to reading
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { findEndpoints } from 'protolysis/measurement';
 *
 * const mL = [23, 24, 24.5, 24.8, 25, 25.2, 25.5, 26];
 * const pH = [5.8, 6.12, 6.43, 6.84, 8.72, 10.6, 10.99, 11.29];
 * const { endpoints } = findEndpoints({ mL, pH, notes: [] }, { method: 'zeroSecondDerivative' });
 * endpoints[0]?.mL; // => 25.0
 * ```
 */
export function findEndpoints(readings: Readings, options: EndpointOptions): Endpoints {
  const faults = new Faults('findEndpoints');
  const given = readReadingColumns(readings, 'readings', faults, { least: 5, rising: true });
  const how = readEndpointOptions(options, faults);
  checkSmoothing(how, given, faults);
  faults.done();
  return frozen(endpointsBy(given, how));
}
