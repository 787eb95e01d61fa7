import type { Faults } from '../input/faults.js';
import { titrationLimits } from '../titration/titration-limits.js';
import type { Area } from './figure.js';
import { plotLimits } from './plot-options.js';

/** An area about a curve: between which values pH lies at each volume, by the caller's own calculation. */
export interface Envelope {
  /** What it is, such as `95 % coverage`: written beside it. */
  readonly name: string;
  /** Rising. */
  readonly mL: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
}

/** Reads an envelope from a caller's value, noting every fault; null where there is none. @internal */
export function readEnvelope(value: unknown, upTo: number | null, faults: Faults): Area | null {
  if (value === undefined) return null;
  const path = 'options.envelope';
  const unread = faults.object(value, path, 'an area { name, mL, lower, upper }', [
    'name',
    'mL',
    'lower',
    'upper',
  ]);
  const before = faults.count;
  const pHs = (key: 'lower' | 'upper') =>
    Array.from(faults.numbers(unread[key], `${path}.${key}`, 'a pH', titrationLimits.pH, plotLimits.points));
  const x = Array.from(
    faults.numbers(
      unread.mL,
      `${path}.mL`,
      'a volume in mL',
      { from: 0, to: upTo ?? titrationLimits.mL },
      plotLimits.points,
    ),
  );
  const [lower, upper] = [pHs('lower'), pHs('upper')];
  const area = { name: faults.text(unread.name, `${path}.name`, 'a name', 60), x, lower, upper };
  if (faults.count === before) readShape(area, path, faults);
  return area;
}

/** Columns of one length that go from left to right, the lower one below the upper. */
function readShape({ x, lower, upper }: Area, path: string, faults: Faults): void {
  const columns = { lower, upper };
  for (const [key, column] of Object.entries(columns))
    if (column.length !== x.length)
      faults.add('conflict', `${path}.${key}`, `as many as there are volumes, ${x.length}`, column);
  if (x.length < 2) faults.add('out-of-range', `${path}.mL`, 'a list of at least 2 volumes', x);
  const falling = x.findIndex((mL, k) => k > 0 && mL <= (x[k - 1] as number));
  if (falling >= 0)
    faults.add('conflict', `${path}.mL[${falling}]`, 'a volume above the one before it', x[falling]);
  const crossed = lower.findIndex((pH, k) => pH > (upper[k] ?? pH));
  if (crossed >= 0)
    faults.add('conflict', `${path}.lower[${crossed}]`, `a pH not above ${upper[crossed]}`, lower[crossed]);
}
