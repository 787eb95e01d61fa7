import { asMarkup } from '../output/as-markup.js';

/** A piece of a page. Whatever was text is escaped by the functions of this file, which alone make pieces. */
export interface Markup {
  readonly html: string;
}

/** A text as it is read. @internal */
export const text = (words: string): Markup => ({ html: asMarkup(words) });

/** Markup that this package wrote itself, such as a picture. @internal */
export const own = (html: string): Markup => ({ html });

/** An element with its content. @internal */
export const element = (name: string, content: readonly Markup[], attributes = ''): Markup => ({
  html: `<${name}${attributes}>${content.map(({ html }) => html).join('')}</${name}>`,
});

/** A paragraph of text. @internal */
export const paragraph = (words: string, kind?: string): Markup =>
  element('p', [text(words)], kind ? ` class="${kind}"` : '');

/** A list, where there is anything in it. @internal */
export const list = (items: readonly string[], name: 'ul' | 'ol' = 'ul', kind?: string): Markup =>
  items.length === 0
    ? own('')
    : element(
        name,
        items.map((item) => element('li', [text(item)])),
        kind ? ` class="${kind}"` : '',
      );

/** A part of the page under its heading; nothing where it has no content. @internal */
export const section = (heading: string, content: readonly Markup[], kind?: string): Markup =>
  content.every(({ html }) => html === '')
    ? own('')
    : element('section', [element('h2', [text(heading)]), ...content], kind ? ` class="${kind}"` : '');

/** A table: headings, then rows of texts; an empty text is a cell to write into. @internal */
export const grid = (
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  kind = 'grid',
): Markup =>
  element(
    'table',
    [
      element('thead', [
        element(
          'tr',
          headings.map((heading, k) => columnHeading(heading, rows[0]?.[k] ?? '')),
        ),
      ]),
      element(
        'tbody',
        rows.map((row) => element('tr', row.map(cell))),
      ),
    ],
    ` class="${kind}"`,
  );

const columnHeading = (words: string, below: string): Markup =>
  element('th', [text(words)], ` scope="col"${kindOf(below)}`);

const cell = (words: string): Markup => element('td', [text(words)], kindOf(words));

/** Numbers stand to the right. */
const kindOf = (words: string): string => (/^[−-]?\d+(\.\d+)?$/.test(words) ? ' class="number"' : '');
