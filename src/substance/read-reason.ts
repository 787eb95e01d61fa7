import type { Faults } from '../input/faults.js';
import { noteLength, readSource, type Source } from '../source.js';

/** Reads why a substance is left out of a choice, noting every fault. @internal */
export function readReason(value: unknown, path: string, faults: Faults): { reason: string; source: Source } {
  const unread = faults.object(value, path, 'a reason { reason, source }', ['reason', 'source']);
  return {
    reason: faults.text(unread.reason, `${path}.reason`, 'a reason', noteLength),
    source: readSource(unread.source, `${path}.source`, faults),
  };
}
