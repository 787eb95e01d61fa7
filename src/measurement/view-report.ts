import { fourDigits } from '../print-number.js';
import type { ReadingReport } from './reading-report.js';

/** How many readings there are and how far they go, what looks wrong and what was changed, a line each. @internal */
export function viewReport({ status, readings, lines, findings, changes }: ReadingReport): string {
  return [
    `${readings.mL.length} readings in ${lines.length} lines${rangesOf(readings)}: ${status}`,
    ...findings.map(({ words }) => `  ${words}`),
    ...changes.map((change) => `  changed: ${change}`),
    ...readings.notes.map((note) => `  note: ${note}`),
  ].join('\n');
}

function rangesOf({ mL, pH }: ReadingReport['readings']): string {
  const range = (column: readonly number[]) =>
    [column.at(0), column.at(-1)].map((value) => fourDigits(value ?? 0)).join(' to ');
  return mL.length === 0 ? '' : `, ${range(mL)} mL, pH ${range(pH)}`;
}
