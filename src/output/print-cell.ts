import { fixed } from '../print-number.js';
import type { TableColumn } from './read-table.js';
import type { Cell } from './rows.js';

/** A cell as it is printed; null where there is nothing. @internal */
export function printCell(cell: Cell, format: TableColumn['format']): string | null {
  if (cell === null) return null;
  if (format === 'text') return String(cell);
  return format === 'significant' ? Number(cell).toPrecision(4) : fixed(Number(cell), format);
}

/** What stands where there is nothing. @internal */
export const dash = '–';

/** The rows of columns of one length. @internal */
export const acrossOf = <Item>(columns: readonly (readonly Item[])[]): Item[][] =>
  Array.from({ length: columns[0]?.length ?? 0 }, (_, k) => columns.map((column) => column[k] as Item));
