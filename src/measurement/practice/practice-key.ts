import type { Content, Solution } from '../../solution/solution.js';
import { handOut } from '../../solution/view-solution.js';
import type { Reagent } from '../../substance/reagent.js';
import type { Titration } from '../../titration/titration.js';
import { asWritten } from './bench-effects.js';
import type { BenchFault, BenchFaultKind } from './bench-fault.js';
import { recordedWith } from './with-faults.js';

/** What somebody makes of practice readings. What is left out counts as not answered. */
export interface PracticeAnswer {
  /** mL of titrant that had run into the flask at each end point. */
  readonly endpoints?: readonly number[];
  /** mmol of each reagent in the flask, by its id. */
  readonly mmol?: Readonly<Record<string, number>>;
  /** The faults in the run; an empty list says that it is sound. */
  readonly faults?: readonly BenchFaultKind[];
}

/** What lies behind practice readings. Plain data: it survives JSON. */
export interface PracticeKey {
  readonly seed: number;
  /** With their sizes, in the order in which they act. */
  readonly faults: readonly BenchFault[];
  /** What was really in the flask. */
  readonly flask: Solution;
  /** What was really in the burette. */
  readonly burette: Solution;
  /** The answer that gets all points. */
  readonly expected: Required<PracticeAnswer>;
  /** What the readings give if nobody minds the faults; empty where that is nothing. */
  readonly uncorrected: Required<Pick<PracticeAnswer, 'endpoints' | 'mmol'>>;
}

/**
 * The end points to be found, mL: as many as the stated curve shows, and of those that the true one shows up to the last
 * volume the steepest. Carbon dioxide in a strong acid makes two of one, and its own is the one that one would find.
 *
 * @internal
 */
export function endpointsToFind(truth: Titration, stated: Titration, last: number): readonly number[] {
  return pointsShown(truth)
    .filter(({ mL }) => mL <= last)
    .sort((a, b) => b.steepness - a.steepness)
    .slice(0, pointsShown(stated).length)
    .map(({ mL }) => asWritten(mL))
    .sort((a, b) => a - b);
}

/** Equivalence points with an inflection beside them, mL, and how steep the curve is there. */
const pointsShown = (titration: Titration) =>
  titration.equivalencePoints.flatMap(({ mL, inflection }) =>
    inflection ? [{ mL, steepness: Math.abs(inflection.slope) }] : [],
  );

/** Whether a reagent has a part in a titration: NaCl has none. */
const takesPart = ({ protolytes, ions }: Reagent): boolean =>
  protolytes.length > 0 || ions.reduce((sum, { ion, count }) => sum + count * ion.charge, 0) !== 0;

/** What is known of a run to whoever sets it up. */
interface KnownRun {
  readonly seed: number;
  readonly faults: readonly BenchFault[];
  readonly stated: Titration;
  readonly truth: Titration;
  /** mL, those to be found. */
  readonly endpoints: readonly number[];
}

/**
 * The key of a run. What one makes of the readings without a thought of faults is, at the last end point,
 *
 *   n(uncorrected) = n(stated)·V(read)/V(stated)                                                           (1)
 *
 * It is given for a flask with one reagent that takes part: with two, each rests on more than one end point.
 *
 * @internal
 */
export function keyOf({ seed, faults, stated, truth, endpoints }: KnownRun): PracticeKey {
  const asked = stated.setup.analyte.contents.filter(({ reagent, mmol }) => takesPart(reagent) && mmol > 0);
  const ids = asked.map(({ reagent }) => reagent.id);
  const filled = truth.setup.analyte.contents.filter(({ reagent }) => ids.includes(reagent.id));
  const read = faults.some(({ kind }) => kind === 'incrementsAsTotals')
    ? []
    : recordedWith(faults, endpoints);
  const expectedAt = pointsShown(stated);
  const pairs = asked.length === 1 && read.length === expectedAt.length;
  const times = (read.at(-1) ?? 0) / (expectedAt.at(-1)?.mL ?? 1);
  return {
    seed,
    faults,
    flask: handOut({ ...truth.setup.analyte }),
    burette: handOut({ ...truth.setup.titrant }),
    expected: { endpoints, mmol: byId(filled, 1), faults: faults.map(({ kind }) => kind) },
    uncorrected: { endpoints: read, mmol: pairs && read.length > 0 ? byId(asked, times) : {} },
  };
}

const byId = (contents: readonly Content[], times: number): Readonly<Record<string, number>> =>
  Object.fromEntries(
    contents.map(({ reagent, mmol }) => [reagent.id, Number((times * mmol).toPrecision(9))]),
  );
