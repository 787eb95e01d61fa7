import { Faults } from '../input/faults.js';
import { numberAt } from '../solver/number-at.js';
import type { PHStandard } from '../substance/ph-standard.js';

/**
 * The pH of a standard buffer at a temperature, on the line between the two nearest temperatures of its table.
 *
 * The tables go by 5 °C and are printed to 0.001; a line misses their curvature by less than 0.001 (borax near 0 °C,
 * the most curved).
 *
 * @param standard - one of `pHStandards`, or one of your own
 * @param celsius - temperature of the buffer, °C, within the standard's table
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { pHStandards } from 'protolysis';
 * import { standardPH } from 'protolysis/measurement';
 *
 * standardPH(pHStandards.phthalate, 25); // => 4.005
 * standardPH(pHStandards.borax, 22); // => 9.207
 * ```
 */
export function standardPH(standard: PHStandard, celsius: number): number {
  const faults = new Faults('standardPH');
  const table = readStandard(standard, 'standard', faults);
  const t = readTemperature(celsius, 'celsius', table, faults);
  faults.done();
  return pHIn(table, t);
}

/** What a calibration needs of a standard. @internal */
export interface StandardTable {
  readonly name: string;
  readonly celsius: ArrayLike<number>;
  readonly pH: ArrayLike<number>;
}

/** Reads the name and table of a standard. @internal */
export function readStandard(value: unknown, path: string, faults: Faults): StandardTable {
  const before = faults.count;
  const unread = faults.object(value, path, 'a standard, such as pHStandards.phthalate');
  const name = faults.text(unread.name, `${path}.name`, 'a name');
  const celsius = faults.numbers(
    unread.celsius,
    `${path}.celsius`,
    'a temperature in °C',
    { from: -50, to: 200 },
    1000,
  );
  const pH = faults.numbers(unread.pH, `${path}.pH`, 'a pH', { from: -2, to: 16 }, 1000);
  if (faults.count > before) return unreadable;
  if (celsius.length === 0 || celsius.length !== pH.length)
    faults.add('conflict', `${path}.pH`, 'one pH for each temperature', pH);
  for (let k = 1; k < celsius.length; k += 1)
    if (!(numberAt(celsius, k) > numberAt(celsius, k - 1)))
      faults.add('conflict', `${path}.celsius[${k}]`, 'temperatures that rise', celsius[k]);
  return faults.count > before ? unreadable : { name, celsius, pH };
}

/** A temperature within the table of a standard, °C. @internal */
export function readTemperature(value: unknown, path: string, table: StandardTable, faults: Faults): number {
  const [from, to] = [numberAt(table.celsius, 0), numberAt(table.celsius, table.celsius.length - 1)];
  return faults.number(value, path, `a temperature in °C at which ${table.name} is certified`, { from, to });
}

/** The pH at a temperature within the table. @internal */
export function pHIn({ celsius, pH }: StandardTable, t: number): number {
  let k = 1;
  while (k < celsius.length - 1 && numberAt(celsius, k) < t) k += 1;
  const [t0, t1] = [numberAt(celsius, k - 1), numberAt(celsius, k)];
  if (celsius.length === 1) return numberAt(pH, 0);
  return numberAt(pH, k - 1) + ((numberAt(pH, k) - numberAt(pH, k - 1)) * (t - t0)) / (t1 - t0);
}

/** Takes the place of a standard that could not be read, until the faults are thrown. */
const unreadable: StandardTable = { name: 'the standard', celsius: [-50, 200], pH: [7, 7] };
