import { frozen } from '../../frozen.js';
import type { Faults } from '../../input/faults.js';
import { seedLimits } from '../statistics/random.js';
import { asWritten } from './bench-effects.js';
import type { BenchFault } from './bench-fault.js';
import { readBenchFaults } from './read-bench-faults.js';
import type { ReadingNoise } from './reading-errors.js';

/** How a run is simulated. */
export interface PracticeOptions {
  /** A whole number from 0: it chooses the errors of the readings, and nothing else. */
  readonly seed: number;
  /** mL, running totals that rise, at least five; those of `planAdditions` for the true curve if left out. */
  readonly volumes?: ArrayLike<number>;
  /** Standard deviations of the readings; `practiceDefaults.noise` otherwise. */
  readonly noise?: Partial<ReadingNoise>;
  /** What goes wrong, each kind at most once; nothing if left out. */
  readonly faults?: readonly BenchFault[];
}

/**
 * What practice takes by default.
 *
 * Common practice: in a class the readings of a calibrated glass electrode scatter by 0.02 in pH, twice as much as
 * those of one that is steady (`usualReadingUncertainty`), and a 50 mL burette is read to 0.02 mL. A result is right
 * within two drops, 0.1 mL, or within 2 % of the amount: ordinary demands of teaching laboratories. The points are a
 * choice of this package.
 */
export const practiceDefaults = /*#__PURE__*/ frozen({
  noise: { pH: 0.02, mL: 0.02 },
  tolerance: { mL: 0.1, percent: 2 },
  points: { endpoints: 4, mmol: 4, faults: 2 },
} as const);

/** Most readings in one run. */
const most = 10_000;

/** Reads how a run is simulated. @internal */
export function readPracticeOptions(value: unknown, faults: Faults) {
  const keys = ['seed', 'volumes', 'noise', 'faults'];
  const unread = faults.object(value, 'options', 'options, such as { seed: 1 }', keys);
  const { noise: given = {} } = unread;
  const noise = faults.object(given, 'options.noise', 'standard deviations { pH, mL }', ['pH', 'mL']);
  const deviation = (key: 'pH' | 'mL', what: string) =>
    noise[key] === undefined
      ? practiceDefaults.noise[key]
      : faults.number(noise[key], `options.noise.${key}`, what, { from: 0, to: 1 });
  return {
    seed: faults.number(unread.seed, 'options.seed', 'a seed', seedLimits),
    volumes: unread.volumes === undefined ? undefined : readRisingVolumes(unread.volumes, faults),
    noise: {
      pH: deviation('pH', 'a standard deviation in pH'),
      mL: deviation('mL', 'a standard deviation in mL'),
    },
    faults: unread.faults === undefined ? [] : readBenchFaults(unread.faults, 'options.faults', faults),
  };
}

function readRisingVolumes(value: unknown, faults: Faults): readonly number[] {
  const before = faults.count;
  const limits = { from: 0, to: 1e4 };
  const given = Array.from(faults.numbers(value, 'options.volumes', 'a volume in mL', limits, most));
  if (faults.count > before) return [0];
  const column = given.map(asWritten);
  if (column.length < 5) faults.add('out-of-range', 'options.volumes', 'at least 5 volumes', column);
  const falls = column.findIndex((each, k) => k > 0 && !(each > (column[k - 1] as number)));
  const expected = 'running totals that rise, by 1e-6 mL or more';
  if (falls > 0) faults.add('conflict', `options.volumes[${falls}]`, expected, given[falls]);
  return column;
}
