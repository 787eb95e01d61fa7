import { isIdeal } from '../../equilibrium/system.js';
import { type Chemistry, chemistryAt } from './chemistry.js';
import { idealResponse } from './ideal-response.js';
import { realResponse } from './real-response.js';
import type { Respond } from './response.js';

/** The response of a titration at some values of its parameters, with coefficients of activity where it has a law. @internal */
export function respondAt(chemistry: Chemistry, values: ArrayLike<number>): Respond {
  const at = chemistryAt(chemistry, values);
  return isIdeal(chemistry.system) ? idealResponse(chemistry, at) : realResponse(chemistry, at);
}
