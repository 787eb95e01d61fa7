import { type Axis, ticksAlong, ticksUp } from './axis.js';
import { layOutBars } from './bars.js';
import type { Figure } from './figure.js';
import { ink, paleInk, type } from './inks.js';
import type { LaidRow, Place } from './laid-row.js';
import { layOutPanel } from './panel.js';
import { type Picture, pictureOf } from './picture.js';
import type { Shape } from './shape.js';
import { layOutStrip } from './strip.js';
import { textWidth, wrapped } from './text-width.js';
import { say } from './words.js';

/** px around everything. */
const margin = 12;
const titleHeight = 20;
const noteHeight = 15;

/** A figure as a picture of a width, px: one row under another, as high as they need. @internal */
export function layOut(figure: Figure, width: number): Picture {
  const inner = width - 2 * margin;
  const titles = wrapped(figure.title, inner, type.title, true);
  const panelHeight = Math.min(Math.max(width / 2, 280), 400);
  const ends = axisEnds(figure, width, panelHeight);
  const rows: LaidRow[] = [];
  let top = margin + titles.length * titleHeight + 4;
  for (const row of figure.rows) {
    const place = { ...ends, margin, top, panelHeight };
    const laid = layOutRow(row, figure.x, place);
    rows.push(laid);
    top = laid.bottom + 8;
  }
  const notes = notesUnder(figure, rows).flatMap((note) => wrapped(note, inner, type.tick));
  const { title, description } = figure;
  return pictureOf({ title, description, width, height: top + notes.length * noteHeight + margin / 2 }, [
    ...titles.map(
      (text, k): Shape => ({
        kind: 'text',
        x: margin,
        y: margin + 14 + k * titleHeight,
        text,
        anchor: 'start',
        size: type.title,
        colour: ink,
        isBold: true,
      }),
    ),
    ...rows.flatMap(({ shapes }) => shapes),
    ...notes.map(
      (text, k): Shape => ({
        kind: 'text',
        x: margin,
        y: top + 10 + k * noteHeight,
        text,
        anchor: 'start',
        size: type.tick,
        colour: paleInk,
      }),
    ),
  ]);
}

function layOutRow(row: Figure['rows'][number], x: Axis, place: Place): LaidRow {
  if (row.kind === 'panel') return layOutPanel(row, x, place);
  return row.kind === 'strip' ? layOutStrip(row, x, place) : layOutBars(row, x, place);
}

/** Where the axis that all rows share begins and ends: as far in as its own numbers and those of the upright axes need. */
function axisEnds({ x, rows }: Figure, width: number, panelHeight: number) {
  const upright = rows.flatMap((row) =>
    row.kind === 'panel' ? ticksUp(row.y, row.share * panelHeight) : [],
  );
  const widest = Math.max(...upright.map(({ text }) => textWidth(text, type.tick)));
  const left = upright.length > 0 ? margin + widest + 8 : margin;
  const last = ticksAlong(x, width - left - margin).at(-1);
  return { left, right: width - margin - (last ? textWidth(last.text, type.tick) / 2 : 0) };
}

/** What found no room, what marks mean whose texts are short, and the notes of the figure. */
function notesUnder({ notes, noRoom }: Figure, rows: readonly LaidRow[]): string[] {
  const left = rows.flatMap(({ unplaced }) => unplaced).join('; ');
  const keys = [...new Set(rows.flatMap((row) => row.keys))].join(' ');
  return [...(keys === '' ? [] : [keys]), ...(left === '' ? [] : [say(noRoom, { text: left })]), ...notes];
}
