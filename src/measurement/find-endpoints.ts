import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { numberAt } from '../solver/number-at.js';
import {
  type EndpointMethod,
  type EndpointOptions,
  type EndpointSearch,
  readEndpointOptions,
} from './endpoint-options.js';
import type { Estimate } from './estimate.js';
import { type GranEndpoint, granCarbonate, granEndpoint, windowOf } from './gran.js';
import { readReadingColumns } from './read-reading-columns.js';
import type { Readings } from './readings.js';
import { peaksOf, type SlopeEndpoint, steepestSlope, zeroSecondDerivative } from './slope-endpoints.js';
import { smoothingOf } from './smoothed.js';

/** One end point. */
export interface Endpoint {
  /** Of titrant. */
  readonly mL: number;
  /** The volume with its uncertainty. */
  readonly estimate: Estimate;
  /** On the line between the two readings beside it; null where it lies outside them. */
  readonly pH: number | null;
  /** mL, first and last, and number, of the readings that it rests on. */
  readonly used: { readonly from: number; readonly to: number; readonly readings: number };
}

/** What a search for end points found. Plain data: it survives JSON. */
export interface Endpoints {
  readonly method: EndpointMethod;
  readonly status: 'found' | 'not-found';
  /** By volume. */
  readonly endpoints: readonly Endpoint[];
  readonly notes: readonly string[];
}

/**
 * The end points of a titration from its readings, by one method, each with its standard uncertainty.
 *
 * The slope methods take uneven steps and any titration with a step in it; their uncertainty is mostly the length of
 * the steepest interval. The Gran functions draw a line through readings away from the step; their uncertainty is the
 * scatter about the line, and they are off where their approximations are. docs/guides/readings.md has bias and spread
 * of each.
 *
 * @param readings - as from `readReadings`, with volumes that rise from reading to reading
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { findEndpoints } from 'protolysis/measurement';
 *
 * const mL = [23, 24, 24.5, 24.8, 25, 25.2, 25.5, 26];
 * const pH = [5.8, 6.12, 6.43, 6.84, 8.72, 10.6, 10.99, 11.29];
 * const { endpoints } = findEndpoints({ mL, pH, notes: [] }, { method: 'zeroSecondDerivative' });
 * endpoints[0]?.mL; // => 25.0
 * ```
 */
export function findEndpoints(readings: Readings, options: EndpointOptions): Endpoints {
  const faults = new Faults('findEndpoints');
  const given = readReadingColumns(readings, 'readings', faults, { least: 5, rising: true });
  const how = readEndpointOptions(options, faults);
  if (how.smoothing !== undefined && how.smoothing > given.mL.length && !faults.any)
    faults.add(
      'conflict',
      'options.smoothing',
      `at most the number of readings, ${given.mL.length}`,
      how.smoothing,
    );
  faults.done();
  return frozen(endpointsBy(given, how));
}

/** The search itself. @internal */
export function endpointsBy(readings: Readings, how: EndpointSearch): Endpoints {
  const { method, count, smoothing, uncertainty } = how;
  if (method === 'steepestSlope')
    return fromSlopes(readings, how, steepestSlope(readings, smoothing, count, uncertainty));
  if (method === 'zeroSecondDerivative')
    return fromSlopes(readings, how, zeroSecondDerivative(readings, smoothing, count, uncertainty));
  const found = granPoints(readings, how);
  const good = found.every(({ value }) => value > 0) ? found : [];
  const endpoints = good.map(
    ({ value, standardUncertainty, used }): Endpoint => ({
      mL: value,
      estimate: { value, standardUncertainty, degreesOfFreedom: used.readings - 2 },
      pH: pHAt(readings, value),
      used,
    }),
  );
  const why =
    'No line: fewer than three readings, or none that slopes to zero, in the part that the method uses.';
  return {
    method,
    status: endpoints.length > 0 ? 'found' : 'not-found',
    endpoints,
    notes:
      endpoints.length > 0
        ? ['The activity coefficients are taken as constant along the line.', ...good.flatMap(noteOnBend)]
        : [why],
  };
}

/** The criterion is that of line-bend.ts. */
const noteOnBend = ({ bent }: GranEndpoint): readonly string[] =>
  bent
    ? [
        "The readings bend away from the line by more than their scatter (Student's t of the quadratic term, 95 %). The end point may be off by more than its uncertainty: draw the line through the readings nearest to it (window), or fit the whole curve.",
      ]
    : [];

/** Rough volumes of the steepest intervals. */
function guessesOf(readings: Readings, how: EndpointSearch, count: number): readonly number[] {
  const { mL } = readings;
  const peaks = peaksOf(readings, smoothingOf(mL, how.smoothing), count, how.uncertainty);
  return peaks.map((k) => (numberAt(mL, k) + numberAt(mL, k + 1)) / 2);
}

function granPoints(readings: Readings, how: EndpointSearch): readonly GranEndpoint[] {
  const { method, window, flask } = how;
  if (method === 'granCarbonate') {
    const [first, second] = guessesOf(readings, how, 2);
    if (first === undefined) return [];
    const guesses = second === undefined ? ([first / 2, first] as const) : ([first, second] as const);
    return granCarbonate(readings, guesses, flask) ?? [];
  }
  if (method !== 'granStrong' && method !== 'granWeak' && method !== 'granExcess') return [];
  const guess = window ? undefined : guessesOf(readings, how, 1)[0];
  const part = window ?? (guess === undefined ? undefined : windowOf(method, guess));
  const point = part && granEndpoint(method, readings, part, flask, how.uncertainty);
  return point ? [point] : [];
}

function fromSlopes(readings: Readings, how: EndpointSearch, found: readonly SlopeEndpoint[]): Endpoints {
  const { method, count, smoothing } = how;
  const notes = [
    smoothing === undefined
      ? 'The readings were not smoothed.'
      : `The pH was smoothed by a cubic through ${smoothing} readings each.`,
  ];
  if (found.length < count)
    notes.push(
      `Of ${count} end points ${found.length} stand out: one at the first or last interval is none yet, and smoothing may bring out others.`,
    );
  return {
    method,
    status: found.length > 0 ? 'found' : 'not-found',
    endpoints: found.map(({ interval, value, standardUncertainty }) => ({
      mL: value,
      estimate: { value, standardUncertainty, degreesOfFreedom: null },
      pH: pHAt(readings, value),
      used: usedBy(readings, interval, how),
    })),
    notes,
  };
}

function usedBy(
  { mL }: Readings,
  interval: number,
  { method, smoothing = 1 }: EndpointSearch,
): Endpoint['used'] {
  const reach = (method === 'steepestSlope' ? 0 : 1) + (smoothing - 1) / 2;
  const [from, to] = [Math.max(0, interval - reach), Math.min(mL.length - 1, interval + 1 + reach)];
  return { from: numberAt(mL, from), to: numberAt(mL, to), readings: to - from + 1 };
}

/** The pH on the line between two readings; null outside them. */
function pHAt({ mL, pH }: Readings, at: number): number | null {
  const k = mL.findIndex((each) => each >= at);
  if (k < 0 || (k === 0 && mL[0] !== at)) return null;
  if (k === 0) return numberAt(pH, 0);
  const [v0, v1] = [numberAt(mL, k - 1), numberAt(mL, k)];
  const [p0, p1] = [numberAt(pH, k - 1), numberAt(pH, k)];
  return p0 + ((p1 - p0) * (at - v0)) / (v1 - v0);
}
