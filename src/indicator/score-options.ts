import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import { colourlessForm, type Indicator } from '../substance/indicator.js';
import { readIndicator } from '../substance/read-indicator.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import { type Calls, callsOf, type Observer, readObserver } from './observer.js';
import { readPoint } from './read-score-point.js';
import { type Asked, readTitration } from './read-titration.js';
import { type RealAsked, withDavies } from './with-davies.js';

/** How an indicator is judged. */
export interface ScoreOptions {
  /**
   * The point to be found; by default the one that the indicator serves best. A point that the titration does not have,
   * such as `equivalencePoints[7]`, is an error.
   */
  readonly at?: EquivalencePoint | undefined;
  /** mL off that would cost half the score; one drop by default. */
  readonly tolerance?: number;
  /** Volume of a drop of titrant, mL. */
  readonly dropSize?: number;
  /** Who calls the end point, in place of the one that the indicator implies. */
  readonly observer?: Observer;
  /** Drops of indicator solution in the flask: they move the visible edge of a one-colour indicator. */
  readonly indicatorDrops?: number;
}

/** What is taken for granted of drops: common practice, with the drop of a burette between 0.02 and 0.07 mL. */
export const indicatorDefaults = /*#__PURE__*/ frozen({ dropSize: 0.05, indicatorDrops: 2 } as const);

/** Options that have been read, but for the indicator they go with. @internal */
export interface ReadOptions {
  readonly points: readonly EquivalencePoint[];
  readonly tolerance: number;
  readonly dropSize: number;
  readonly observer?: Calls;
  readonly indicatorDrops: number;
  /** The same titration by the Davies equation, set up when first asked for; null where `ScoreWithDavies` is. */
  readonly davies: () => RealAsked | null;
}

/** Reads what every judgement of an indicator starts from, noting every fault. @internal */
export function readScoreOptions(
  titration: unknown,
  options: unknown,
  faults: Faults,
  more: readonly string[] = [],
): ReadOptions & { readonly titration: Asked; readonly unread: Unread } {
  const read = readTitration(titration, faults);
  const allowed = ['at', 'tolerance', 'dropSize', 'observer', 'indicatorDrops', ...more];
  const unread =
    options === undefined
      ? {}
      : faults.object(options, 'options', `options { ${allowed.join(', ')} }`, allowed);
  const dropSize =
    unread.dropSize === undefined
      ? indicatorDefaults.dropSize
      : faults.number(unread.dropSize, 'dropSize', 'a volume in mL', volume);
  const tolerance =
    unread.tolerance === undefined
      ? dropSize
      : faults.number(unread.tolerance, 'tolerance', 'a volume in mL', volume);
  return {
    titration: read,
    unread,
    points: 'at' in unread ? [readPoint(unread.at, 'at', faults)] : read.equivalencePoints,
    davies: withDavies(read),
    tolerance,
    dropSize,
    indicatorDrops: readDrops(unread.indicatorDrops, 'indicatorDrops', faults),
    ...(unread.observer === undefined ? {} : { observer: readObserver(unread.observer, faults) }),
  };
}

const volume = { from: 1e-6, to: 1e6 };

/** Reads an amount of indicator in drops of its solution. @internal */
export function readDrops(value: unknown, path: string, faults: Faults): number {
  if (value === undefined) return indicatorDefaults.indicatorDrops;
  return faults.number(value, path, 'a number of drops', { from: 0.02, to: 200 });
}

/** Notes a fault where there is no point to judge an indicator for. @internal */
export function readPoints(
  { points, titration }: { points: readonly EquivalencePoint[]; titration: Asked },
  faults: Faults,
): void {
  if (points.length === 0 && !faults.any)
    faults.add(
      'missing',
      'titration.equivalencePoints',
      'a titration that has one',
      titration.equivalencePoints,
    );
}

/** By how much the amount of a one-colour indicator moves its visible edge. @internal */
export function shiftOf(indicator: Indicator, drops: number): number {
  const form = colourlessForm(indicator);
  if (form === undefined) return 0;
  const decades = Math.log10(drops / indicatorDefaults.indicatorDrops);
  return form === 'acid' ? -decades : decades;
}

/** Reads a list of indicators, noting every fault. @internal */
export function readIndicators(value: unknown, faults: Faults): readonly Indicator[] {
  const list = faults.list(
    value,
    'indicators',
    'a list of indicators, such as Object.values(indicators)',
    1,
    1000,
  );
  return list.map((one, k) => readIndicator(one, `indicators[${k}]`, faults));
}

/** The calls that an indicator and its observer make. @internal */
export function callsFor(indicator: Indicator, { observer, indicatorDrops }: ReadOptions): Calls {
  return observer ?? callsOf(indicator, shiftOf(indicator, indicatorDrops));
}
