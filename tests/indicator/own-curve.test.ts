import {
  chooseIndicators,
  colourAt,
  davies,
  type EquivalencePoint,
  type Indicator,
  indicators,
  makeSolution,
  rankIndicators,
  reagents,
  type ScoreOptions,
  scoreIndicator,
  type Titration,
  titrate,
} from 'protolysis';
import { rankBySight, visibleChange } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { triangle } from '../../src/indicator/observer.js';
import { notesFor } from '../../src/indicator/ranking-notes.js';
import { indicatorOf, source } from './invented-indicator.js';
import { ownTitration, straight, strong, titrationOf } from './titrations.js';

const point = straight.equivalencePoints[0] as EquivalencePoint;

/** A curve of straight lines through points [mL, pH], to be judged for the point at a volume. */
function through(knots: readonly (readonly [number, number])[], mL: number, boilOutAt?: number): Titration {
  const lines = knots.slice(1).map(([end, last], k) => {
    const [start, first] = knots[k] as [number, number];
    return { start, end, first, slope: (last - first) / (end - start) };
  });
  const lineAt = (volume: number) =>
    lines.find(({ end }) => volume < end) ?? lines.at(-1) ?? expect.unreachable();
  const pHAt = (volume: number) => {
    const { start, first, slope } = lineAt(volume);
    return first + slope * (volume - start);
  };
  const { setup } = strong();
  return ownTitration({
    pHAt,
    slopeAt: (volume) => lineAt(volume).slope,
    volumesAt: (pH) =>
      lines.flatMap(({ start, end, first, slope }) => {
        const volume = start + (pH - first) / slope;
        return volume >= start && volume < end ? [volume] : [];
      }),
    equivalencePoints: [{ ...point, mL, pH: pHAt(mL) }],
    ...(boilOutAt === undefined ? {} : { setup: { ...setup, boilOut: { mL: boilOutAt } } }),
  });
}

describe('a straight curve, pH = mL, gives a score in closed form', () => {
  const scoreOf = (options: ScoreOptions) => scoreIndicator(straight, indicatorOf(6, 8), options).score;
  // With x = pH − 7: ∫ dx/(1 + x²/δ²) = δ·atan(x/δ).
  const even = (from: number, to: number, delta: number) =>
    (delta * (Math.atan((to - 7) / delta) - Math.atan((from - 7) / delta))) / (to - from);
  // The same times (1 − |x|/s)/s, from −s to s: (2/s)·(δ·atan(s/δ) − δ²/(2s)·ln(1 + s²/δ²)).
  const peaked = (s: number, delta: number) =>
    (2 / s) * (delta * Math.atan(s / delta) - (delta ** 2 / (2 * s)) * Math.log(1 + (s / delta) ** 2));

  test.each([
    [5, 1, 2],
    [9, 0.5, 0.3],
    [7, 2, 0.01],
    [3, 3, 10],
  ])('for calls that fall evenly about pH %d, within %d: δ = %d mL', (at, within, tolerance) => {
    const observer = { at, within, weight: () => 3 };
    expect(scoreOf({ observer, tolerance })).toBeCloseTo(even(at - within, at + within, tolerance), 7);
  });

  test.each([0.02, 0.5, 5])('for an indicator about the point: δ = %d mL', (tolerance) =>
    expect(scoreOf({ tolerance })).toBeCloseTo(peaked(1, tolerance), 7),
  );

  test('for the best that an observer could reach, within 0.1', () => {
    const { points, notes } = rankIndicators(straight, [indicatorOf(6, 8)]);
    expect(points[0]?.best).toBeCloseTo(peaked(0.1, 0.05), 7); // 0.7048
    expect(notes).toEqual([
      'The curve is flat at 7.00 mL: with a tolerance of 0.05 mL even the sharpest call scores 0.70 there.',
    ]);
    const wide = chooseIndicators(straight, [indicatorOf(6, 8)], {
      tolerance: 0.2,
    });
    expect(wide.points[0]?.best).toBeCloseTo(peaked(0.1, 0.2), 7); // 0.96
    expect(wide.notes).toEqual([]);
  });

  test('which the unit of a weight does not change, however narrow', () => {
    const observer = (unit: number) => ({
      at: 6.5,
      within: 1,
      weight: (pH: number) => unit * Math.exp(-(((pH - 6.7) / 0.02) ** 2)),
    });
    const score = scoreOf({ observer: observer(1) });
    expect(scoreOf({ observer: observer(1e-90) })).toBeCloseTo(score, 9);
    expect(scoreOf({ observer: observer(1e90) })).toBeCloseTo(score, 9);
  });
});

test('a point whose best score is just that of a well suited indicator is not called flat', () => {
  const note = (best: number) =>
    notesFor([{ at: point, best }], {
      titration: straight as never,
      tolerance: 0.05,
    });
  expect(note(0.8)).toEqual([]);
  expect(note(0.799)).toHaveLength(1);
});

test.each([
  [6, 7, 8],
  [6, 6, 8],
  [6, 8, 8],
])('calls from %d, most often at %d, to %d fall on a triangle of area 1', (from, at, to) => {
  const { density } = triangle(from, at, to);
  expect(density(at)).toBe(1); // 2/(8 − 6)
  for (const edge of [from, to]) {
    if (edge !== at) expect(density((edge + at) / 2)).toBe(0.5);
    if (edge !== at) expect(density(edge)).toBe(0);
  }
  expect([density(from - 0.5), density(to + 0.5)]).toEqual([0, 0]);
});

describe('ten times the amount of a one-colour indicator acts as a range one unit away', () => {
  test.each([
    ['acid', indicatorOf(8, 10, { acidColour: 'colourless' }), -1],
    ['base', indicatorOf(4, 6, { baseColour: 'colourless' }), 1],
  ] as const)('%s form without colour', (_, indicator, shift) => {
    const { from, to } = indicator.transition;
    const moved = {
      ...indicator,
      transition: { from: from + shift, to: to + shift },
    };
    const many = scoreIndicator(straight, indicator, {
      indicatorDrops: 20,
      tolerance: 1,
    });
    const usual = scoreIndicator(straight, moved, { tolerance: 1 });
    expect(many.change).toEqual({ from: from + shift, to: to + shift });
    expect(many).toEqual({ ...usual, indicator: many.indicator });
  });
});

describe('where a change lies, with drops of 0.5 mL about 7 mL', () => {
  const reasonOf = (titration: Titration, indicator: Indicator, options: ScoreOptions = {}) =>
    scoreIndicator(titration, indicator, { dropSize: 0.5, ...options }).reason;

  test.each([
    [6.5, 7.5, 'changes within one drop of the equivalence point'],
    [6, 7, 'changes over 2 drops of 0.5 mL across the equivalence point'],
    [7, 8, 'changes over 2 drops of 0.5 mL across the equivalence point'],
    [5, 6.5, 'changes over 3 drops of 0.5 mL, ending within a drop before the equivalence point'],
    [6.25, 6.75, 'changes over 1 drop of 0.5 mL, ending within a drop before the equivalence point'],
    [4, 6.25, 'changes 0.75 mL before the equivalence point'],
    [7.5, 9, 'changes over 3 drops of 0.5 mL, beginning within a drop after the equivalence point'],
    [7.75, 9, 'begins to change 0.75 mL after the equivalence point'],
    [6, 15, 'begins to change 1 mL before the equivalence point and never completes its change'],
    [6.5, 15, 'begins to change within a drop of the equivalence point and never completes its change'],
    [7, 15, 'begins to change within a drop of the equivalence point and never completes its change'],
    [7.5, 15, 'begins to change within a drop of the equivalence point and never completes its change'],
    [7.75, 15, 'begins to change 0.75 mL after the equivalence point and never completes its change'],
  ])('from pH %d to %d', (from, to, course) =>
    expect(reasonOf(straight, indicatorOf(from, to))).toMatch(new RegExp(`^X ${course};`)),
  );

  test('a hundred mL and more are told to the mL', () => {
    const long = ownTitration({
      pHAt: (mL) => mL / 1000,
      slopeAt: () => 0.001,
      volumesAt: (pH) => [1000 * pH],
      equivalencePoints: [{ ...point, mL: 7000, slope: 0.001 }],
    });
    expect(reasonOf(long, indicatorOf(5, 5.766))).toMatch(/^X changes 1234 mL before/);
  });

  test('an error below 0.005 % of the result is none', () => {
    const late = ownTitration({
      pHAt: (mL) => Math.max(mL - 19_993, 0),
      slopeAt: () => 1,
      volumesAt: (pH) => (pH > 0 ? [pH + 19_993] : []),
      equivalencePoints: [{ ...point, mL: 20_000 }],
    });
    const called = (at: number) => reasonOf(late, indicatorOf(5, 9), { observer: { at, within: 1 } });
    expect(called(8)).toMatch(/would be 0\.005 % high\.$/); // 1 mL of 20 L
    expect(called(6)).toMatch(/would be 0\.005 % low\.$/);
    expect(called(7.5)).toMatch(/would be true to 0\.005 %\.$/);
  });

  test.each([
    ['p-nitrophenol', 'p-Nitrophenol'],
    ['α-naphtholphthalein', 'α-Naphtholphthalein'],
    ['2,4-dinitrophenol', '2,4-Dinitrophenol'],
    ['Congo red', 'Congo red'],
    ['methyl red', 'Methyl red'],
    ['pH paper', 'pH paper'],
  ])('%s begins a sentence as %s', (name, head) =>
    expect(reasonOf(straight, indicatorOf(6.5, 7.5, { name }))).toMatch(
      new RegExp(`^${head} changes within`),
    ),
  );
});

describe('what the analyte itself is past', () => {
  const falling = ownTitration({
    pHAt: (mL) => Math.max(14 - mL, 0),
    slopeAt: () => -1,
    volumesAt: (pH) => (pH > 14 ? [] : [14 - pH]),
    equivalencePoints: [{ ...point, slope: -1 }],
  });

  test('begins at 0 mL where the range begins at its pH', () => {
    expect(scoreIndicator(straight, indicatorOf(0, 2)).change).toEqual({
      from: 0,
      to: 2,
    });
    expect(scoreIndicator(falling, indicatorOf(12, 14)).change).toEqual({
      from: 0,
      to: 2,
    });
  });

  test('is never called, since no drop is needed for it', () => {
    const { endpoint, titrationError, reason } = scoreIndicator(straight, indicatorOf(0, 2), {
      observer: { at: 0, within: 1 },
    });
    expect([endpoint, titrationError]).toEqual([null, null]);
    expect(reason).toMatch(/^X is past its end point before the first drop of titrant; there would be no/);
  });

  test('is no change at all where the whole range is', () =>
    expect(scoreIndicator(straight, indicatorOf(-2, -1))).toMatchObject({
      change: { from: null, to: null },
      drops: null,
      endpoint: null,
      score: 0,
    }));

  test('is not past where the curve comes back to it', () =>
    expect(
      scoreIndicator(
        through(
          [
            [0, 7],
            [2, 5],
            [9, 12],
          ],
          6,
        ),
        indicatorOf(6, 8),
      ).change,
    ).toEqual({ from: 3, to: 5 }));

  test('a change that does not end takes no number of drops', () =>
    expect(scoreIndicator(straight, indicatorOf(8, 15))).toMatchObject({
      change: { from: 8, to: null },
      drops: null,
    }));
});

test('of two points that it serves alike an indicator is judged for the first', () => {
  const two = {
    ...straight,
    equivalencePoints: [{ ...point, mL: 3, pH: 3 }, point],
  } as Titration;
  expect(scoreIndicator(two, indicatorOf(-2, -1))).toMatchObject({
    score: 0,
    at: { mL: 3 },
  });
});

describe('a curve that passes pH 7 upwards at 2, 6 and 12 mL', () => {
  const knots = [
    [0, 5],
    [3, 8],
    [5, 6],
    [8, 9],
    [11, 6],
    [17, 12],
  ] as const;
  const called = (mL: number, boilOutAt?: number) =>
    scoreIndicator(through(knots, mL, boilOutAt), indicatorOf(6.5, 7.5)).endpoint?.mL;

  test.each([
    ['the last, without a boil-out', 14, undefined, 12],
    ['the last, for a point after the boil-out', 14, 13, 12],
    ['the last, for a point at the boil-out', 14, 14, 12],
    ['the last before the boil-out, of three', 14, 20, 12],
    ['the last before the boil-out, of two', 7, 11, 6],
    ['one that is just where it is boiled out', 7, 12, 12],
    ['the first after the boil-out, where none is before', 0.5, 1, 2],
  ])('is called at %s', (_, mL, boilOutAt, call) => expect(called(mL, boilOutAt)).toBe(call));
});

describe('what the Davies equation makes of it', () => {
  test('counts the boil-out', () => {
    const setup = {
      analyte: makeSolution({
        mL: 25,
        contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }],
      }),
      titrant: makeSolution({
        contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }],
      }),
      boilOut: { mL: 26 },
    };
    const ideal = titrate(setup);
    const [at] = ideal.equivalencePoints;
    const { withDavies } = scoreIndicator(ideal, indicators.phenolphthalein, {
      at,
    });
    const real = titrate({ ...setup, conditions: { activity: davies } });
    expect(withDavies?.titrationError).toEqual(
      scoreIndicator(real, indicators.phenolphthalein, { at }).titrationError,
    );
  });

  test('is nothing for a curve that leaves that of its setup after the start', () => {
    const titration = strong();
    const pHAt = (mL: number) => titration.pHAt(mL) + (mL > 0 ? 0.1 : 0);
    const own = { ...titration, pHAt } as Titration;
    expect(scoreIndicator(own, indicators.methylRed).withDavies).toBeNull();
  });

  test('is told for a point of the caller’s own where the titration has none', () => {
    const none = titrationOf(reagents.hydrochloricAcid, reagents.nitricAcid);
    expect(scoreIndicator(none, indicators.methylRed, { at: point }).withDavies?.score).toBe(0);
  });

  // 0.1 mol/L of strong base has pH 13.0 by concentration, and 12.9 with γ = 0.77: the end point of pH 12.94 lies between.
  test('says that there would be no result, where the real curve ends below the end point', () =>
    expect(scoreIndicator(strong(), indicatorOf(12.92, 12.96), { tolerance: 1e5 }).reason).toMatch(
      / By the Davies equation it is unsuitable, and there would be no result\.$/,
    ));
});

describe('a ranking', () => {
  const [near, far] = [indicatorOf(6.5, 7.5, { id: 'near' }), indicatorOf(7.2, 8.2, { id: 'far' })];
  const notForUse = { reason: 'the bottle is old', source };
  const barred = indicatorOf(6.9, 7.1, { id: 'barred', notForUse });
  const hopeless = indicatorOf(12, 13, { id: 'hopeless' });
  const all = [near, far, barred, hopeless];

  test('has what is unsuitable behind, and each half by score, in whatever order they are given', () => {
    const orders = all.flatMap((_, k) => [
      [...all.slice(k), ...all.slice(0, k)],
      [...all.slice(k), ...all.slice(0, k)].reverse(),
    ]);
    for (const order of orders)
      for (const rank of [rankIndicators, rankBySight]) {
        const { ranking } = rank(straight, order, {
          include: ['barred'],
          tolerance: 0.5,
        });
        expect(ranking.map(({ indicator }) => indicator.id)).toEqual(['near', 'far', 'barred', 'hopeless']);
      }
  });

  test('is printed in lines, numbered from 1, with what is left out and the notes', () => {
    const lines = String(rankIndicators(straight, [far, near, barred])).split('\n');
    expect(lines.map((line) => line.slice(0, 8))).toEqual([
      'point at',
      '  1. X: ',
      '  2. X: ',
      '  left o',
      '  note: ',
    ]);
    expect(lines[4]).toMatch(/^ {2}note: The curve is flat/);
    const set = String(chooseIndicators(straight, [far, near]));
    expect(set).toMatch(/^point at .*\n {2}1\. X.*\n {2}2\. X.*\n {2}note: The curve is flat/);
  });

  test('of a titration of one’s own without a point says so, though it has no notes', () => {
    const none = { ...straight, equivalencePoints: [] } as Titration;
    expect(rankIndicators(none, [near]).notes).toEqual([
      'No equivalence point: the titration has none, so that no indicator can show it.',
    ]);
  });

  test('repeats a hazard only where there is one', () => {
    const [score] = rankIndicators(straight, [near]).ranking;
    expect(Object.keys(score?.indicator ?? {})).toEqual([
      'id',
      'name',
      'transition',
      'acidColour',
      'baseColour',
    ]);
  });
});

test('a change is seen from one drop before the call to one drop after', () => {
  const { bromothymolBlue } = indicators;
  const { call } = visibleChange(straight, bromothymolBlue, { dropSize: 0.5 });
  const middle = (bromothymolBlue.transition.from + bromothymolBlue.transition.to) / 2;
  expect(call?.before).toEqual(colourAt(bromothymolBlue, middle - 0.5));
  expect(call?.after).toEqual(colourAt(bromothymolBlue, middle + 0.5));
});
