import { Faults } from '../input/faults.js';
import type { ColumnFormats, RowIn } from './column-formats.js';
import { acrossOf, dash, printCell } from './print-cell.js';
import { readSize } from './read-long-table.js';
import { readTable, type TableColumn } from './read-table.js';

/**
 * A plain table of text, one line each row under a line of headings: numbers to the right, text to the left, and a dash
 * where there is no value. The headings are the keys, where columns bring none of their own.
 *
 * @param table - a list of rows, such as `titration.equivalencePoints`, or a result in columns, such as a curve
 * @param columns - the keys to print, in order; each with its number of decimals, 0 to 15, or `'text'`; left
 *   out, all numbers and texts of the rows, to the digits that are usual
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { tabulate } from 'protolysis';
 *
 * const points = [
 *   { mL: 9.5, pH: 6.25, inflection: null, of: 'first' },
 *   { mL: 10, pH: 5.5, inflection: { mL: 10.01 }, of: 'second' },
 * ];
 * console.log(tabulate(points, { mL: 2, pH: 1, 'inflection.mL': 2, of: 'text' }));
 * ```
 *
 * ```text
 *    mL   pH  inflection.mL  of
 *  9.50  6.3              –  first
 * 10.00  5.5          10.01  second
 * ```
 */
export function tabulate<const Table extends object>(
  table: Table,
  columns?: ColumnFormats<RowIn<Table>>,
): string {
  const faults = new Faults('tabulate');
  const printed = readTable(table, columns, faults).map(printColumn);
  const lines = printed[0]?.texts.length ?? 0;
  readSize(lines * printed.reduce((all, { width }) => all + width + 2, 0), faults);
  faults.done();
  return acrossOf(printed.map(padded))
    .map((line) => line.join('  ').trimEnd())
    .join('\n');
}

/** A column in print: its heading and its cells. */
interface Printed {
  readonly texts: readonly string[];
  readonly width: number;
  readonly isText: boolean;
}

function printColumn({ path, heading, format, cells }: TableColumn): Printed {
  const texts = [heading ?? path, ...cells.map((cell) => printCell(cell, format) ?? dash)];
  const width = texts.reduce((most, { length }) => Math.max(most, length), 0);
  return { texts, width, isText: format === 'text' };
}

const padded = ({ texts, width, isText }: Printed): string[] =>
  texts.map((text) => (isText ? text.padEnd(width) : text.padStart(width)));
