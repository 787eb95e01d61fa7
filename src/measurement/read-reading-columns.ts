import type { Faults } from '../input/faults.js';
import { numberAt } from '../solver/number-at.js';
import { plausiblePH } from './plausible-ph.js';
import type { Readings } from './readings.js';

/** Most readings in one call. */
const mostReadings = 10_000;

/** mL, the shortest step: difference quotients over shorter ones overflow. */
const shortest = 1e-9;

/** What readings must be: how many at least, and whether the volume must rise from each to the next. @internal */
export interface ReadingNeeds {
  readonly least: number;
  readonly rising: boolean;
}

/** Reads readings, noting every fault. @internal */
export function readReadingColumns(
  value: unknown,
  path: string,
  faults: Faults,
  needs: ReadingNeeds,
): Readings {
  const before = faults.count;
  const keys = ['mL', 'pH', 'seconds', 'notes'];
  const what = 'readings { mL, pH }, as from readReadings';
  const around = faults.object(value, path, what);
  if (around.readings !== undefined && around.mL === undefined) {
    faults.add('wrong-type', path, `its readings: ${path} holds { readings } beside other things`, value);
    return nothingRead;
  }
  const unread = faults.object(value, path, what, keys);
  const column = (key: 'mL' | 'pH' | 'seconds', what: string, limits: object) =>
    Array.from(faults.numbers(unread[key], `${path}.${key}`, what, limits, mostReadings));
  const mL = column('mL', 'a volume in mL', { from: 0, to: 1e6 });
  const pH = column('pH', 'a pH', plausiblePH);
  const seconds =
    unread.seconds === undefined ? undefined : column('seconds', 'a time in s', { from: -1e9, to: 1e9 });
  const notes = faults
    .list(unread.notes ?? [], `${path}.notes`, 'a list of notes')
    .map((note, k) => faults.text(note, `${path}.notes[${k}]`, 'a note', 1000));
  if (faults.count === before) {
    if (mL.length < needs.least)
      faults.add('out-of-range', `${path}.mL`, `at least ${needs.least} readings`, mL);
    if (pH.length !== mL.length) faults.add('conflict', `${path}.pH`, 'as many items as in mL', pH);
    if (seconds && seconds.length !== mL.length)
      faults.add('conflict', `${path}.seconds`, 'as many items as in mL', seconds);
    const falls = needs.rising ? mL.findIndex((v, k) => k > 0 && !(v - numberAt(mL, k - 1) >= shortest)) : -1;
    const expected = `running totals that rise by ${shortest} mL or more, one reading at each`;
    if (falls > 0) faults.add('conflict', `${path}.mL[${falls}]`, expected, mL[falls]);
  }
  if (faults.count > before) return nothingRead;
  return { mL, pH, ...(seconds ? { seconds } : {}), notes };
}

/** Takes the place of readings that could not be read, until the faults are thrown. */
const nothingRead: Readings = { mL: [0, 1, 2], pH: [7, 7, 7], notes: [] };
