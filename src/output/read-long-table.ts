import { plainly } from '../input/describe-value.js';
import type { Faults } from '../input/faults.js';
import { readTable, type TableColumn } from './read-table.js';
import type { Cell } from './rows.js';

/** Reads a table whose cells are written with marks around them: one that no text can hold is a fault. @internal */
export function readLongTable(table: unknown, columns: unknown, faults: Faults): readonly TableColumn[] {
  const read = readTable(table, columns, faults);
  const characters = read.flatMap(({ path, cells }) => cells.map((cell) => mostWritten(cell) + path.length));
  readSize(
    characters.reduce((all, count) => all + count, 0),
    faults,
  );
  return read;
}

/** The most characters that a cell comes to: marks about it, and `&quot;` for one of its own. */
const mostWritten = (cell: Cell): number => 150 + (typeof cell === 'string' ? 6 * cell.length : 0);

/** Characters of one table: engines hold texts of 2^29 − 24 characters and more (V8 on 64 bits has the least). */
const mostCharacters = 5e8;

/** Notes a fault where a table would be longer than a text can be. @internal */
export function readSize(characters: number, faults: Faults): void {
  if (!faults.any && characters > mostCharacters)
    faults.add(
      'out-of-range',
      'table',
      `a table of at most ${plainly(mostCharacters)} characters`,
      undefined,
      `a table of ${plainly(characters)} characters`,
    );
}
