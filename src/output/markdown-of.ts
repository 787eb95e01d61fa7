import { Faults } from '../input/faults.js';
import type { ColumnFormats, RowIn } from './column-formats.js';
import { headingOf } from './column-heading.js';
import { acrossOf, dash, printCell } from './print-cell.js';
import { readLongTable } from './read-long-table.js';
import type { TableColumn } from './read-table.js';

/**
 * A table in Markdown (the tables of GitHub Flavored Markdown): headings with units, numbers to the right, a dash where
 * there is no value.
 *
 * @param table - a list of rows, such as `titration.equivalencePoints`, or a result in columns, such as a curve
 * @param columns - as for {@link tabulate}; left out, all numbers and texts of the rows, to the digits that are usual
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { markdownOf } from 'protolysis';
 *
 * console.log(markdownOf({ mL: [0, 10.5], pH: [11.2512, 8.3] }));
 * ```
 *
 * ```text
 * | volume, mL | pH |
 * | ---: | ---: |
 * | 0.00 | 11.25 |
 * | 10.50 | 8.30 |
 * ```
 */
export function markdownOf<const Table extends object>(
  table: Table,
  columns?: ColumnFormats<RowIn<Table>>,
): string {
  const faults = new Faults('markdownOf');
  const read = readLongTable(table, columns, faults);
  faults.done();
  return acrossOf(read.map(printColumn))
    .map((line) => `| ${line.join(' | ')} |`)
    .join('\n');
}

const printColumn = ({ path, heading, format, cells }: TableColumn): string[] => [
  asMarkdown(heading ?? headingOf(path)),
  format === 'text' ? ':---' : '---:',
  ...cells.map((cell) => {
    const text = printCell(cell, format) ?? dash;
    return format === 'text' ? asMarkdown(text) : text;
  }),
];

/** A text with a backslash before each sign that Markdown could read as its own (CommonMark 0.31, section 2.4). @internal */
export const asMarkdown = (text: string): string => text.replace(/[\\`*_[\]<>|&~#!]/g, '\\$&');
