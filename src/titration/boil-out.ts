import { air } from '../equilibrium/carbon-dioxide.js';
import type { Settled } from '../equilibrium/conditions.js';
import { afterEscape } from '../equilibrium/point.js';
import { settingOf } from '../equilibrium/setting.js';
import type { Faults } from '../errors.js';
import type { Solution } from '../solution/solution.js';
import type { Course } from './course.js';
import { readVolume } from './curve.js';
import type { Engine } from './engine.js';

/** The analyte is boiled, and cooled again, after a volume of titrant. */
export interface BoilOut {
  /** mL of titrant added before. */
  readonly mL: number;
  /** Partial pressure of CO2, atm, that the cooled solution has come to; that of `air` if left out. */
  readonly atm?: number;
}

/** Reads a boil-out from a caller's value, noting every fault. @internal */
export function readBoilOut(value: unknown, path: string, faults: Faults): Required<BoilOut> | null {
  if (value === undefined) return null;
  const unread = faults.object(value, path, 'a boil-out { mL, atm }', ['mL', 'atm']);
  const mL = readVolume(unread.mL, `${path}.mL`, faults);
  const atm =
    unread.atm === undefined
      ? air.atm
      : faults.number(unread.atm, `${path}.atm`, 'a partial pressure in atm', { from: 0, to: 100 });
  return { mL, atm };
}

/** Notes a fault where a beaker that is open to the air is boiled out. @internal */
export function readBoilOutUnder(
  { carbonDioxide }: Settled,
  boilOut: BoilOut | null,
  path: string,
  faults: Faults,
): void {
  if (boilOut && carbonDioxide && carbonDioxide.escape === undefined)
    faults.add('conflict', path, 'no boil-out beside an analyte that is open to the air', boilOut);
}

/**
 * The titration that goes on after the boil-out: its analyte is what is in the beaker then, less the CO2 that had to
 * leave for the solution to be in equilibrium with `atm`.
 *
 * @internal
 */
export function boiledOut(
  engine: Engine,
  course: Course,
  solutions: readonly Solution[],
  { mL, atm }: Required<BoilOut>,
): Engine {
  const { settled } = engine.setting;
  const all = settingOf(solutions, {
    ...settled,
    carbonDioxide: { ...settled.carbonDioxide, atm, escape: 1 },
  });
  return { ...engine, analyte: afterEscape(all, course.columnAt(mL)) };
}
