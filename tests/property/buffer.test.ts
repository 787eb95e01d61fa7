import fc from 'fast-check';
import {
  acids,
  bufferResponse,
  capacityOf,
  capacityOver,
  chooseBuffer,
  estimateByLogRatio,
  makeSolution,
  prepareBuffer,
  reagents,
  reserveOf,
  strongAdditionTo,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { answerOrInputError, hostile, spoiled } from './hostile.js';

const buffer = makeSolution({
  mL: 50,
  contents: [{ reagent: reagents.potassiumHydrogenPhthalate, molar: 0.05 }],
});
const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 1 }] });
const conditions = { pKw: 14 };

const addition = { add: acid, drops: 3, dropSize: 0.04, beside: [buffer], conditions };
const range = { from: 3, to: 4, every: 0.5, usefulShare: 0.5, conditions };
const choice = { pH: 5, among: [acids.acetic, acids.citric], molar: 0.1, rankBy: 'capacity', conditions };
const options = { acid, base: acid, change: 1, dropSize: 0.05, conditions };
const request = {
  pH: 5,
  molar: 0.1,
  mL: 100,
  from: [{ reagent: reagents.aceticAcid, purity: 0.99 }, reagents.sodiumAcetate],
  protolyte: acids.acetic,
  ionicStrength: 0.3,
  salt: reagents.sodiumChloride,
  temperatures: [],
  dilutions: [2],
  errorPercent: 1,
  conditions,
};
const ofStocks = { pH: 5, mL: 20, from: [buffer, acid] };

/** Each call with one argument that is hostile, or right but for one value inside; the other arguments are right. */
const calls: readonly [string, fc.Arbitrary<unknown>, (value: never) => unknown][] = [
  ['capacityOf(solution)', fc.oneof(hostile, spoiled(buffer)), (value) => capacityOf(value)],
  ['capacityOf(…, conditions)', fc.oneof(hostile, spoiled(conditions)), (value) => capacityOf(buffer, value)],
  ['capacityOver(solution)', fc.oneof(hostile, spoiled(buffer)), (value) => capacityOver(value, range)],
  ['capacityOver(…, range)', fc.oneof(hostile, spoiled(range)), (value) => capacityOver(buffer, value)],
  ['strongAdditionTo(solution)', fc.oneof(hostile, spoiled(buffer)), (value) => strongAdditionTo(value, 5)],
  ['strongAdditionTo(…, pH)', hostile, (value) => strongAdditionTo(buffer, value)],
  [
    'strongAdditionTo(…, …, conditions)',
    fc.oneof(hostile, spoiled(conditions)),
    (value) => strongAdditionTo(buffer, 5, value),
  ],
  [
    'bufferResponse(solution)',
    fc.oneof(hostile, spoiled(buffer)),
    (value) => bufferResponse(value, addition),
  ],
  [
    'bufferResponse(…, addition)',
    fc.oneof(hostile, spoiled(addition)),
    (value) => bufferResponse(buffer, value),
  ],
  ['reserveOf(solution)', fc.oneof(hostile, spoiled(buffer)), (value) => reserveOf(value)],
  ['reserveOf(…, options)', fc.oneof(hostile, spoiled(options)), (value) => reserveOf(buffer, value)],
  ['estimateByLogRatio(solution)', fc.oneof(hostile, spoiled(buffer)), (value) => estimateByLogRatio(value)],
  [
    'estimateByLogRatio(…, conditions)',
    fc.oneof(hostile, spoiled(conditions)),
    (value) => estimateByLogRatio(buffer, value),
  ],
  ['chooseBuffer(choice)', fc.oneof(hostile, spoiled(choice)), (value) => chooseBuffer(value)],
  [
    'prepareBuffer(request)',
    fc.oneof(hostile, spoiled(request), spoiled(ofStocks)),
    (value) => prepareBuffer(value),
  ],
];

describe.each(calls)('%s', (_, values, call) => {
  test('answers in finite numbers, or throws an InputError and nothing else', () => {
    fc.assert(
      fc.property(values, (value) => {
        const answer = answerOrInputError(() => call(value as never));
        if (answer !== undefined) expect(notFinite(answer)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});

/** Where a result holds a number that is not one. What the caller gave comes back as it was, so it is not looked into. */
function notFinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value)
    .filter(([key]) => !['reagent', 'protolyte', 'stock', 'solution'].includes(key))
    .flatMap(([key, item]) => notFinite(item, `${path}.${key}`));
}
