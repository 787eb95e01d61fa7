import { isIdealLaw } from '../../equilibrium/activity/laws.js';
import { frozenWithView } from '../../frozen-with-view.js';
import { Faults } from '../../input/faults.js';
import { fixed, toDigits } from '../../print-number.js';
import { makeTitration } from '../../titration/make-titration.js';
import type { Titration } from '../../titration/titration.js';
import type { Readings } from '../readings.js';
import { calledEndpoint } from './called-endpoint.js';
import { coverageNotes, type PointRead } from './coverage.js';
import type { Diagnosis } from './diagnosis.js';
import { type DiagnosisOptions, readDiagnosed } from './diagnosis-options.js';
import { largestScatter, strongEvidence } from './evidence.js';
import { type Explanation, explanationsOf } from './explanations.js';
import { type Case, type FittedModel, pointsOfModel } from './fitted-model.js';
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
  const isExplained = model.scatter <= largestScatter;
  const verdict = !isExplained ? 'unexplained' : isSound ? 'sound' : 'fault';
  const diagnosis: Diagnosis = {
    verdict,
    sentence: isExplained ? sentenceOn(likely) : sentenceUnexplained(about, model, likely),
    likely,
    scatter: model.scatter,
    explanations,
    endpoint: endpoint === undefined ? null : calledEndpoint(endpoint, model, about),
    notes: [
      ...coverageNotes(about.readings, pointsShown(about, verdict === 'fault' ? model : null)),
      ...noteOnOrder(about.readings.mL, likely),
      ...(verdict !== 'sound' && isIdealLaw(about.setup.inUse.activity) ? [noteOnActivity] : []),
    ],
  };
  return frozenWithView(diagnosis, viewDiagnosis);
}

const noteOnActivity =
  'This titration is ideal. In a real solution activity looks like a fault, mostly of the probe: for readings from a bench ask again under conditions: { activity: davies }.';

/** Amount and strength move a curve alike but for a change of pH that any probe may be off: where one is named, so is the other. */
function withTwins(all: readonly Explanation[], likely: readonly Explanation[]): readonly Explanation[] {
  const isTwin = ({ kind }: Explanation) => kind === 'sampleAmount' || kind === 'titrantConcentration';
  return likely.some(isTwin) ? all.filter((each) => likely.includes(each) || isTwin(each)) : likely;
}

/** The points that a curve shows by a step, as meant or, of a fault of the bench, as it would be read. */
function pointsShown({ setup }: Case, model: FittedModel | null): readonly PointRead[] {
  const meant = makeTitration(setup).equivalencePoints.filter(({ inflection }) => inflection !== null);
  if (model === null) return meant;
  const shown = new Set(meant.map(({ reaction }) => reaction));
  return pointsOfModel(model).filter(({ reaction }) => shown.has(reaction));
}

function noteOnOrder(mL: readonly number[], likely: readonly Explanation[]): readonly string[] {
  const falls = mL.findIndex((volume, k) => k > 0 && volume < (mL[k - 1] ?? volume));
  if (falls < 0 || likely.some(({ kind }) => kind === 'incrementsAsTotals')) return [];
  return [
    `Reading ${falls + 1}, ${fixed(mL[falls] ?? 0, 2)} mL, is less than the one before: running totals rise, and drift and waiting are judged by the order in which the readings stand.`,
  ];
}

function sentenceUnexplained(
  { readings, uncertainty }: Case,
  { scatter, found }: FittedModel,
  likely: readonly Explanation[],
): string {
  const nearest = likely[0] ? `, even with what comes nearest, ${likely[0].words}` : '';
  const squares = Array.from(found.residuals, (distance) => distance ** 2);
  const most = Math.max(...squares);
  const k = squares.indexOf(most);
  const alone =
    most > found.sum / 2
      ? ` Most of that is reading ${k + 1}, pH ${fixed(readings.pH[k] ?? 0, 2)}: look whether it was written down wrongly.`
      : '';
  return (
    `No single fault explains these readings: they scatter ${toDigits(scatter, 2)} times as much as their uncertainty lets expect` +
    `${nearest}.${alone} Check that sample, titrant and model of activity are those of this bench and that the readings are as ` +
    `certain as ${uncertainty.pH} in pH and ${uncertainty.mL} mL, and mend one fault after the other.`
  );
}

function sentenceOn(likely: readonly Explanation[]): string {
  const [best, ...others] = likely;
  if (!best) return 'The readings look sound.';
  if (others.length === 0) return `This explains the readings best: ${best.words}.`;
  return `These readings cannot tell which of these it is: ${likely.map(({ words }) => words).join('; ')}.`;
}
