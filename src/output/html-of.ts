import { Faults } from '../input/faults.js';
import { asMarkup } from './as-markup.js';
import type { ColumnFormats, RowIn } from './column-formats.js';
import { headingOf } from './column-heading.js';
import { acrossOf, dash, printCell } from './print-cell.js';
import { readLongTable } from './read-long-table.js';
import type { TableColumn } from './read-table.js';

/** What an HTML table has beside its cells. */
export interface HtmlOptions {
  /** Above the table, and its name for screen readers. */
  readonly caption?: string;
}

/**
 * A table as HTML: a `table` with headings and units, numbers to the right, a dash where there is no value. Every text is
 * escaped.
 *
 * @param table - a list of rows, such as `titration.equivalencePoints`, or a result in columns, such as a curve
 * @param columns - as for {@link tabulate}; left out, all numbers and texts of the rows, to the digits that are usual
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { htmlOf } from 'protolysis';
 *
 * const html = htmlOf([{ of: 'a < b', pH: 8.3 }], { of: 'text', pH: 1 }, { caption: 'Points' });
 * html.includes('<td>a &lt; b</td>'); // => true
 * ```
 */
export function htmlOf<const Table extends object>(
  table: Table,
  columns?: ColumnFormats<RowIn<Table>>,
  options?: HtmlOptions,
): string {
  const faults = new Faults('htmlOf');
  const read = readLongTable(table, columns, faults);
  const caption = readCaption(options, faults);
  faults.done();
  const [headings, ...rows] = acrossOf(read.map(printColumn));
  return [
    '<table>',
    ...(caption === null ? [] : [`<caption>${asMarkup(caption)}</caption>`]),
    `<thead>${line(headings ?? [])}</thead>`,
    '<tbody>',
    ...rows.map(line),
    '</tbody>',
    '</table>',
  ].join('\n');
}

function readCaption(options: unknown, faults: Faults): string | null {
  if (options === undefined) return null;
  const { caption } = faults.object(options, 'options', 'options { caption }', ['caption']);
  return caption === undefined ? null : faults.text(caption, 'options.caption', 'a caption');
}

const line = (cells: readonly string[]): string => `<tr>${cells.join('')}</tr>`;

/** In the cell itself, so that no page needs a style sheet: numbers to the right, in digits of one width. */
const toTheRight = ' style="text-align:right;font-variant-numeric:tabular-nums"';
const toTheLeft = ' style="text-align:left"';

function printColumn({ path, heading, format, cells }: TableColumn): string[] {
  const isText = format === 'text';
  return [
    `<th scope="col"${isText ? toTheLeft : toTheRight}>${asMarkup(heading ?? headingOf(path))}</th>`,
    ...cells.map(
      (cell) => `<td${isText ? '' : toTheRight}>${asMarkup(printCell(cell, format) ?? dash)}</td>`,
    ),
  ];
}
