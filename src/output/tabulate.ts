import { plainly, shorten } from '../input/describe-value.js';
import { Faults } from '../input/faults.js';
import { isOneLine } from '../input/one-line.js';
import { isList } from '../input/safe-read.js';
import { fixed } from '../print-number.js';
import { type Cell, type RowOf, readRows, resultInColumns, rowListsOf } from './rows.js';

/** How a column is printed: a number to so many decimals, or text as it is. */
export type ColumnFormat = number | 'text';

/** A row of a table, whether it is given as rows or as columns. */
export type RowIn<Table> = Table extends readonly (infer Row)[] ? Row : RowOf<Table>;

/** The cells of a row, each as its path and what it holds; those inside an object or a list up to three keys deep. */
type CellOf<Row, Depth extends readonly unknown[] = []> = {
  [Key in keyof Row & (string | number)]: CellIn<NonNullable<Row[Key]>, `${Key}`, [...Depth, 0]>;
}[keyof Row & (string | number)];

type CellIn<Value, Path extends string, Depth extends readonly unknown[]> = [Value] extends [Cell]
  ? readonly [Path, Value]
  : Depth['length'] extends 3
    ? never
    : Value extends readonly (infer Item)[]
      ? CellIn<NonNullable<Item>, `${Path}.${number}`, [...Depth, 0]>
      : Value extends (...given: never[]) => unknown
        ? never
        : Value extends object
          ? Under<Path, CellOf<Value, Depth>>
          : never;

type Under<Path extends string, Inner> = Inner extends readonly [infer Rest extends string, infer Value]
  ? readonly [`${Path}.${Rest}`, Value]
  : never;

/**
 * The keys of a row whose values can be printed; those inside of an object or a list by their path of up to three keys,
 * such as `useful.from`.
 */
export type ColumnPath<Row> = CellOf<Row>[0];

/** How a value is printed: a number to so many decimals, a text as it is; where a column holds nothing, either. */
type FormatOf<Value> = [Value] extends [never] ? ColumnFormat : Value extends number ? number : 'text';

/**
 * The columns to print, in order: each number with its decimals, 0 to 15, each text as `'text'`. Of rows of which the
 * compiler knows nothing, any.
 */
export type ColumnFormats<Row> = unknown extends Row
  ? Readonly<Record<string, ColumnFormat>>
  : [ColumnPath<Row>] extends [never]
    ? Readonly<Record<string, never>>
    : { readonly [Found in CellOf<Row> as Found[0]]?: FormatOf<Found[1]> };

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
  const rows = readTable(table, faults);
  const formats = Object.entries(
    faults.object(columns, 'columns', 'the columns to print, such as { mL: 2, pH: 2 }'),
  ).map(([path, format]) => ({ path, format: readFormat(format, `columns.${path}`, faults) }));
  const printed = formats.map((column) => printColumn(column, rows, faults));
  readSize(printed, faults);
  faults.done();
  return Array.from({ length: rows.length + 1 }, (_, line) =>
    printed
      .map((column) => cellAt(column, line))
      .join('  ')
      .trimEnd(),
  ).join('\n');
}

/** Reads rows from a list of them or from a result in columns, noting every fault. */
function readTable(table: unknown, faults: Faults): readonly object[] {
  if (isList(table))
    return faults
      .list(table, 'table', 'a list of rows')
      .map((row, k) => faults.object(row, `table[${k}]`, 'a row'));
  const lists = rowListsOf(table);
  if (lists.length === 0) return readRows(table, 'table', faults);
  const wanted = `a list of rows, such as its ${lists.slice(0, 3).join(', ')}, or ${resultInColumns}`;
  faults.add('wrong-type', 'table', wanted, table);
  return [];
}

/** What is read of a column that a caller asks for. */
interface Column {
  readonly path: string;
  readonly format: ColumnFormat;
}

/** A column in print: its heading and its cells. */
interface Printed {
  readonly texts: readonly string[];
  readonly width: number;
  readonly isText: boolean;
}

/** Characters of one table: engines hold texts of 2^29 − 24 characters and more (V8 on 64 bits has the least). */
const mostCharacters = 5e8;

function readFormat(format: unknown, path: string, faults: Faults): ColumnFormat {
  if (format === 'text') return format;
  return faults.number(format, path, "a number of decimals or 'text'", { from: 0, to: 15, integer: true });
}

/** The heading and the cells of a column. A bad column is one fault. */
function printColumn({ path, format }: Column, rows: readonly object[], faults: Faults): Printed {
  const values = rows.map((row) => valueAt(row, path));
  if (!isOneLine(path))
    faults.add('wrong-type', 'columns', 'keys in one line, without control characters', path);
  if (rows.length > 0 && values.every((value) => value === undefined))
    faults.add('unknown-key', `columns.${shorten(path)}`, knownKeys(rows), undefined, 'in no row');
  const bad = values.findIndex((value) => !fits(value, format));
  if (bad >= 0) {
    const wanted = format === 'text' ? 'a text in one line, without control characters' : 'a finite number';
    const code = typeof values[bad] === 'number' && format !== 'text' ? 'not-finite' : 'wrong-type';
    faults.add(code, `table[${bad}].${shorten(path)}`, wanted, values[bad]);
    return { texts: [], width: 0, isText: false };
  }
  const texts = [path, ...values.map((value) => print(value, format))];
  const width = texts.reduce((most, { length }) => Math.max(most, length), 0);
  return { texts, width, isText: format === 'text' };
}

/** Notes a fault where the table would be longer than a text can be. */
function readSize(columns: readonly Printed[], faults: Faults): void {
  const lines = columns[0]?.texts.length ?? 0;
  const characters = lines * columns.reduce((all, { width }) => all + width + 2, 0);
  if (!faults.any && characters > mostCharacters)
    faults.add(
      'out-of-range',
      'table',
      `a table of at most ${plainly(mostCharacters)} characters`,
      undefined,
      `a table of ${plainly(characters)} characters, each column as wide as its longest cell`,
    );
}

const cellAt = ({ texts, width, isText }: Printed, line: number): string =>
  isText ? (texts[line] ?? '').padEnd(width) : (texts[line] ?? '').padStart(width);

/**
 * The value at a path of a row, or under a key with dots in it; null where a key of the path holds nothing, undefined
 * where there is no such key.
 */
function valueAt(row: object, path: string): unknown {
  let value: unknown = row;
  try {
    if (Object.hasOwn(row, path)) return (row as Readonly<Record<string, unknown>>)[path] ?? null;
    for (const key of path.split('.')) {
      if (value === null) return null;
      if (typeof value !== 'object' || !Object.hasOwn(value, key)) return undefined;
      value = (value as Readonly<Record<string, unknown>>)[key] ?? null;
    }
    return value;
  } catch {
    return undefined; // a getter or a proxy
  }
}

const isNothing = (value: unknown): value is null | undefined => value === null || value === undefined;

const fits = (value: unknown, format: ColumnFormat): boolean =>
  isNothing(value) ||
  (format === 'text' ? typeof value === 'string' && isOneLine(value) : Number.isFinite(value));

const print = (value: unknown, format: ColumnFormat): string =>
  isNothing(value) ? '–' : format === 'text' ? String(value) : fixed(Number(value), format);

/** What keys the first rows have. */
function knownKeys(rows: readonly object[]): string {
  const keys = new Set(rows.slice(0, 100).flatMap((row) => Object.keys(row)));
  return keys.size === 0
    ? 'rows that hold something'
    : `a key of the rows: ${[...keys].slice(0, 20).join(', ')}`;
}
