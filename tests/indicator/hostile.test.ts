import fc from 'fast-check';
import {
  chooseIndicators,
  chooseTransition,
  colourAt,
  defineIndicator,
  flaskColours,
  indicators,
  makeSolution,
  overshoot,
  rankIndicators,
  reagents,
  referenceTubes,
  scoreIndicator,
} from 'protolysis';
import { colourDifference, rankBySight, visibleChange } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';
import { strong } from './titrations.js';

const titration = strong();
const indicator = indicators.methylRedBromocresolGreen;
const options = {
  at: { ...titration.equivalencePoints[0] },
  tolerance: 0.05,
  dropSize: 0.05,
  observer: { at: 7, within: 0.5 },
  indicatorDrops: 2,
  drops: 3,
  vision: 'normal',
  noticeable: 2,
};
const curve = titration.curve({ every: 5, upTo: 30 });
const recipe = {
  mL: 5,
  drops: 2,
  acid: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
  base: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
};

// biome-ignore lint/suspicious/noExplicitAny: what is given is hostile
const calls: [string, (...given: any[]) => unknown, unknown[]][] = [
  ['defineIndicator', defineIndicator, [indicator]],
  ['chooseTransition', chooseTransition, [indicators.methylRed, { work: 'crc-handbook' }]],
  ['scoreIndicator', scoreIndicator, [titration, indicator, options]],
  ['rankIndicators', rankIndicators, [titration, [indicator], options]],
  ['chooseIndicators', chooseIndicators, [titration, [indicator], options]],
  ['colourAt', colourAt, [indicator, 7, { drops: 2 }]],
  ['flaskColours', flaskColours, [curve, indicator, { drops: 2 }]],
  ['overshoot', overshoot, [titration, indicator, options]],
  ['referenceTubes', referenceTubes, [indicators.phenolphthalein, recipe]],
  ['colourDifference', colourDifference, ['#123456', '#654321', { vision: 'normal' }]],
  ['visibleChange', visibleChange, [titration, indicator, options]],
  ['rankBySight', rankBySight, [titration, [indicator], options]],
];

describe.each(calls)('%s answers or throws an InputError', (_, call, given) => {
  test.each(given.map((_one, k) => k))('whatever its argument %d is', (k) =>
    fc.assert(
      fc.property(hostile, (value) => {
        answerOrInputError(() => call(...given.slice(0, k), value, ...given.slice(k + 1)));
      }),
    ),
  );

  const plain = given.flatMap((value, k) => (typeof value === 'object' && value !== titration ? [k] : []));
  test.each(plain)('whatever stands inside its argument %d', (k) =>
    fc.assert(
      fc.property(spoiled(given[k] as object), (value) => {
        answerOrInputError(() => call(...given.slice(0, k), value, ...given.slice(k + 1)));
      }),
    ),
  );
});

test('the options of one call are not those of another', () => {
  expect(() => scoreIndicator(titration, indicator, options as never)).toThrow('options.drops');
  expect(() => scoreIndicator(titration, indicator, options as never)).toThrow('options.vision');
});

describe('a weight of one’s own', () => {
  test.each([
    ['below zero', () => -1],
    ['not a number', () => Number.NaN],
    ['infinite', () => Number.POSITIVE_INFINITY],
    ['nothing anywhere', () => 0],
    ['a text', () => '1'],
  ])('%s is an InputError', (_, weight) =>
    expect(() =>
      scoreIndicator(titration, indicator, {
        observer: { at: 7, within: 1, weight: weight as () => number },
      }),
    ).toThrow(expect.objectContaining({ name: 'InputError' })),
  );
});

test('a titration that came through JSON has lost its methods, and the error says so', () =>
  expect(() => scoreIndicator(JSON.parse(JSON.stringify(titration)), indicator)).toThrow(
    'titration.pHAt is missing; give a titration as titrate returns it',
  ));

test('all faults of a call are listed together', () =>
  expect(() =>
    scoreIndicator(titration, { ...indicator, id: '' }, { tolerance: -1, observer: { at: 7, within: 0 } }),
  ).toThrow(/3 faults\n.*tolerance.*\n.*observer\.within.*\n.*indicator\.id/));
