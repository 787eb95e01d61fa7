import { frozenWithView } from '../../frozen-with-view.js';
import { Faults } from '../../input/faults.js';
import type { Grade, GradedItem } from './grade.js';
import { judgeFaults } from './judge-faults.js';
import { bestOf, type Judged, judgeNumber } from './judge-number.js';
import type { PracticeAnswer, PracticeKey } from './practice-key.js';
import {
  type AnswerRead,
  type GradingInUse,
  type KeyRead,
  readAnswer,
  readGradeOptions,
  readKey,
} from './read-grading.js';
import { viewGrade } from './view-grade.js';

/** How an answer is graded; `practiceDefaults` for what is left out. */
export interface GradeOptions {
  /** How far off a right answer may be: an end point in mL, an amount in %. */
  readonly tolerance?: { readonly mL?: number; readonly percent?: number };
  /** Points for all end points together, for all amounts and for the faults; 0 for what was not asked. */
  readonly points?: { readonly endpoints?: number; readonly mmol?: number; readonly faults?: number };
}

/**
 * What an answer to practice readings gets, and why.
 *
 * A number is right within its tolerance. It gets half of its points within three times the tolerance, and half where
 * it is what the readings give before their faults are corrected: the work was sound, the fault was missed. Of the
 * volumes in the answer, the best for an end point counts; where there are more volumes than end points, their points
 * are shared out over all of them. For the faults counts the share that is right in all that are there or named.
 * A wrong concentration of the titrant and a wrong amount of sample look alike in readings: either name counts.
 *
 * The rule of three tolerances and the halves are a choice of this package, as the points are.
 *
 * @throws InputError that lists every fault; also where an answer names a reagent that the key does not ask for
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { gradeAnswer, simulateReadings } from 'protolysis/measurement';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const { key } = simulateReadings(titration, { seed: 17, faults: [{ kind: 'initialReading', mL: 1.2 }] });
 * const grade = gradeAnswer(key, { endpoints: [12.46, 26.22], mmol: { sodiumCarbonate: 1.25 }, faults: [] });
 * grade.points; // => 7
 * grade.items[1]?.words; // => 'End point 2: 26.22 mL is what the readings give as they stand; corrected, it is 25 mL. Half the points.'
 * ```
 */
export function gradeAnswer(key: PracticeKey, answer: PracticeAnswer, options: GradeOptions = {}): Grade {
  const faults = new Faults('gradeAnswer');
  const read = readKey(key, faults);
  const given = readAnswer(answer, read, faults);
  const how = readGradeOptions(options, faults);
  faults.done();

  const parts = [
    gradePart('endpoint', how.points.endpoints, endpointsJudged(read, given, how)),
    gradePart('mmol', how.points.mmol, amountsJudged(read, given, how)),
    gradePart('faults', how.points.faults, [judgeFaults(read.expected.faults, given.faults)]),
  ];
  const grade = {
    points: total(parts.map(({ points }) => points)),
    of: total(parts.map(({ of }) => of)),
    items: parts.flatMap(({ items }) => items),
  };
  return frozenWithView<Grade>(grade, viewGrade);
}

/** Added in one order, so that parts which are no greater give a sum which is no greater. */
const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

/** The points of one part, the same for each of its questions; none where nothing was asked. */
function gradePart(item: GradedItem['item'], points: number, judged: readonly Judged[]) {
  if (judged.length === 0 || points === 0) return { points: 0, of: 0, items: [] };
  const each = points / judged.length;
  return {
    points: points * (total(judged.map(({ share }) => share)) / judged.length),
    of: points,
    items: judged.map(({ share, words }) => ({ item, points: each * share, of: each, words })),
  };
}

function endpointsJudged(
  { expected, uncorrected }: KeyRead,
  given: AnswerRead,
  { tolerance }: GradingInUse,
): readonly Judged[] {
  const count = expected.endpoints.length;
  const spread = given.endpoints.length > count ? count / given.endpoints.length : 1;
  const asked = expected.endpoints.map((mL, k) => ({
    name: `End point ${k + 1}`,
    unit: 'mL',
    expected: mL,
    asRead: uncorrected.endpoints[k],
    tolerance: tolerance.mL,
  }));
  const countsElsewhere = (volume: number, k: number) =>
    asked.some((other, j) => j !== k && judgeNumber(other, volume).share > 0);
  return asked.map((wanted, k) => {
    const judged = bestOf(wanted, given.endpoints);
    const free = given.endpoints.filter((volume) => !countsElsewhere(volume, k));
    if (judged.share === 0) return free.length > 0 ? bestOf(wanted, free) : judgeNumber(wanted, undefined);
    if (spread === 1) return judged;
    const words = `${judged.words} There are ${given.endpoints.length} volumes for ${count} ${count === 1 ? 'end point' : 'end points'}, which share the points.`;
    return { share: judged.share * spread, words };
  });
}

function amountsJudged(
  { expected, uncorrected, names }: KeyRead,
  given: AnswerRead,
  { tolerance }: GradingInUse,
): readonly Judged[] {
  return [...expected.mmol].map(([id, mmol]) =>
    judgeNumber(
      {
        name: `Amount of ${names.get(id) ?? id}`,
        unit: 'mmol',
        expected: mmol,
        asRead: uncorrected.mmol.get(id),
        tolerance: (tolerance.percent / 100) * mmol,
      },
      given.mmol.get(id),
    ),
  );
}
