import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { type Measured, readMeasured } from '../uncertainty/input-quantity.js';
import {
  corrected,
  errorKeys,
  readErrors,
  readLevel,
  readMassPerMole,
  readMolar,
  readRatio,
  readRuns,
  type SeriesErrors,
  type WeighedRun,
} from './read-series.js';
import { type SeriesResult, seriesResult, type Values } from './series.js';

/** What was weighed, how it was diluted, and what it took. */
export interface AssayRequest extends SeriesErrors {
  /** With an aliquot, `grams` is what went into the flask. */
  readonly runs: readonly WeighedRun[];
  /** Of the titrant, mol/L: the result of `standardiseTitrant`, for example. */
  readonly molar: Measured;
  /** Of the substance that is looked for, g/mol. */
  readonly molarMass: Measured;
  /** mol of titrant that react with one mol of the substance. */
  readonly ratio: number;
  /** mL that the sample was made up to, where an aliquot of it is titrated. */
  readonly flask?: Measured;
  /** mL of that in each titration. */
  readonly aliquot?: Measured;
}

/**
 * The mass fraction of a substance in a sample, g/g, from titrations: sample, flask, aliquot, titrant.
 *
 *   w = c·V·M/(ratio·1000·m) · flask/aliquot
 *
 * V is the volume without blank and errors. The value is the mean of the runs; the budget is made as by
 * `standardiseTitrant`. That of the titrant is one input, and what it shares with the assay, such as the same burette,
 * counts as independent.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { molarMassOf } from 'protolysis';
 * import { assay, glasswareVolume, printResult } from 'protolysis/measurement';
 *
 * // 1.29 g of pool powder in 250 mL, of which 25 mL each take hydrochloric acid to the second end point
 * const carbonate = assay({
 *   runs: [{ grams: 1.2904, mL: 23.12 }, { grams: 1.2904, mL: 23.16 }, { grams: 1.2904, mL: 23.1 }],
 *   molar: { value: 0.10013, standardUncertainty: 0.00012, degreesOfFreedom: 14 },
 *   molarMass: molarMassOf('Na2CO3'),
 *   ratio: 2,
 *   flask: glasswareVolume({ kind: 'flask', size: 250 }),
 *   aliquot: glasswareVolume({ kind: 'pipette', size: 25 }),
 *   buretteError: glasswareVolume({ kind: 'burette', size: 50, mL: 0 }),
 * });
 * printResult(carbonate, 'g/g'); // => '(0.9510 ± 0.0034) g/g, k = 2.0 for 95 %'
 * ```
 */
export function assay(request: AssayRequest): SeriesResult {
  const faults = new Faults('assay');
  const keys = ['runs', 'molar', 'molarMass', 'ratio', 'flask', 'aliquot', ...errorKeys];
  const unread = faults.object(request, 'request', 'a request { runs, molar, molarMass, ratio }', keys);
  const molar = readMolar(unread.molar, 'molar', faults);
  const molarMass = readMassPerMole(unread.molarMass, 'molarMass', faults);
  const ratio = readRatio(unread.ratio, 'ratio', faults);
  const dilution = readDilution(unread, faults);
  const runs = readRuns(unread.runs, faults);
  const level = readLevel(unread.level, faults);
  const errors = readErrors(unread, runs, faults);
  faults.done();
  const massFraction = (
    run: WeighedRun,
    { molar, molarMass, flask = 1, aliquot = 1, ...values }: Values,
  ): number => {
    const { grams, mL } = corrected(run, values);
    return ((molar as number) * mL * (molarMass as number) * flask) / (ratio * 1000 * grams * aliquot);
  };
  return frozen(seriesResult(runs, { molar, molarMass, ...dilution, ...errors }, massFraction, level));
}

function readDilution({ flask, aliquot }: Readonly<Record<string, unknown>>, faults: Faults) {
  if (flask === undefined && aliquot === undefined) return {};
  const limits = { from: 1e-3, to: 1e6 };
  const made = {
    flask: readMeasured(flask, 'flask', 'a volume in mL', faults, limits),
    aliquot: readMeasured(aliquot, 'aliquot', 'a volume in mL', faults, limits),
  };
  if (!faults.any && made.aliquot.value > made.flask.value)
    faults.add('conflict', 'aliquot', 'no more mL than the flask holds', made.aliquot.value);
  return made;
}
