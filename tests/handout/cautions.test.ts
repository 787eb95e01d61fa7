import { aliquot, makeSolution, prepareBuffer, prepareSolution, reagents, titrate } from 'protolysis';
import { type HandoutOptions, makeHandout } from 'protolysis/handout';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { cautionsOn, textOf } from './text-of.js';

const { aceticAcid, hydrochloricAcid, sodiumCarbonate, sodiumHydroxide } = reagents;
const acid = (molar: number) => makeSolution({ contents: [{ reagent: hydrochloricAcid, molar }] });
const titration = titrate({
  analyte: makeSolution({ mL: 50, contents: [{ reagent: sodiumCarbonate, grams: 0.19 }] }),
  titrant: acid(0.1),
});
const prepared = <Made extends { readonly status: string }>(made: Made) => {
  if (made.status !== 'prepared') throw new Error('there is no recipe');
  return made as Extract<Made, { readonly status: 'prepared' }>;
};
const titrant = prepared(
  prepareSolution({ from: { reagent: hydrochloricAcid, purity: 0.37 }, molar: 0.1, mL: 1000 }),
);
const acetate = prepared(
  prepareBuffer({ pH: 4.75, molar: 0.5, mL: 100, from: [aceticAcid, sodiumHydroxide] }),
);
const buffer = { recipe: acetate, solution: aliquot(acetate.solution, { mL: 50 }), add: acid(0.1) };
const audiences = ['student', 'instructor'] as const;
const of = (audience: 'student' | 'instructor', options: HandoutOptions) =>
  makeHandout(titration, { ...options, audience });

describe.each(audiences)('where the page for the %s has one handle the bottle', (audience) => {
  test('the titrant’s recipe brings the cautions of the bottle, before those of the dilute solution', () => {
    const page = of(audience, { recipes: [titrant] });
    expect(textOf(page)).toContain('weigh 9.854 g of hydrochloric acid');
    const [first = '', ...others] = cautionsOn(page).filter((line) => line.startsWith('hydrochloric acid'));
    expect(first).toMatch(/^hydrochloric acid: Corrosive from 25 % by mass.*fume cupboard/);
    for (const other of others) expect(other).toMatch(/^hydrochloric acid, 0\.1 mol\/L/); // says of what it speaks
  });

  test('the recipe of a buffer brings those of its bottles, and the finished buffer none of what it used up', () => {
    const lines = cautionsOn(of(audience, { buffer }));
    const about = (name: string) => lines.filter((line) => line.startsWith(name));
    expect(about('sodium hydroxide')).toHaveLength(1);
    expect(about('sodium hydroxide')[0]).toMatch(/^sodium hydroxide: Severely corrosive from 5 % by mass/);
    expect(about('acetic acid')).toHaveLength(1);
    expect(about('acetic acid')[0]).toMatch(/^acetic acid: Severely corrosive from 90 % by mass/);
  });
});

test('the student has one line for a reagent, that of its strongest solution', () => {
  const strong = { ...buffer, add: acid(3) };
  const about = cautionsOn(of('student', { buffer: strong })).filter((line) =>
    line.startsWith('hydrochloric acid'),
  );
  // 3 mol/L · 36.46 g/mol = 109 g/L, about 11 %: irritating from 10 % on
  expect(about).toHaveLength(1);
  expect(about[0]).toMatch(/^hydrochloric acid: Irritating/);
});

test('a dilute solution is below limits that are named: it is not called harmless', () =>
  expect(cautionsOn(of('student', {}))).toContain(
    'hydrochloric acid: below the limits, which begin at 10 % by mass (irritating to skin, eyes and airways); rinse splashes off all the same.',
  ));

test('the check of a buffer’s pH is for the instructor', () => {
  expect(textOf(of('student', { buffer }))).not.toContain('Check with a calibrated probe');
  expect(textOf(of('student', { buffer }))).toContain('make up to 100 mL');
  expect(textOf(of('instructor', { buffer }))).toContain(
    'Check with a calibrated probe at 25 °C: pH 4.75 is calculated; with the activity of its ions (Davies) about 4.62 is expected.',
  );
});

test.each([
  ['steps alone, which do not say what bottles they open', { steps: titrant.steps }, ['wrong-type options']],
  [
    'a recipe without its parts',
    { recipes: [{ solution: titrant.solution, steps: titrant.steps }] },
    ['missing options.recipes[0].parts'],
  ],
  [
    'no recipe, since there is none',
    { recipes: [{ status: 'impossible', reason: 'too hot' }] },
    [
      'missing options.recipes[0].parts',
      'missing options.recipes[0].solution',
      'missing options.recipes[0].steps',
    ],
  ],
])('refused: %s', (_, wrong, faults) =>
  expect(listed(() => makeHandout(titration, wrong as HandoutOptions))).toEqual(faults),
);
