import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';
import { doubles } from '../solver/arithmetic.js';
import { readSource, type Source } from '../source.js';
import type { Protolyte, TemperatureFit } from '../substance/protolyte.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import { log10KAt } from './temperature/log10-k-at.js';

/** The exchange of carbon dioxide between the solution and the air. Without it, the solution is closed to the air. */
export interface CarbonDioxide {
  /** Partial pressure of CO2, atm. */
  readonly atm: number;
  /**
   * Without it, the solution takes up or gives off CO2 until it is in equilibrium with `atm`. With it, CO2 only
   * escapes: this share, from 0 to 1, of the CO2 by which the solution is supersaturated at `atm`.
   */
  readonly escape?: number;
  /** −log10 of Henry's constant, mol/(L·atm); by `pKHAt` if left out. */
  readonly pKH?: number;
  /**
   * The dissolved gas and its ions, most protonated first; that of the solution with the id `carbonic`, or
   * `acids.carbonic`.
   */
  readonly protolyte?: Protolyte;
  /** For which year the pressure holds, and where it comes from. */
  readonly year?: number;
  readonly source?: Source;
}

/**
 * Outdoor air: 423.9 ppm of CO2 in dry air (global mean of 2024) under 1 atm saturated with water vapour at 25 °C
 * (0.0313 atm).
 *
 * Air in a full teaching laboratory commonly holds two to three times as much (common practice).
 *
 * @example
 * ```ts
 * import { air, makeSolution, pHOf } from 'protolysis';
 *
 * pHOf(makeSolution({ contents: [] }), { carbonDioxide: air }); // => 5.602
 * ```
 */
export const air = /*#__PURE__*/ frozen({
  atm: 4.106e-4,
  year: 2024,
  source: {
    kind: 'published',
    work: 'wmo-2025',
    where:
      'global annual mean mole fraction of CO2 in 2024, 423.9 ppm; less the vapour pressure of water at 25 °C',
    checked: 'two news reports of the bulletin quote 423.9 ppm',
  },
} as const satisfies CarbonDioxide);

/** Henry's constant of CO2: log10 K in mol/(kg·atm). */
export const henryFit: TemperatureFit & { readonly name: string } = /*#__PURE__*/ frozen({
  name: 'Henry’s constant of carbon dioxide',
  coefficients: [108.3865, 0.01985076, -6919.53, -40.45154, 669365],
  celsius: [0, 90],
  source: {
    kind: 'fromMemory',
    work: 'plummer-busenberg-1982',
    note: 'the coefficients of the equation for KH; they give the printed −1.47 at 25 °C',
  },
});

const keys = ['atm', 'escape', 'pKH', 'protolyte', 'year', 'source'];

/** Reads the carbon dioxide of conditions. @internal */
export function readCarbonDioxide(value: unknown, path: string, faults: Faults): CarbonDioxide {
  const unread = faults.object(
    value,
    path,
    'carbon dioxide { atm }, such as air of this package, or { escape, atm }',
    keys,
  );
  const { escape: share, pKH, protolyte, year, source } = unread;
  const atm = faults.number(unread.atm, `${path}.atm`, 'a partial pressure in atm', { from: 0, to: 100 });
  if (share !== undefined) faults.number(share, `${path}.escape`, 'a share', { from: 0, to: 1 });
  if (pKH !== undefined)
    faults.number(pKH, `${path}.pKH`, "a −log10 of Henry's constant", { from: -2, to: 5 });
  if (year !== undefined) faults.number(year, `${path}.year`, 'a year', { from: -1e4, to: 1e4 });
  const read = { ...unread, atm } as CarbonDioxide;
  return {
    ...read,
    ...(source !== undefined && { source: readSource(source, `${path}.source`, faults) }),
    ...(protolyte !== undefined && { protolyte: readGasProtolyte(protolyte, `${path}.protolyte`, faults) }),
  };
}

function readGasProtolyte(value: unknown, path: string, faults: Faults): Protolyte {
  const before = faults.count;
  const protolyte = readProtolyte(value, path, faults);
  const charge = faults.count === before ? protolyte.species[0]?.charge : 0;
  if (charge !== 0)
    faults.add('out-of-range', `${path}.species[0].charge`, 'a neutral gas, charge 0', charge);
  return protolyte;
}

/** −log10 of Henry's constant at a temperature that has been read. @internal */
export const henryAt = (celsius: number): number => -log10KAt(doubles, henryFit, celsius);
