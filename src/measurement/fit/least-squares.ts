import { numberAt } from '../../solver/number-at.js';
import { dampedStep, growLengths, type Linearised } from './damped-step.js';

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

/** Where a search ended, with the residuals there. @internal */
export type LeastSquaresResult<At extends Linearised> = At & LeastSquaresEnd;

type Point<At extends Linearised> = At & Pick<LeastSquaresEnd, 'parameters' | 'sum'>;
type Problem = Pick<LeastSquaresProblem<Linearised>, 'limits'>;

/**
 * The parameters θ of least S = Σ r², by the method of Levenberg and Marquardt: one damped step after
 * another, by (1) of damped-step.ts.
 *
 * Damping        falls where a step does what the linear model foretells, rises where S does not fall [2]
 * Limits         a parameter that a step would carry past its limit stops there; one that stands at its limit and would
 *                leave is held for that pass
 * Ends           where the undamped step would lower S by less than `worthwhile` of it, or by less than `roundingGain` and
 *                no step does: that step is then taken; or where S is negligible
 * Invariant      S never rises from pass to pass
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
    growLengths(lengths, point.jacobian);
    const free = freeAt(problem, point);
    const left = dampedStep(point, free, lengths, 0)?.gain ?? Number.POSITIVE_INFINITY;
    if (left <= worthwhile * point.sum)
      return resultOf(problem, polished(problem, point, free, lengths), 'converged', pass);
    const step = dampedStep(point, free, lengths, damping);
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
  const step = dampedStep(point, free, lengths, leastDamping);
  const next = step && pointAt(problem, movedWithin(problem, point, step.change));
  return next && next.sum <= point.sum * (1 + roundingGain) ? next : point;
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
