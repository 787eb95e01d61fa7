import { indicators, scoreIndicator, type Titration } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { strong } from './titrations.js';

const titration = strong();
const indicator = indicators.methylRedBromocresolGreen;

test('the options of one call are not those of another', () => {
  const options = { drops: 3, vision: 'normal' };
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
    ['an error', () => (undefined as unknown as () => unknown)()],
  ] as [string, () => unknown][])('%s is an InputError', (_, weight) =>
    expect(() =>
      scoreIndicator(titration, indicator, {
        observer: { at: 7, within: 1, weight: weight as () => number },
      }),
    ).toThrow(expect.objectContaining({ name: 'InputError' })),
  );
});

test('a titration that came through JSON has lost its methods, and the error says so', () =>
  expect(() => scoreIndicator(JSON.parse(JSON.stringify(titration)), indicator)).toThrow(
    'titration is without its methods; give titrate(titration.setup), since JSON and copies keep none',
  ));

test('a titration of one’s own that answers with nonsense is told which answer', () => {
  const own = { ...titration, pHAt: () => Number.NaN } as Titration;
  expect(() => scoreIndicator(own, indicator)).toThrow('titration.pHAt(25) is NaN; give a pH');
});

test('all faults of a call are listed together', () =>
  expect(() =>
    scoreIndicator(titration, { ...indicator, id: '' }, { tolerance: -1, observer: { at: 7, within: 0 } }),
  ).toThrow(/3 faults\n.*tolerance.*\n.*observer\.within.*\n.*indicator\.id/));

test('a point at next to no volume is refused: an error in percent of it would be infinite', () => {
  const at = { ...titration.equivalencePoints[0], mL: 5e-324 } as Titration['equivalencePoints'][0];
  expect(() => scoreIndicator(titration, indicator, { at })).toThrow('at.mL is 5e-324');
});
