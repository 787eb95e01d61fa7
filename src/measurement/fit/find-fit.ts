import type { FitParameter } from './fit-parameters.js';
import type { Residuals } from './fit-residuals.js';
import { type LeastSquaresProblem, type LeastSquaresResult, leastSquares } from './least-squares.js';

/** What a fit minimises. @internal */
export interface FitProblem {
  readonly at: LeastSquaresProblem<Residuals>['at'];
  readonly parameters: readonly FitParameter[];
  readonly readings: number;
}

/**
 * The search from where the titration was meant, and, where that leaves the readings off the curve, another one
 * from where amounts alone bring the curve nearest; the nearer of both ends.
 *
 * Where an amount is off by half or more, the offset or slope of a probe can take its place, and the search ends at a
 * least sum of squares that is not the least of all. Amounts by themselves have no such place to end: a hundredth and a
 * hundredfold of what was meant are found (tests/measurement/fit).
 *
 * @internal
 */
export function findFit({ at, parameters, readings }: FitProblem): LeastSquaresResult<Residuals> {
  const negligible = negligibleDistance ** 2 * readings;
  const from = (start: readonly number[], limits: LeastSquaresProblem<Residuals>['limits']) =>
    leastSquares({ at, start, limits, negligible });
  const meant = parameters.map(({ start }) => start);
  const direct = from(meant, parameters);
  if (direct.sum <= doubtfulDistance ** 2 * readings || parameters.every(isAmount)) return direct;
  const amountsAlone = parameters.map((each) =>
    isAmount(each) ? each : { from: each.start, to: each.start },
  );
  const second = from(Array.from(from(meant, amountsAlone).parameters), parameters);
  return second.sum < direct.sum ? second : direct;
}

const isAmount = ({ moves }: FitParameter) => moves.what === 'flask' || moves.what === 'titrant';

/** Whether so many readings lie further from the curve than their uncertainties allow. @internal */
export const isFar = (sum: number, readings: number): boolean => sum > farDistance ** 2 * readings;

/** In standard uncertainties, root mean square: what is ten times too far has another cause than scatter. */
const farDistance = 10;

/** In standard uncertainties, root mean square: scatter alone seldom leaves twice as much, and another search costs little. */
const doubtfulDistance = 2;

/** In standard uncertainties: a reading as near as this is on the curve. */
const negligibleDistance = 1e-9;
