import { withView } from '../frozen-with-view.js';
import { asMarkup } from '../output/as-markup.js';
import type { Shape } from './shape.js';
import { type Sheet, svgText } from './svg-text.js';

/** A picture as text: plain data that survives JSON. */
export interface Picture {
  /** The SVG document. */
  readonly svg: string;
  /** px. */
  readonly width: number;
  /** px. */
  readonly height: number;
  readonly title: string;
  /** What it shows, in sentences: for screen readers, and for the text beside a picture that is not shown. */
  readonly description: string;
  /** The SVG document. */
  toString(): string;
}

/** The key under which some notebooks look for what to show. */
const display = Symbol.for('Jupyter.display');

/**
 * A picture that shows itself: as SVG where a text is wanted, as an image in notebooks that ask for it, and as its
 * title and size on a console.
 *
 * A notebook gets the SVG inside of an `img`: an SVG by itself is not shown where a notebook is not trusted or has been
 * exported.
 *
 * @internal
 */
export function pictureOf(sheet: Sheet, shapes: readonly Shape[]): Picture {
  const svg = svgText(sheet, shapes);
  const view = () => `${sheet.title} (picture, ${Math.round(sheet.width)} by ${Math.round(sheet.height)} px)`;
  const picture = { ...sheet, svg };
  withView(picture, view);
  Object.defineProperty(picture, 'toString', { value: () => svg });
  Object.defineProperty(picture, display, {
    value: () => ({ 'text/plain': view(), 'text/html': imageOf({ ...sheet, svg }) }),
  });
  return Object.freeze(picture);
}

/** A picture as an image of HTML that carries its data along. @internal */
export const imageOf = ({
  title,
  description,
  svg,
}: Pick<Picture, 'svg' | 'title' | 'description'>): string =>
  `<img alt="${asMarkup(`${title}. ${description}`)}" src="data:image/svg+xml;base64,${base64(svg)}">`;

const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/**
 * The UTF-8 bytes of a text in base64 (RFC 4648, section 4), by the language alone: browsers and Node.js name their own
 * functions for it differently.
 */
function base64(text: string): string {
  const bytes = utf8(text);
  let coded = '';
  for (let k = 0; k < bytes.length; k += 3) {
    const [a = 0, b = 0, c = 0] = bytes.slice(k, k + 3);
    const all = (a << 16) | (b << 8) | c;
    const four = [18, 12, 6, 0].map((shift) => digits.charAt((all >> shift) & 63)).join('');
    const left = bytes.length - k;
    coded += left > 2 ? four : four.slice(0, left + 1).padEnd(4, '=');
  }
  return coded;
}

/** The bytes of a text, read off its percent-encoding. */
function utf8(text: string): number[] {
  const encoded = encodeURIComponent(text.replace(/[\uD800-\uDFFF]/gu, '\uFFFD'));
  return Array.from(encoded.matchAll(/%([0-9A-F]{2})|[^%]/g), ([whole, hex]) =>
    hex === undefined ? whole.charCodeAt(0) : Number.parseInt(hex, 16),
  );
}
