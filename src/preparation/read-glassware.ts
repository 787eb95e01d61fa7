import type { Vessel } from '../catalogue/glassware.js';
import type { Faults } from '../input/faults.js';

/** Reads the class of the glassware. @internal */
export function readGlass(value: unknown, usual: 'A' | 'B', faults: Faults): 'A' | 'B' {
  if (value === 'A' || value === 'B') return value;
  if (value !== undefined) faults.add('wrong-type', 'glass', "'A' or 'B'", value);
  return usual;
}

/** Reads the volume of a vessel, mL: one of those that are known. Undefined where it is none. @internal */
export function readVessel(
  value: unknown,
  path: string,
  known: readonly Vessel[],
  faults: Faults,
): Vessel | undefined {
  const before = faults.count;
  const size = faults.number(value, path, 'a volume in mL');
  const vessel = known.find(({ mL }) => mL === size);
  if (!vessel && faults.count === before)
    faults.add('out-of-range', path, `one of ${known.map(({ mL }) => mL).join(', ')} mL`, value);
  return vessel;
}
