import { differenceCiede2000 } from 'culori/fn';
import { indicators, reagents, scoreIndicator } from 'protolysis';
import { colourDifference, rankBySight, visibleChange, visions } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { strong, titrationOf } from './titrations.js';

describe('colourDifference', () => {
  // G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30, 21–30 (2005), table 1, rows 1, 7, 17 and 25 (memory): L*, a*, b*
  // of two colours and their CIEDE2000 difference. The library's formula is checked where it takes such values.
  test.each([
    [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
    [[50, 0, 0], [50, -1, 2], 2.3669],
    [[50, 2.5, 0], [73, 25, -18], 27.1492],
    [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  ])('%o and %o differ by %d', ([l, a, b], [l2, a2, b2], difference) => {
    const lab = (l = 0, a = 0, b = 0) => ({ mode: 'lab65' as const, l, a, b });
    expect(differenceCiede2000()(lab(l, a, b), lab(l2, a2, b2))).toBeCloseTo(difference, 4);
  });

  test('is 0 for one colour, 100 from black to white, and the same both ways', () => {
    expect(colourDifference('#a1b2c3', '#A1B2C3')).toBe(0);
    expect(colourDifference('#000000', '#ffffff')).toBeCloseTo(100, 3);
    expect(colourDifference('#d02020', '#20a020')).toBeCloseTo(colourDifference('#20a020', '#d02020'), 9);
  });

  test.each([
    ['red and green', '#c85a3c', '#8c8c32', ['protanopia', 'deuteranopia'], 'tritanopia'],
    ['blue and green', '#3c96b4', '#3ca08c', ['tritanopia'], 'deuteranopia'],
  ] as const)('%s are closer for those who lack the cones for it', (_, one, other, poor, good) => {
    for (const vision of poor)
      expect(colourDifference(one, other, { vision })).toBeLessThan(
        colourDifference(one, other, { vision: good }),
      );
  });

  test('grey stays grey for everyone', () => {
    for (const vision of visions)
      expect(colourDifference('#777777', '#999999', { vision })).toBeCloseTo(
        colourDifference('#777777', '#999999'),
        1,
      );
  });
});

describe('visibleChange', () => {
  test('compares the two ends, and one drop to either side of the call', () => {
    const { ends, call } = visibleChange(strong(), indicators.bromothymolBlue);
    expect([ends.acid.name, ends.base.name]).toEqual(['yellow', 'blue']);
    expect([call?.before.name, call?.after.name]).toEqual(['yellow', 'blue']);
    for (const vision of visions)
      expect(ends.difference[vision]).toBe(colourDifference(ends.acid.hex, ends.base.hex, { vision }));
  });

  test('red and yellow of methyl orange are closer for those who lack red or green cones', () => {
    const { difference } = visibleChange(strong(), indicators.methylOrange).ends;
    expect(difference.protanopia).toBeLessThan(0.75 * difference.normal);
    expect(difference.deuteranopia).toBeLessThan(0.75 * difference.normal);
  });

  test('has no call where the curve does not get there', () =>
    expect(visibleChange(strong(0.001), indicators.indigoCarmine).call).toBeNull());
});

describe('rankBySight', () => {
  const titration = titrationOf(reagents.sodiumCarbonate, reagents.hydrochloricAcid);
  const at = titration.equivalencePoints[1];
  const some = [
    indicators.methylOrange,
    indicators.bromophenolBlue,
    indicators.congoRed,
    indicators.indigoCarmine,
  ];

  test('multiplies the score by how surely the change is seen', () => {
    for (const one of rankBySight(titration, some, {
      at,
      vision: 'protanopia',
      noticeable: 3,
      include: ['congoRed'],
    }).ranking) {
      const indicator = some.find(({ id }) => id === one.indicator.id);
      if (!indicator) expect.unreachable();
      const { score } = scoreIndicator(titration, indicator, { at });
      expect(one.score).toBe(score);
      expect(one.seen).toBeCloseTo(1 - 2 ** (-one.difference / 3), 12);
      expect(one.worth).toBe(one.score * one.seen);
    }
  });

  test('sorts by worth, which depends on the eyes', () => {
    const order = (vision: (typeof visions)[number]) => rankBySight(titration, some, { at, vision }).ranking;
    for (const vision of visions) {
      const worths = order(vision).map(({ worth }) => worth);
      expect(worths).toEqual([...worths].sort((a, b) => b - a));
    }
    const worthOfOrange = (vision: (typeof visions)[number]) =>
      order(vision).find(({ indicator }) => indicator.id === 'methylOrange')?.worth;
    expect(worthOfOrange('deuteranopia')).toBeLessThan(Number(worthOfOrange('normal')));
  });

  test('a change that never comes is not seen', () => {
    const [one] = rankBySight(strong(0.001), [indicators.indigoCarmine]).ranking;
    expect(one).toMatchObject({ difference: 0, seen: 0, worth: 0 });
  });
});
