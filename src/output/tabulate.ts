import { Faults } from '../errors.js';

/** How a column is printed: a number to so many decimals, or text as it is. */
export type ColumnFormat = number | 'text';

/**
 * Rows as a plain table of text, one line each under a line of headings: numbers to the right, text to the left.
 *
 * @param rows - objects of one shape, such as `rows(curve)` or `titration.equivalencePoints`
 * @param columns - the keys to print, in order; each with its number of decimals, 0 to 15, or `'text'`
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { tabulate } from 'protolysis';
 *
 * const points = [{ mL: 9.5, pH: 6.25, of: 'first' }, { mL: 10, pH: 5.5, of: 'second' }];
 * console.log(tabulate(points, { mL: 2, pH: 1, of: 'text' }));
 * ```
 *
 * ```text
 *    mL   pH  of
 *  9.50  6.3  first
 * 10.00  5.5  second
 * ```
 */
export function tabulate(rows: readonly object[], columns: Readonly<Record<string, ColumnFormat>>): string {
  const faults = new Faults('tabulate');
  const list = faults
    .list(rows, 'rows', 'a list of rows')
    .map((row, k) => faults.object(row, `rows[${k}]`, 'a row'));
  const formats = Object.entries(
    faults.object(columns, 'columns', 'the columns to print, such as { mL: 2, pH: 2 }'),
  ).map(([key, format]) => [key, readFormat(format, `columns.${key}`, faults)] as const);
  const cells = formats.map(([key, format]) =>
    list.map((row, k) => cell(row[key], `rows[${k}].${key}`, format, faults)),
  );
  faults.done();
  const widths = formats.map(([key], c) =>
    Math.max(key.length, ...(cells[c] as string[]).map((text) => text.length)),
  );
  const line = (texts: readonly string[]) =>
    texts
      .map((text, c) =>
        formats[c]?.[1] === 'text' ? text.padEnd(widths[c] as number) : text.padStart(widths[c] as number),
      )
      .join('  ')
      .trimEnd();
  return [
    line(formats.map(([key]) => key)),
    ...list.map((_, k) => line(cells.map((column) => column[k] as string))),
  ].join('\n');
}

function readFormat(format: unknown, path: string, faults: Faults): ColumnFormat {
  if (format === 'text') return format;
  return faults.number(format, path, "a number of decimals or 'text'", { from: 0, to: 15, integer: true });
}

function cell(value: unknown, path: string, format: ColumnFormat, faults: Faults): string {
  if (format === 'text') return typeof value === 'string' ? value : faults.text(value, path, 'a text');
  return faults.number(value, path, 'a number').toFixed(format);
}
