import { colourAt, type Indicator, indicators } from 'protolysis';
import { colourDifference } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { sharpestCall } from '../../src/indicator/best-call.js';
import { callsOf } from '../../src/indicator/observer.js';
import { colourless, colourlessForm } from '../../src/substance/indicator.js';

/** The words for hues in order, the last beside the first. */
const wheel = [
  'red',
  'orange',
  'yellow',
  'yellow-green',
  'green',
  'blue-green',
  'blue',
  'violet',
  'purple',
  'pink',
];

/** Words of handbooks that the wheel does not have. */
const synonyms: Readonly<Record<string, string>> = { brown: 'orange', rose: 'pink' };

const stepsApart = (one: string, other: string): number => {
  const apart = Math.abs(wheel.indexOf(one) - wheel.indexOf(other));
  return Math.min(apart, wheel.length - apart);
};

/** The hues of a printed colour: `blue-violet` is two words. */
const huesOf = (printed: string): string[] =>
  (printed.split(' ').at(-1) ?? '').split('-').map((word) => synonyms[word] ?? word);

/**
 * Whether a predicted name is the printed one, the next on the wheel, or between two printed words. One step is what
 * the end of a range means: there the first of the other form shows.
 */
function agrees(predicted: string, printed: string): boolean {
  const hue = predicted.split(' ').at(-1) ?? '';
  const printedHues = huesOf(printed);
  if (!wheel.includes(hue)) return printedHues.includes(hue);
  const apart = printedHues.map((word) => stepsApart(hue, word));
  const [first, second = first] = printedHues as [string, string?];
  const between = apart.reduce((sum, steps) => sum + steps, 0) === stepsApart(first, second);
  return Math.min(...apart) <= 1 || (printedHues.length === 2 && between);
}

/** Where a work prints a word of its own for an end of its range. */
const printedAtEnds: Readonly<Record<string, { from: string }>> = {
  cresolRedThymolBlue: { from: 'rose' },
};

const catalogue = Object.values(indicators) as readonly Indicator[];
const twoColour = catalogue.filter((indicator) => colourlessForm(indicator) === undefined);
const oneColour = catalogue.filter((indicator) => colourlessForm(indicator) !== undefined);
const named = (list: readonly Indicator[]) => list.map((indicator) => [indicator.id, indicator] as const);
const nameAt = (indicator: Indicator, pH: number) => colourAt(indicator, pH).name;

/** The pH at which the colour is as far from that of the acid form as from that of the base form, by CIEDE2000. */
function turnOf(indicator: Indicator): number {
  const { from, to } = indicator.transition;
  const hexAt = (pH: number) => colourAt(indicator, pH).hex;
  const [acid, base] = [hexAt(from - 3), hexAt(to + 3)];
  let [low, high] = [from - 3, to + 3];
  while (high - low > 0.001) {
    const middle = (low + high) / 2;
    const hex = hexAt(middle);
    if (colourDifference(hex, acid) < colourDifference(hex, base)) low = middle;
    else high = middle;
  }
  return low;
}

describe('the words for hues', () => {
  test.each([
    ['yellow', 'yellow', true],
    ['pale orange', 'yellow', true],
    ['pink', 'yellow', false],
    ['violet', 'blue-violet', true],
    ['pink', 'red-violet', true],
    ['green', 'red-violet', false],
    ['grey', 'yellow', false],
    ['faint pink', 'rose', true],
  ])('%s is %s: %s', (predicted, printed, agree) => expect(agrees(predicted, printed)).toBe(agree));
});

describe('the colour predicted at an end of the published range', () => {
  test.each(named(twoColour))('is the published one: %s', (id, indicator) => {
    const { transition, acidColour, baseColour } = indicator;
    const ends = { from: acidColour, to: baseColour, ...printedAtEnds[id] };
    for (const end of ['from', 'to'] as const) {
      const predicted = nameAt(indicator, transition[end]);
      expect(agrees(predicted, ends[end]), `${predicted} is ${ends[end]}`).toBe(true);
    }
  });

  test('is stated beside the datum where it is not that of the acid or base form', () => {
    for (const [id, { from }] of Object.entries(printedAtEnds)) {
      const indicator = catalogue.find((one) => one.id === id);
      const note = indicator?.source.kind === 'fromMemory' ? indicator.source.note : '';
      expect(note).toContain(`${from} at pH ${indicator?.transition.from}`);
    }
  });

  test.each(named(oneColour))(
    'just shows where there is one colour, and is full at the other end: %s',
    (_, indicator) => {
      const { transition, baseColour } = indicator;
      const [trace, full] = [nameAt(indicator, transition.from), nameAt(indicator, transition.to)];
      expect(trace).toMatch(/^(faint|pale) /);
      expect(agrees(trace, baseColour), `${trace} is ${baseColour}`).toBe(true);
      expect(full).not.toMatch(/faint|colourless/);
      expect(agrees(full, baseColour), `${full} is ${baseColour}`).toBe(true);
      expect(nameAt(indicator, transition.from - 1)).toMatch(/^(colourless|faint .*)$/);
    },
  );
});

describe('an observer', () => {
  test.each(named(catalogue))('calls the change inside the published range: %s', (_, indicator) => {
    const { at } = callsOf(indicator, 0);
    expect(at).toBeGreaterThanOrEqual(indicator.transition.from);
    expect(at).toBeLessThanOrEqual(indicator.transition.to);
    expect(nameAt(indicator, at)).not.toBe(colourless);
  });

  test.each(named(twoColour))('is shown the turn inside the published range: %s', (_, indicator) => {
    const turn = turnOf(indicator);
    expect(turn).toBeGreaterThanOrEqual(indicator.transition.from);
    expect(turn).toBeLessThanOrEqual(indicator.transition.to);
  });

  // Within the spread of the sharpest call, which is what a mixed indicator is for.
  test.each([['methylRedBromocresolGreen'], ['methylRedMethyleneBlue'], ['cresolRedThymolBlue']] as const)(
    'is shown the turn of a mixed indicator at its printed pH: %s',
    (id) => {
      const indicator: Indicator = indicators[id];
      const printed = indicator.titrationExponent?.pH ?? Number.NaN;
      expect(Math.abs(turnOf(indicator) - printed)).toBeLessThanOrEqual(sharpestCall.within);
    },
  );
});

describe('a mixed indicator', () => {
  // The words are those that `source` and `titrationExponent` of each quote.
  test.each([
    ['methylRedBromocresolGreen', 4.5, 'red'],
    ['methylRedBromocresolGreen', 5.1, 'grey'],
    ['methylRedBromocresolGreen', 5.3, 'green'],
    ['methylRedMethyleneBlue', 5.2, 'red-violet'],
    ['methylRedMethyleneBlue', 5.4, 'grey'],
    ['methylRedMethyleneBlue', 5.6, 'green'],
    ['cresolRedThymolBlue', 7.8, 'yellow'],
    ['cresolRedThymolBlue', 8.2, 'rose'],
    ['cresolRedThymolBlue', 8.4, 'violet'],
  ] as const)('%s at pH %d is %s', (id, pH, printed) => {
    const predicted = nameAt(indicators[id], pH);
    expect(agrees(predicted, printed), `${predicted} is ${printed}`).toBe(true);
  });
});
