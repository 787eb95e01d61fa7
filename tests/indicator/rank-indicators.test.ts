import {
  chooseIndicators,
  davies,
  defineIndicator,
  indicators,
  makeSolution,
  rankIndicators,
  reagents,
  scoreIndicator,
  type Titration,
  titrate,
} from 'protolysis';
import { rankBySight } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { strong, titrationOf } from './titrations.js';

const { sodiumHydroxide, hydrochloricAcid, boricAcid, ammoniumChloride, citricAcid } = reagents;
const catalogue = Object.values(indicators);
const source = { kind: 'commonPractice', note: 'invented for a test' } as const;
const khp = titrationOf(reagents.potassiumHydrogenPhthalate, sodiumHydroxide);

describe('what is not for use', () => {
  const ids = ['congoRed', 'litmus', 'methylYellow', 'nitramine'];

  test.each([
    ['boric acid', boricAcid],
    ['ammonium chloride', ammoniumChloride],
  ])('is left out of a ranking, with the reason: %s', (_, analyte) => {
    const { ranking, leftOut } = rankIndicators(titrationOf(analyte, sodiumHydroxide), catalogue);
    expect(leftOut.map(({ id }) => id).sort()).toEqual(ids);
    expect(leftOut.every(({ reason }) => reason.length > 10)).toBe(true);
    expect(ranking.length).toBe(catalogue.length - ids.length);
    for (const { indicator } of ranking) expect(ids).not.toContain(indicator.id);
  });

  test('is ranked if it is named, and is unsuitable still', () => {
    const boric = titrationOf(boricAcid, sodiumHydroxide);
    const { ranking, leftOut } = rankIndicators(boric, catalogue, { include: ['nitramine'] });
    const nitramine = ranking.find(({ indicator }) => indicator.id === 'nitramine');
    expect(nitramine?.verdict).toBe('unsuitable');
    expect(nitramine?.indicator.hazard).toMatch(/explosive/);
    expect(nitramine?.reason).toMatch(/It is not for use here: the solid is an explosive/);
    expect(leftOut.map(({ id }) => id)).not.toContain('nitramine');
  });

  test('is left out of a set and of a ranking by sight too', () => {
    const { points, leftOut } = chooseIndicators(khp, catalogue);
    expect(leftOut.length).toBe(4);
    expect(points[0]?.ranking.length).toBe(catalogue.length - 4);
    expect(rankBySight(khp, catalogue).leftOut).toEqual(leftOut);
  });

  test('an id that is not of the list is an error', () =>
    expect(() => rankIndicators(khp, catalogue, { include: ['nitramin'] })).toThrow(
      "include[0] is 'nitramin'; give the id of an indicator of the list",
    ));

  test('an indicator of one’s own can say so', () => {
    const own = { ...indicators.methylRed, id: 'own', notForUse: { reason: 'the bottle is old', source } };
    expect(rankIndicators(khp, [defineIndicator(own)]).leftOut).toEqual([
      { id: 'own', name: 'methyl red', reason: 'the bottle is old' },
    ]);
    expect(() => defineIndicator({ ...own, notForUse: { source } } as never)).toThrow('notForUse.reason');
  });
});

describe('a result', () => {
  test('carries the few facts of an indicator', () => {
    const { ranking } = rankIndicators(khp, [indicators.phenolphthalein]);
    expect(ranking[0]?.indicator).toEqual({
      id: 'phenolphthalein',
      name: 'phenolphthalein',
      transition: { from: 8.2, to: 10 },
      acidColour: 'colourless',
      baseColour: 'pink',
      hazard: indicators.phenolphthalein.hazard,
    });
  });

  test('of the whole catalogue is plain data of less than 1 kB per indicator', () => {
    const ranking = rankIndicators(khp, catalogue);
    const text = JSON.stringify(ranking);
    expect(JSON.parse(text)).toEqual(ranking);
    expect(text.length).toBeLessThan(1000 * catalogue.length);
  });
});

describe('the best that any observer could reach', () => {
  test('is near 1 at a steep point, and low at a flat one, which a note calls flat', () => {
    const steep = rankIndicators(strong(), catalogue);
    expect(steep.points[0]?.best).toBeGreaterThan(0.99);
    expect(steep.notes).toEqual([]);
    const flat = rankIndicators(titrationOf(boricAcid, sodiumHydroxide), catalogue);
    expect(flat.points[0]?.best).toBeLessThan(0.5);
    expect(flat.notes[0]).toMatch(/^The curve is flat at 25\.00 mL/);
  });

  test('is the score of an observer within 0.1 of the pH of the point', () => {
    const { points } = chooseIndicators(titrationOf(citricAcid, sodiumHydroxide), catalogue);
    expect(points.length).toBe(3);
    for (const { at, best } of points) {
      const titration = titrationOf(citricAcid, sodiumHydroxide);
      const observer = { at: at.pH, within: 0.1 };
      expect(best).toBeCloseTo(scoreIndicator(titration, indicators.methylRed, { at, observer }).score, 6);
    }
  });

  test('is more than any indicator of the catalogue reaches', () => {
    for (const analyte of [boricAcid, citricAcid, ammoniumChloride, reagents.aceticAcid])
      for (const { best, ranking } of chooseIndicators(titrationOf(analyte, sodiumHydroxide), catalogue)
        .points)
        for (const { score } of ranking) expect(score).toBeLessThanOrEqual(best + 1e-6);
  });
});

describe('what the Davies equation makes of it', () => {
  const real = (titration: Titration) => titrate({ ...titration.setup, conditions: { activity: davies } });

  test.each([
    ['hydrogen phthalate', khp],
    ['citric acid', titrationOf(citricAcid, sodiumHydroxide)],
    ['boric acid', titrationOf(boricAcid, sodiumHydroxide)],
  ])('is what the real titration itself gives: %s', (_, titration) => {
    const other = real(titration);
    for (const { indicator, at, withDavies } of rankIndicators(titration, catalogue).ranking) {
      const whole = catalogue.find(({ id }) => id === indicator.id);
      if (!whole) expect.unreachable();
      const exact = scoreIndicator(other, whole, { at });
      expect(Math.abs(Number(withDavies?.score) - exact.score)).toBeLessThan(0.001);
      expect(withDavies?.titrationError).toEqual(exact.titrationError);
      expect(exact.withDavies).toBeNull();
    }
  });

  test('phenolphthalein with hydrogen phthalate: 0.16 % low if ideal, 0.067 % low by Davies', () => {
    const { titrationError, withDavies } = scoreIndicator(khp, indicators.phenolphthalein);
    expect(titrationError?.percent).toBeCloseTo(-0.16, 2);
    expect(withDavies?.titrationError?.percent).toBeCloseTo(-0.067, 3);
    expect(withDavies?.verdict).toBe('well suited');
  });

  test('stands in the reason where the verdict changes, and only there', () => {
    const { ranking } = rankIndicators(titrationOf(citricAcid, sodiumHydroxide), catalogue);
    expect(ranking.some(({ verdict, withDavies }) => verdict !== withDavies?.verdict)).toBe(true);
    for (const { reason, verdict, withDavies } of ranking)
      expect(/By the Davies equation/.test(reason)).toBe(verdict !== withDavies?.verdict);
  });

  test('says where it is beyond its range: half of 1.1 mol/L at the point, but not of 0.9', () => {
    const inRange = (molar: number) =>
      scoreIndicator(strong(molar), indicators.methylRed).withDavies?.inRange;
    expect([inRange(0.9), inRange(1.1)]).toEqual([true, false]);
  });

  test('is null for a titration that is not the one of its setup', () => {
    const own = { ...khp, pHAt: (mL: number) => khp.pHAt(mL) + 0.1 } as Titration;
    expect(scoreIndicator(own, indicators.phenolphthalein).withDavies).toBeNull();
    const { setup, ...bare } = khp;
    expect(setup.analyte.mL).toBe(25);
    expect(
      scoreIndicator({ ...bare, equivalencePoints: khp.equivalencePoints } as Titration, indicators.methylRed)
        .withDavies,
    ).toBeNull();
  });
});

describe('after a boil-out', () => {
  const carbonate = (mL?: number) =>
    titrate({
      analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
      titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
      ...(mL === undefined ? {} : { boilOut: { mL } }),
    });

  // Methyl red has turned before the boiling, its colour comes back, and the last drops turn it again.
  test('the last call counts: methyl red within 0.2 % of the second point, and 4 % low without boiling', () => {
    const boiled = carbonate(49);
    const { endpoint, titrationError } = scoreIndicator(boiled, indicators.methylRed);
    const volumes = boiled.volumesAt(5.3);
    expect(volumes.length).toBe(2);
    expect(endpoint?.mL).toBe(volumes[1]);
    expect(Math.abs(Number(titrationError?.percent))).toBeLessThan(0.2);
    const at = carbonate().equivalencePoints[1];
    expect(scoreIndicator(carbonate(), indicators.methylRed, { at }).titrationError?.percent).toBeLessThan(
      -4,
    );
  });

  test('so it does for a boil-out just at the point', () => {
    const boiled = carbonate(50);
    expect(scoreIndicator(boiled, indicators.methylRed).endpoint?.mL).toBe(boiled.volumesAt(5.3)[1]);
  });

  test('and the score is that of the last call', () => {
    const unboiled = carbonate();
    const at = unboiled.equivalencePoints[1];
    const before = scoreIndicator(unboiled, indicators.methylRed, { at }).score;
    expect(scoreIndicator(carbonate(49), indicators.methylRed).score).toBeGreaterThan(100 * before);
  });

  test('a point before the boiling keeps its call, though the pH comes again', () => {
    const boiled = carbonate(26);
    const at = boiled.equivalencePoints[0];
    expect(boiled.volumesAt(8.2).length).toBe(2);
    expect(scoreIndicator(boiled, indicators.phenolphthalein, { at }).endpoint?.mL).toBe(
      carbonate().volumeAt(8.2),
    );
  });
});

describe('a titration without an equivalence point', () => {
  const withWater = titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
    titrant: makeSolution({ mL: 1, contents: [] }),
  });
  test.each([
    [
      'acid into acid',
      titrationOf(reagents.aceticAcid, hydrochloricAcid),
      /analyte acidic .* titrant acidic .*: no step is done\.$/,
    ],
    ['base into base', titrationOf(reagents.ammonia, sodiumHydroxide), /analyte basic .*, titrant basic/],
    [
      'the analyte into itself',
      titrationOf(hydrochloricAcid, hydrochloricAcid),
      /analyte acidic \(pH 1\.0\), titrant acidic \(pH 1\.0\)/,
    ],
    ['water into acid', withWater, /analyte acidic \(pH 1\.0\), titrant neutral \(pH 7\.0\)/],
    [
      'acid into salt',
      titrationOf(reagents.sodiumChloride, hydrochloricAcid),
      /analyte neutral \(pH 7\.0\), titrant acidic/,
    ],
    [
      'a trace of base, spent by less than any burette gives', // a seed of the try page found 9.9e-201 mL
      titrate({
        analyte: { mL: 1, contents: [{ reagent: reagents.sodiumCarbonate, mmol: 1e-200 }] },
        titrant: { mL: 1, contents: [{ reagent: hydrochloricAcid, mmol: 0.1 }] },
      }),
      /analyte neutral \(pH 7\.0\), titrant acidic \(pH 1\.0\)/,
    ],
  ])('says why: %s', (_, titration, why) => {
    expect(titration.equivalencePoints).toEqual([]);
    const notes = titration.notes.filter((note) => why.test(note));
    expect(notes.length).toBe(1);
    expect(notes[0]).toMatch(/^No equivalence point: /);

    const ranking = rankIndicators(titration, catalogue);
    expect(ranking).toMatchObject({ ranking: [], points: [], notes });
    expect(chooseIndicators(titration, catalogue)).toMatchObject({ points: [], notes });
    expect(rankBySight(titration, catalogue)).toMatchObject({ ranking: [], points: [], notes });
  });

  test('a titration with a point has no such note', () =>
    expect(strong().notes.filter((note) => /equivalence/.test(note))).toEqual([]));
});
