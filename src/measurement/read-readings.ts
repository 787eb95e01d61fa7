import type { Decimal } from 'decimal.js';
import { frozenWithView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import { type ColumnKind, kindsOf, usualOrder } from './column-kinds.js';
import {
  buretteFinding,
  commasAreUnclear,
  commaWords,
  findingsOnColumns,
  notesOnColumns,
} from './doubtful-columns.js';
import { belowHeading, headingIn } from './heading-in.js';
import { lineAsRow } from './line-as-row.js';
import type { Line } from './lines-of.js';
import { plausiblePH } from './plausible-ph.js';
import { linesFrom, linesIn, type ReadingColumns } from './reading-input.js';
import { type ReadingOptions, type ReadingOptionsRead, readReadingOptions } from './reading-options.js';
import { finding, type LineRead, type ReadingFinding, type ReadingReport } from './reading-report.js';
import { addedUp, repairRows } from './repair-rows.js';
import { areIncrements, areSwapped, orderFindings, type Row } from './suspicions.js';
import { viewReport } from './view-report.js';

/**
 * Readings of a titration from what was typed, exported as CSV or pasted out of a spreadsheet, as running totals.
 *
 * Differences of burette readings are exact in decimals: 12.35 − 0.05 is 12.30. Cells stand apart by tabs, semicolons,
 * commas or blanks; decimal commas are read where commas do not part the columns. What looks wrong is said in
 * `findings`, with its lines, and every line is in `lines`: nothing is mended in silence. With `repair: true` swapped
 * columns are exchanged, increments added up and copies of a line dropped, and `changes` says so; a falling burette is
 * never mended. Lines above a heading that names both columns are titles.
 *
 * @param input - text, or columns
 * @throws InputError that lists every fault of the arguments; a faulty text is an answer, not a fault
 * @example
 * ```ts
 * import { readReadings } from 'protolysis/measurement';
 *
 * const { readings, findings } = readReadings('burette / mL;pH\n0,05;2,88\n12,35;4,74\n12,3S;4,75\n24,95;7,96', {
 *   volumes: 'burette',
 *   initial: '0,05',
 * });
 * readings.mL; // => [0, 12.3, 24.9]
 * findings[0]?.words; // => "Line 4 is no reading: '12,3S' is not a number."
 * ```
 */
export function readReadings(input: string | ReadingColumns, options: ReadingOptions = {}): ReadingReport {
  const faults = new Faults('readReadings');
  const how = readReadingOptions(options, faults);
  const lines = typeof input === 'string' ? linesIn(input, faults) : linesFrom(input, faults);
  faults.done();
  return frozenWithView(reportOn(lines, typeof input === 'string', how), viewReport);
}

/** Goes through the lines, then through what they say together. */
function reportOn(lines: readonly Line[], isText: boolean, how: ReadingOptionsRead): ReadingReport {
  const heading = isText ? headingIn(lines) : undefined;
  const named = heading && !how.columns ? kindsOf(heading.cells) : undefined;
  const known = named?.includes('mL') === true && named.includes('pH');
  const kinds = how.columns ?? (known ? (named as readonly ColumnKind[]) : usualOrder);
  const unclear = isText && commasAreUnclear(belowHeading(lines, heading), kinds);
  const read = lines.map((line) => lineAsRow(line, heading, kinds, unclear));
  const rows = read.flatMap(({ row }) => row ?? []);
  const { kept, changes } = how.repair ? repairRows(rows, how) : { kept: rows, changes: [] };
  const totals = totalsOf(kept, how);
  const out = new Map(totals.filter(({ fault }) => fault !== '').map(({ row, fault }) => [row.line, fault]));
  const good = totals.filter(({ fault }) => fault === '').map(({ row }) => row);
  const keptLines = new Set(kept.map(({ line }) => line));
  const lineReads = read.map(({ line, as, reason, row }): LineRead => {
    const fault = out.get(line);
    if (row && !keptLines.has(line)) return { line, as: 'dropped', reason: 'a copy of the line before' };
    return fault === undefined ? { line, as, reason } : { line, as: 'faulty', reason: fault };
  });
  const findings: ReadingFinding[] = [
    ...faultyFinding(lineReads),
    ...(unclear ? [finding('unclear-commas', [], commaWords)] : []),
    ...findingsOnColumns(lines, read, heading, kinds, !how.columns, known),
    ...buretteFinding(heading, kinds, good[0], how),
    ...orderOf(kept, good, how),
    ...(good.length < 3 ? [finding('too-few', [], fewWords(good.length, lines.length))] : []),
  ];
  return {
    status: good.length === 0 ? 'nothing' : findings.length > 0 ? 'doubtful' : 'clean',
    readings: columnsOf(good, how, how.columns ? [] : notesOnColumns(read, heading, kinds)),
    lines: lineReads,
    findings,
    changes,
  };
}

const fewWords = (readings: number, lines: number): string =>
  readings === 0
    ? 'No line is a reading.'
    : `Only ${readings} of ${lines} lines ${readings === 1 ? 'is a reading' : 'are readings'}.`;

/** Running totals, each with the reason why it can be none. */
function totalsOf(
  rows: readonly Row[],
  { volumes, initial }: ReadingOptionsRead,
): readonly { row: Row; fault: string }[] {
  const totals =
    volumes === 'increments' ? addedUp(rows) : rows.map((row) => ({ ...row, mL: row.mL.minus(initial) }));
  return totals.map((row, k) => {
    const given = rows[k] as Row;
    if (given.mL.isNegative() && !given.mL.isZero()) return { row, fault: `its volume is ${given.mL} mL` };
    if (row.mL.lt(0)) return { row, fault: `its burette reading is below the first, ${initial} mL` };
    if (row.mL.gt(1e6)) return { row, fault: `its volume is ${given.mL} mL, more than 1e6` };
    if (row.pH.lt(plausiblePH.from) || row.pH.gt(plausiblePH.to))
      return { row, fault: `its pH is ${row.pH}, outside ${plausiblePH.from} to ${plausiblePH.to}` };
    return { row, fault: '' };
  });
}

/** What is wrong with the rows as a whole: swapped columns first, since these make nonsense of the rest. */
function orderOf(
  kept: readonly Row[],
  good: readonly Row[],
  { volumes }: ReadingOptionsRead,
): readonly ReadingFinding[] {
  if (areSwapped(kept))
    return [
      finding(
        'swapped-columns',
        [],
        'The column of pH looks like volumes and that of volumes like pH: exchange them, or ask for repair.',
      ),
    ];
  if (volumes === 'totals' && areIncrements(good))
    return [
      finding(
        'increments',
        [],
        "The volumes do not rise: if they are what was added each time, say volumes: 'increments' or ask for repair.",
      ),
    ];
  return orderFindings(good);
}

function faultyFinding(lines: readonly LineRead[]): readonly ReadingFinding[] {
  const faulty = lines.filter(({ as }) => as === 'faulty');
  if (faulty.length === 0) return [];
  const most = 10;
  const named = faulty.slice(0, most).map(({ line, reason }) => `Line ${line} is no reading: ${reason}.`);
  const rest = faulty.length > most ? ` ${faulty.length - most} more are in lines.` : '';
  return [
    finding(
      'faulty-lines',
      faulty.map(({ line }) => line),
      named.join(' ') + rest,
    ),
  ];
}

function columnsOf(
  rows: readonly Row[],
  { volumes, initial }: ReadingOptionsRead,
  notRead: readonly string[],
): ReadingReport['readings'] {
  const numbers = (key: 'mL' | 'pH' | 'seconds') => rows.map((row) => (row[key] as Decimal).toNumber());
  const timed = rows.length > 0 && rows.every(({ seconds }) => seconds !== undefined);
  const from = volumes === 'burette' ? [`Totals are burette readings less the first, ${initial} mL.`] : [];
  return {
    mL: numbers('mL'),
    pH: numbers('pH'),
    ...(timed ? { seconds: numbers('seconds') } : {}),
    notes: [...(volumes === 'increments' ? ['Totals are sums of what was added.'] : from), ...notRead],
  };
}
