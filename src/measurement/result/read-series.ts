import type { Faults } from '../../input/faults.js';
import { budgetDefaults, levelLimits } from '../uncertainty/budget.js';
import { type InputQuantity, readMeasured } from '../uncertainty/input-quantity.js';

/** One weighed sample and the titrant that it took. */
export interface WeighedRun {
  readonly grams: number;
  /** Of titrant, as read. */
  readonly mL: number;
}

/** What all runs of a series have in common. */
export interface SeriesErrors {
  /** mL that the same work takes without the sample; 0 if left out. */
  readonly blank?: InputQuantity | number;
  /** g that the balance shows too much: usually 0 with the uncertainty of its calibration. Exactly 0 if left out. */
  readonly weighingError?: InputQuantity | number;
  /** mL that the burette shows too much: usually 0 with the uncertainty of its calibration. Exactly 0 if left out. */
  readonly buretteError?: InputQuantity | number;
  /** mL by which the end point is late, such as the systematic error of an indicator. Exactly 0 if left out. */
  readonly endpointError?: InputQuantity | number;
  /** The share that the expanded uncertainty is meant to cover; 0.95 if left out. */
  readonly level?: number;
}

/** The keys of `SeriesErrors`. @internal */
export const errorKeys = ['blank', 'weighingError', 'buretteError', 'endpointError', 'level'];

type Unread = Readonly<Record<string, unknown>>;

/** Of a volume of titrant, mL. @internal */
export const volumeLimits = { from: 0, to: 1e6 };
const massLimits = { from: 1e-6, to: 1e6 };
const errorLimits = { from: -1e3, to: 1e3 };

/** Reads the weighed runs of a series, noting every fault. @internal */
export function readRuns(value: unknown, faults: Faults): readonly WeighedRun[] {
  return faults.list(value, 'runs', 'a list of runs { grams, mL }', 1, 1000).map((run, k) => {
    const unread = faults.object(run, `runs[${k}]`, 'a run { grams, mL }', ['grams', 'mL']);
    return {
      grams: faults.number(unread.grams, `runs[${k}].grams`, 'a mass in g', massLimits),
      mL: faults.number(unread.mL, `runs[${k}].mL`, 'a volume in mL', { above: 0, to: volumeLimits.to }),
    };
  });
}

/** Reads the share that an expanded uncertainty is meant to cover; `budgetDefaults` if left out. @internal */
export const readLevel = (value: unknown, faults: Faults): number =>
  faults.number(value ?? budgetDefaults.level, 'level', 'a share', levelLimits);

/** Reads a concentration with its uncertainty. @internal */
export const readMolar = (value: unknown, path: string, faults: Faults) =>
  readMeasured(value, path, 'a concentration in mol/L', faults, { from: 1e-6, to: 100 });

/** Reads a molar mass with its uncertainty. @internal */
export const readMassPerMole = (value: unknown, path: string, faults: Faults) =>
  readMeasured(value, path, 'a molar mass in g/mol', faults, { from: 1, to: 1e6 });

/** Reads how many mol of titrant react with one mol of what is determined. @internal */
export const readRatio = (value: unknown, path: string, faults: Faults): number =>
  faults.number(value, path, 'mol of titrant to one mol', { from: 0.01, to: 100 });

/**
 * The errors that are given, by name; what is left out is exactly zero and in no budget. Together they must leave
 * something of each run.
 *
 * @internal
 */
export function readErrors(
  unread: Unread,
  runs: readonly WeighedRun[],
  faults: Faults,
): Readonly<Record<string, InputQuantity>> {
  const words = {
    blank: 'a volume in mL',
    weighingError: 'a mass in g',
    buretteError: 'a volume in mL',
    endpointError: 'a volume in mL',
  };
  const given = Object.entries(words).filter(([key]) => unread[key] !== undefined);
  const errors = Object.fromEntries(
    given.map(([key, what]) => [
      key,
      readMeasured(unread[key], key, what, faults, key === 'blank' ? volumeLimits : errorLimits),
    ]),
  );
  if (faults.any) return {};
  const values = Object.fromEntries(Object.entries(errors).map(([key, { value }]) => [key, value]));
  for (const [k, run] of runs.entries()) {
    const { grams, mL } = corrected(run, values);
    if (!(mL > 0)) faults.add('conflict', `runs[${k}].mL`, 'more mL than the blank and the errors', run.mL);
    if (!(grams > 0))
      faults.add('conflict', `runs[${k}].grams`, 'more g than the error of weighing', run.grams);
  }
  return errors;
}

/** A run as it would have been without blank and errors. @internal */
export function corrected(
  { grams, mL }: WeighedRun,
  { blank = 0, weighingError = 0, buretteError = 0, endpointError = 0 }: Readonly<Record<string, number>>,
): WeighedRun {
  return { grams: grams - weighingError, mL: mL - blank - buretteError - endpointError };
}
