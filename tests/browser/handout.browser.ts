import type { Browser, Page } from 'playwright-core';
import { aliquot, indicators, makeSolution, prepareBuffer, reagents, titrate } from 'protolysis';
import { makeHandout } from 'protolysis/handout';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launch } from './chromium.js';
import { cutOff, cutTexts, pagesOf, violationsOn } from './look.js';

const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const powder = { reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 };
const titration = titrate({ analyte: makeSolution({ mL: 50, contents: [powder] }), titrant: acid });
const recipe = prepareBuffer({
  pH: 7,
  molar: 0.05,
  mL: 100,
  from: [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
});
if (recipe.status !== 'prepared') throw new Error(recipe.reason);
const buffer = { recipe, solution: aliquot(recipe.solution, { mL: 50 }), add: acid };

/** Sizes of paper, ISO 216 and ANSI, mm; the margins of the page at its sides, mm. */
const sizes = { A4: [210, 297], letter: [215.9, 279.4] } as const;
const margin = 14;
const [pointsPerMm, pxPerMm] = [72 / 25.4, 96 / 25.4];

const pages = (['student', 'instructor'] as const).flatMap((audience) =>
  (['A4', 'letter'] as const).map((paper) => ({ audience, paper })),
);

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

describe.each(pages)('the page for the $audience on $paper', ({ audience, paper }) => {
  const [width, height] = sizes[paper];
  const html = makeHandout(titration, {
    audience,
    paper,
    sample: { name: 'powder', grams: 0.2 },
    indicators: [indicators.phenolphthalein, indicators.bromocresolGreen],
    buffer,
  });
  const onPaper = async (): Promise<Page> => {
    const page = await browser.newPage({
      viewport: { width: Math.floor((width - 2 * margin) * pxPerMm), height: 900 },
    });
    await page.emulateMedia({ media: 'print' });
    await page.setContent(html);
    return page;
  };

  test('prints on two sheets of its paper', async () => {
    const pdf = await (await onPaper()).pdf({ preferCSSPageSize: true });
    expect(pagesOf(pdf)).toBe(2);
    const [, across, down] =
      /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf.toString('latin1')) ?? [];
    // The printer of the browser works in whole px of 1/96 inch, three quarters of a point.
    expect(Math.abs(Number(across) - width * pointsPerMm)).toBeLessThan(0.75);
    expect(Math.abs(Number(down) - height * pointsPerMm)).toBeLessThan(0.75);
  });

  test('has nothing cut off', async () => {
    const page = await onPaper();
    expect(await cutOff(page)).toEqual([]);
    expect(await cutTexts(page)).toEqual([]);
  });

  test('has nothing that the checker of accessibility finds', async () =>
    expect(await violationsOn(await onPaper())).toEqual([]));
});
