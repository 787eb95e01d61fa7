import type { ReadingUncertainty } from '../reading-uncertainty.js';
import type { Readings } from '../readings.js';
import type { Chemistry } from './chemistry.js';
import type { FitParameter } from './parameter-moves.js';
import { type FoundFit, mostPasses, searchFit } from './search-fit.js';

type Limits = Pick<FitParameter, 'from' | 'to'>;

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
export function findFit(readings: Readings, chemistry: Chemistry, uncertainty: ReadingUncertainty): FoundFit {
  const { parameters } = chemistry;
  const from = (start: readonly number[], limits: readonly Limits[]) =>
    searchFit(readings, chemistry, uncertainty, { start, limits, mostPasses });
  const meant = parameters.map(({ start }) => start);
  const direct = from(meant, parameters);
  if (direct.sum <= doubtfulDistance ** 2 * readings.mL.length || parameters.every(isAmount)) return direct;
  const amountsAlone = parameters.map((each) =>
    isAmount(each) ? each : { from: each.start, to: each.start },
  );
  const second = from(Array.from(from(meant, amountsAlone).parameters), parameters);
  return second.sum < direct.sum ? second : direct;
}

const isAmount = ({ moves }: FitParameter) => moves.what === 'flask' || moves.what === 'titrant';

/**
 * In standard uncertainties, root mean square: scatter alone seldom leaves twice as much, and another search costs little.
 * A choice of this package.
 */
const doubtfulDistance = 2;
