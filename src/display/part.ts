import { asMarkup } from '../output/as-markup.js';
import { htmlOf } from '../output/html-of.js';
import { asMarkdown, markdownOf } from '../output/markdown-of.js';
import { imageOf, type Picture } from '../plot/picture.js';

/** A piece of what is shown of a result, in the order of reading. */
export type ShownPart =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly isNumbered?: boolean }
  | { readonly kind: 'table'; readonly rows: object; readonly caption?: string }
  | { readonly kind: 'picture'; readonly picture: Pick<Picture, 'svg' | 'title' | 'description'> };

/** A part in HTML. @internal */
export function htmlOfPart(part: ShownPart): string {
  switch (part.kind) {
    case 'text':
      return `<p>${asMarkup(part.text)}</p>`;
    case 'list': {
      const tag = part.isNumbered ? 'ol' : 'ul';
      return `<${tag}>${part.items.map((item) => `<li>${asMarkup(item)}</li>`).join('')}</${tag}>`;
    }
    case 'table':
      return textToTheLeft(
        htmlOf(part.rows, undefined, part.caption === undefined ? {} : { caption: part.caption }),
      );
    case 'picture':
      return imageOf(part.picture);
  }
}

/** Cells of text: the style sheets of some notebooks put every cell to the right. */
const textToTheLeft = (table: string): string => table.replaceAll('<td>', '<td style="text-align:left">');

/** The same in Markdown; of a picture its title and description. @internal */
export function markdownOfPart(part: ShownPart): string {
  switch (part.kind) {
    case 'text':
      return asMarkdown(part.text);
    case 'list':
      return part.items
        .map((item, k) => `${part.isNumbered ? `${k + 1}.` : '-'} ${asMarkdown(item)}`)
        .join('\n');
    case 'table': {
      const table = markdownOf(part.rows);
      return part.caption === undefined ? table : `${asMarkdown(part.caption)}:\n\n${table}`;
    }
    case 'picture':
      return asMarkdown(`${part.picture.title}. ${part.picture.description}`);
  }
}
