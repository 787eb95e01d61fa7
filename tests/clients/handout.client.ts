import { execFile, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { aliquot, indicators, makeSolution, prepareBuffer, reagents, titrate } from 'protolysis';
import { makeHandout } from 'protolysis/handout';
import { expect, test } from 'vitest';

const browser = ['chromium', 'chromium-browser', 'google-chrome'].find(
  (name) => spawnSync(name, ['--version']).status === 0,
);
const flags = ['--headless', '--no-sandbox', '--disable-gpu'];
const run = async (...more: string[]): Promise<string> =>
  (await promisify(execFile)(browser ?? '', [...flags, ...more], { timeout: 120_000 })).stdout;

const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({
  analyte: makeSolution({
    mL: 50,
    contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }],
  }),
  titrant: acid,
});
const recipe = prepareBuffer({
  pH: 7,
  molar: 0.05,
  mL: 100,
  from: [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
});
if (recipe.status !== 'prepared') throw new Error(recipe.reason);

const pages = (['student', 'instructor'] as const).flatMap((audience) =>
  (['A4', 'letter'] as const).map((paper) => ({ audience, paper })),
);

/** Sizes of paper in points: ISO 216 and ANSI. */
const sizes = { A4: [595.3, 841.9], letter: [612, 792] } as const;

test.skipIf(!browser).each(pages)(
  'the page for the $audience prints on one or two sheets of $paper, nothing cut (skipped without Chromium)',
  async ({ audience, paper }) => {
    const html = makeHandout(titration, {
      audience,
      paper,
      sample: { name: 'powder', grams: 0.2 },
      indicators: [indicators.phenolphthalein, indicators.bromocresolGreen],
      buffer: { recipe, solution: aliquot(recipe.solution, { mL: 50 }), add: acid },
    });
    const folder = mkdtempSync(join(tmpdir(), 'handout-'));
    const page = join(folder, 'page.html');
    writeFileSync(page, html);
    const pdf = join(folder, 'page.pdf');
    await run('--no-pdf-header-footer', `--print-to-pdf=${pdf}`, pathToFileURL(page).href);
    const printed = readFileSync(pdf, 'latin1');
    expect(printed.match(/\/Type\s*\/Page\b/g)?.length).toBeGreaterThanOrEqual(1);
    expect(printed.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
    const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(printed) ?? [];
    expect(Math.abs(Number(width) - sizes[paper][0])).toBeLessThan(1.5);
    expect(Math.abs(Number(height) - sizes[paper][1])).toBeLessThan(1.5);

    // A copy with a script tells what sticks out: the page itself has none, and forbids any.
    const probe = `<script>document.documentElement.dataset.cut = [...document.querySelectorAll('body *')]
      .filter((e) => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && !e.closest('svg'))
      .map((e) => e.outerHTML.slice(0, 80)).concat(document.documentElement.scrollWidth > innerWidth ? ['page'] : []).join('|')</script>`;
    const copy = join(folder, 'copy.html');
    writeFileSync(copy, html.replace(/<meta http-equiv[^>]*>/, '').replace('</body>', `${probe}</body>`));
    const seen = await run('--window-size=690,980', '--dump-dom', pathToFileURL(copy).href);
    expect(/data-cut="([^"]*)"/.exec(seen)?.[1]).toBe('');
  },
);
