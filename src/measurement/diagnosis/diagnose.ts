import { frozen } from '../../frozen.js';
import { frozenWithView } from '../../frozen-with-view.js';
import { Faults } from '../../input/faults.js';
import { makeTitration } from '../../titration/make-titration.js';
import { readSetup } from '../../titration/read-setup.js';
import type { Titration } from '../../titration/titration.js';
import { readFixedCarbonDioxide } from '../fit/fit-options.js';
import { practiceDefaults } from '../practice/practice-options.js';
import { readReadingColumns } from '../read-reading-columns.js';
import { type ReadingUncertainty, readReadingUncertainty } from '../reading-uncertainty.js';
import type { Readings } from '../readings.js';
import { calledEndpoint } from './called-endpoint.js';
import { coverageNotes } from './coverage.js';
import type { Diagnosis } from './diagnosis.js';
import { strongEvidence } from './evidence.js';
import { type Explanation, explanationsOf } from './explanations.js';
import type { Case } from './fitted-model.js';
import { viewDiagnosis } from './view-diagnosis.js';

/** What a diagnosis takes for granted. */
export interface DiagnosisOptions {
  /** Standard uncertainties of one pH and of one volume, mL; `practiceDefaults.noise` if left out. */
  readonly uncertainty?: ReadingUncertainty;
  /** By which share the sample may differ from what is stated without being wrong; 0.02 if left out. */
  readonly sampleTolerance?: number;
  /** mL, where the end point was called at the bench, as a total like those of the readings; not judged if left out. */
  readonly endpoint?: number;
}

/** An amount of sample that is off by less is no fault: common practice for a weighed sample of a commercial product. */
export const diagnosisDefaults = /*#__PURE__*/ frozen({ sampleTolerance: 0.02 } as const);

/**
 * What went wrong at the bench, from the readings and the titration as it was meant.
 *
 * Each fault is a small model: the predicted curve with one number free, or two for a bubble, fitted by `fitTitration`'s
 * method. As explanations of the readings they are ranked by the Bayesian information criterion beside that of a sound
 * bench; the evidence is the difference. Below 6 the readings look sound; explanations within 6 of the best cannot be told
 * apart by these readings, and `check` says what would.
 *
 * With `endpoint`, the volume at which the end point was called, it says by how much that was overshot: how far it lies from
 * the equivalence point of the curve that explains the readings best.
 *
 * One fault at a time: two at once come as the one that explains most. How often it is right on simulated readings stands
 * in docs/guides/diagnosis.md.
 *
 * @param readings - at least eight, as they were written down
 * @param titration - as it was meant; neither boiled out nor giving off its carbon dioxide
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { diagnose, simulateReadings } from 'protolysis/measurement';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const faults = [{ kind: 'probeOffset', pH: 0.25 }] as const;
 * const { readings } = simulateReadings(titration, { seed: 4, faults });
 * diagnose(readings, titration).likely[0]?.kind; // => 'probeOffset'
 * ```
 */
export function diagnose(
  readings: Readings,
  titration: Pick<Titration, 'setup'>,
  options: DiagnosisOptions = {},
): Diagnosis {
  const faults = new Faults('diagnose');
  const { about, endpoint } = readCase(readings, titration, options, faults);
  faults.done();
  const { sound: soundModel, ranked } = explanationsOf(about);
  const explanations = ranked.map(({ explanation }) => explanation);
  const best = explanations[0];
  const sound = !best || best.evidence < strongEvidence;
  const likely = sound
    ? []
    : explanations.filter(({ evidence }) => best.evidence - evidence < strongEvidence);
  const diagnosis: Diagnosis = {
    verdict: sound ? 'sound' : 'fault',
    sentence: sentenceOn(likely),
    likely,
    explanations,
    endpoint:
      endpoint === undefined
        ? null
        : calledEndpoint(endpoint, (sound ? null : ranked[0]?.model) ?? soundModel, about),
    notes: coverageNotes(about.readings, makeTitration(about.setup).equivalencePoints),
  };
  return frozenWithView(diagnosis, viewDiagnosis);
}

function readCase(readings: unknown, titration: unknown, options: unknown, faults: Faults) {
  const given = readReadingColumns(readings, 'readings', faults, { least: 8, rising: false });
  const asked = faults.object(titration, 'titration', 'a titration as titrate returns it');
  const setup = readSetup(asked.setup, 'titration.setup', faults);
  readFixedCarbonDioxide(setup, 'titration.setup', faults);
  const unread = faults.object(options, 'options', 'options', ['uncertainty', 'sampleTolerance', 'endpoint']);
  const {
    uncertainty = practiceDefaults.noise,
    sampleTolerance = diagnosisDefaults.sampleTolerance,
    endpoint,
  } = unread;
  const [share, volume] = [
    { from: 0, to: 0.5 },
    { from: 0, to: 1e6 },
  ];
  const about: Case = {
    readings: given,
    setup,
    uncertainty: readReadingUncertainty(uncertainty, 'options.uncertainty', faults),
    sampleTolerance: faults.number(
      sampleTolerance,
      'options.sampleTolerance',
      'a share of the sample',
      share,
    ),
  };
  const called =
    endpoint === undefined ? endpoint : faults.number(endpoint, 'options.endpoint', 'a volume in mL', volume);
  return { about, endpoint: called };
}

function sentenceOn(likely: readonly Explanation[]): string {
  const [best, ...others] = likely;
  if (!best) return 'The readings look sound.';
  if (others.length === 0) return `This explains the readings best: ${best.words}.`;
  return `These readings cannot tell which of these it is: ${likely.map(({ words }) => words).join('; ')}.`;
}
