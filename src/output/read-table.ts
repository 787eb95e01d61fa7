import { shorten } from '../input/describe-value.js';
import type { Faults } from '../input/faults.js';
import { isOneLine } from '../input/one-line.js';
import { isList } from '../input/safe-read.js';
import type { ColumnFormat } from './column-formats.js';
import { usualDecimals } from './column-heading.js';
import { mostColumns, pathsIn, valueAt } from './row-paths.js';
import { type Cell, readRows, resultInColumns, rowListsOf } from './rows.js';

/** A column that has been read: cells as they were given, and how they are printed. */
export interface TableColumn {
  readonly path: string;
  /** As given; null where there is none. */
  readonly heading: string | null;
  /** Decimals, text, or four significant digits. */
  readonly format: ColumnFormat | 'significant';
  readonly cells: readonly Cell[];
}

/**
 * Reads a table and the columns wanted of it from a caller's values, noting every fault. Without columns, all that can
 * be printed.
 *
 * @internal
 */
export function readTable(table: unknown, columns: unknown, faults: Faults): readonly TableColumn[] {
  const rows = readTableRows(table, faults);
  if (columns === undefined) return usualColumns(rows, faults);
  const wanted = faults.object(columns, 'columns', 'the columns to print, such as { mL: 2, pH: 2 }');
  return Object.entries(wanted).map(([path, format]) => {
    const read = { path, ...readFormat(format, `columns.${path}`, faults) };
    return { ...read, cells: readCells(read, rows, faults) };
  });
}

/** Reads rows from a list of them or from a result in columns, noting every fault. */
function readTableRows(table: unknown, faults: Faults): readonly object[] {
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

/** A column for each path under which any row has a number or a text, in order of appearance. */
function usualColumns(rows: readonly object[], faults: Faults): readonly TableColumn[] {
  const paths = new Set<string>();
  for (const row of rows) {
    for (const path of pathsIn(row)) paths.add(path);
    if (paths.size > mostColumns) break;
  }
  if (paths.size > mostColumns) {
    const wanted = `rows of at most ${mostColumns} columns, or the columns to print`;
    faults.add('out-of-range', 'table', wanted, undefined, 'a table of more');
    return [];
  }
  return [...paths].map((path) => {
    const format = usualFormat(
      path,
      rows.map((row) => valueAt(row, path)),
    );
    return { path, heading: null, format, cells: readCells({ path, format }, rows, faults) };
  });
}

function usualFormat(path: string, values: readonly unknown[]): TableColumn['format'] {
  const present = values.filter((value) => !isNothing(value));
  if (typeof present[0] === 'string') return 'text';
  const decimals = usualDecimals(path);
  if (decimals !== undefined) return decimals;
  return present.every(Number.isSafeInteger) ? 0 : 'significant';
}

function readFormat(
  value: unknown,
  path: string,
  faults: Faults,
): { readonly format: ColumnFormat; readonly heading: string | null } {
  if (typeof value !== 'object' || value === null)
    return { format: readDecimals(value, path, faults), heading: null };
  const unread = faults.object(value, path, 'a column { as, heading }', ['as', 'heading']);
  const heading = faults.text(unread.heading, `${path}.heading`, 'a heading');
  return { format: readDecimals(unread.as, `${path}.as`, faults), heading };
}

function readDecimals(value: unknown, path: string, faults: Faults): ColumnFormat {
  if (value === 'text') return value;
  return faults.number(value, path, "a number of decimals or 'text'", { from: 0, to: 15, integer: true });
}

/** The cells of a column. A bad column is one fault. */
function readCells(
  { path, format }: Pick<TableColumn, 'path' | 'format'>,
  rows: readonly object[],
  faults: Faults,
): readonly Cell[] {
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
    return [];
  }
  return values.map((value) => (value ?? null) as Cell);
}

const isNothing = (value: unknown): value is null | undefined => value === null || value === undefined;

const fits = (value: unknown, format: TableColumn['format']): boolean =>
  isNothing(value) ||
  (format === 'text' ? typeof value === 'string' && isOneLine(value) : Number.isFinite(value));

/** What keys the first rows have. */
function knownKeys(rows: readonly object[]): string {
  const keys = new Set(rows.slice(0, 100).flatMap((row) => Object.keys(row)));
  return keys.size === 0
    ? 'rows that hold something'
    : `a key of the rows: ${[...keys].slice(0, 20).join(', ')}`;
}
