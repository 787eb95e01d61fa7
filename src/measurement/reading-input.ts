import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';
import { usualOrder } from './column-kinds.js';
import { type Line, linesOf } from './lines-of.js';

/** Readings as columns, numbers or as typed. */
export interface ReadingColumns {
  readonly mL: readonly (number | string)[];
  readonly pH: readonly (number | string)[];
  readonly seconds?: readonly (number | string)[];
}

/** The longest text, in characters, and most lines of a text or rows of columns. */
export const readingLimits = /*#__PURE__*/ frozen({ characters: 2e6, rows: 1e5 } as const);

/** The lines of a text. @internal */
export function linesIn(text: string, faults: Faults): readonly Line[] {
  const { characters, rows } = readingLimits;
  const tooLong = (most: number, is: number, what: string) =>
    faults.add('out-of-range', 'input', `a text of at most ${most} ${what}`, text, `a text of ${is} ${what}`);
  if (text.length > characters) tooLong(characters, text.length, 'characters');
  const ends = text.match(/\r\n|\r|\n/g)?.length ?? 0;
  if (ends > rows) tooLong(rows, ends, 'lines');
  return faults.any ? [] : linesOf(text);
}

/** Columns as lines. @internal */
export function linesFrom(value: unknown, faults: Faults): readonly Line[] {
  const unread = faults.object(value, 'input', 'a text, or columns { mL, pH }', ['mL', 'pH', 'seconds']);
  const keys = usualOrder.filter((key) => key !== 'seconds' || unread.seconds !== undefined);
  const columns = keys.map((key) =>
    faults.list(unread[key], `input.${key}`, 'a list', 0, readingLimits.rows),
  );
  for (const [c, column] of columns.entries()) {
    if (column.length !== columns[0]?.length)
      faults.add('conflict', `input.${keys[c]}`, 'as many items as in input.mL', column);
    for (const [k, cell] of column.entries()) readCell(cell, `input.${keys[c]}[${k}]`, faults);
  }
  const cellsOf = (k: number) => columns.map((column) => String(column[k]).trim());
  return faults.any
    ? []
    : (columns[0] ?? []).map((_, k) => ({ line: k + 1, text: '', cells: cellsOf(k), fault: '' }));
}

function readCell(cell: unknown, path: string, faults: Faults): void {
  if (typeof cell !== 'string') faults.number(cell, path, 'a number, or a number as typed');
}
