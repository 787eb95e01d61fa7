import { Faults } from '../input/faults.js';
import { readFlag } from '../input/read-flag.js';
import type { ColumnFormats, RowIn } from './column-formats.js';
import { headingOf } from './column-heading.js';
import { acrossOf, printCell } from './print-cell.js';
import { readLongTable } from './read-long-table.js';
import type { TableColumn } from './read-table.js';

/** How a spreadsheet reads a CSV file. */
export interface CsvOptions {
  /**
   * For spreadsheets of a country that writes 8,25: a comma in numbers and a semicolon between cells. A point and a
   * comma if left out.
   */
  readonly decimalComma?: boolean;
}

/**
 * A table as CSV (RFC 4180): a line of headings with units, then a line for each row; nothing where there is no value.
 *
 * A spreadsheet opens the numbers as numbers. A text that it would take for a formula (OWASP, CSV injection: one that
 * starts with =, +, - or @ and is no number) gets an apostrophe in front. Headings other than ASCII, such as °C, need a
 * file in UTF-8.
 *
 * @param table - a list of rows, such as `titration.equivalencePoints`, or a result in columns, such as a curve
 * @param columns - as for {@link tabulate}; left out, all numbers and texts of the rows, to the digits that are usual
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { csvOf } from 'protolysis';
 *
 * const csv = csvOf({ mL: [0, 0.5], pH: [11.2512, 10.5], sample: ['A', '=B'] });
 * csv.split('\r\n')[0]; // => '"volume, mL",pH,sample'
 * csv.split('\r\n')[2]; // => "0.50,10.50,'=B"
 * ```
 */
export function csvOf<const Table extends object>(
  table: Table,
  columns?: ColumnFormats<RowIn<Table>>,
  options?: CsvOptions,
): string {
  const faults = new Faults('csvOf');
  const read = readLongTable(table, columns, faults);
  const comma = readDecimalComma(options, faults);
  faults.done();
  return acrossOf(read.map((column) => printColumn(column, comma)))
    .map((line) => `${line.join(comma ? ';' : ',')}\r\n`)
    .join('');
}

function readDecimalComma(options: unknown, faults: Faults): boolean {
  if (options === undefined) return false;
  const { decimalComma } = faults.object(options, 'options', 'options { decimalComma }', ['decimalComma']);
  return readFlag(decimalComma, 'options.decimalComma', faults);
}

const printColumn = ({ path, heading, format, cells }: TableColumn, comma: boolean): string[] => [
  quoted(harmless(heading ?? headingOf(path))),
  ...cells.map((cell) => {
    const text = printCell(cell, format) ?? '';
    if (format === 'text') return quoted(harmless(text));
    return comma ? text.replace('.', ',') : text;
  }),
];

/** A text that no spreadsheet takes for a formula. Those of East Asia read the wide signs likewise. */
const harmless = (text: string): string =>
  /^\s*[=+\-@＝＋－＠]/.test(text) && !isNumber(text) ? `'${text}` : text;

const isNumber = (text: string): boolean => /^[+-]?\d+([.,]\d+)?(e[+-]?\d+)?$/i.test(text);

const quoted = (text: string): string =>
  /[",;\r\n]|^\s|\s$/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
