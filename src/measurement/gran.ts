import { numberAt } from '../solver/number-at.js';
import { isBent } from './line-bend.js';
import { type LineZero, lineZero } from './line-zero.js';
import type { ReadingUncertainty } from './reading-uncertainty.js';
import type { Readings } from './readings.js';

/** An end point from a straight line, and the readings that the line went through. @internal */
export interface GranEndpoint {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly used: { readonly from: number; readonly to: number; readonly readings: number };
  /** Whether the readings bend away from the line; not judged where two lines make the end points. */
  readonly bent?: boolean;
}

/** Part of the readings, by volume, mL. @internal */
export interface Window {
  readonly from: number;
  readonly to: number;
}

/** +1 where the pH rises, that is, an acid is titrated; −1 where it falls. */
const riseOf = ({ pH }: Readings): 1 | -1 => ((pH.at(-1) as number) >= numberAt(pH, 0) ? 1 : -1);

/**
 * The functions of G. Gran, Analyst 77, 661–671 (1952), doi:10.1039/AN9527700661, each a straight line that is zero at
 * an equivalence point; V₀ the volume in the flask, h = 10^−pH where an acid is titrated and 10^pH where a base is.
 *
 *   granStrong   (V₀ + V)·h     before: the strong acid or base that is left
 *   granWeak     V·h            before: of a weak one h = K·(Vₑ − V)/V
 *   granExcess   (V₀ + V)/h     after: the titrant in excess
 */
const functions = {
  granStrong: (V: number, h: number, flask: number) => (flask + V) * h,
  granWeak: (V: number, h: number) => V * h,
  granExcess: (V: number, h: number, flask: number) => (flask + V) / h,
};

interface Points {
  readonly x: readonly number[];
  readonly f: readonly number[];
}

function pointsIn({ mL, pH }: Readings, { from, to }: Window, f: (V: number, pH: number) => number): Points {
  const at = mL.map((V, k) => [V, numberAt(pH, k)] as const).filter(([V]) => V >= from && V <= to);
  return { x: at.map(([V]) => V), f: at.map((each) => f(...each)) };
}

const usedOf = ({ x }: Points): GranEndpoint['used'] => ({
  from: numberAt(x, 0),
  to: x.at(-1) as number,
  readings: x.length,
});

/** Fewer points leave nothing to tell the scatter from. */
const fewest = 3;

/** The zero of one Gran function over a window; undefined where it has too few readings or no slope. @internal */
export function granEndpoint(
  method: keyof typeof functions,
  readings: Readings,
  window: Window,
  flask: number,
  u: ReadingUncertainty,
): GranEndpoint | undefined {
  const line = granLine(method, readings, window, flask);
  if (!line) return undefined;
  const { zero, points } = line;
  const before = method === 'granWeak' ? 0 : flask;
  const uncertainties = points.f.map((f, k) => {
    const volume = before + numberAt(points.x, k);
    return uncertaintyOf(f, volume > 0 ? f / volume : 0, zero.slope, u);
  });
  return {
    value: zero.value,
    standardUncertainty: zero.standardUncertainty,
    used: usedOf(points),
    bent: isBent(points.x, points.f, uncertainties),
  };
}

/**
 * Of an ordinate f = V·g from a reading, V the volume before g = h or 1/h: an error of the pH changes g, and one of the
 * volume moves the reading along V while g stays that of the true volume,
 *
 *   u² = (ln10·f·u_pH)² + ((b − g)·u_mL)²               b the slope of the line                       (1)
 */
const uncertaintyOf = (f: number, g: number, slope: number, u: ReadingUncertainty): number =>
  Math.hypot(Math.LN10 * f * u.pH, (slope - g) * u.mL);

function granLine(method: keyof typeof functions, readings: Readings, window: Window, flask: number) {
  const rise = riseOf(readings);
  const points = pointsIn(readings, window, (V, pH) => functions[method](V, 10 ** (-rise * (pH - 7)), flask));
  const zero = points.x.length < fewest ? undefined : lineZero(points.x, points.f);
  return zero && { zero, points };
}

/**
 * Both points of carbonate by acid, or of another base of two steps. The second is the zero of the excess. Between the
 * points h = K·(V − V₁)/(V₂ − V) with h = 10^−pH, so that (V₂ − V)·h is a line with its zero at the first, and the
 * uncertainty of V₂ moves it along.
 *
 * @param guesses - rough volumes of the two points, mL
 * @internal
 */
export function granCarbonate(
  readings: Readings,
  guesses: readonly [number, number],
  flask: number,
): readonly GranEndpoint[] | undefined {
  const [first, second] = guesses;
  const excess = granLine('granExcess', readings, windowOf('granExcess', second), flask);
  if (!excess) return undefined;
  const end = excess.zero.value;
  const between = { from: first + 0.1 * (end - first), to: first + 0.8 * (end - first) };
  const h = (pH: number) => 10 ** (riseOf(readings) * (pH - 7));
  const points = pointsIn(readings, between, (V, pH) => (end - V) * h(pH));
  const zero: LineZero | undefined = points.x.length < fewest ? undefined : lineZero(points.x, points.f);
  if (!zero) return undefined;
  const moved =
    zero.movesWith(pointsIn(readings, between, (_, pH) => h(pH)).f) * excess.zero.standardUncertainty;
  const standardUncertainty = Math.hypot(zero.standardUncertainty, moved);
  return [
    { value: zero.value, standardUncertainty, used: usedOf(points) },
    { value: end, standardUncertainty: excess.zero.standardUncertainty, used: usedOf(excess.points) },
  ];
}

/**
 * The readings that a Gran function is drawn through, by default, as shares of the rough end point: those of
 * the plot in docs/guides/readings.md, 5 to 24.5 and 25.5 to 50 of 25 mL, and a little more, since the end point is
 * rough. Common practice: too near the end point the approximations fail, too near the start a weak acid dissociates by
 * itself.
 *
 * @internal
 */
export function windowOf(method: keyof typeof functions, guess: number): Window {
  if (method === 'granExcess') return { from: 1.02 * guess, to: 2.1 * guess };
  return { from: method === 'granWeak' ? 0.2 * guess : 0, to: 0.98 * guess };
}
