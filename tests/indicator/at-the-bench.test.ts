import {
  chooseIndicators,
  flaskColours,
  indicators,
  makeSolution,
  overshoot,
  type Reagent,
  rankIndicators,
  reagents,
  referenceTubes,
  scoreIndicator,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { strong, titrationOf } from './titrations.js';

const carbonate = titrationOf(reagents.sodiumCarbonate, reagents.hydrochloricAcid);
const solutionOf = (reagent: Reagent, molar: number) => makeSolution({ contents: [{ reagent, molar }] });

describe('rankIndicators', () => {
  test('sorts by score, each as scoreIndicator has it', () => {
    const all = Object.values(indicators);
    const include = all.map(({ id }) => id);
    const { ranking } = rankIndicators(carbonate, all, { include });
    expect(ranking.length).toBe(all.length);
    for (const [k, one] of ranking.entries()) {
      const indicator = all.find(({ id }) => id === one.indicator.id);
      if (!indicator) expect.unreachable();
      expect(one).toEqual(scoreIndicator(carbonate, indicator));
      if (k > 0 && ranking[k - 1]?.verdict === one.verdict)
        expect(one.score).toBeLessThanOrEqual(Number(ranking[k - 1]?.score));
    }
  });
});

describe('chooseIndicators', () => {
  const all = Object.values(indicators);
  const { points: set } = chooseIndicators(carbonate, all, { include: all.map(({ id }) => id) });

  test('serves every equivalence point, in order', () =>
    expect(set.map(({ at }) => at)).toEqual(carbonate.equivalencePoints));

  test('lists each indicator once, for the point it serves best', () => {
    const listed = set.flatMap(({ ranking }) => ranking.map(({ indicator }) => indicator.id));
    expect(listed.sort()).toEqual(
      Object.values(indicators)
        .map(({ id }) => id)
        .sort(),
    );
    for (const { at, ranking } of set) for (const one of ranking) expect(one.at).toBe(at);
  });

  test('leaves a point without any where none serves it best', () => {
    const [first, second] = chooseIndicators(carbonate, [indicators.methylOrange]).points;
    expect(first?.ranking).toEqual([]);
    expect(second?.ranking[0]?.indicator.id).toBe('methylOrange');
  });
});

describe('overshoot', () => {
  const rows = overshoot(strong(), indicators.phenolphthalein, { drops: 3 });

  test('begins at the call and goes on drop by drop', () => {
    const { endpoint } = scoreIndicator(strong(), indicators.phenolphthalein);
    expect(rows.map(({ drop }) => drop)).toEqual([0, 1, 2, 3]);
    expect(rows[0]).toMatchObject({ mL: endpoint?.mL, pH: 8.2 });
    for (const { drop, mL } of rows) expect(mL).toBeCloseTo(Number(endpoint?.mL) + drop * 0.05, 12);
  });

  // 0.1 mol/L into 50 mL: one drop of 0.05 mL leaves 1e-4 mol/L of hydroxide, pH 10.0; it costs 0.05/25 = 0.2 %.
  test('one drop turns the faint persistent pink into a deep one, and costs 0.2 %', () => {
    expect(rows.map(({ colour }) => colour.name)).toEqual(['faint pink', 'pink', 'pink', 'pink']);
    expect(rows[1]?.pH).toBeCloseTo(10.0, 1);
    expect(Number(rows[1]?.error.percent) - Number(rows[0]?.error.percent)).toBeCloseTo(0.2, 9);
  });

  test('has nothing to show where the curve never gets to the call', () =>
    expect(overshoot(strong(0.001), indicators.indigoCarmine)).toEqual([]));

  test('takes the size of a drop and the amount of indicator', () => {
    const [, second] = overshoot(strong(), indicators.phenolphthalein, {
      drops: 1,
      dropSize: 0.02,
      indicatorDrops: 20,
    });
    expect(second?.mL).toBeCloseTo(Number(strong().volumeAt(7.2)) + 0.02, 9);
  });
});

describe('flaskColours', () => {
  test('gives a colour to every point of a curve', () => {
    const curve = carbonate.curve({ every: 5, upTo: 60 });
    const colours = flaskColours(curve, indicators.methylOrange);
    expect(colours.mL).toEqual(curve.mL);
    expect(colours.pH).toEqual(curve.pH);
    expect(colours.name[0]).toBe('yellow');
    expect(colours.name.at(-1)).toBe('red');
    expect(JSON.parse(JSON.stringify(colours))).toEqual(colours);
  });

  test('refuses columns of unequal length', () =>
    expect(() => flaskColours({ mL: [1, 2], pH: [7] }, indicators.methylRed)).toThrow(
      'curve.pH is a list of 1',
    ));
});

describe('referenceTubes', () => {
  // n drops of c mol/L in V mL: h = n·0.05·c/(V + n·0.05), the pH of a strong acid by definition.
  test.each([
    [5, 1, 0.1],
    [3, 2, 1],
    [10, 2, 0.01],
  ])('%d mL of water with %d drops of %d mol/L have the pH of that dilution', (mL, drops, molar) => {
    const tubes = referenceTubes(indicators.methylOrange, {
      mL,
      drops,
      acid: solutionOf(reagents.hydrochloricAcid, molar),
      base: solutionOf(reagents.sodiumHydroxide, molar),
    });
    const diluted = (drops * 0.05 * molar) / (mL + drops * 0.05);
    expect(tubes.acid.pH).toBeCloseTo(-Math.log10(diluted), 6);
    expect(tubes.base.pH).toBeCloseTo(13.995 + Math.log10(diluted), 6);
    expect(tubes.acid.margin).toBeCloseTo(3.1 - tubes.acid.pH, 12);
    expect(tubes.base.margin).toBeCloseTo(tubes.base.pH - 4.4, 12);
  });

  test('says which tube is not safely beyond the transition', () => {
    const weak = {
      mL: 5,
      drops: 1,
      acid: solutionOf(reagents.hydrochloricAcid, 0.1),
      base: solutionOf(reagents.sodiumHydroxide, 0.1),
    };
    const { acid, base } = referenceTubes(indicators.methylOrange, weak);
    expect(acid).toMatchObject({ safelyBeyond: false });
    expect(base).toMatchObject({ safelyBeyond: true });
    expect(referenceTubes(indicators.methylOrange, { ...weak, drops: 9 }).acid.safelyBeyond).toBe(true);
  });

  test('holds drops of any size, and is safely beyond from one unit of pH on', () => {
    const recipe = {
      mL: 5,
      drops: 2,
      acid: solutionOf(reagents.hydrochloricAcid, 0.1),
      base: solutionOf(reagents.sodiumHydroxide, 0.1),
    };
    const { pH } = referenceTubes(indicators.methylRed, recipe).acid;
    const oneLarge = { ...recipe, drops: 1, dropSize: 0.1 };
    expect(referenceTubes(indicators.methylRed, oneLarge).acid.pH).toBe(pH);
    const tubeFor = (from: number) =>
      referenceTubes({ ...indicators.methylRed, transition: { from, to: 6.2 } }, recipe).acid;
    expect(tubeFor(pH + 1)).toMatchObject({ margin: 1, safelyBeyond: true });
    expect(tubeFor(pH + 0.999).safelyBeyond).toBe(false);
  });

  test('shows both colours', () => {
    const { acid, base } = referenceTubes(indicators.phenolphthalein, {
      mL: 5,
      drops: 2,
      acid: solutionOf(reagents.hydrochloricAcid, 1),
      base: solutionOf(reagents.sodiumHydroxide, 1),
    });
    expect([acid.colour.name, base.colour.name]).toEqual(['colourless', 'pink']);
  });

  test('carries the cautions of what is handled, deferring to the data sheet and a supervisor', () => {
    const { cautions } = referenceTubes(indicators.methylRed, {
      mL: 5,
      drops: 1,
      acid: solutionOf(reagents.hydrochloricAcid, 6),
      base: solutionOf(reagents.sodiumHydroxide, 6),
    });
    expect(cautions.join(' ')).toMatch(
      /methyl red: .*flammable.*hydrochloric acid, 6 mol\/L.*: Irritating.*sodium hydroxide, 6 mol\/L.*: Severely corrosive.*supervisor/,
    );
  });
});
