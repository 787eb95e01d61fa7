import type { Faults } from '../input/faults.js';
import { type ReadSetup, readSetup } from '../titration/read-setup.js';
import { usualLastVolume } from '../titration/sampling/usual-last-volume.js';
import type { Titration } from '../titration/titration.js';
import { titrationLimits } from '../titration/titration-limits.js';

/** Reads the setup of a titration from a caller's value, noting every fault: the titration is set up anew from it. @internal */
export function readDrawnSetup(value: unknown, path: string, faults: Faults): ReadSetup {
  const { setup } = faults.object(value, path, 'a titration as titrate returns it');
  return readSetup(setup, `${path}.setup`, faults);
}

/** Reads how far a curve is drawn, mL; null where nothing is said. @internal */
export function readUpTo(value: unknown, faults: Faults): number | null {
  if (value === undefined) return null;
  return faults.number(value, 'options.upTo', 'a volume in mL', {
    from: 1e-6,
    to: titrationLimits.mL,
  });
}

/** As far as a titration is usually carried. @internal */
export const usualUpTo = (titration: Titration): number =>
  usualLastVolume(titration.equivalencePoints, titration.setup.analyte);
