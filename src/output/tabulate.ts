import { Faults } from '../input/faults.js';
import { isList } from '../input/safe-read.js';
import { type Cell, type RowOf, readRows } from './rows.js';

/** How a column is printed: a number to so many decimals, or text as it is. */
export type ColumnFormat = number | 'text';

/** A row of a table, whether it is given as rows or as columns. */
export type RowIn<Table> = Table extends readonly (infer Row)[] ? Row : RowOf<Table>;

/**
 * The keys of a row whose values can be printed; those inside of an object or a list by their path, such as
 * `useful.from`.
 */
export type ColumnPath<Row, Depth extends readonly unknown[] = []> = Depth['length'] extends 3
  ? never
  : {
      [Key in keyof Row & (string | number)]: NonNullable<Row[Key]> extends Cell
        ? `${Key}`
        : NonNullable<Row[Key]> extends readonly (infer Item)[]
          ? Item extends Cell
            ? `${Key}.${number}`
            : `${Key}.${number}.${ColumnPath<Item, [...Depth, 0]>}`
          : NonNullable<Row[Key]> extends (...given: never[]) => unknown
            ? never
            : NonNullable<Row[Key]> extends object
              ? `${Key}.${ColumnPath<NonNullable<Row[Key]>, [...Depth, 0]>}`
              : never;
    }[keyof Row & (string | number)];

/** The columns to print, in order: each with its number of decimals, 0 to 15, or `'text'`. */
export type ColumnFormats<Row> = { readonly [Path in ColumnPath<Row>]?: ColumnFormat };

/**
 * A plain table of text, one line each row under a line of headings: numbers to the right, text to the left, and a dash
 * where there is no value.
 *
 * @param table - a list of rows, such as `titration.equivalencePoints`, or a result in columns, such as a curve
 * @param columns - the keys to print, in order; each with its number of decimals, 0 to 15, or `'text'`
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
  columns: ColumnFormats<RowIn<Table>>,
): string {
  const faults = new Faults('tabulate');
  const rows = isList(table)
    ? faults
        .list(table, 'table', 'a list of rows')
        .map((row, k) => faults.object(row, `table[${k}]`, 'a row'))
    : readRows(table, 'table', faults);
  const formats = Object.entries(
    faults.object(columns, 'columns', 'the columns to print, such as { mL: 2, pH: 2 }'),
  ).map(([path, format]) => ({ path, format: readFormat(format, `columns.${path}`, faults) }));
  const printed = formats.map((column) => printColumn(column, rows, faults));
  faults.done();
  return Array.from({ length: rows.length + 1 }, (_, line) =>
    printed
      .map((texts) => texts[line])
      .join('  ')
      .trimEnd(),
  ).join('\n');
}

interface Column {
  readonly path: string;
  readonly format: ColumnFormat;
}

function readFormat(format: unknown, path: string, faults: Faults): ColumnFormat {
  if (format === 'text') return format;
  return faults.number(format, path, "a number of decimals or 'text'", { from: 0, to: 15, integer: true });
}

/** The heading and the cells of a column, padded to one width. A bad column is one fault. */
function printColumn({ path, format }: Column, rows: readonly object[], faults: Faults): string[] {
  const values = rows.map((row) => valueAt(row, path));
  if (rows.length > 0 && values.every((value) => value === undefined))
    faults.add('unknown-key', `columns.${path}`, knownKeys(rows), undefined, 'in no row');
  const bad = values.findIndex((value) => !fits(value, format));
  if (bad >= 0) {
    const wanted = format === 'text' ? 'a text' : 'a finite number';
    const code = typeof values[bad] === 'number' && format !== 'text' ? 'not-finite' : 'wrong-type';
    faults.add(code, `table[${bad}].${path}`, wanted, values[bad]);
    return [];
  }
  const texts = [path, ...values.map((value) => print(value, format))];
  const width = texts.reduce((most, { length }) => Math.max(most, length), 0);
  return texts.map((text) => (format === 'text' ? text.padEnd(width) : text.padStart(width)));
}

/** The value at a path of a row, or under a key with dots in it; undefined where there is none. */
function valueAt(row: object, path: string): unknown {
  let value: unknown = row;
  try {
    if (Object.hasOwn(row, path)) return (row as Readonly<Record<string, unknown>>)[path];
    for (const key of path.split('.')) {
      if (value === null) return null;
      if (typeof value !== 'object' || !Object.hasOwn(value, key)) return undefined;
      value = (value as Readonly<Record<string, unknown>>)[key];
    }
    return value;
  } catch {
    return undefined; // a getter or a proxy
  }
}

const isNothing = (value: unknown): value is null | undefined => value === null || value === undefined;

const fits = (value: unknown, format: ColumnFormat): boolean =>
  isNothing(value) || (format === 'text' ? typeof value === 'string' : Number.isFinite(value));

const print = (value: unknown, format: ColumnFormat): string =>
  isNothing(value) ? '–' : format === 'text' ? String(value) : Number(value).toFixed(format as number);

const knownKeys = ([row]: readonly object[]): string =>
  `a key of the rows: ${Object.keys(row ?? {})
    .slice(0, 20)
    .join(', ')}`;
