import { withView } from '../frozen-with-view.js';
import { asMarkup } from '../output/as-markup.js';
import { base64 } from './base64.js';
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

/** The key under which some notebooks look for what to show. @internal */
export const shownInNotebook = Symbol.for('Jupyter.display');

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
  Object.defineProperty(picture, shownInNotebook, {
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
