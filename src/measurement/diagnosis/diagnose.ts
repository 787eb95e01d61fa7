import { isIdealLaw } from '../../equilibrium/activity/laws.js';
import { frozenWithView } from '../../frozen-with-view.js';
import { Faults } from '../../input/faults.js';
import { makeTitration } from '../../titration/make-titration.js';
import type { Titration } from '../../titration/titration.js';
import { alikeKinds } from '../practice/alike-kinds.js';
import type { Readings } from '../readings.js';
import { calledEndpoint } from './called-endpoint.js';
import { coverageNotes, type PointRead } from './coverage.js';
import type { Diagnosis } from './diagnosis.js';
import { type DiagnosisOptions, readDiagnosed } from './diagnosis-options.js';
import { explains, strongEvidence } from './evidence.js';
import { type Explanation, explanationsOf } from './explanations.js';
import { type Case, type FittedModel, pointsOfModel } from './fitted-model.js';
import { sentenceOn, sentenceUnexplained } from './sentence-on.js';
import { viewDiagnosis } from './view-diagnosis.js';

/**
 * What went wrong at the bench, from the readings and the titration as it was meant.
 *
 * Each fault is a small model: the predicted curve with one number free, or two for a bubble, fitted by `fitTitration`'s
 * method; amount of sample, offset and slope of the probe are free within their tolerances. As explanations of the readings
 * the faults are ranked by the Bayesian information criterion beside that of a sound bench; the evidence is the difference.
 * Below 6 the readings look sound; explanations within 6 of the best cannot be told apart by these readings, and `check`
 * says what would. Where the readings scatter about the best of all more than twice as much as their uncertainty lets
 * expect, the verdict is `unexplained`.
 *
 * With `endpoint`, the volume at which the end point was called, it says by how much that was overshot: how far it lies from
 * the equivalence point of the curve that explains the readings best.
 *
 * One fault at a time: two at once come as the one that explains most, or as `unexplained`. How often it is right on
 * simulated readings stands in docs/guides/diagnosis.md.
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
  const { about, endpoint } = readDiagnosed(readings, titration, options, faults);
  faults.done();
  const { sound, ranked } = explanationsOf(about);
  const explanations = ranked.map(({ explanation }) => explanation);
  const best = explanations[0];
  const isSound = !best || best.evidence < strongEvidence;
  const likely = isSound
    ? []
    : withTwins(
        explanations,
        explanations.filter(({ evidence }) => best.evidence - evidence < strongEvidence),
      );
  const model = (isSound ? null : ranked[0]?.model) ?? sound;
  const isExplained = explains(model);
  const verdict = !isExplained ? 'unexplained' : isSound ? 'sound' : 'fault';
  const diagnosis: Diagnosis = {
    verdict,
    sentence: isExplained ? sentenceOn(likely) : sentenceUnexplained(about, model, likely),
    likely,
    scatter: model.scatter,
    explanations,
    endpoint: endpoint === undefined ? null : calledEndpoint(endpoint, model, about),
    notes: [
      ...coverageNotes(
        about.readings,
        pointsShown(about, verdict === 'fault' ? model : null),
        likely.some(({ kind }) => kind === 'incrementsAsTotals'),
      ),
      ...(verdict !== 'sound' && isIdealLaw(about.setup.inUse.activity) ? [noteOnActivity] : []),
    ],
  };
  return frozenWithView(diagnosis, viewDiagnosis);
}

const noteOnActivity =
  'This titration is ideal. In a real solution activity looks like a fault, mostly of the probe: for readings from a bench ask again under conditions: { activity: davies }.';

/** Where one of two that look alike is named, so is the other. */
function withTwins(all: readonly Explanation[], likely: readonly Explanation[]): readonly Explanation[] {
  const isTwin = ({ kind }: Explanation) => alikeKinds.includes(kind);
  return likely.some(isTwin) ? all.filter((each) => likely.includes(each) || isTwin(each)) : likely;
}

/** The points that a curve shows by a step, as meant or, of a fault of the bench, as it would be read. */
function pointsShown({ setup }: Case, model: FittedModel | null): readonly PointRead[] {
  const meant = makeTitration(setup).equivalencePoints.filter(({ inflection }) => inflection !== null);
  if (model === null) return meant;
  const shown = new Set(meant.map(({ reaction }) => reaction));
  return pointsOfModel(model).filter(({ reaction }) => shown.has(reaction));
}
