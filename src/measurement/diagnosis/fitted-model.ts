import { numberAt } from '../../solver/number-at.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import { type Chemistry, chemistryOf } from '../fit/chemistry.js';
import { type FitCovariance, fitCovariance } from '../fit/fit-covariance.js';
import { fittedPoints } from '../fit/fitted-points.js';
import type { FreeParameter } from '../fit/free-parameter.js';
import { type FoundFit, scatterOf, searchFit } from '../fit/search-fit.js';
import type { ReadingUncertainty } from '../reading-uncertainty.js';
import type { Readings } from '../readings.js';
import { parametersOf, parametersWithin, type Tolerance, withTolerances } from './tolerance.js';

/** What a diagnosis rests on. @internal */
export interface Case {
  readonly readings: Readings;
  readonly setup: ReadSetup;
  readonly uncertainty: ReadingUncertainty;
  readonly tolerance: Tolerance;
}

/** What is set free for a fault, how far, and where searches for it start. @internal */
interface SetFree {
  readonly free: FreeParameter;
  readonly limits: (expected: number) => { readonly from: number; readonly to: number };
  readonly startsFrom: (expected: number) => readonly number[];
}

/** A model fitted to the readings of a case. @internal */
export interface FittedModel {
  /** Least sum of squared distances. */
  readonly sum: number;
  /** Of the parameter of the fault: as the set-up has it, as found, and by how much it may be off. */
  readonly expected: number;
  readonly value: number;
  readonly deviation: number | null;
  /** Whether the search for it ended at one of its limits. */
  readonly isAtLimit: boolean;
  readonly chemistry: Chemistry;
  readonly found: FoundFit;
  /** The last running total, mL. */
  readonly last: number;
  /** Of all its parameters, before the scatter; null where it has none. */
  readonly covariance: FitCovariance | null;
  /** Root mean square of the distances, by the degrees of freedom. */
  readonly scatter: number;
}

/** An equivalence point of a fitted model, as a running total, mL. @internal */
export interface FittedModelPoint {
  readonly reaction: string;
  readonly mL: number;
  /** mL that has left the burette by then. */
  readonly poured: number;
  /** Its standard uncertainty; null where the readings do not determine it. */
  readonly deviation: number | null;
}

/** The equivalence points of a fitted model. @internal */
export const pointsOfModel = ({
  chemistry,
  found,
  covariance,
  scatter,
}: FittedModel): readonly FittedModelPoint[] =>
  fittedPoints(chemistry, found.parameters).map(({ reaction, mL, poured, gradient }) => {
    const deviation = covariance ? covariance.deviationOf(gradient) : 0;
    return { reaction, mL, poured, deviation: scaledBy(scatter, deviation) };
  });

/**
 * Fits the set-up with one parameter free, or none, from several starts, and keeps the nearest. Amount of
 * sample, offset and slope of the probe are free within their tolerances in every model alike, and beyond where one of them
 * is the fault.
 *
 * @internal
 */
export function fittedModel(
  { readings, setup, uncertainty, tolerance }: Case,
  fault: SetFree | null,
): FittedModel {
  const own = fault
    ? parametersOf([fault.free], setup).map((each) => ({ ...each, ...fault.limits(each.start) }))
    : [];
  const parameters = [...own, ...parametersWithin(setup, tolerance, fault?.free)];
  const chemistry = chemistryOf(setup, parameters);
  const usual = parameters.map(({ start }) => start);
  const expected = usual[0] ?? 0;
  const starts = fault ? fault.startsFrom(expected).map((at) => [at, ...usual.slice(1)]) : [usual];
  const searches = starts.map((start) =>
    searchFit(readings, chemistry, uncertainty, { start, limits: parameters, mostPasses, worthwhile }),
  );
  const best = searches.reduce((least, each) => (each.sum < least.sum ? each : least));
  const scatter = scatterOf(best, readings.mL.length - parameters.length);
  const covariance =
    parameters.length === 0 ? null : fitCovariance(withTolerances(best.jacobian, parameters, own.length));
  const [deviation = null] = covariance?.deviations ?? [];
  return {
    sum: best.sum,
    expected,
    value: fault ? numberAt(best.parameters, 0) : expected,
    deviation: scaledBy(scatter, deviation),
    isAtLimit: fault !== null && best.atLimit[0] === true,
    chemistry,
    found: best,
    last: Math.max(...readings.mL),
    covariance,
    scatter,
  };
}

/** Null where the readings determine nothing, or by so little that it leaves the range of doubles. */
function scaledBy(scatter: number, deviation: number | null): number | null {
  const scaled = deviation === null ? Number.NaN : deviation * scatter;
  return Number.isFinite(scaled) ? scaled : null;
}

/** A model that takes longer to fit explains nothing. */
const mostPasses = 15;

/** Of the sum: what a search may leave, far less than the evidence can feel. */
const worthwhile = 1e-6;
