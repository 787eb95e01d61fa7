import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';

/** Standard uncertainties of one reading: of its pH, and of its volume in mL. */
export interface ReadingUncertainty {
  readonly pH: number;
  readonly mL: number;
}

/**
 * What an end point and a fit take where nothing is said: a probe that is steady when it is read, to 0.01 in pH, and a
 * 50 mL burette read to 0.02 mL. Common practice. Practice and diagnosis take twice as much of the pH
 * (`practiceDefaults.noise`), since a class does not always wait that long.
 */
export const usualReadingUncertainty: ReadingUncertainty = /*#__PURE__*/ frozen({ pH: 0.01, mL: 0.02 });

/** None is read more finely than this, in pH or mL: the derivatives of a fit would be lost in rounding. */
const from = 1e-6;

/** Reads the standard uncertainties of a reading. @internal */
export function readReadingUncertainty(value: unknown, path: string, faults: Faults): ReadingUncertainty {
  const u = faults.object(value, path, 'uncertainties { pH, mL }', ['pH', 'mL']);
  return {
    pH: faults.number(u.pH, `${path}.pH`, 'a standard uncertainty of the pH', { from, to: 2 }),
    mL: faults.number(u.mL, `${path}.mL`, 'a standard uncertainty in mL', { from, to: 100 }),
  };
}
