import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { type Measured, readMeasured } from '../uncertainty/input-quantity.js';
import {
  corrected,
  errorKeys,
  readErrors,
  readLevel,
  readMassPerMole,
  readRatio,
  readRuns,
  type SeriesErrors,
  type WeighedRun,
} from './read-series.js';
import { type SeriesResult, seriesResult, type Values } from './series.js';

/** A primary standard, and how a titrant reacts with it. */
export interface WeighedStandard {
  /** g/mol. */
  readonly molarMass: Measured;
  /** Mass fraction, 0 to 1; exactly 1 if left out. */
  readonly purity?: Measured;
  /** mol of titrant that react with one mol of the standard: 2 for hydrochloric acid and sodium carbonate. */
  readonly ratio: number;
}

/** What was weighed and what it took. */
export interface StandardisationRequest extends SeriesErrors {
  readonly standard: WeighedStandard;
  readonly runs: readonly WeighedRun[];
}

/**
 * The concentration of a titrant, mol/L, from titrations of a primary standard.
 *
 *   c = ratio·1000·m·w/(M·V)
 *
 * m is the mass, w the purity, V the volume without blank and errors. The value is the mean of the runs. The budget holds
 * what is given with an uncertainty, and the scatter of the runs as `repeatability`; reading and filling are in that
 * already, so of the vessels give the calibration alone.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { molarMassOf } from 'protolysis';
 * import { estimateWithin, glasswareVolume, printResult, standardiseTitrant } from 'protolysis/measurement';
 *
 * const molar = standardiseTitrant({
 *   standard: {
 *     molarMass: molarMassOf('Na2CO3'),
 *     purity: estimateWithin(0.9995, { limit: 0.0005, distribution: 'rectangular' }),
 *     ratio: 2,
 *   },
 *   runs: [{ grams: 0.1325, mL: 24.94 }, { grams: 0.1301, mL: 24.52 }, { grams: 0.1342, mL: 25.28 }],
 *   buretteError: glasswareVolume({ kind: 'burette', size: 50, mL: 0 }),
 *   weighingError: estimateWithin(0, { limit: 0.0002, distribution: 'rectangular' }),
 * });
 * printResult(molar, 'mol/L'); // => '(0.10013 ± 0.00025) mol/L, k = 2.0 for 95 %'
 * ```
 */
export function standardiseTitrant(request: StandardisationRequest): SeriesResult {
  const faults = new Faults('standardiseTitrant');
  const what = 'a request { standard, runs }';
  const unread = faults.object(request, 'request', what, ['standard', 'runs', ...errorKeys]);
  const standard = faults.object(unread.standard, 'standard', 'a standard { molarMass, ratio }', [
    'molarMass',
    'purity',
    'ratio',
  ]);
  const molarMass = readMassPerMole(standard.molarMass, 'standard.molarMass', faults);
  const purity = readMeasured(standard.purity ?? 1, 'standard.purity', 'a mass fraction', faults, {
    from: 0.01,
    to: 1,
  });
  const ratio = readRatio(standard.ratio, 'standard.ratio', faults);
  const runs = readRuns(unread.runs, faults);
  const level = readLevel(unread.level, faults);
  const errors = readErrors(unread, runs, faults);
  faults.done();
  const concentration = (run: WeighedRun, values: Values): number => {
    const { grams, mL } = corrected(run, values);
    return (1000 * ratio * grams * (values.purity as number)) / ((values.molarMass as number) * mL);
  };
  return frozen(seriesResult(runs, { purity, molarMass, ...errors }, concentration, level));
}
