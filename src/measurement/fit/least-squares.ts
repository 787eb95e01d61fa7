import { Matrix, QrDecomposition } from 'ml-matrix';
import { numberAt } from '../../solver/number-at.js';

/** Residuals at some parameters, and how each changes with each parameter. @internal */
export interface Linearised {
  readonly residuals: Float64Array;
  /** One row per residual, one column per parameter. */
  readonly jacobian: Matrix;
}

/** A problem of least squares. @internal */
export interface LeastSquaresProblem<At extends Linearised> {
  /** Residuals that are not finite say that the model has no answer there. */
  at(parameters: Float64Array): At;
  readonly start: readonly number[];
  /** Where each parameter must stay. */
  readonly limits: readonly { readonly from: number; readonly to: number }[];
  /** A sum of squares that counts as none. */
  readonly negligible: number;
  /** Of S: a gain that is not worth another pass; `lastGain` if left out. */
  readonly worthwhile?: number;
  readonly mostPasses: number;
}

/** Where a search for the least sum of squares ended. @internal */
interface LeastSquaresEnd {
  /** `no-descent`: no step lowers the sum, before the slope is level; `too-many-steps`: no end after all passes. */
  readonly status: 'converged' | 'no-descent' | 'too-many-steps';
  readonly parameters: Float64Array;
  readonly sum: number;
  readonly passes: number;
  /** Of each parameter, whether it ended at one of its limits. */
  readonly atLimit: readonly boolean[];
}

/** @internal */
export type LeastSquaresResult<At extends Linearised> = At & LeastSquaresEnd;

type Point<At extends Linearised> = At & Pick<LeastSquaresEnd, 'parameters' | 'sum'>;
type Problem = Pick<LeastSquaresProblem<Linearised>, 'limits'>;

/**
 * The parameters θ of least S = Σ r², by the method of Levenberg and Marquardt.
 *
 *   (JᵀJ + λ·D²)·δ = −Jᵀr,   J = ∂r/∂θ,   D the greatest length so far of each column of J               (1)
 *
 * Solved as      the least squares of [J; √λ·D]·δ = [−r; 0] by QR, which keeps the digits that JᵀJ would lose
 * λ              falls where a step does what the linear model foretells, rises where S does not fall [2]
 * Limits         a parameter that a step would carry past its limit stops there; one that stands at its limit and would
 *                leave is held for that pass
 * Ends           where the undamped step would lower S by less than `worthwhile` of it, or by less than `roundingGain` and
 *                no step does: that step is then taken; or where S is negligible
 * Invariant      S falls from pass to pass
 * [1] D. W. Marquardt, J. Soc. Indust. Appl. Math. 11, 431–441 (1963), doi:10.1137/0111030
 * [2] J. J. Moré, Lect. Notes Math. 630, 105–116 (1978), doi:10.1007/BFb0067700: D, and the ratio of gains
 *
 * @internal
 */
export function leastSquares<At extends Linearised>(
  problem: LeastSquaresProblem<At>,
): LeastSquaresResult<At> {
  let point = pointAt(problem, Float64Array.from(problem.start));
  const lengths = new Float64Array(problem.start.length);
  let damping = firstDamping;
  const { worthwhile = lastGain } = problem;
  for (let pass = 1; pass <= problem.mostPasses; pass += 1) {
    if (point.sum <= problem.negligible) return resultOf(problem, point, 'converged', pass);
    takeLengths(lengths, point.jacobian);
    const free = freeAt(problem, point);
    const left = stepFrom(point, free, lengths, 0)?.gain ?? Number.POSITIVE_INFINITY;
    if (left <= worthwhile * point.sum)
      return resultOf(problem, polished(problem, point, free, lengths), 'converged', pass);
    const step = stepFrom(point, free, lengths, damping);
    const next = step && pointAt(problem, movedWithin(problem, point, step.change));
    if (!(next && next.sum < point.sum)) {
      if (left <= roundingGain * point.sum)
        return resultOf(problem, polished(problem, point, free, lengths), 'converged', pass);
      damping *= 8;
      if (damping > mostDamping) return resultOf(problem, point, 'no-descent', pass);
      continue;
    }
    const ratio = (point.sum - next.sum) / (step?.gain ?? 1);
    if (ratio > 0.25) damping = Math.max(damping / (ratio > 0.75 ? 10 : 2), leastDamping);
    point = next;
  }
  return resultOf(problem, point, 'too-many-steps', problem.mostPasses);
}

const firstDamping = 1e-3;
const leastDamping = 1e-14;

/** Steps a billionth of the first: nothing lower is found any more. */
const mostDamping = 1e18;

/** Of S: a step that gains 1e-14 of it moves the parameters by a ten-millionth of their standard error. */
const lastGain = 1e-14;

/** Of S: where no step lowers S by as little, its own rounding hides what is left. */
const roundingGain = 1e-10;

function pointAt<At extends Linearised>(
  problem: LeastSquaresProblem<At>,
  parameters: Float64Array,
): Point<At> {
  const at = problem.at(parameters);
  return { ...at, parameters, sum: at.residuals.reduce((total, r) => total + r * r, 0) };
}

/**
 * One more step, which S itself is too coarse to judge: at the least of S, what is left of θ changes S by its square
 * alone. Damped so little that it keeps still only where the readings say nothing.
 */
function polished<At extends Linearised>(
  problem: LeastSquaresProblem<At>,
  point: Point<At>,
  free: readonly number[],
  lengths: Float64Array,
): Point<At> {
  const step = stepFrom(point, free, lengths, leastDamping);
  const next = step && pointAt(problem, movedWithin(problem, point, step.change));
  return next && next.sum <= point.sum * (1 + roundingGain) ? next : point;
}

function takeLengths(lengths: Float64Array, jacobian: Matrix): void {
  for (let j = 0; j < lengths.length; j += 1) {
    let square = 0;
    for (let i = 0; i < jacobian.rows; i += 1) square += jacobian.get(i, j) ** 2;
    lengths[j] = Math.max(numberAt(lengths, j), Math.sqrt(square));
  }
}

/** The parameters that are not held at a limit: those that may move the way in which S falls. */
function freeAt({ limits }: Problem, { parameters, residuals, jacobian }: Point<Linearised>): number[] {
  const free: number[] = [];
  for (let j = 0; j < parameters.length; j += 1) {
    let gradient = 0;
    for (let i = 0; i < jacobian.rows; i += 1) gradient += jacobian.get(i, j) * numberAt(residuals, i);
    const { from, to } = limits[j] ?? noLimits;
    const value = numberAt(parameters, j);
    if (!((value <= from && gradient > 0) || (value >= to && gradient < 0))) free.push(j);
  }
  return free;
}

const noLimits = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };

/** The step of (1) and what the linear model gains by it; undefined where the matrix is singular. */
function stepFrom(
  { residuals, jacobian }: Linearised,
  free: readonly number[],
  lengths: Float64Array,
  damping: number,
): { readonly change: Float64Array; readonly gain: number } | undefined {
  const change = new Float64Array(lengths.length);
  if (free.length === 0) return { change, gain: 0 };
  const { rows } = jacobian;
  const extra = damping > 0 ? free.length : 0;
  const left = new Matrix(rows + extra, free.length);
  const right = new Matrix(rows + extra, 1);
  const scales = free.map((j) => numberAt(lengths, j) || 1);
  for (let i = 0; i < rows; i += 1) {
    right.set(i, 0, -numberAt(residuals, i));
    for (let k = 0; k < free.length; k += 1)
      left.set(i, k, jacobian.get(i, numberAt(free, k)) / numberAt(scales, k));
  }
  for (let k = 0; k < extra; k += 1) left.set(rows + k, k, Math.sqrt(damping));
  if (left.rows < left.columns) return undefined;
  const qr = new QrDecomposition(left);
  if (!qr.isFullRank()) return undefined;
  const solved = qr.solve(right);
  let before = 0;
  let after = 0;
  for (let k = 0; k < free.length; k += 1) change[numberAt(free, k)] = solved.get(k, 0) / numberAt(scales, k);
  for (let i = 0; i < rows; i += 1) {
    const r = numberAt(residuals, i);
    let moved = 0;
    for (let k = 0; k < free.length; k += 1) moved += left.get(i, k) * solved.get(k, 0);
    before -= 2 * r * moved; // S − S′ = −2·r·Jδ − |Jδ|², term by term, so that little is lost near the end
    after += moved * moved;
  }
  const gain = before - after;
  return Number.isFinite(gain) ? { change, gain: Math.max(gain, 0) } : undefined;
}

function movedWithin({ limits }: Problem, { parameters }: Point<Linearised>, change: Float64Array) {
  return parameters.map((value, j) => {
    const { from, to } = limits[j] ?? noLimits;
    return Math.min(Math.max(value + numberAt(change, j), from), to);
  });
}

function resultOf<At extends Linearised>(
  { limits }: Problem,
  point: Point<At>,
  status: LeastSquaresEnd['status'],
  passes: number,
): LeastSquaresResult<At> {
  const atLimit = Array.from(point.parameters, (value, j) => {
    const { from, to } = limits[j] ?? noLimits;
    return value <= from || value >= to;
  });
  return { ...point, status, passes, atLimit };
}
