import { numberAt } from '../solver/number-at.js';
import type { EndpointSearch } from './endpoint-options.js';
import type { Endpoint, Endpoints } from './endpoints.js';
import { type GranEndpoint, granCarbonate, granEndpoint, windowOf } from './gran.js';
import type { Readings } from './readings.js';
import { type SlopeEndpoint, steepestSlope, zeroSecondDerivative } from './slope-endpoints.js';
import { peaksOf, slopesOf } from './slope-peaks.js';
import { smoothingOf } from './smoothed.js';

/** The end points by one method, from readings and options that have been read. @internal */
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
  const smoothing = smoothingOf(mL, how.smoothing);
  const peaks = peaksOf(slopesOf(readings, smoothing), smoothing, count, how.uncertainty);
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
