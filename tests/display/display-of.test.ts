import { inspect } from 'node:util';
import {
  chooseIndicators,
  htmlOf,
  indicators,
  makeSolution,
  prepareBuffer,
  reagents,
  titrate,
} from 'protolysis';
import { diagnose, fitTitration, simulateReadings, uncertaintyBudget } from 'protolysis/measurement';
import { displayOf, drawBudget, drawFit, drawTitration } from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const titration = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});
const { readings } = simulateReadings(titration, { seed: 8 });
const display = Symbol.for('Jupyter.display');
/** The HTML that a notebook shows of a picture, as the picture itself gives it. */
const imageIn = (picture: object): string =>
  (picture as Record<symbol, () => Record<string, string>>)[display]?.()['text/html'] ?? '?';

describe('a display', () => {
  test('of a titration has its curve and its points in order', () => {
    const { html, markdown } = displayOf(titration);
    expect(html).toContain(imageIn(drawTitration(titration)));
    const rows = markdown.split('\n').filter((line) => /^\| \d/.test(line));
    expect(rows.map((row) => row.split(' | ')[0])).toEqual([
      '| 0.00',
      '| 6.25',
      '| 12.50',
      '| 18.75',
      '| 25.00',
    ]);
  });

  test('of a fit has its picture, what was found with its uncertainty, and what was expected', () => {
    const fit = fitTitration(readings, { titration, free: ['sampleAmount'] });
    const { html, markdown } = displayOf(fit);
    expect(html).toContain(imageIn(drawFit(fit)));
    expect(markdown).toMatch(/\| amount of sample \| 1\.2\d+ ± 0\.00\d+ mmol \| 1\.250 \|/);
  });

  test('of a budget has the result, its picture and each input', () => {
    const mL = { value: 24.31, standardUncertainty: 0.02, degreesOfFreedom: 2 };
    const budget = uncertaintyBudget({ mL, molar: 0.1 }, (values) => values.mL * values.molar);
    const { html, markdown } = displayOf(budget);
    expect(html).toContain(imageIn(drawBudget(budget)));
    expect(markdown).toContain('Result: (2.4310 ± 0.0086), k = 4.3 for 95 %');
    expect(markdown).toContain('| mL | 24.310 ± 0.020 | 100 |');
  });

  test('of a recipe has its steps numbered, of none the reason', () => {
    const from = [
      { reagent: reagents.sodiumCarbonate, purity: 1 },
      { reagent: reagents.sodiumHydrogenCarbonate, purity: 1 },
    ] as const;
    const recipe = prepareBuffer({ pH: 10, molar: 0.05, mL: 250, from });
    const { html } = displayOf(recipe);
    expect(html).toContain('<ol><li>Put about 170 mL of water');
    expect(displayOf(prepareBuffer({ pH: 2, molar: 0.05, mL: 250, from })).markdown).toMatch(/^No recipe: /);
  });

  test('of indicators and of a diagnosis has every name', () => {
    const shelf = [indicators.methylOrange, indicators.phenolphthalein, indicators.methylYellow];
    const { markdown } = displayOf(chooseIndicators(titration, shelf));
    for (const { name } of shelf) expect(markdown).toContain(name);
    const diagnosis = diagnose(readings, titration);
    for (const { words } of diagnosis.explanations) expect(displayOf(diagnosis).markdown).toContain(words);
  });

  test('of a diagnosis says how far the readings scatter, and how the end point was called', () => {
    const { scatter, endpoint, ...rest } = diagnose(readings, titration, { endpoint: 30 });
    const { markdown } = displayOf({ ...rest, scatter, endpoint });
    expect(Number(/Scatter: ([\d.]+) times/.exec(markdown)?.[1])).toBeCloseTo(scatter, 2);
    expect(endpoint?.verdict).toBe('past');
    expect(markdown).toContain(`${endpoint?.sentence} ${endpoint?.remedy}`);
    const notCalled = displayOf(diagnose(readings, titration)).markdown;
    expect(notCalled).not.toContain('called');
    const spoiled = { ...rest, scatter: 'large', endpoint: { ...endpoint, sentence: 7 } };
    expect(listed(() => displayOf(spoiled))).toEqual([
      'wrong-type result.scatter',
      'wrong-type result.endpoint.sentence',
    ]);
  });

  test('of rows and columns is their table', () => {
    const curve = titration.curve({ every: 5, upTo: 20 });
    const isTheTable = displayOf(curve).html.replaceAll(' style="text-align:left"', '');
    expect(isTheTable).toContain(htmlOf(curve).replaceAll(' style="text-align:left"', ''));
  });

  test('is what a notebook and a console show', () => {
    const shown = displayOf(titration.setup.analyte);
    const bundle = (shown as unknown as Record<symbol, () => object>)[display]?.();
    expect(bundle).toEqual({ 'text/plain': shown.markdown, 'text/html': shown.html });
    expect(inspect(shown)).toBe(shown.markdown);
    expect(JSON.parse(JSON.stringify(shown))).toEqual({ html: shown.html, markdown: shown.markdown });
  });

  test('is the same of a result that was stored as JSON', () => {
    const stored = JSON.parse(JSON.stringify({ setup: titration.setup }));
    expect(displayOf(stored).html).toBe(displayOf(titration).html);
  });

  test('escapes what a name holds', () => {
    const odd = makeSolution({
      mL: 5,
      contents: [{ reagent: { ...reagents.sodiumCarbonate, name: '<b>soda</b>' } as never, mmol: 1 }],
    });
    expect(displayOf(odd).html).toContain('&lt;b&gt;soda&lt;/b&gt;');
    expect(displayOf(odd).html).not.toContain('<b>');
  });

  test('refuses what is no result', () => {
    expect(listed(() => displayOf('text' as never))).toEqual(['wrong-type table']);
    expect(listed(() => displayOf({ svg: 5, title: 'a', description: 'b' }))).toEqual([
      'wrong-type result.svg',
    ]);
  });
});
