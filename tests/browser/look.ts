import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

/** What the checker of accessibility has against a page, each with the elements at fault. */
export async function violationsOn(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<AxeResults>('axe.run()');
  return violations.map(
    ({ id, help, nodes }) => `${id}: ${help} (${nodes.map(({ target }) => target.join(' ')).join(', ')})`,
  );
}

/** The elements that reach beyond the right edge of the window, or whose content is wider than they are. */
export const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('body, body *:not(svg *)')]
      .filter((element) => {
        const { right, width } = element.getBoundingClientRect();
        const isHeld = element.scrollWidth <= element.clientWidth + 1 || element.clientWidth === 0;
        return width > 0 && (right > window.innerWidth + 1 || !isHeld);
      })
      .map((element) => element.outerHTML.slice(0, 80)),
  );

/** The texts of pictures that reach beyond their picture. */
export const cutTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('svg')].flatMap((svg) => {
      const sheet = svg.getBoundingClientRect();
      return [...svg.querySelectorAll('text')]
        .filter((text) => {
          const { left, right, top, bottom } = text.getBoundingClientRect();
          return left < sheet.left || right > sheet.right || top < sheet.top || bottom > sheet.bottom;
        })
        .map((text) => text.textContent ?? '');
    }),
  );

/** How many pages a printed document has. */
export const pagesOf = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
