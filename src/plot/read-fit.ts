import type { Faults } from '../input/faults.js';
import { readFixedCarbonDioxide } from '../measurement/fit/fit-options.js';
import { type FreeParameter, readFree } from '../measurement/fit/free-parameter.js';
import { readReadingColumns } from '../measurement/read-reading-columns.js';
import type { Readings } from '../measurement/readings.js';
import { type ReadSetup, readSetup } from '../titration/read-setup.js';
import { plotLimits } from './plot-options.js';

/** A parameter as a fit found it, as far as it is drawn. */
export interface ReadParameter {
  readonly free: FreeParameter;
  readonly name: string;
  readonly value: number;
  /** Null where the readings do not determine it. */
  readonly standardUncertainty: number | null;
  readonly degreesOfFreedom: number | null;
  readonly atLimit: boolean;
}

/** A fit as it is drawn. */
export interface ReadFit {
  readonly setup: ReadSetup;
  readonly parameters: readonly ReadParameter[];
  readonly correlation: readonly (readonly number[])[];
  readonly readings: Readings;
  readonly distance: readonly number[];
}

/** Reads a fit from a caller's value, noting every fault. @internal */
export function readFit(value: unknown, faults: Faults): ReadFit {
  const unread = faults.object(value, 'fit', 'a fit as fitTitration returns it');
  const setup = readSetup(unread.setup, 'fit.setup', faults);
  readFixedCarbonDioxide(setup, 'fit.setup', faults);
  const parameters = readParameters(unread.parameters, faults);
  const correlation = faults
    .list(unread.correlation, 'fit.correlation', 'a row for each parameter')
    .map((row, k) => {
      const path = `fit.correlation[${k}]`;
      return Array.from(faults.numbers(row, path, 'a correlation', oneAtMost, plotLimits.points));
    });
  const isSquare = [correlation, ...correlation].every(({ length }) => length === parameters.length);
  if (!faults.any && !isSquare)
    faults.add('conflict', 'fit.correlation', `${parameters.length} rows and columns`, unread.correlation);
  return { setup, parameters, correlation, ...readFitted(unread.fitted, faults) };
}

/** But for the rounding of a quotient of doubles. */
const oneAtMost = { from: -1 - 1e-9, to: 1 + 1e-9 };

function readFitted(value: unknown, faults: Faults): Pick<ReadFit, 'readings' | 'distance'> {
  const keys = ['mL', 'pH', 'onCurve', 'distance'];
  const { mL, pH, distance } = faults.object(value, 'fit.fitted', 'the readings of a fit', keys);
  const needs = { least: 1, rising: false };
  const readings = readReadingColumns({ mL, pH }, 'fit.fitted', faults, needs);
  const far = { from: -1e100, to: 1e100 };
  const path = 'fit.fitted.distance';
  const distances = Array.from(faults.numbers(distance, path, 'a distance', far, plotLimits.points));
  if (!faults.any && distances.length !== readings.mL.length)
    faults.add('conflict', path, `as many as there are readings, ${readings.mL.length}`, distance);
  return { readings, distance: distances };
}

function readParameters(value: unknown, faults: Faults): readonly ReadParameter[] {
  const list = faults
    .list(value, 'fit.parameters', 'a list of parameters', 1, 10)
    .map((one, k) => faults.object(one, `fit.parameters[${k}]`, 'a parameter of a fit'));
  const free = readFree(
    list.map((one) => one.free),
    'fit.parameters',
    faults,
  );
  return list.map((one, k) => {
    const path = `fit.parameters[${k}]`;
    if (typeof one.atLimit !== 'boolean')
      faults.add('wrong-type', `${path}.atLimit`, 'true or false', one.atLimit);
    return {
      free: free[k] ?? 'sampleAmount',
      name: faults.text(one.name, `${path}.name`, 'a name'),
      value: faults.number(one.value, `${path}.value`, 'a value', { from: -1e12, to: 1e12 }),
      ...readEstimate(one.estimate, `${path}.estimate`, faults),
      atLimit: one.atLimit === true,
    };
  });
}

function readEstimate(
  value: unknown,
  path: string,
  faults: Faults,
): Pick<ReadParameter, 'standardUncertainty' | 'degreesOfFreedom'> {
  if (value === null) return { standardUncertainty: null, degreesOfFreedom: null };
  const { standardUncertainty: u, degreesOfFreedom: freedom } = faults.object(
    value,
    path,
    'an estimate or null',
  );
  const spread = { from: 0, to: 1e100 };
  return {
    standardUncertainty: faults.number(u, `${path}.standardUncertainty`, 'a standard uncertainty', spread),
    degreesOfFreedom:
      freedom === null
        ? null
        : faults.number(freedom, `${path}.degreesOfFreedom`, 'a number or null', { from: 1, to: 1e12 }),
  };
}
