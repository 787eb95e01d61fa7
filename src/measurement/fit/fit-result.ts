import { notesOnStrength } from '../../equilibrium/activity/notes-on-strength.js';
import { fixed } from '../../print-number.js';
import { numberAt } from '../../solver/number-at.js';
import { makeTitration } from '../../titration/make-titration.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import type { Estimate } from '../estimate.js';
import type { Readings } from '../readings.js';
import type { Chemistry } from './chemistry.js';
import { type FitCovariance, fitCovariance } from './fit-covariance.js';
import type { FitInUse } from './fit-options.js';
import { fittedPoints } from './fitted-points.js';
import { fittedSetup } from './fitted-setup.js';
import type { FitParameter } from './parameter-moves.js';
import { type RunsTest, runsTest } from './runs-test.js';
import { type FoundFit, scatterOf } from './search-fit.js';
import type { FittedParameter, TitrationFit } from './titration-fit.js';

/** By what a deviation of the linear model is multiplied, and how well that is known. */
interface Scatter {
  readonly factor: number;
  readonly degreesOfFreedom: number | null;
}

/** What a search found, in the words of a result. @internal */
export function fitResult(
  readings: Readings,
  { setup, parameters, scatter }: FitInUse,
  chemistry: Chemistry,
  found: FoundFit,
): TitrationFit {
  const degreesOfFreedom = readings.mL.length - parameters.length;
  const rms = scatterOf(found, degreesOfFreedom);
  const known = scatter === 'known';
  const seen: Scatter = { factor: known ? 1 : rms, degreesOfFreedom: known ? null : degreesOfFreedom };
  const covariance = fitCovariance(found.jacobian);
  const fitted = parameters.map((parameter, j) => fittedParameter(parameter, j, found, covariance, seen));
  const runs = runsTest(found.residuals);
  const contents = fittedSetup(setup, parameters, found.parameters);
  const inseparable = covariance.inseparable.map((group) => group.map((j) => parameters[j]?.name ?? ''));
  return {
    status: found.status,
    parameters: fitted,
    correlation: covariance.correlation,
    inseparable,
    condition: covariance.condition,
    fitted: {
      mL: readings.mL,
      pH: readings.pH,
      onCurve: found.onCurve,
      distance: Array.from(found.residuals),
    },
    scatter: rms,
    degreesOfFreedom,
    runs,
    equivalencePoints: fittedPoints(chemistry, found.parameters).map(({ reaction, mL, gradient }) => ({
      reaction,
      mL,
      estimate: estimateOf(mL, covariance.deviationOf(gradient), seen),
    })),
    setup: { ...contents, conditions: setup.inUse.given },
    notes: [
      ...notesOn(found, fitted, inseparable, rms),
      ...(rms < noScatter && !known ? [onTheCurve] : []),
      ...noteOnRuns(runs),
      ...notesOnLaw({ ...setup, ...contents }, Math.max(...readings.mL)),
    ],
  };
}

/** What is uncertain about the law of activity at the stronger of the beginning and the end. */
function notesOnLaw(setup: ReadSetup, last: number): readonly string[] {
  const { equilibriumAt } = makeTitration(setup);
  const strengths = [0, last].map((mL) => equilibriumAt(mL).ionicStrength);
  return notesOnStrength(setup.inUse, Math.max(...strengths));
}

function fittedParameter(
  { free, name, unit, start, from, to }: FitParameter,
  j: number,
  { parameters, atLimit }: FoundFit,
  { deviations }: FitCovariance,
  scatter: Scatter,
): FittedParameter {
  const value = numberAt(parameters, j);
  return {
    free,
    name,
    unit,
    expected: start,
    value,
    estimate: ifDetermined(to - from, estimateOf(value, deviations[j] ?? null, scatter)),
    atLimit: atLimit[j] ?? false,
  };
}

const estimateOf = (
  value: number,
  deviation: number | null,
  { factor, degreesOfFreedom }: Scatter,
): Estimate | null =>
  deviation === null ? null : { value, standardUncertainty: deviation * factor, degreesOfFreedom };

/** What is less certain than its whole range is not determined. */
const ifDetermined = (range: number, estimate: Estimate | null): Estimate | null =>
  estimate && estimate.standardUncertainty > range ? null : estimate;

/**
 * In standard uncertainties, root mean square: what lies three times too far has another cause than scatter. A choice of this
 * package. It is more than the 2 of a diagnosis (`largestScatter`): a fit takes its estimates from the scatter that it finds,
 * and half the uncertainty of a pH where nothing is said.
 */
const farScatter = 3;

/**
 * In standard uncertainties, root mean square: a pH to 0.001 scatters ten times as much by its rounding alone. A choice of
 * this package.
 */
const noScatter = 1e-3;

/** A chance below which a test of this kind is taken to speak, by common practice. */
const byChance = 0.05;

const onTheCurve =
  "The readings lie on the curve without scatter, as copies and computed ones do: the uncertainties that were estimated from it tell nothing. Give scatter: 'known'.";

const noteOnRuns = ({ runs, expected, probability }: RunsTest): readonly string[] =>
  probability < byChance
    ? [
        `The readings lie in ${runs} runs above and below the curve, where ${fixed(expected, 0)} are expected: the model may miss something, such as activity, or a fault of the bench.`,
      ]
    : [];

function notesOn(
  { status }: FoundFit,
  parameters: readonly FittedParameter[],
  inseparable: TitrationFit['inseparable'],
  scatter: number,
): readonly string[] {
  const notes: string[] = [];
  if (status === 'no-descent')
    notes.push('The search ended where no step came nearer to the readings: the result may be no minimum.');
  if (status === 'too-many-steps') notes.push('The search did not end: the result is not the nearest curve.');
  if (scatter > farScatter)
    notes.push(
      'The readings lie further from this curve than their uncertainties allow: something else is wrong, or the search began too far away.',
    );
  for (const { name, estimate, atLimit } of parameters) {
    if (!estimate) notes.push(`These readings do not determine this: ${name}.`);
    else if (atLimit)
      notes.push(`At the end of its range, so its uncertainty holds to one side only: ${name}.`);
  }
  for (const group of inseparable)
    notes.push(`These readings can hardly tell one from another: ${group.join('; ')}.`);
  return notes;
}
