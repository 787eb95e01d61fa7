import { frozen } from '../../frozen.js';
import type { Faults } from '../../input/faults.js';
import { readSetup } from '../../titration/read-setup.js';
import { readFixedCarbonDioxide } from '../fit/fit-options.js';
import { practiceDefaults } from '../practice/practice-options.js';
import { readReadingColumns } from '../read-reading-columns.js';
import { type ReadingUncertainty, readReadingUncertainty } from '../reading-uncertainty.js';
import type { Case } from './fitted-model.js';

/** What a diagnosis takes for granted. */
export interface DiagnosisOptions {
  /** Standard uncertainties of one pH and of one volume, mL; `practiceDefaults.noise` if left out. */
  readonly uncertainty?: ReadingUncertainty;
  /**
   * By which share the sample may differ from what is stated without being wrong; 0.02 if left out. Where the amount is
   * what you are looking for, give how far it may be off: 0.1 for a content between 90 and 110 % of that assumed.
   */
  readonly sampleTolerance?: number;
  /** By how much a calibrated probe may be off without being wrong: offset in pH, slope in %; 0.03 and 2 if left out. */
  readonly probeTolerance?: { readonly pH?: number; readonly percent?: number };
  /** mL, where the end point was called at the bench, as a total like those of the readings; not judged if left out. */
  readonly endpoint?: number;
}

/**
 * What is no fault yet. Common practice: a weighed sample of a commercial product is good to 2 %, and a probe that was just
 * calibrated with two standards to 0.03 in pH and 2 % of the slope.
 */
export const diagnosisDefaults = /*#__PURE__*/ frozen({
  sampleTolerance: 0.02,
  probeTolerance: { pH: 0.03, percent: 2 },
} as const);

const keys = ['uncertainty', 'sampleTolerance', 'probeTolerance', 'endpoint'];

/** Reads the arguments of a diagnosis, noting every fault. @internal */
export function readDiagnosed(
  readings: unknown,
  titration: unknown,
  options: unknown,
  faults: Faults,
): { readonly about: Case; readonly endpoint: number | undefined } {
  const given = readReadingColumns(readings, 'readings', faults, { least: 8, rising: false });
  const asked = faults.object(titration, 'titration', 'a titration as titrate returns it');
  const setup = readSetup(asked.setup, 'titration.setup', faults);
  readFixedCarbonDioxide(setup, 'titration.setup', faults);
  const unread = faults.object(options, 'options', 'options', keys);
  const { uncertainty = practiceDefaults.noise, endpoint } = unread;
  const { sampleTolerance = diagnosisDefaults.sampleTolerance, probeTolerance = {} } = unread;
  const probe = faults.object(probeTolerance, 'options.probeTolerance', 'tolerances { pH, percent }', [
    'pH',
    'percent',
  ]);
  const usual = diagnosisDefaults.probeTolerance;
  const { pH = usual.pH, percent = usual.percent } = probe;
  const about = {
    readings: given,
    setup,
    uncertainty: readReadingUncertainty(uncertainty, 'options.uncertainty', faults),
    tolerance: {
      sampleAmount: faults.number(sampleTolerance, 'options.sampleTolerance', 'a share of the sample', {
        from: 0,
        to: 0.5,
      }),
      probeOffset: faults.number(pH, 'options.probeTolerance.pH', 'an offset in pH', { from: 0, to: 1 }),
      probeSlope: faults.number(percent, 'options.probeTolerance.percent', 'a part of the slope in %', {
        from: 0,
        to: 30,
      }),
    },
  };
  const called =
    endpoint === undefined
      ? undefined
      : faults.number(endpoint, 'options.endpoint', 'a volume in mL', { from: 0, to: 1e6 });
  return { about, endpoint: called };
}
