import type { Decimal } from 'decimal.js';
import { numberAt } from '../solver/number-at.js';
import { isOfIncrements } from './increments.js';
import { plausiblePH } from './plausible-ph.js';
import type { ReadingFinding } from './reading-report.js';

/** A line that holds numbers, as typed. @internal */
export interface Row {
  readonly line: number;
  readonly mL: Decimal;
  readonly pH: Decimal;
  readonly seconds?: Decimal;
}

/** Two steps are of one length within this share: 1.00 and 1.05 mL are, 1.0 and 1.1 mL are not. Common practice. */
const sameStep = 0.05;

const isPH = (value: Decimal) => value.gte(plausiblePH.from) && value.lte(plausiblePH.to);

/** How many of the steps from one to the next are longer than zero. */
const risingSteps = (column: readonly Decimal[]) =>
  column.filter((value, k) => k > 0 && value.gt(column[k - 1] as Decimal)).length;

/** Whether each step rises. */
const rises = (column: readonly Decimal[]) => risingSteps(column) === column.length - 1;

/**
 * Whether volume and pH changed places: a column of volumes rises at every step and leaves the scale of pH, or starts
 * at zero; one of pH does neither. @internal
 */
export function areSwapped(rows: readonly Row[]): boolean {
  if (rows.length < 3) return false;
  const [first, second] = [rows.map(({ mL }) => mL), rows.map(({ pH }) => pH)];
  const volumeLike = rises(second) && (second[0]?.isZero() || !second.every(isPH));
  return volumeLike && first.every(isPH) && !(rises(first) && first[0]?.isZero());
}

/** Whether what was added each time stands where totals should. Lines that are all alike are copies of one. @internal */
export const areIncrements = (rows: readonly Row[]): boolean =>
  isOfIncrements(rows.map(({ mL }) => mL.toNumber())) && repeatedRows(rows).length < rows.length - 1;

/** Rows equal to the one before in volume and pH. @internal */
export const repeatedRows = (rows: readonly Row[]): readonly Row[] =>
  rows.filter(({ mL, pH }, k) => k > 0 && mL.eq((rows[k - 1] as Row).mL) && pH.eq((rows[k - 1] as Row).pH));

/** What looks wrong in the order of running totals or burette readings. @internal */
export function orderFindings(rows: readonly Row[]): readonly ReadingFinding[] {
  const same = repeatedRows(rows);
  const copies = new Set(same);
  const before = (k: number) => rows[k - 1] as Row;
  const falling = rows.filter(
    ({ mL, seconds }, k) => k > 0 && (mL.lt(before(k).mL) || seconds?.lt(before(k).seconds ?? seconds)),
  );
  const anew = rows.filter((row, k) => k > 0 && row.mL.eq(before(k).mL) && !copies.has(row));
  const found: [ReadingFinding['code'], readonly Row[], string][] = [
    [
      'falling',
      falling,
      'a value lower than the line before: a slip, a refilled burette, or lines out of order',
    ],
    ['repeated-lines', same, 'the same volume and pH as the line before: one of the two is a copy'],
    [
      'repeated-volumes',
      anew,
      'the volume of the line before with another pH: keep the one that had settled',
    ],
    ['missing-lines', afterGap(rows), 'a step as long as several of its neighbours: a line may be missing'],
  ];
  return found
    .filter(([, where]) => where.length > 0)
    .map(([code, where, words]) => {
      const lines = where.map(({ line }) => line);
      return { code, lines, words: `In ${lineWords(lines)}: ${words}.` };
    });
}

/** Rows after a step that is a whole multiple of both its neighbours, where these are of one length. */
function afterGap(rows: readonly Row[]): readonly Row[] {
  const steps = rows.map(({ mL }, k) => (k === 0 ? 0 : mL.minus((rows[k - 1] as Row).mL).toNumber()));
  return rows.filter((_, k) => {
    const [left, step, right] = [steps[k - 1] ?? 0, numberAt(steps, k), steps[k + 1] ?? 0];
    if (k < 2 || !(left > 0 && right > 0) || Math.abs(left - right) > sameStep * left) return false;
    const times = (2 * step) / (left + right);
    return times > 1.5 && Math.abs(times - Math.round(times)) <= sameStep;
  });
}

/** `line 3`, `lines 3, 4 and 9`, and of many the first ten. @internal */
export function lineWords(lines: readonly number[]): string {
  if (lines.length === 1) return `line ${lines[0]}`;
  if (lines.length > 10) return `lines ${lines.slice(0, 10).join(', ')} and ${lines.length - 10} more`;
  return `lines ${lines.slice(0, -1).join(', ')} and ${lines.at(-1)}`;
}
