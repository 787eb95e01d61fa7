import { toDecimal } from './exact-decimal.js';
import type { ReadingOptionsRead } from './reading-options.js';
import { areIncrements, areSwapped, lineWords, type Row, repeatedRows } from './suspicions.js';

/** Mends what can be mended, and says what that was. @internal */
export function repairRows(
  rows: readonly Row[],
  how: ReadingOptionsRead,
): { kept: readonly Row[]; changes: readonly string[] } {
  const changes: string[] = [];
  let kept = rows;
  if (areSwapped(kept)) {
    kept = kept.map((row) => ({ ...row, mL: row.pH, pH: row.mL }));
    changes.push('The columns of volume and pH were exchanged.');
  }
  if (how.volumes === 'totals' && areIncrements(kept)) {
    kept = addedUp(kept);
    changes.push('The volumes were added up: each line gave what was added since the line before.');
  }
  const copies = how.volumes === 'increments' ? [] : repeatedRows(kept);
  if (copies.length > 0) {
    const dropped = new Set(copies);
    kept = kept.filter((row) => !dropped.has(row));
    changes.push(`Dropped as copies of the line before: ${lineWords(copies.map(({ line }) => line))}.`);
  }
  return { kept, changes };
}

/** Volumes as running totals of what was added. @internal */
export function addedUp(rows: readonly Row[]): readonly Row[] {
  let total = toDecimal(0);
  return rows.map((row) => {
    total = total.plus(row.mL);
    return { ...row, mL: total };
  });
}
