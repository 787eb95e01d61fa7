import type { Decimal } from 'decimal.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { type ColumnKind, kindsOf, usualOrder } from './column-kinds.js';
import { exactDecimal, toDecimal } from './exact-decimal.js';
import { type Line, linesOf } from './lines-of.js';
import type { LineRead, ReadingFinding, ReadingReport } from './reading-report.js';
import {
  areIncrements,
  areSwapped,
  lineWords,
  orderFindings,
  plausiblePH,
  type Row,
  repeatedRows,
} from './suspicions.js';

/** How readings were written down. */
export interface ReadingOptions {
  /**
   * What stands in the column of volumes: running totals (the default), readings of the burette, or what was added each
   * time.
   */
  readonly volumes?: 'totals' | 'burette' | 'increments';
  /** mL, the burette's reading before the first drop; needed with `volumes: 'burette'`, and only there. */
  readonly initial?: number | string;
  /** What each column of a text holds, where its headings do not say so; otherwise volume, pH, seconds. */
  readonly columns?: readonly ColumnKind[];
  /** Whether to mend what can be mended, and say what was changed; false by default. */
  readonly repair?: boolean;
}

/** Readings as columns, numbers or as typed. */
export interface ReadingColumns {
  readonly mL: readonly (number | string)[];
  readonly pH: readonly (number | string)[];
  readonly seconds?: readonly (number | string)[];
}

/** The longest text, in characters, and most rows of columns. */
export const readingLimits = /*#__PURE__*/ frozen({ characters: 2e6, rows: 1e5 });

/**
 * Readings of a titration from what was typed, exported as CSV or pasted out of a spreadsheet, as running totals.
 *
 * Differences of burette readings are exact in decimals: 12.35 − 0.05 is 12.30. Cells stand apart by tabs, semicolons,
 * commas or blanks; decimal commas are read where commas do not part the columns. What looks wrong is said in
 * `findings`, with its lines, and every line is in `lines`: nothing is mended in silence. With `repair: true` swapped
 * columns are exchanged, increments added up and copies of a line dropped, and `changes` says so; a falling burette is
 * never mended.
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
  const how = readOptions(options, faults);
  const lines = typeof input === 'string' ? linesIn(input, faults) : linesFrom(input, faults);
  faults.done();
  return frozen(reportOn(lines, typeof input === 'string', how));
}

interface How {
  readonly volumes: 'totals' | 'burette' | 'increments';
  readonly initial: Decimal;
  readonly columns: readonly ColumnKind[] | undefined;
  readonly repair: boolean;
}

function readOptions(value: unknown, faults: Faults): How {
  const unread = faults.object(value, 'options', 'options', ['volumes', 'initial', 'columns', 'repair']);
  const { volumes = 'totals', initial, columns, repair = false } = unread;
  if (volumes !== 'totals' && volumes !== 'burette' && volumes !== 'increments')
    faults.add('wrong-type', 'options.volumes', "'totals', 'burette' or 'increments'", volumes);
  if (typeof repair !== 'boolean') faults.add('wrong-type', 'options.repair', 'true or false', repair);
  if (volumes === 'burette' && initial === undefined)
    faults.add('missing', 'options.initial', "the burette's first reading in mL", initial);
  if (volumes !== 'burette' && initial !== undefined)
    faults.add('conflict', 'options.initial', "a first reading only with volumes: 'burette'", initial);
  return {
    volumes: volumes as How['volumes'],
    initial: initial === undefined ? toDecimal(0) : readInitial(initial, faults),
    columns: columns === undefined ? undefined : readKinds(columns, faults),
    repair: repair === true,
  };
}

function readInitial(value: unknown, faults: Faults): Decimal {
  const path = 'options.initial';
  if (typeof value === 'number')
    return toDecimal(faults.number(value, path, 'a volume in mL', { from: 0, to: 1e6 }));
  const read = typeof value === 'string' ? exactDecimal(value.trim()) : undefined;
  if (read?.gte(0) && read.lte(1e6)) return read;
  faults.add('wrong-type', path, 'a volume in mL, from 0 to 1e6, as a number or as typed', value);
  return toDecimal(0);
}

function readKinds(value: unknown, faults: Faults): readonly ColumnKind[] {
  const kinds = faults.list(value, 'options.columns', "a list of 'mL', 'pH', 'seconds' and 'skip'", 2, 50);
  for (const [k, kind] of kinds.entries())
    if (kind !== 'mL' && kind !== 'pH' && kind !== 'seconds' && kind !== 'skip')
      faults.add('wrong-type', `options.columns[${k}]`, "'mL', 'pH', 'seconds' or 'skip'", kind);
  for (const kind of ['mL', 'pH', 'seconds'])
    if (kinds.filter((each) => each === kind).length > 1 || (kind !== 'seconds' && !kinds.includes(kind)))
      faults.add('conflict', 'options.columns', `one column '${kind}'`, value);
  return kinds as readonly ColumnKind[];
}

function linesIn(text: string, faults: Faults): readonly Line[] {
  if (text.length <= readingLimits.characters) return linesOf(text);
  faults.add(
    'out-of-range',
    'input',
    `a text of at most ${readingLimits.characters} characters`,
    text.length,
  );
  return [];
}

function linesFrom(value: unknown, faults: Faults): readonly Line[] {
  const unread = faults.object(value, 'input', 'a text, or columns { mL, pH }', ['mL', 'pH', 'seconds']);
  const keys = usualOrder.filter((key) => key !== 'seconds' || unread.seconds !== undefined);
  const columns = keys.map((key) =>
    faults.list(unread[key], `input.${key}`, 'a list', 0, readingLimits.rows),
  );
  for (const [c, column] of columns.entries()) {
    if (column.length !== columns[0]?.length)
      faults.add('conflict', `input.${keys[c]}`, 'as many items as in input.mL', column);
    for (const [k, cell] of column.entries()) readCell(cell, `input.${keys[c]}[${k}]`, faults);
  }
  const cellsOf = (k: number) => columns.map((column) => String(column[k]).trim());
  return faults.any
    ? []
    : (columns[0] ?? []).map((_, k) => ({ line: k + 1, text: '', cells: cellsOf(k), fault: '' }));
}

function readCell(cell: unknown, path: string, faults: Faults): void {
  if (typeof cell !== 'string') faults.number(cell, path, 'a number, or a number as typed');
}

/** Goes through the lines, then through what they say together. */
function reportOn(lines: readonly Line[], isText: boolean, how: How): ReadingReport {
  const heading = isText ? headingIn(lines) : undefined;
  const named = heading && !how.columns ? kindsOf(heading.cells) : undefined;
  const known = named?.includes('mL') && named.includes('pH');
  const kinds = how.columns ?? (known ? (named as readonly ColumnKind[]) : usualOrder);
  const unclear = isText && commasAreUnclear(lines, kinds);
  const read = lines.map((line) => lineRead(line, heading, kinds, unclear));
  const rows = read.flatMap(({ row }) => row ?? []);
  const { kept, changes } = how.repair ? repaired(rows, how) : { kept: rows, changes: [] };
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
    ...findingsOnColumns(lines, read, heading, kinds, !how.columns, known === true),
    ...orderOf(kept, good, how),
    ...(good.length < 3
      ? [finding('too-few', [], `Only ${good.length} of ${lines.length} lines are readings.`)]
      : []),
  ];
  return {
    status: good.length === 0 ? 'nothing' : findings.length > 0 ? 'doubtful' : 'clean',
    readings: columnsOf(good, how),
    lines: lineReads,
    findings,
    changes,
  };
}

const finding = (code: ReadingFinding['code'], lines: readonly number[], words: string): ReadingFinding => ({
  code,
  lines,
  words,
});

/** What is doubtful about the headings and the columns of a text. */
function findingsOnColumns(
  lines: readonly Line[],
  read: readonly ReturnType<typeof lineRead>[],
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
  byHeading: boolean,
  known: boolean,
): ReadingFinding[] {
  const marks = new Set(
    lines.flatMap(({ cells, line }) => (line === heading?.line ? [] : cells.map(markOf))),
  );
  const headingLine = heading ? [heading.line] : [];
  const width = read.reduce((most, each) => (each.row ? Math.max(most, each.width) : most), 0);
  const skipped = (heading?.cells ?? []).filter((_, c) => kinds[c] === 'skip').join(', ');
  const findings: ReadingFinding[] = [];
  if (marks.has('.') && marks.has(','))
    findings.push(
      finding('mixed-decimals', [], 'Decimal points and decimal commas stand in one text: look for a slip.'),
    );
  if (heading && byHeading && !known)
    findings.push(
      finding(
        'unknown-headings',
        headingLine,
        'The headings name no volume or no pH: the columns were taken as volume, pH, seconds.',
      ),
    );
  if (kinds.slice(0, width).includes('skip') && byHeading)
    findings.push(finding('unused-columns', headingLine, `Not read: ${skipped}.`));
  if (width > kinds.length)
    findings.push(finding('unused-columns', [], `Of ${width} columns the first ${kinds.length} were read.`));
  return findings;
}

const commaWords =
  'Commas stand between the columns and, it seems, in the numbers: write the columns apart with tabs or semicolons.';

/** The first line that is not blank, where none of its cells is a number. */
function headingIn(lines: readonly Line[]): Line | undefined {
  const first = lines.find(({ cells, text }) => cells.length > 0 && !text.startsWith('#'));
  return first?.cells.every((cell) => exactDecimal(cell) === undefined) && first.cells.length > 1
    ? first
    : undefined;
}

/** Whether every line has twice as many whole numbers, or more, as there can be columns: 1,00,3,45. */
function commasAreUnclear(lines: readonly Line[], kinds: readonly ColumnKind[]): boolean {
  const full = lines.filter(({ cells }) => cells.some((cell) => exactDecimal(cell) !== undefined));
  return (
    full.length > 0 &&
    full.every(
      ({ cells, text }) =>
        cells.length > kinds.length && cells.every((cell) => /^\d+$/.test(cell)) && text.includes(','),
    )
  );
}

const markOf = (cell: string): string => /^[+\-−]?\d*([.,])\d*$/.exec(cell)?.[1] ?? '';

interface Tried extends LineRead {
  readonly row?: Row;
  readonly width: number;
}

/** One line, as a row of decimals or with the reason why it is none. */
function lineRead(
  line: Line,
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
  unclear: boolean,
): Tried {
  const { cells, text, fault } = line;
  const as = (what: LineRead['as'], reason = ''): Tried => ({
    line: line.line,
    as: what,
    reason,
    width: cells.length,
  });
  if (cells.length === 0) return as('blank');
  if (text.startsWith('#')) return as('comment');
  if (line === heading) return as('heading');
  if (fault !== '') return as('faulty', `it cannot be taken apart: ${fault}`);
  if (unclear) return as('faulty', 'its commas can be read in several ways');
  const cellOf = (kind: ColumnKind) => cells[kinds.indexOf(kind)] ?? '';
  const wanted = usualOrder.filter(
    (kind) => kinds.includes(kind) && (kind !== 'seconds' || cellOf(kind) !== ''),
  );
  const absent = wanted.find((kind) => cellOf(kind) === '');
  if (absent !== undefined) return as('faulty', `it has no ${absent}`);
  const bad = wanted.map(cellOf).find((cell) => exactDecimal(cell) === undefined);
  if (bad !== undefined)
    return as('faulty', `'${bad.length > 30 ? `${bad.slice(0, 30)}…` : bad}' is not a number`);
  const decimalOf = (kind: ColumnKind) => exactDecimal(cellOf(kind)) as Decimal;
  const row = { line: line.line, mL: decimalOf('mL'), pH: decimalOf('pH') };
  return {
    ...as('reading'),
    row: wanted.includes('seconds') ? { ...row, seconds: decimalOf('seconds') } : row,
  };
}

/** Mends what can be mended, and says what that was. */
function repaired(rows: readonly Row[], how: How): { kept: readonly Row[]; changes: readonly string[] } {
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

function addedUp(rows: readonly Row[]): readonly Row[] {
  let total = toDecimal(0);
  return rows.map((row) => {
    total = total.plus(row.mL);
    return { ...row, mL: total };
  });
}

/** Running totals, each with the reason why it can be none. */
function totalsOf(rows: readonly Row[], { volumes, initial }: How): readonly { row: Row; fault: string }[] {
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
function orderOf(kept: readonly Row[], good: readonly Row[], { volumes }: How): readonly ReadingFinding[] {
  if (areSwapped(kept))
    return [
      {
        code: 'swapped-columns',
        lines: [],
        words:
          'The column of pH looks like volumes and that of volumes like pH: exchange them, or ask for repair.',
      },
    ];
  if (volumes === 'totals' && areIncrements(good))
    return [
      {
        code: 'increments',
        lines: [],
        words:
          "The volumes do not rise: if they are what was added each time, say volumes: 'increments' or ask for repair.",
      },
    ];
  return orderFindings(good);
}

function faultyFinding(lines: readonly LineRead[]): readonly ReadingFinding[] {
  const faulty = lines.filter(({ as }) => as === 'faulty');
  if (faulty.length === 0) return [];
  const most = 10;
  const named = faulty.slice(0, most).map(({ line, reason }) => `Line ${line} is no reading: ${reason}.`);
  const rest = faulty.length > most ? ` ${faulty.length - most} more are in lines.` : '';
  return [{ code: 'faulty-lines', lines: faulty.map(({ line }) => line), words: named.join(' ') + rest }];
}

function columnsOf(rows: readonly Row[], { volumes, initial }: How): ReadingReport['readings'] {
  const numbers = (key: 'mL' | 'pH' | 'seconds') => rows.map((row) => (row[key] as Decimal).toNumber());
  const timed = rows.length > 0 && rows.every(({ seconds }) => seconds !== undefined);
  const from = volumes === 'burette' ? [`Totals are burette readings less the first, ${initial} mL.`] : [];
  return {
    mL: numbers('mL'),
    pH: numbers('pH'),
    ...(timed ? { seconds: numbers('seconds') } : {}),
    notes: volumes === 'increments' ? ['Totals are sums of what was added.'] : from,
  };
}
