import { notesOnCapacity } from '../equilibrium/activity/notes-on-strength.js';
import { type Conditions, readConditions, readGas } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { readSolutions } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import { leastBetween } from '../solver/least-between.js';
import { rootBetween } from '../solver/root-between.js';
import { equalAdditions } from '../titration/sampling/curve.js';
import { bufferDefaults, bufferLimits } from './buffer-defaults.js';
import { eitherStrong, strongSearch } from './strong-search.js';

/** Over which pH, and what counts as useful. */
export interface CapacityRange {
  readonly from: PH;
  readonly to: PH;
  /** Step in pH, from 0.01 to 1; 0.1 if left out. */
  readonly every?: number;
  /** Share of a peak's capacity down to which its range counts as useful. */
  readonly usefulShare?: number;
  readonly conditions?: Conditions;
}

/** A pH at which the capacity is greatest among its neighbours. */
export interface CapacityPeak {
  readonly pH: PH;
  /** mol/L per unit of pH. */
  readonly capacity: number;
  /** Where the capacity has fallen to `usefulShare` of the peak; null where that lies beyond the pH asked for. */
  readonly useful: { readonly from: PH | null; readonly to: PH | null };
}

/** Capacity over pH as plain columns. */
export interface CapacityCurve {
  readonly pH: readonly PH[];
  /** mol/L per unit of pH, water's own share included. */
  readonly capacity: readonly number[];
  readonly peaks: readonly CapacityPeak[];
  readonly usefulShare: number;
  readonly notes: readonly string[];
}

/**
 * Capacity over pH: the same solution, brought to each pH by strong acid or base at constant volume.
 *
 * Peaks are the highest points between the ends. For a single pair at pH = pKa the peak is ln10·C/4, and falls to
 * 40/121 of that one pH unit away, which is why `usefulShare` is 40/121 by default. The steep rise at either end is
 * water's own.
 *
 * Good to     1e-6 in a peak's pH: the capacity is flat there, so its rounding hides smaller steps.
 *
 * @throws InputError that lists every fault
 * @see D. D. Van Slyke, J. Biol. Chem. 52, 525–570 (1922)
 * @example
 * ```ts
 * import { capacityOver, makeSolution, reagents } from 'protolysis';
 *
 * const acetate = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
 * const [peak] = capacityOver(acetate, { from: 3, to: 7 }).peaks;
 * peak?.pH; // => 4.755
 * peak?.useful.from; // => 3.745
 * peak?.useful.to; // => 5.756
 * ```
 */
export function capacityOver(solution: Solution, range: CapacityRange): CapacityCurve {
  const faults = new Faults('capacityOver');
  const [read] = readSolutions([{ value: solution, path: 'solution' }, eitherStrong], faults) as [
    Solution,
    Solution,
  ];
  const keys = ['from', 'to', 'every', 'usefulShare', 'conditions'];
  const unread = faults.object(range, 'range', 'a range { from, to, every }', keys);
  const [least, most] = bufferLimits.pH;
  const from = faults.number(unread.from, 'from', 'a pH', { from: least, to: most });
  const to = faults.number(unread.to, 'to', 'a pH', { from: least, to: most });
  if (!faults.any && !(to > from)) faults.add('conflict', 'to', 'a pH above that of `from`', to);
  const { every = 0.1, usefulShare = bufferDefaults.usefulShare } = unread;
  const step = faults.number(every, 'every', 'a step in pH', { from: 0.01, to: 1 });
  const share = faults.number(usefulShare, 'usefulShare', 'a share', { above: 0, to: 1 });
  const inUse = readConditions(unread.conditions, 'conditions', faults);
  readGas([read], inUse, 'conditions', faults);
  faults.done();

  const search = strongSearch(read, inUse);
  const capacityAt = (pH: PH): number | undefined => {
    const { found, capacity } = search(pH);
    return found ? capacity : undefined;
  };
  const wanted = equalAdditions(step, to - from).map((more) => Number((from + more).toPrecision(15)));
  const points = wanted.flatMap((pH) => {
    const capacity = capacityAt(pH);
    return capacity === undefined ? [] : [{ pH, capacity }];
  });
  const missing = wanted.length - points.length;
  return frozen({
    pH: points.map(({ pH }) => pH),
    capacity: points.map(({ capacity }) => capacity),
    peaks: peaksOf(points, (pH) => capacityAt(pH) ?? Number.NaN, share),
    usefulShare: share,
    notes: [
      ...(missing === 0
        ? []
        : [
            `Left out, since no strong acid or base reaches them: ${missing} of ${wanted.length} values of pH.`,
          ]),
      ...notesOnCapacity(...points.map(({ capacity }) => capacity)),
    ],
  });
}

interface Point {
  readonly pH: PH;
  readonly capacity: number;
}

function peaksOf(points: readonly Point[], capacityAt: (pH: PH) => number, share: number): CapacityPeak[] {
  return points.flatMap((point, k) => {
    const [before, after] = [points[k - 1], points[k + 1]];
    if (!before || !after || !(point.capacity > before.capacity && point.capacity >= after.capacity))
      return [];
    const peak = leastBetween((at) => -capacityAt(at), before.pH, after.pH);
    if (peak.status !== 'found') return [];
    const pH = peak.x;
    const capacity = capacityAt(pH);
    const above = (at: PH) => {
      const excess = capacityAt(at) / capacity - share;
      return Math.abs(excess) <= 4 * Number.EPSILON ? 0 : excess;
    };
    const falls = (beside: readonly Point[]): PH | null => {
      const out = beside.findIndex((other) => other.capacity < share * capacity);
      if (out < 0) return null;
      const edge = rootBetween(above, beside[out - 1]?.pH ?? pH, (beside[out] as Point).pH);
      return edge.status === 'found' ? edge.x : null;
    };
    const useful = { from: falls(points.slice(0, k).reverse()), to: falls(points.slice(k + 1)) };
    return [{ pH, capacity, useful }];
  });
}
