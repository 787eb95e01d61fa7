import type { Server } from 'node:http';
import type { Browser, Page } from 'playwright-core';
import { plotDefaults } from 'protolysis/plot';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAnswers } from '../clients/expected.js';
import { bring, newProject, tool } from '../clients/project.js';
import { run } from '../clients/run.js';
import { launch } from './chromium.js';
import { cutTexts, violationsOn } from './look.js';
import { serve } from './serve.js';

let browser: Browser;
let server: Server;
let address: string;
beforeAll(async () => {
  const project = newProject('browser', ['esbuild@0.28.2']);
  const programs = ['page.html', 'page.js', 'bundled.html', 'everything.js', 'answers.js'];
  for (const program of programs) bring(project, program);
  const options = ['--bundle', '--minify', '--format=esm', '--outfile=bundled.js'];
  run(tool(project, 'esbuild'), ['everything.js', ...options], project);
  ({ server, address } = await serve(project));
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  server.close();
});

/** The page, once it has its picture; a fault in it ends the test with its own words. */
async function openPage(): Promise<Page> {
  const page = await browser.newPage();
  const fault = new Promise<never>((_, reject) => page.on('pageerror', reject));
  await page.goto(`${address}page.html`);
  await Promise.race([page.waitForSelector('svg'), fault]);
  return page;
}

test('a browser loads the ES modules of the packed package as they are', async () => {
  const page = await openPage();
  const found = JSON.parse((await page.textContent('#found')) ?? '');
  // c = √Kw of a strong acid: h² − c·h − Kw = 0 gives h = φ·c; φ = (1 + √5)/2.
  expect(found.pH).toBeCloseTo(7 - Math.log10((1 + Math.sqrt(5)) / 2), 14);
  expect(found.exactPH).toBe('6.791012359750021266230727910762');
  // CIEDE2000: S_L is 1 at the mean lightness of 50, and grey has no chroma, so the difference is that of L*.
  expect(found.blackToWhite).toBeCloseTo(100, 9);
  expect(found.toWeigh).toBe('Weigh about 0.20 g of powder');
});

test('a picture made there shows itself as SVG, with its title and description', async () => {
  const page = await openPage();
  const picture = page.getByRole('img', { name: 'sodium carbonate with hydrochloric acid' });
  expect(await picture.locator('desc').textContent()).toContain('Equivalence at 35.85 mL');
  expect((await picture.boundingBox())?.width).toBe(plotDefaults.width);
  expect(await cutTexts(page)).toEqual([]);
  expect(await violationsOn(page)).toEqual([]);
});

test('a browser runs every entry from a bundle', async () => {
  const page = await browser.newPage();
  await page.goto(`${address}bundled.html`);
  await page.waitForFunction(() => document.body.textContent?.trim().startsWith('{'));
  expectAnswers((await page.textContent('body')) ?? '');
});
