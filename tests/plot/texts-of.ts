import { textWidth } from '../../src/plot/text-width.js';

/** A text of a picture as its reader would find it, with the box that it takes by the library's own rule. */
export interface TextOnSheet {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Whether it stands among the curves of a panel. */
  readonly isInside: boolean;
}

const entities: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

/** A text of SVG as it is read. */
export const unescaped = (text: string): string =>
  text.replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => entities[entity] as string);

/** The value of an attribute of a tag. */
export const attribute = (tag: string, name: string): string =>
  new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? '';

/** Every text of a picture. Ascent and descent are 0.9 and 0.25 of the size of the type. */
export function textsOf(svg: string): TextOnSheet[] {
  return [...svg.matchAll(/(<text [^>]*>)([^<]*)<\/text>/g)].map(([, tag = '', written = '']) => {
    const text = unescaped(written);
    const [x, y, size] = ['x', 'y', 'font-size'].map((name) => Number(attribute(tag, name))) as [
      number,
      number,
      number,
    ];
    const width = textWidth(text, size, tag.includes('font-weight="bold"'));
    const before = { start: 0, middle: 0.5, end: 1 }[attribute(tag, 'text-anchor')] ?? 0;
    const left = x - before * width;
    return {
      text,
      x,
      y,
      left,
      right: left + width,
      top: y - 0.9 * size,
      bottom: y + 0.25 * size,
      isInside: tag.includes('paint-order'),
    };
  });
}

/** The points of every curve of a picture, px. */
export function curvesOf(svg: string): [number, number][][] {
  return [...svg.matchAll(/<path d="([^"Z]*)" fill="none"[^>]*>/g)]
    .map(([, d = '']) => [...d.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)])
    .map((points) => points.map(([, x, y]) => [Number(x), Number(y)] as [number, number]))
    .filter((points) => points.length > 1);
}

/** Pairs of texts that share ground. */
export const overlapsIn = (texts: readonly TextOnSheet[]): string[] =>
  texts.flatMap((a, k) =>
    texts
      .slice(k + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} | ${b.text}`),
  );

/** Texts that reach beyond the sheet. */
export const outside = (texts: readonly TextOnSheet[], width: number, height: number): string[] =>
  texts
    .filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height)
    .map(({ text }) => text);
