import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { run } from '../clients/run.js';
import { root } from '../tree.js';
import { launch } from './chromium.js';

const folder = mkdtempSync(join(tmpdir(), 'site-'));
const addressOf = (path: string): string => pathToFileURL(join(folder, path)).href;

let browser: Browser;
beforeAll(async () => {
  run('npm', ['run', '--silent', 'docs', '--', '--out', folder], root);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

const open = async (path: string, width = 1280): Promise<Page> => {
  const page = await browser.newPage({ viewport: { width, height: 800 } });
  await page.goto(addressOf(path));
  return page;
};

test('a link over the menu leads from every page to the one where one may try it', async () => {
  for (const from of ['index.html', 'documents/Getting_started.html', 'functions/index.titrate.html']) {
    const page = await open(from);
    await page.getByRole('link', { name: 'Try it in the browser' }).click();
    await page.locator('#news', { hasText: 'Equivalence at 17.93 mL' }).waitFor();
    await page.getByRole('link', { name: 'protolysis: guides and reference' }).click();
    expect(page.url()).toBe(addressOf('index.html'));
  }
});

test('the menu holds the guides by their kind', async () => {
  const page = await open('index.html');
  const kinds = page.locator('.tsd-navigation > .tsd-small-nested-navigation > li > details > summary');
  await kinds.first().waitFor();
  const words = (await kinds.allTextContents()).map((text) => text.trim());
  expect(words).toEqual(['Start', 'Guides', 'Theory', 'Developers', 'Reference']);
});

test('equations are MathML that the browser sets', async () => {
  const page = await open('documents/The_model,_its_equations_and_where_they_are_derived.html');
  const fractions = await page
    .locator('math mfrac')
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
  expect(fractions.length).toBeGreaterThan(0);
  expect(Math.min(...fractions)).toBeGreaterThan(20); // two lines of type, one over the other
});

test('the equations of a doc comment stand on lines of their own', async () => {
  const page = await open('functions/index.titrate.html');
  const equation = page.locator('p.equation').first();
  expect(await equation.textContent()).toMatch(/\(1\)\n\s*V\(pH\) = /);
  expect(await equation.evaluate((one) => getComputedStyle(one).whiteSpace)).toBe('pre');
});

/** Characters that the column holds at 1280 px; a longer line scrolls. */
const longest = 115;

test.each([1280, 360])(
  'no page of the guides scrolls sideways at %i px, and no code is wrapped',
  async (width) => {
    for (const file of readdirSync(join(folder, 'documents'))) {
      const page = await open(`documents/${file}`, width);
      const found = await page.evaluate(() => ({
        over: document.documentElement.scrollWidth - window.innerWidth,
        blocks: [...document.querySelectorAll('pre')].map((block) => ({
          isWhole: block.scrollWidth <= block.clientWidth,
          style: `${getComputedStyle(block).whiteSpace} ${getComputedStyle(block).overflowX}`,
          length: Math.max(...(block.textContent ?? '').split('\n').map((line) => line.length)),
        })),
      }));
      expect(found.over, file).toBeLessThanOrEqual(0);
      expect(new Set(found.blocks.map(({ style }) => style)), file).toEqual(new Set(['pre auto']));
      const cut = found.blocks.filter(({ isWhole, length }) => !isWhole && length <= longest);
      if (width === 1280) expect(cut, file).toEqual([]);
      await page.close();
    }
  },
);
