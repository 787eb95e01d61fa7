import type { Faults } from '../errors.js';
import type { Source } from '../source.js';

/** Under which conditions an equilibrium is set up. */
export interface Conditions {
  /** −log10 of the ion product of water; the value at 25 °C by default. */
  readonly pKw?: number;
}

/** The ion product of water at 25 °C and 0.1 MPa. */
export const waterAt25: { readonly name: string; readonly pKw: number; readonly source: Source } = {
  name: 'ion product of water',
  pKw: 13.995,
  source: {
    kind: 'published',
    work: 'iapws-r11-07',
    where: 'equation at 298.15 K and 0.1 MPa, as printed in the CRC Handbook, Ionization Constant of Water',
  },
};

/** pKw from 10 to 20: the range over which the solver's brackets are tested. */
export const conditionLimits = { pKw: [10, 20] } as const;

/** Reads conditions from a caller's value, noting every fault. @internal */
export function readConditions(value: unknown, path: string, faults: Faults): Required<Conditions> {
  if (value === undefined) return { pKw: waterAt25.pKw };
  const unread = faults.object(value, path, 'conditions { pKw }', ['pKw']);
  if (unread.pKw === undefined) return { pKw: waterAt25.pKw };
  const [from, to] = conditionLimits.pKw;
  return { pKw: faults.number(unread.pKw, `${path}.pKw`, 'a pKw', { from, to }) };
}
