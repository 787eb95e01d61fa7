import type { Faults } from '../input/faults.js';

/** Standard uncertainties of one reading: of its pH, and of its volume in mL. */
export interface ReadingUncertainty {
  readonly pH: number;
  readonly mL: number;
}

/** Reads the standard uncertainties of a reading. @internal */
export function readReadingUncertainty(value: unknown, path: string, faults: Faults): ReadingUncertainty {
  const u = faults.object(value, path, 'uncertainties { pH, mL }', ['pH', 'mL']);
  return {
    pH: faults.number(u.pH, `${path}.pH`, 'a standard uncertainty of the pH', { above: 0, to: 2 }),
    mL: faults.number(u.mL, `${path}.mL`, 'a standard uncertainty in mL', { above: 0, to: 100 }),
  };
}
