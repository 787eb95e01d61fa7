import type { ReadingUncertainty } from '../reading-uncertainty.js';
import type { Readings } from '../readings.js';
import type { Chemistry } from './chemistry.js';
import { type Residuals, residualsAt } from './fit-residuals.js';
import { type LeastSquaresProblem, type LeastSquaresResult, leastSquares } from './least-squares.js';

/** A search that ended, with the pH of the curve beside each reading. @internal */
export type FoundFit = LeastSquaresResult<Residuals>;

/** Where a search starts, how far it may go, and how long. @internal */
interface FitSearch extends Pick<LeastSquaresProblem<Residuals>, 'limits' | 'mostPasses' | 'worthwhile'> {
  readonly start: readonly number[];
}

/** The parameters of the curve that is nearest to readings, from a start. @internal */
export function searchFit(
  readings: Readings,
  chemistry: Chemistry,
  uncertainty: ReadingUncertainty,
  { start, ...ends }: FitSearch,
): FoundFit {
  return leastSquares({
    at: (values) => residualsAt(chemistry, readings, uncertainty, values),
    start,
    ...ends,
    negligible: negligibleDistance ** 2 * readings.mL.length,
  });
}

/** Of its standard uncertainty: a reading as near as this is on the curve. */
const negligibleDistance = 1e-9;

/** A search that goes on for longer creeps along a valley; its end is told by its status. @internal */
export const mostPasses = 200;

/**
 * How far readings lie from a curve, root mean square, in their standard uncertainties: √(S/ν) with ν degrees of freedom, 1
 * where the curve and the uncertainties are right. With none left, √S.
 *
 * @internal
 */
export const scatterOf = ({ sum }: Pick<FoundFit, 'sum'>, degreesOfFreedom: number): number =>
  Math.sqrt(sum / Math.max(degreesOfFreedom, 1));
