import fc from 'fast-check';
import { acids, indicators, makeSolution, overshoot, planAdditions, reagents, titrate } from 'protolysis';
import { type HandoutOptions, handoutWords, makeHandout } from 'protolysis/handout';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { textOf } from './text-of.js';

const acid = (molar: number) => makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar }] });
const powderIn = (grams: number, titrant = 0.1) =>
  titrate({
    analyte: makeSolution({
      mL: 50,
      contents: [{ reagent: reagents.sodiumCarbonate, grams, purity: 0.95 }],
    }),
    titrant: acid(titrant),
  });
const phosphate = (molar: number) =>
  makeSolution({
    mL: 50,
    contents: [
      { reagent: reagents.sodiumDihydrogenPhosphate, molar },
      { reagent: reagents.disodiumHydrogenPhosphate, molar },
    ],
  });
const titration = powderIn(0.2);
const options: HandoutOptions = {
  sample: { name: 'powder', grams: 0.2 },
  indicators: [indicators.phenolphthalein, indicators.bromocresolGreen],
  buffer: { solution: phosphate(0.025), add: acid(0.1) },
};
const student = makeHandout(titration, options);
const instructor = makeHandout(titration, { ...options, audience: 'instructor' });

describe("the student's page", () => {
  test('is the same, to the last character, whatever the sample holds, as long as each indicator serves as well', () => {
    const more = { ...options, sample: { name: 'powder', grams: 0.3 } };
    for (const grams of [0.1, 0.19, 0.21, 0.23])
      expect(makeHandout(powderIn(grams), more)).toBe(makeHandout(titration, more));
    expect(makeHandout(powderIn(0.2, 0.11), options)).toBe(student);
    const otherBuffer = { solution: phosphate(0.02), add: acid(0.11) };
    expect(makeHandout(titration, { ...options, buffer: otherBuffer })).toBe(student);
  });

  test('is the same for any amount of a strong acid, whose cautions would tell its concentration', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.5, noNaN: true }), (molar) => {
        const of = (concentration: number) =>
          makeHandout(
            titrate({
              analyte: makeSolution({
                mL: 25,
                contents: [{ reagent: reagents.hydrochloricAcid, molar: concentration }],
              }),
              titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
            }),
            { indicators: [indicators.phenolphthalein] },
          );
        expect(of(molar)).toBe(of(0.1));
      }),
      { numRuns: 30 },
    ));

  test('has none of the numbers that the instructor’s has', () => {
    const { equivalencePoints, halfEquivalencePoints } = titration;
    const [first] = overshoot(titration, indicators.phenolphthalein);
    const volumes = [...equivalencePoints, ...halfEquivalencePoints].map(({ mL }) => mL.toFixed(2));
    for (const number of [...volumes, first?.mL.toFixed(2) ?? '', '1.793']) {
      expect(instructor).toContain(number);
      expect(student).not.toContain(number);
    }
  });

  test('has tables of blank cells alone, their headings and the names of their lines apart', () => {
    const cells = [...student.matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, cell]) => cell);
    expect(new Set(cells)).toEqual(new Set(['', 'buffer, pH', 'water, pH']));
  });

  test('says what to weigh, when to stop and where one has gone too far', () => {
    const words = textOf(student);
    expect(words).toContain('Weigh about 0.20 g of powder');
    expect(words).toContain('phenolphthalein, 2 drops: pink at first, and fading.');
    expect(words).toContain('bromocresol green, 2 drops: blue at first. Stop when it stays green');
    expect(words).toContain('When it is yellow, you have gone too far.');
  });

  test('has the cautions, the checks, and whose word comes before them', () => {
    const words = textOf(student);
    for (const check of handoutWords.checks) expect(words).toContain(check);
    expect(words).toContain('sodium carbonate: Irritates the eyes');
    expect(words).toContain('A gas can escape, carbon dioxide.');
    expect(words).toContain(
      'The safety data sheet of each bottle, the local rules and a qualified supervisor',
    );
  });
});

describe("the instructor's page", () => {
  test('has every planned addition with its pH', () => {
    const plan = planAdditions(titration);
    const cells = [
      ...instructor.matchAll(/<td class="number">([\d.]+)<\/td><td class="number">([\d.]+)<\/td><\/tr>/g),
    ];
    const rows = cells.map(([, mL, pH]) => [mL, pH]);
    for (const [k, mL] of plan.mL.entries())
      expect(rows).toContainEqual([mL.toFixed(2), plan.pH[k]?.toFixed(2)]);
  });

  test('has the predicted curve with its points', () => {
    expect(instructor).toContain('Predicted curve');
    expect(instructor).toMatch(/<desc>[^<]*Equivalence at 35\.85 mL, pH 4\.02/);
  });

  test('says what a drop too many costs: 0.05 mL of 17.927 mL, and of 35.853 mL', () => {
    // 0.05/17.927 = 0.279 %, 0.05/35.853 = 0.139 %
    expect(textOf(instructor)).toContain('One drop too many: +0.28 % more');
    expect(textOf(instructor)).toContain('One drop too many: +0.14 % more');
  });

  test('names what is left out, and why', () =>
    expect(
      textOf(makeHandout(titration, { audience: 'instructor', indicators: [indicators.methylYellow] })),
    ).toContain('methyl yellow (dimethyl yellow): it may cause cancer'));

  test('says so where there is no point to find', () => {
    const nothing = titrate({ analyte: makeSolution({ mL: 20, contents: [] }), titrant: acid(0.1) });
    expect(makeHandout(nothing, { audience: 'instructor' })).toContain(handoutWords.noPoints);
    expect(makeHandout(nothing, options)).toContain('Readings');
  });
});

describe.each([
  ['student', student],
  ['instructor', instructor],
])('the page for the %s', (_, html) => {
  test('is one document without script, and asks nothing of any network', () => {
    expect(html.startsWith('<!doctype html>')).toBe(true);
    expect(html).not.toMatch(/<script|<link|<iframe|\bon\w+=|@import|url\(|\bsrc=|\bhref=/i);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
    expect(html).toContain("default-src 'none'");
  });

  test('closes every element that it opens', () => {
    const open: string[] = [];
    for (const [, slash, name = '', end] of html.matchAll(/<(\/?)([a-z]\w*)[^>]*?(\/?)>/gi)) {
      if (name === 'meta' || end) continue;
      if (slash) expect(open.pop()).toBe(name);
      else open.push(name);
    }
    expect(open).toEqual([]);
  });
});

test('the size of the paper is the one asked for', () => {
  expect(student).toContain('size: A4');
  expect(makeHandout(titration, { paper: 'letter' })).toContain('size: letter');
});

test('every word can be replaced, and is escaped', () => {
  const bad = '<script>alert(1)</script>"\'&';
  const words = Object.fromEntries(
    Object.entries(handoutWords)
      .filter(([key]) => key !== 'picture')
      .map(([key, word]) => [
        key,
        typeof word === 'string' ? bad : (word as readonly string[]).map(() => bad),
      ]),
  );
  const sample = { name: bad, grams: 1 };
  const recipes = [{ parts: [], solution: phosphate(0.01), steps: [bad] }];
  for (const audience of ['student', 'instructor'] as const) {
    const html = makeHandout(titration, { ...options, audience, words, sample, recipes });
    expect(html).not.toContain('<script');
    const kept = Object.values(handoutWords)
      .flat()
      .filter((word) => typeof word === 'string' && word.length > 12);
    for (const word of kept) expect(textOf(html)).not.toContain(word);
  }
});

test('words with a new name for pH reach the picture too', () =>
  expect(
    makeHandout(titration, {
      audience: 'instructor',
      words: { picture: { ...handoutWords.picture, pH: 'acidity' } },
    }),
  ).toContain('>acidity</text>'));

test.each([
  ['an audience that it does not know', { audience: 'teacher' }, ['wrong-type options.audience']],
  ['a mass of nothing', { sample: { name: 'x', grams: 0 } }, ['out-of-range options.sample.grams']],
  ['too many drops', { buffer: { ...options.buffer, drops: 16 } }, ['out-of-range options.buffer.drops']],
  [
    'two headings for three columns',
    { words: { pointColumns: ['a', 'b'] } },
    ['out-of-range options.words.pointColumns'],
  ],
  ['a misspelt key', { indicator: [] }, ['unknown-key options.indicator']],
  ['an acid for an indicator', { indicators: [acids.acetic] }, ['wrong-type options.indicators[0]']],
])('%s is refused', (_, wrong, faults) =>
  expect(listed(() => makeHandout(titration, wrong as HandoutOptions))).toEqual(faults),
);
