import { asMarkup } from '../output/as-markup.js';
import type { PlotWords } from '../plot/words.js';

/** Paper for a curve: pH from 0 to 14, and volumes that the student writes at the axis. @internal */
export function graphPaper({ pH, added }: Pick<PlotWords, 'pH' | 'added'>): string {
  const [left, top, right, bottom] = [30, 24, 452, 584]; // as tall as the column beside it lets it be
  const heightOf = (value: number) => bottom - ((bottom - top) * value) / 14;
  const across = Array.from({ length: 29 }, (_, k) =>
    line(left, heightOf(k / 2), right, heightOf(k / 2), k % 2 === 0),
  );
  const count = 48;
  const down = Array.from({ length: count + 1 }, (_, k) => {
    const x = left + ((right - left) * k) / count;
    return line(x, top, x, bottom, k % 4 === 0);
  });
  const numbers = Array.from({ length: 8 }, (_, k) =>
    label(left - 5, heightOf(2 * k) + 3.5, 'end', String(2 * k)),
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 460 618" role="img" aria-label="${asMarkup(`${pH}; ${added}`)}">`,
    ...across,
    ...down,
    ...numbers,
    label(left - 5, top - 11, 'end', pH),
    label(right, bottom + 26, 'end', added),
    '</svg>',
  ].join('');
}

const line = (x1: number, y1: number, x2: number, y2: number, isMain: boolean): string =>
  `<path d="M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}" stroke="${isMain ? '#8a949e' : '#d3d9de'}" stroke-width="${isMain ? 0.7 : 0.5}"/>`;

const label = (x: number, y: number, anchor: string, words: string): string =>
  `<text x="${x}" y="${y.toFixed(1)}" font-size="11" text-anchor="${anchor}">${asMarkup(words)}</text>`;
