import { frozen } from '../frozen.js';
import { kindKeyOf } from '../input/describe-value.js';
import { at, Faults } from '../input/faults.js';
import { fieldsOf, isList, itemsOf, lengthOf } from '../input/safe-read.js';

/** What a column holds in one row. */
export type Cell = number | string | null;

/** Lists of a result that are no columns: they have a length of their own. */
const listsBeside = ['notes', 'warnings', 'peaks', 'contents', 'constants', 'leftOut'] as const;

type Beside = (typeof listsBeside)[number];
const isBeside = (key: string): boolean => listsBeside.includes(key as Beside);

/** A row of a result in columns; where the result holds a list of columns, a list. */
export type RowOf<Table> = {
  readonly [Key in keyof Table as Key extends Beside
    ? never
    : NonNullable<Table[Key]> extends string
      ? never
      : NonNullable<Table[Key]> extends ArrayLike<Cell | ArrayLike<Cell>>
        ? Key
        : never]: NonNullable<Table[Key]> extends ArrayLike<infer Item>
    ? Item extends Cell
      ? Item
      : Item extends ArrayLike<infer Inner>
        ? readonly Inner[]
        : never
    : never;
};

/** At most as many rows in one table. */
const mostRows = 1e7;

/**
 * Row by row what a result holds column by column: a curve, the response of a buffer, a capacity over pH, readings.
 *
 * Single values and notes are left out. A list of columns, such as `beside` of a buffer's response, gives a list in
 * each row.
 *
 * @param table - a result whose columns are lists or typed arrays of one length
 * @throws InputError that lists every fault: columns of different lengths, values that are neither finite numbers nor
 * texts nor null
 * @example
 * ```ts
 * import { rows } from 'protolysis';
 *
 * rows({ mL: [0, 0.5], pH: [11.25, 10.5], notes: [] }); // => [{ mL: 0, pH: 11.25 }, { mL: 0.5, pH: 10.5 }]
 * ```
 */
export function rows<Table extends object>(table: Table): readonly RowOf<Table>[] {
  const faults = new Faults('rows');
  const read = readRows(table, '', faults);
  faults.done();
  return frozen(read as readonly RowOf<Table>[]);
}

/** What `rows` takes, in the words of a message. @internal */
export const resultInColumns = 'a result in columns, such as a curve { mL, pH, slope }';

/**
 * The keys under which a result holds lists of rows, such as the `species` of an equilibrium; none where it holds a
 * column too.
 *
 * @internal
 */
export function rowListsOf(value: unknown): readonly string[] {
  const lists = Object.entries(fieldsOf(value) ?? {}).flatMap(([key, list]) => {
    const [first] = itemsOf(list as readonly unknown[], Math.min(1, lengthOf(list) ?? 0)) ?? [];
    return isBeside(key) || first === undefined ? [] : [{ key, isOfRows: fieldsOf(first) !== undefined }];
  });
  return lists.every(({ isOfRows }) => isOfRows) ? lists.map(({ key }) => key) : [];
}

/** Reads the rows of a result in columns from a caller's value, noting every fault. @internal */
export function readRows(value: unknown, path: string, faults: Faults): Readonly<Record<string, unknown>>[] {
  const unread = faults.object(value, path, resultInColumns);
  if (kindKeyOf(unread) || rowListsOf(unread).length > 0) {
    faults.add('wrong-type', path, resultInColumns, value);
    return [];
  }
  const columns = Object.entries(unread)
    .filter(([key, column]) => isColumn(column) && !isBeside(key))
    .map(([key, column]) => readColumn(column, at(path, key), key, faults));
  const [first] = columns;
  if (first === undefined && !faults.any)
    faults.add('missing', path, 'a result with at least one column', value, 'without a column');
  for (const { key, length } of columns)
    if (length !== first?.length)
      faults.add(
        'conflict',
        at(path, key),
        `a column of ${first?.length} values, as long as ${first?.key}`,
        undefined,
        `a column of ${length}`,
      );
  if (faults.any) return [];
  return Array.from({ length: first?.length ?? 0 }, (_, k) =>
    Object.fromEntries(columns.map((column) => [column.key, column.valueAt(k)])),
  );
}

interface ReadColumn {
  readonly key: string;
  readonly length: number;
  valueAt(row: number): Cell | readonly Cell[];
}

const isColumn = (value: unknown): boolean => isList(value) || ArrayBuffer.isView(value);

function readColumn(value: unknown, path: string, key: string, faults: Faults): ReadColumn {
  const items = listOf(value, path, faults);
  if (!items.some(isColumn)) {
    const cells = readCells(items, path, faults);
    return { key, length: cells.length, valueAt: (row) => cells[row] ?? null };
  }
  const inner = items.map((item, k) =>
    readCells(listOf(item, `${path}[${k}]`, faults), `${path}[${k}]`, faults),
  );
  const lengths = [...new Set(inner.map(({ length }) => length))];
  if (lengths.length > 1)
    faults.add('conflict', path, 'columns of one length', value, `columns of lengths ${lengths.join(', ')}`);
  return { key, length: lengths[0] ?? 0, valueAt: (row) => inner.map((cells) => cells[row] ?? null) };
}

const listOf = (value: unknown, path: string, faults: Faults): readonly unknown[] =>
  ArrayBuffer.isView(value) && !(value instanceof DataView)
    ? Array.from(value as unknown as ArrayLike<unknown>)
    : faults.list(value, path, 'a column: numbers, texts or nulls', 0, mostRows);

function readCells(items: readonly unknown[], path: string, faults: Faults): readonly Cell[] {
  return items.map((item, k): Cell => {
    if (item === null || typeof item === 'string') return item;
    return faults.number(item, `${path}[${k}]`, 'a number, a text or null');
  });
}
