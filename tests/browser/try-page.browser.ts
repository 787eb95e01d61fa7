import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildTryPage } from '../try-page.mjs';
import { launch } from './chromium.js';
import { cutOff, cutTexts, pagesOf, violationsOn } from './look.js';

const folder = mkdtempSync(join(tmpdir(), 'try-'));
const address = pathToFileURL(folder).href;
const wide = { viewport: { width: 1280, height: 800 } };
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true };

let browser: Browser;
beforeAll(async () => {
  await buildTryPage(folder);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

async function open(options: BrowserContextOptions = wide): Promise<Page> {
  const page = await browser.newPage(options);
  await page.goto(`${address}/index.html`);
  return page;
}

/** Waits until the live region says what is wanted. */
const waitForNews = (page: Page, words: string) => page.locator('#news', { hasText: words }).waitFor();

/** The points of the README. */
const first =
  'Equivalence at 17.93 mL (pH 8.34) and 35.85 mL (pH 4.02). With bromocresol green, stop at green';

describe('the page where one may try it', () => {
  test('needs no network and nothing but its own files, and has no fault', async () => {
    const page = await browser.newPage(wide);
    const asked: string[] = [];
    const faults: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('pageerror', ({ message }) => faults.push(message));
    page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
    await page.goto(`${address}/index.html`);
    await waitForNews(page, first);
    expect(asked.filter((url) => !url.startsWith(address) && !url.startsWith('data:'))).toEqual([]);
    expect(faults).toEqual([]);
  });

  test('shows the invented assay at first: curve, points, colours, drops and cautions', async () => {
    const page = await open();
    await waitForNews(page, first);
    const picture = page.getByRole('img', { name: 'sodium carbonate with hydrochloric acid' });
    expect(await picture.locator('text', { hasText: 'bromocresol green' }).count()).toBe(1);
    expect(await page.locator('#points tbody tr').count()).toBe(2);
    expect(await page.locator('#stop .patch').count()).toBe(3);
    expect(await page.locator('#stop tbody tr').count()).toBe(4);
    expect(await page.locator('#cautions').textContent()).toContain('Carbon dioxide can escape');
    expect(await page.locator('header').textContent()).toContain('an invented assay');
  });
});

describe('by the keyboard alone', () => {
  test('the focus runs through the fields in their order, and shows where it is', async () => {
    const page = await open();
    const stops: string[] = [];
    const unseen: string[] = [];
    for (let stop = 0; stop < 12; stop += 1) {
      await page.keyboard.press('Tab');
      const { name, outline } = await page.evaluate(() => {
        const focused = document.activeElement as HTMLElement;
        const { outlineStyle, outlineWidth } = getComputedStyle(focused);
        const isSeen = focused.getBoundingClientRect().left >= 0 && outlineStyle === 'solid';
        return {
          name: focused.id || (focused as HTMLInputElement).name || focused.textContent || '',
          outline: isSeen ? Number.parseFloat(outlineWidth) : 0,
        };
      });
      stops.push(name);
      if (outline < 2) unseen.push(name);
    }
    const fields = [
      'analyte',
      'amount',
      'measure',
      'purity',
      'volume',
      'titrant',
      'concentration',
      'indicator',
    ];
    expect(stops).toEqual([
      'To the prediction',
      'protolysis: guides and reference',
      ...fields,
      'activity',
      'Predict',
    ]);
    expect(unseen).toEqual([]);
  });

  test('another amount, indicator and law can be asked for', async () => {
    const page = await open();
    const tab = async (times: number) => {
      for (let k = 0; k < times; k += 1) await page.keyboard.press('Tab');
    };
    await tab(4);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('0.1');
    await page.keyboard.press('Enter');
    // Half of the powder: half of 17.926643 and 35.853285 mL.
    await waitForNews(page, 'Equivalence at 8.96 mL');
    await tab(6);
    await page.keyboard.type('thymolph');
    await waitForNews(page, 'With thymolphthalein');
    await tab(1);
    await page.keyboard.press('ArrowDown');
    await page.locator('#basis', { hasText: 'Davies' }).waitFor({ state: 'attached' });
    expect(await page.isChecked('[value=davies]')).toBe(true);
  });

  test('a bad value takes the focus, tells the field and the live region, and goes once it is mended', async () => {
    const page = await open();
    const amount = page.getByLabel('How much of it', { exact: true });
    await amount.fill('-1');
    await page.getByLabel('Volume, mL').fill('');
    await page.keyboard.press('Enter');
    await waitForNews(page, 'No prediction yet: look at “How much of it” and “Volume, mL”.');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('amount');
    expect(await amount.getAttribute('aria-invalid')).toBe('true');
    const described = await amount.getAttribute('aria-describedby');
    expect(await page.locator(`#${described}`).textContent()).toBe(
      '-1 cannot be used. Give a mass in g, from 0 to 1e12.',
    );
    expect(await page.isVisible('#prediction')).toBe(false);
    expect(await violationsOn(page)).toEqual([]);

    await amount.fill('0.2');
    await page.getByLabel('Volume, mL').fill('50');
    await page.keyboard.press('Enter');
    await waitForNews(page, first);
    expect(await page.locator('[aria-invalid]').count()).toBe(0);
    expect(await page.isVisible('#prediction')).toBe(true);
  });

  test('the mass fraction is asked for only where something is weighed', async () => {
    const page = await open();
    await page.getByLabel('Unit of how much').selectOption('mol/L');
    await page.locator('#purity').waitFor({ state: 'hidden' });
  });
});

describe('on a phone', () => {
  test.each([360, 320])('of %i px nothing scrolls sideways, whatever indicator is chosen', async (width) => {
    const page = await open({ ...phone, viewport: { width, height: 740 } });
    await page.locator('summary').click();
    const names = await page.locator('#indicator option').allTextContents();
    expect(names.length).toBeGreaterThan(30);
    for (const label of names) {
      await page.getByLabel('Indicator, two drops').selectOption({ label });
      await page.getByRole('button').click();
      expect(await cutOff(page), label).toEqual([]);
    }
  });

  test('the picture is drawn anew for the width, with type of the same size', async () => {
    const page = await open(phone);
    const sizeOf = () =>
      page.evaluate(() => document.querySelector('#picture text')?.getBoundingClientRect().height);
    const [before, room] = [await sizeOf(), await page.locator('#picture').evaluate((e) => e.clientWidth)];
    expect(await page.locator('#picture svg').getAttribute('width')).toBe(String(room));
    expect(await cutTexts(page)).toEqual([]);
    await page.setViewportSize({ width: 700, height: 740 });
    await page.locator(`#picture svg:not([width="${room}"])`).waitFor();
    expect(Math.abs(Number(await sizeOf()) - Number(before))).toBeLessThan(1);
  });

  test('everything to touch is 44 px high', async () => {
    const page = await open(phone);
    const heights = await page
      .locator('input:not([type=radio]), select, button, .choice')
      .evaluateAll((all) => all.map((element) => element.getBoundingClientRect().height));
    expect(heights.length).toBe(11);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
  });
});

describe('for every reader', () => {
  test.each([
    ['on a screen', wide],
    ['in the dark', { ...wide, colorScheme: 'dark' as const }],
    ['on a phone', phone],
    ['in forced colours', { ...wide, forcedColors: 'active' as const }],
  ])('the checker of accessibility finds nothing %s', async (_, options) => {
    const page = await open(options);
    await page.locator('summary').click();
    expect(await violationsOn(page)).toEqual([]);
  });

  test('nothing moves', async () => {
    const page = await open({ ...wide, reducedMotion: 'reduce' });
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((element) => {
          const { animationName, transitionDuration } = getComputedStyle(element);
          return animationName !== 'none' || transitionDuration !== '0s';
        }).length,
    );
    expect(moving).toBe(0);
  });

  test('it prints on two pages', async () =>
    expect(pagesOf(await (await open()).pdf({ format: 'A4', margin: { top: '1cm', bottom: '1cm' } }))).toBe(
      2,
    ));
});
