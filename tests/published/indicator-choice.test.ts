import {
  type Indicator,
  indicators,
  makeSolution,
  mix,
  rankIndicators,
  reagents,
  scoreIndicator,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { titrationOf } from '../indicator/titrations.js';

// The indicators of a teaching laboratory's shelf: common practice.
const shelf = [
  indicators.methylOrange,
  indicators.bromocresolGreen,
  indicators.methylRed,
  indicators.bromothymolBlue,
  indicators.phenolphthalein,
  indicators.thymolphthalein,
  indicators.alizarinYellowR,
];
const catalogue: Indicator[] = Object.values(indicators);

const skoog =
  'Skoog, West, Holler, Crouch, Fundamentals of Analytical Chemistry, 9th ed., chapters 14 and 15 (memory)';
const talbot = 'Talbot, Quantitative Chemical Analysis, 6th ed., section on indicators';
const openStax = 'OpenStax, Chemistry 2e, section 14.7';
const textbook = 'textbook statements: first end point near 4.7, second near 9.7 (memory)';
const practice = 'common practice';

const { hydrochloricAcid, sodiumHydroxide, aceticAcid, ammonia, sodiumCarbonate, phosphoricAcid } = reagents;

/** Analyte, titrant, which equivalence point, the trade's choice, what is unsuitable, and whose word that is. */
const pairings = [
  [
    'strong acid / strong base',
    hydrochloricAcid,
    sodiumHydroxide,
    0,
    ['bromothymolBlue', 'phenolphthalein', 'methylRed'],
    ['methylViolet', 'indigoCarmine'],
    openStax,
  ],
  [
    'strong base / strong acid',
    sodiumHydroxide,
    hydrochloricAcid,
    0,
    ['bromothymolBlue', 'methylRed', 'phenolphthalein'],
    ['methylViolet', 'indigoCarmine'],
    practice,
  ],
  [
    'weak acid / strong base',
    aceticAcid,
    sodiumHydroxide,
    0,
    ['phenolphthalein'],
    ['methylOrange', 'bromocresolGreen', 'methylRed'],
    openStax,
  ],
  [
    'weak base / strong acid',
    ammonia,
    hydrochloricAcid,
    0,
    ['methylRed'],
    ['phenolphthalein', 'thymolphthalein', 'alizarinYellowR'],
    skoog,
  ],
  [
    'carbonate / strong acid, first step',
    sodiumCarbonate,
    hydrochloricAcid,
    0,
    ['phenolphthalein'],
    ['methylOrange', 'methylRed', 'bromothymolBlue'],
    talbot,
  ],
  [
    'carbonate / strong acid, second step',
    sodiumCarbonate,
    hydrochloricAcid,
    1,
    ['methylOrange'],
    ['phenolphthalein', 'bromothymolBlue', 'methylRed'],
    talbot,
  ],
  [
    'phosphoric acid / strong base, first step',
    phosphoricAcid,
    sodiumHydroxide,
    0,
    ['bromocresolGreen'],
    ['phenolphthalein', 'thymolphthalein', 'bromothymolBlue'],
    textbook,
  ],
  [
    'phosphoric acid / strong base, second step',
    phosphoricAcid,
    sodiumHydroxide,
    1,
    ['thymolphthalein'],
    ['methylOrange', 'bromocresolGreen', 'bromothymolBlue'],
    textbook,
  ],
] as const;

describe("at 0.1 mol/L the trade's pairing comes out on top", () => {
  test.each(pairings)('%s', (_, analyte, titrant, point, [best, ...alsoGood], unsuitable) => {
    const titration = titrationOf(analyte, titrant);
    const at = titration.equivalencePoints[point];
    if (!at) expect.unreachable();
    const { ranking: ofShelf } = rankIndicators(titration, shelf, { at });
    const winner = ofShelf[0];
    expect(winner?.indicator.id).toBe(best);

    // No single dye of the whole catalogue is better by more than a tenth.
    const dyes = catalogue.filter(({ name }) => !name.includes('(mixed)'));
    const [first] = rankIndicators(titration, dyes, { at }).ranking;
    expect(winner?.score).toBeGreaterThan(0.9 * Number(first?.score));

    // The trade's other choices cost next to nothing.
    for (const id of alsoGood)
      expect(scoreIndicator(titration, indicators[id], { at }).score).toBeGreaterThan(0.9);

    // Unsuitable pairs are far below: a call four tolerances off or more, and less than a fifth of the best.
    for (const id of unsuitable) {
      const { score, verdict } = scoreIndicator(titration, indicators[id], { at });
      expect(score).toBeLessThan(1 / (1 + 4 ** 2));
      expect(score).toBeLessThan(Number(winner?.score) / 5);
      expect(verdict).toBe('unsuitable');
    }
  });

  // I. M. Kolthoff, C. Rosenblum, Acid-Base Indicators (1937), mixed indicators: for carbonate to hydrogencarbonate; from memory.
  test("of a carbonate's first step a mixture of two dyes tells more than any single one", () => {
    const titration = titrationOf(sodiumCarbonate, hydrochloricAcid);
    const [at] = titration.equivalencePoints;
    if (!at) expect.unreachable();
    expect(rankIndicators(titration, catalogue, { at }).ranking[0]?.indicator.id).toBe('cresolRedThymolBlue');
  });

  test.each(pairings)(
    'and at 0.001 mol/L every suitable one scores lower: %s',
    (_, analyte, titrant, point, good) => {
      for (const id of good) {
        const scores = [0.1, 0.01, 0.001].map((molar) => {
          const titration = titrationOf(analyte, titrant, molar);
          const at = titration.equivalencePoints[point];
          return at ? scoreIndicator(titration, indicators[id], { at }).score : Number.NaN;
        });
        const [strong, , weak] = scores;
        expect(weak).toBeLessThan(Number(strong));
      }
    },
  );

  test('at 0.001 mol/L phenolphthalein no longer serves even strong acid with strong base; bromothymol blue does', () => {
    const titration = titrationOf(hydrochloricAcid, sodiumHydroxide, 0.001);
    expect(scoreIndicator(titration, indicators.phenolphthalein).verdict).toBe('with care');
    expect(scoreIndicator(titration, indicators.methylRed).verdict).toBe('unsuitable');
    expect(scoreIndicator(titration, indicators.bromothymolBlue).verdict).toBe('well suited');
  });
});

describe('standard end points of alkalinity', () => {
  /** 100 mL of a sodium carbonate solution with this alkalinity (mg/L as CaCO3), titrated with 0.1 mol/L acid, which hardly dilutes it. */
  const waterOf = (alkalinity: number) =>
    titrate({
      analyte: makeSolution({
        mL: 100,
        contents: [{ reagent: sodiumCarbonate, molar: alkalinity / 100_086.9 }],
      }),
      titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
    });

  // IUPAC Gold Book, composite alkalinity: titration to pH 8.3.
  test.each([150, 500])('the first of %d mg/L is at pH 8.3', (alkalinity) =>
    expect(waterOf(alkalinity).equivalencePoints[0]?.pH).toBeCloseTo(8.3, 1),
  );

  // Standard Methods for the Examination of Water and Wastewater, 2320 B (memory), tolerance half of the last digit.
  test.each([
    [30, 4.9],
    [150, 4.6],
    [500, 4.3],
  ])('the second of %d mg/L is at pH %d', (alkalinity, pH) => {
    const found = Number(waterOf(alkalinity).equivalencePoints[1]?.pH);
    expect(Math.abs(found - pH)).toBeLessThanOrEqual(0.05);
  });

  // NEMI method summary 9634: total alkalinity to pH 4.5; it lies among those of 150 and 500 mg/L.
  test('4.5, for routine work, lies between those of 150 and 500 mg/L', () => {
    expect(waterOf(150).equivalencePoints[1]?.pH).toBeGreaterThan(4.5);
    expect(waterOf(500).equivalencePoints[1]?.pH).toBeLessThan(4.5);
  });
});

describe('published errors from the choice of indicator', () => {
  // Talbot: 10 mL of 0.1 N H2SO4 and 50 mL of water take 9.90 mL of 0.1 N NaOH with methyl orange, 10.00 mL with litmus,
  // 10.10 mL with phenolphthalein, each "to the alkaline colour", which a range only brackets.
  const titration = titrate({
    analyte: mix(
      makeSolution({ mL: 10, contents: [{ reagent: reagents.sulfuricAcid, molar: 0.05 }] }),
      makeSolution({ mL: 50, contents: [] }),
    ),
    titrant: makeSolution({ contents: [{ reagent: sodiumHydroxide, molar: 0.1 }] }),
  });
  const changeOf = (indicator: Indicator) => scoreIndicator(titration, indicator).change;

  test('Talbot: methyl orange turns by 9.90 mL, 1 % low', () => {
    const { change, endpoint } = scoreIndicator(titration, indicators.methylOrange);
    expect(change.from).toBeLessThan(9.9);
    expect(change.to).toBeGreaterThan(9.9);
    expect(Math.abs(Number(endpoint?.mL) - 9.9)).toBeLessThan(0.05); // a drop: the titration was done by eye
  });

  test('Talbot: litmus is through its change at 10.00 mL', () => {
    expect(changeOf(indicators.litmus).to).toBeCloseTo(10.0, 2);
  });

  test('Talbot: phenolphthalein reads above the others, up to 10.10 mL', () => {
    const { from, to } = changeOf(indicators.phenolphthalein);
    expect(from).toBeGreaterThanOrEqual(10);
    // Fully pink at 10.07 mL; the printed 10.10 is within a drop of it.
    expect(Math.abs(Number(to) - 10.1)).toBeLessThan(0.05);
  });

  // OpenStax, Chemistry 2e, section 14.7: 25.00 mL of 0.100 mol/L acid with 0.100 mol/L base, read off a figure.
  test('OpenStax: with hydrochloric acid the change of methyl orange starts near 24 mL', () => {
    const { change } = scoreIndicator(
      titrationOf(hydrochloricAcid, sodiumHydroxide),
      indicators.methylOrange,
    );
    expect(Math.abs(Number(change.from) - 24)).toBeLessThan(1);
  });

  test('OpenStax: with acetic acid methyl orange and litmus change long before 25 mL', () => {
    const titration = titrationOf(aceticAcid, sodiumHydroxide);
    const { change } = scoreIndicator(titration, indicators.methylOrange);
    // "within the first 6 mL" by the figure; by the range 3.1 to 4.4 it is over at 7.6 mL, where the pH is still below pKa
    expect(change.to).toBeLessThan(12.5);
    // "at 7 to 8 mL" by the figure; by the range 4.5 to 8.3 litmus starts at 8.9 mL
    expect(scoreIndicator(titration, indicators.litmus).change.from).toBeLessThan(12.5);
  });
});
