import type { Faults } from '../errors.js';
import type { Readings } from './readings.js';
import { plausiblePH } from './suspicions.js';

/** Most readings that are searched for end points. @internal */
export const mostReadings = 10_000;

/** Reads readings whose volumes rise from line to line, noting every fault. @internal */
export function readGiven(value: unknown, path: string, faults: Faults, least = 3): Readings {
  const before = faults.count;
  const keys = ['mL', 'pH', 'seconds', 'notes'];
  const unread = faults.object(value, path, 'readings { mL, pH }, as from readReadings', keys);
  const column = (key: 'mL' | 'pH', what: string, limits: object) =>
    Array.from(faults.numbers(unread[key], `${path}.${key}`, what, limits, mostReadings));
  const mL = column('mL', 'a volume in mL', { from: 0, to: 1e6 });
  const pH = column('pH', 'a pH', plausiblePH);
  if (faults.count === before) {
    if (mL.length < least) faults.add('out-of-range', `${path}.mL`, `at least ${least} readings`, mL);
    if (pH.length !== mL.length) faults.add('conflict', `${path}.pH`, 'as many items as in mL', pH);
    const falls = mL.findIndex((v, k) => k > 0 && !(v > (mL[k - 1] as number)));
    if (falls > 0)
      faults.add(
        'conflict',
        `${path}.mL[${falls}]`,
        'running totals that rise, one reading at each',
        mL[falls],
      );
  }
  return faults.count > before ? { mL: [0, 1, 2], pH: [7, 7, 7], notes: [] } : { mL, pH, notes: [] };
}
