import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import { type PlotWords, readWords } from './words.js';

/** What every picture may be told. */
export interface PlotOptions {
  /** px; 640 if left out, which prints 17 cm wide. For a phone draw it at 360: type keeps its size. */
  readonly width?: number;
  /** Above the picture, and its name for screen readers. */
  readonly title?: string;
  /** Words to put in place of those of `plotWords`. */
  readonly words?: Partial<PlotWords>;
}

/** What a picture is by default. */
export const plotDefaults = /*#__PURE__*/ frozen({ width: 640 } as const);

/** The width of a picture, px; how many curves, indicators, points and bars one may hold. */
export const plotLimits = /*#__PURE__*/ frozen({
  width: { from: 320, to: 2000 },
  curves: 6,
  indicators: 12,
  points: 10_000,
  bars: 12,
} as const);

/** The common options, read. */
export interface ReadPlotOptions {
  readonly width: number;
  readonly title: string | null;
  readonly words: PlotWords;
  readonly unread: Unread;
}

/** Reads options, noting every fault; `more` are those of one kind of picture, which it reads by itself. @internal */
export function readPlotOptions(value: unknown, more: readonly string[], faults: Faults): ReadPlotOptions {
  const keys = [...more, 'width', 'title', 'words'];
  const unread =
    value === undefined ? {} : faults.object(value, 'options', `options { ${keys.join(', ')} }`, keys);
  return {
    width:
      unread.width === undefined
        ? plotDefaults.width
        : faults.number(unread.width, 'options.width', 'a width in px', plotLimits.width),
    title: unread.title === undefined ? null : faults.text(unread.title, 'options.title', 'a title'),
    words: readWords(unread.words, 'options.words', faults),
    unread,
  };
}
