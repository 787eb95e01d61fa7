import { asMarkup } from '../output/as-markup.js';
import type { Shape, Stroke } from './shape.js';

/** What a picture says of itself, and its size, px. */
export interface Sheet {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
}

const typeface = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

/**
 * A picture as the text of an SVG document: its title and description for screen readers, a white sheet, the shapes.
 *
 * It has no ids, so that several pictures can stand in one page.
 *
 * @internal
 */
export function svgText({ title, description, width, height }: Sheet, shapes: readonly Shape[]): string {
  const size = `width="${px(width)}" height="${px(height)}" viewBox="0 0 ${px(width)} ${px(height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" ${size} font-family="${typeface}">`,
    `<title>${asMarkup(title)}</title>`,
    `<desc>${asMarkup(description)}</desc>`,
    `<rect width="${px(width)}" height="${px(height)}" fill="#ffffff"/>`,
    ...shapes.map(printShape),
    '</svg>',
  ].join('\n');
}

const halo = ' stroke="#ffffff" stroke-width="3" paint-order="stroke"';

function printShape(shape: Shape): string {
  switch (shape.kind) {
    case 'text':
      return `<text x="${px(shape.x)}" y="${px(shape.y)}" font-size="${shape.size}" text-anchor="${shape.anchor}" fill="${shape.colour}"${shape.isBold ? ' font-weight="bold"' : ''}${shape.hasHalo ? halo : ''}>${asMarkup(shape.text)}</text>`;
    case 'path':
      return `<path d="${shape.d}" fill="${shape.fill ?? 'none'}"${printStroke(shape.stroke)} stroke-linejoin="round"/>`;
    case 'circle':
      return `<circle cx="${px(shape.at.x)}" cy="${px(shape.at.y)}" r="${shape.r}" fill="${shape.fill}"${printStroke(shape.stroke)}/>`;
    case 'line':
      return `<line x1="${px(shape.from.x)}" y1="${px(shape.from.y)}" x2="${px(shape.to.x)}" y2="${px(shape.to.y)}"${printStroke(shape.stroke)}/>`;
    case 'rect': {
      const { left, top, right, bottom } = shape.box;
      return `<rect x="${px(left)}" y="${px(top)}" width="${px(right - left)}" height="${px(bottom - top)}" fill="${shape.fill}"${printStroke(shape.stroke)}${shape.isCrisp ? ' shape-rendering="crispEdges"' : ''}/>`;
    }
  }
}

const printStroke = (stroke: Stroke | undefined): string =>
  stroke
    ? ` stroke="${stroke.colour}" stroke-width="${stroke.width}"${stroke.dash ? ` stroke-dasharray="${stroke.dash}"` : ''}`
    : '';

/** To a hundredth of a pixel, which nobody sees. */
const px = (value: number): string => String(Number(value.toFixed(2)));
