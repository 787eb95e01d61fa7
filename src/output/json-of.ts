import { Faults } from '../input/faults.js';
import type { ColumnFormats, RowIn } from './column-formats.js';
import { acrossOf } from './print-cell.js';
import { readLongTable } from './read-long-table.js';
import type { TableColumn } from './read-table.js';
import type { Cell } from './rows.js';

/**
 * A table as JSON: a list with an object for each row, its keys the paths of the columns, which name the units; null
 * where there is no value. Headings are left out.
 *
 * @param table - a list of rows, such as `titration.equivalencePoints`, or a result in columns, such as a curve
 * @param columns - as for {@link tabulate}, and numbers are rounded to it; left out, all numbers and texts, in full
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { jsonOf } from 'protolysis';
 *
 * const json = jsonOf({ mL: [0, 0.5], pH: [11.2512, 10.5], notes: [] }, { pH: 2 });
 * json; // => '[{"pH":11.25},{"pH":10.5}]'
 * ```
 */
export function jsonOf<const Table extends object>(
  table: Table,
  columns?: ColumnFormats<RowIn<Table>>,
): string {
  const faults = new Faults('jsonOf');
  const read = readLongTable(table, columns, faults);
  faults.done();
  const rows = acrossOf(
    read.map(({ format, cells }) => (columns ? cells.map((cell) => rounded(cell, format)) : cells)),
  );
  return JSON.stringify(rows.map((row) => Object.fromEntries(row.map((cell, k) => [read[k]?.path, cell]))));
}

const rounded = (cell: Cell, format: TableColumn['format']): Cell =>
  typeof cell === 'number' && typeof format === 'number' ? Number(cell.toFixed(format)) : cell;
