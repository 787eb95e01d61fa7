import { bufferLimits } from '../buffer/buffer-defaults.js';
import type { CapacityCurve, CapacityPeak } from '../buffer/capacity-over.js';
import type { Faults } from '../input/faults.js';
import { plotLimits } from './plot-options.js';

const capacities = { from: 0, to: 1e6 };

/** Reads what is drawn of a capacity over pH, noting every fault. @internal */
export function readCapacityCurve(value: unknown, faults: Faults): Omit<CapacityCurve, 'notes'> {
  const keys = ['pH', 'capacity', 'peaks', 'usefulShare', 'notes'];
  const unread = faults.object(value, 'curve', 'a capacity over pH as capacityOver gives it', keys);
  const before = faults.count;
  const [from, to] = bufferLimits.pH;
  const pH = Array.from(faults.numbers(unread.pH, 'curve.pH', 'a pH', { from, to }, plotLimits.points));
  const capacity = Array.from(
    faults.numbers(unread.capacity, 'curve.capacity', 'a capacity', capacities, plotLimits.points),
  );
  if (faults.count === before) {
    if (pH.length < 2) faults.add('out-of-range', 'curve.pH', 'a list of at least 2 values of pH', pH);
    if (capacity.length !== pH.length)
      faults.add('conflict', 'curve.capacity', `as many as there are values of pH, ${pH.length}`, capacity);
    const falling = pH.findIndex((one, k) => k > 0 && one <= (pH[k - 1] as number));
    if (falling >= 0)
      faults.add('conflict', `curve.pH[${falling}]`, 'a pH above the one before it', pH[falling]);
  }
  const isSound = faults.count === before;
  const within = isSound ? { from: pH[0] as number, to: pH.at(-1) as number } : { from, to };
  const peaks = faults
    .list(unread.peaks, 'curve.peaks', 'a list of peaks', 0, 100)
    .map((one, k) => readPeak(one, `curve.peaks[${k}]`, within, faults));
  const usefulShare = faults.number(unread.usefulShare, 'curve.usefulShare', 'a share', { above: 0, to: 1 });
  return { pH, capacity, peaks, usefulShare };
}

function readPeak(
  value: unknown,
  path: string,
  ends: { readonly from: number; readonly to: number },
  faults: Faults,
): CapacityPeak {
  const unread = faults.object(value, path, 'a peak { pH, capacity, useful }', ['pH', 'capacity', 'useful']);
  const useful = faults.object(unread.useful, `${path}.useful`, 'a range { from, to }', ['from', 'to']);
  const edge = (key: 'from' | 'to') =>
    useful[key] === null ? null : faults.number(useful[key], `${path}.useful.${key}`, 'a pH or null', ends);
  return {
    pH: faults.number(unread.pH, `${path}.pH`, 'a pH within the curve', ends),
    capacity: faults.number(unread.capacity, `${path}.capacity`, 'a capacity', capacities),
    useful: { from: edge('from'), to: edge('to') },
  };
}
