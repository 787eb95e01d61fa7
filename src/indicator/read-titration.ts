import type { Faults } from '../errors.js';
import type { Titration } from '../titration/titrate.js';

/** Reads a titration from a caller's value: it must have its methods, which a copy that came through JSON has not. @internal */
export function readTitration(value: unknown, faults: Faults): Titration | undefined {
  const before = faults.count;
  const what = 'a titration as titrate returns it';
  const unread = faults.object(value, 'titration', what);
  if (faults.count > before) return undefined;
  for (const method of ['pHAt', 'slopeAt', 'volumeAt', 'volumesAt'])
    if (typeof unread[method] !== 'function')
      faults.add('wrong-type', `titration.${method}`, what, unread[method]);
  const points = faults.list(unread.equivalencePoints, 'titration.equivalencePoints', what);
  for (const [k, point] of points.entries()) {
    const { mL } = faults.object(point, `titration.equivalencePoints[${k}]`, 'an equivalence point');
    faults.number(mL, `titration.equivalencePoints[${k}].mL`, 'a volume in mL', { above: 0 });
  }
  return faults.count > before ? undefined : (value as Titration);
}
