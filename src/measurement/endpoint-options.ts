import type { Faults } from '../input/faults.js';
import type { Window } from './gran.js';
import {
  type ReadingUncertainty,
  readReadingUncertainty,
  usualReadingUncertainty,
} from './reading-uncertainty.js';
import type { Readings } from './readings.js';

/** How an end point is found. */
export type EndpointMethod =
  | 'steepestSlope' //         the middle of the steepest interval
  | 'zeroSecondDerivative' //  where the second difference quotient crosses zero
  | 'granStrong' //            strong acid or base, readings before the end point
  | 'granWeak' //              weak acid or base, readings before the end point
  | 'granExcess' //            readings after the end point
  | 'granCarbonate'; //        both points of a carbonate titrated with acid

/** What a search for end points needs. */
export interface EndpointOptions {
  readonly method: EndpointMethod;
  /** How many end points to look for by slope, 1 to 5; 1 by default. */
  readonly count?: number;
  /** Smoothing for the slopes: how many readings each local cubic goes through, odd, 5 to 25; none by default. */
  readonly smoothing?: number;
  /** Standard uncertainties of one pH and of one volume, mL; `usualReadingUncertainty` otherwise. */
  readonly uncertainty?: ReadingUncertainty;
  /** mL in the flask before the first drop; needed for `granStrong`, `granExcess` and `granCarbonate`. */
  readonly flask?: number;
  /** mL, the readings that a Gran line goes through; by default a share of the steepest interval's volume. */
  readonly window?: { readonly from: number; readonly to: number };
}

/** Options that have been read. @internal */
export interface EndpointSearch {
  readonly method: EndpointMethod;
  readonly count: number;
  readonly smoothing: number | undefined;
  readonly uncertainty: ReadingUncertainty;
  readonly flask: number;
  readonly window: Window | undefined;
}

const endpointMethods: readonly EndpointMethod[] = [
  'steepestSlope',
  'zeroSecondDerivative',
  'granStrong',
  'granWeak',
  'granExcess',
  'granCarbonate',
];

const optionKeys = ['method', 'count', 'smoothing', 'uncertainty', 'flask', 'window'];

/** Reads how end points are to be found. @internal */
export function readEndpointOptions(value: unknown, faults: Faults): EndpointSearch {
  const unread = faults.object(value, 'options', "options, such as { method: 'steepestSlope' }", optionKeys);
  return readSearch(unread, readMethod(unread.method, 'options.method', faults), faults);
}

/** Reads the name of a method. @internal */
export function readMethod(value: unknown, path: string, faults: Faults): EndpointMethod {
  const known = endpointMethods.find((each) => each === value);
  if (!known)
    faults.add(
      value === undefined ? 'missing' : 'wrong-type',
      path,
      `one of ${endpointMethods.join(', ')}`,
      value,
    );
  return known ?? 'steepestSlope';
}

/** Whether a method corrects for dilution. @internal */
export const needsFlask = (method: EndpointMethod): boolean =>
  method === 'granStrong' || method === 'granExcess' || method === 'granCarbonate';

/** Reads what a search by this method needs. @internal */
export function readSearch(
  {
    count = 1,
    smoothing,
    uncertainty = usualReadingUncertainty,
    flask,
    window,
  }: Readonly<Record<string, unknown>>,
  method: EndpointMethod,
  faults: Faults,
): EndpointSearch {
  const wantsFlask = needsFlask(method);
  const above = { above: 0, to: 1e6 };
  if (method === 'granCarbonate' && window !== undefined)
    faults.add(
      'conflict',
      'options.window',
      'no window: both lines choose their readings by the slopes',
      window,
    );
  return {
    method,
    count: faults.number(count, 'options.count', 'a number of end points', { from: 1, to: 5, integer: true }),
    smoothing: smoothing === undefined ? undefined : readSmoothing(smoothing, faults),
    uncertainty: readReadingUncertainty(uncertainty, 'options.uncertainty', faults),
    flask:
      wantsFlask || flask !== undefined
        ? faults.number(flask, 'options.flask', 'the volume in the flask in mL', above)
        : 0,
    window: window === undefined ? undefined : readWindow(window, faults),
  };
}

function readSmoothing(value: unknown, faults: Faults): number {
  const points = faults.number(value, 'options.smoothing', 'a number of readings', {
    from: 5,
    to: 25,
    integer: true,
  });
  if (points % 2 === 0) faults.add('out-of-range', 'options.smoothing', 'an odd number of readings', value);
  return points;
}

/** Notes a smoothing that needs more readings than there are. @internal */
export function checkSmoothing({ smoothing }: EndpointSearch, { mL }: Readings, faults: Faults): void {
  if (!faults.any && smoothing !== undefined && smoothing > mL.length)
    faults.add('conflict', 'options.smoothing', `at most the number of readings, ${mL.length}`, smoothing);
}

function readWindow(value: unknown, faults: Faults): Window {
  const unread = faults.object(value, 'options.window', 'volumes { from, to } in mL', ['from', 'to']);
  const from = faults.number(unread.from, 'options.window.from', 'a volume in mL', { from: 0, to: 1e6 });
  const to = faults.number(unread.to, 'options.window.to', 'a volume in mL', { from: 0, to: 1e6 });
  if (!faults.any && !(to > from)) faults.add('conflict', 'options.window.to', 'more than window.from', to);
  return { from, to };
}
