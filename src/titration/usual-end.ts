import { titrationLimits } from './limits.js';
import type { Titration } from './titrate.js';

/**
 * How far a titration is usually carried, mL: to 1.5 times the last equivalence volume, or to twice the analyte where there is none
 * (common practice).
 *
 * @internal
 */
export function usualEnd({
  equivalencePoints,
  setup,
}: Pick<Titration, 'equivalencePoints' | 'setup'>): number {
  const last = equivalencePoints.at(-1)?.mL;
  return Math.min(last === undefined ? 2 * setup.analyte.mL : 1.5 * last, titrationLimits.mL);
}
