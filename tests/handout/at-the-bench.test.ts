import { indicators, makeSolution, reagents, titrate } from 'protolysis';
import { type HandoutOptions, makeHandout } from 'protolysis/handout';
import { describe, expect, test } from 'vitest';
import { faultsOf, listed } from '../faults-of.js';
import { textOf } from './text-of.js';

const { bromocresolGreen, bromothymolBlue, methylRed, phenolphthalein } = indicators;
const acid = (molar: number) => makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar }] });
const powderIn = (mL: number, grams: number) =>
  titrate({
    analyte: makeSolution({ mL, contents: [{ reagent: reagents.sodiumCarbonate, grams, purity: 0.95 }] }),
    titrant: acid(0.1),
  });
const titration = powderIn(50, 0.2);
const audiences = ['student', 'instructor'] as const;
const both = (options: HandoutOptions, of = titration) =>
  audiences.map((audience) => textOf(makeHandout(of, { ...options, audience })));
const phosphates = makeSolution({
  mL: 50,
  contents: [
    { reagent: reagents.sodiumDihydrogenPhosphate, molar: 0.025 },
    { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.025 },
  ],
});
const buffer = { solution: phosphates, add: acid(0.1) };

describe('an indicator', () => {
  test('whose colour disappears is titrated against a reference tube or to its last trace', () => {
    const [student] = both({ indicators: [phenolphthalein] });
    expect(student).toContain(
      'phenolphthalein, 2 drops: pink at first, and fading. Stop when it is as faint as in the reference tube (faint pink); without a tube, at the last trace of colour.',
    );
    expect(student).not.toContain('stays faint pink');
  });

  test('that is unsuitable is marked on both pages, and nobody is told to stop by it', () => {
    for (const page of both({ indicators: [bromothymolBlue, methylRed] })) {
      expect(page).toContain(
        'methyl red, 2 drops: unsuitable here. Watch for its change between yellow and red',
      );
      expect(page).not.toContain('Stop when it');
    }
  });

  test('stands in the order in which it was given', () => {
    const orders = [
      [bromocresolGreen, methylRed, phenolphthalein],
      [phenolphthalein, methylRed, bromocresolGreen],
    ];
    for (const order of orders)
      for (const page of both({ indicators: order })) {
        const places = order.map(({ name }) => page.indexOf(`${name}, 2 drops`));
        expect(places).toEqual([...places].sort((a, b) => a - b));
        expect(places[0]).toBeGreaterThan(0);
      }
  });

  test('given twice is refused', () =>
    expect(listed(() => makeHandout(titration, { indicators: [methylRed, methylRed] }))).toEqual([
      'conflict options.indicators[1]',
    ]));
});

describe('the additions', () => {
  test('are stirred for 10 to 15 s, or as long as one asks for', () => {
    expect(both({})[0]).toContain('Stir for 10 to 15 s before each reading.');
    expect(both({ additions: { settle: 20 } })[0]).toContain('Stir for about 20 s before each reading.');
  });

  test.each(audiences)('that cannot be made are refused by their path, for the %s', (audience) => {
    const drops = powderIn(0.05, 1e-6);
    expect(listed(() => makeHandout(drops, { audience }))).toEqual(['conflict options.additions.fine']);
  });

  test('have a column for what the burette shows beside what was added', () => {
    const [student = ''] = both({});
    expect(student).toMatch(/burette {2}added, mL {2}pH/);
    expect(student).toContain('Added: what the burette shows, less its first reading');
  });
});

describe('the sample', () => {
  test('holds at least what is expected in the flask', () => {
    const [fault] = faultsOf(() => makeHandout(titration, { sample: { name: 'powder', grams: 0.02 } }));
    expect(fault).toMatchObject({
      code: 'conflict',
      path: 'options.sample.grams',
      expected: 'no less than the flask holds by the titration, 0.1900 g',
    });
    expect(() => makeHandout(titration, { sample: { name: 'pure', grams: 0.19 } })).not.toThrow();
  });

  test('shows the instructor alone its share by mass', () => {
    // 0.2 g of powder · 0.95 = 0.19 g, in 2 g: 9.5 %
    const [student, instructor] = both({ sample: { name: 'powder', grams: 2 } });
    expect(instructor).toContain('9.50 % of the sample by mass');
    expect(student).not.toContain('of the sample by mass');
  });
});

describe('the buffer part', () => {
  test('tells the instructor what a probe reads: in the buffer by Davies, and in water that took up carbon dioxide', () => {
    const [student, instructor] = both({ buffer });
    expect(instructor).toContain('with the activity of its ions (Davies) about');
    expect(instructor).toContain('Real water has taken up carbon dioxide and reads 5.6 to 6 at first');
    for (const answer of ['Davies', 'carbon dioxide and reads']) expect(student).not.toContain(answer);
  });

  test('names each solid by its formula', () => {
    const recipe = {
      parts: phosphates.contents.map(({ reagent, mmol }) => ({
        kind: 'weighed' as const,
        name: reagent.name,
        reagent,
        mmol,
        purity: 1,
        grams: 1,
      })),
      solution: phosphates,
      steps: ['Weigh both.'],
    };
    const words = 'Weighed as: sodium dihydrogen phosphate, NaH₂PO₄; disodium hydrogen phosphate, Na₂HPO₄.';
    for (const page of both({ buffer: { ...buffer, recipe } })) expect(page).toContain(words);
    for (const page of both({ recipes: [recipe] })) expect(page).toContain(words);
  });

  test('is not spoken of where there is none', () => {
    for (const page of both({})) expect(page).not.toContain('buffer');
  });
});

test('the page says where the waste goes', () => {
  for (const page of both({})) expect(page).toContain('nothing goes down the drain unless');
});

test('long words break, in a title of any length too', () =>
  expect(makeHandout(titration, { title: 'W'.repeat(120) })).toContain('overflow-wrap: anywhere'));

test.each([
  [{ pour: 'Pour {analite} {mL}' }, 'options.words.pour', 'mL, analyte'],
  [{ checks: ['{mL}'] }, 'options.words.checks[0]', 'without'],
  [{ picture: { point: '{ml}' } }, 'options.words.picture.point', 'mL, pH'],
])('a misspelt name in braces is refused: %j', (words, path, allowed) => {
  const [fault] = faultsOf(() => makeHandout(titration, { words } as unknown as HandoutOptions));
  expect(fault).toMatchObject({ code: 'unknown-key', path });
  expect(fault?.expected).toContain(allowed);
});
