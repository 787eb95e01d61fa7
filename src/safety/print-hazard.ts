import { capitalised } from '../capitalised.js';
import type { Hazard } from '../substance/hazard.js';

/** The words for the bottle: every limit, then what else there is to say. @internal */
export function printHazard(hazard: string | Hazard): string {
  if (typeof hazard === 'string') return hazard;
  const { limits, words } = hazard;
  const ladder = limits.map(
    ({ percent, effect }, k) => `${effect} from ${percent} %${k === 0 ? ' by mass' : ''}`,
  );
  return `${capitalised(ladder.join(', '))}. ${words}`;
}
