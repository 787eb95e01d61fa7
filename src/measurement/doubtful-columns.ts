import { shorten } from '../input/describe-value.js';
import { type ColumnKind, isOtherVolume, kindNamed } from './column-kinds.js';
import { exactDecimal } from './exact-decimal.js';
import { belowHeading } from './heading-in.js';
import type { LineRow } from './line-as-row.js';
import type { Line } from './lines-of.js';
import type { ReadingOptionsRead } from './reading-options.js';
import { finding, type ReadingFinding } from './reading-report.js';
import { lineWords, type Row } from './suspicions.js';

/** What is doubtful about the headings and the columns of a text. @internal */
export function findingsOnColumns(
  lines: readonly Line[],
  read: readonly LineRow[],
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
  byHeading: boolean,
  known: boolean,
): ReadingFinding[] {
  const marks = marksIn(belowHeading(lines, heading));
  const headingLine = heading ? [heading.line] : [];
  const width = widthOf(read);
  const twice = byHeading
    ? skippedOf(heading, kinds, width).filter((name) => kindNamed(name) !== 'skip')
    : [];
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
  const volume = heading?.cells[kinds.indexOf('mL')] ?? '';
  if (isOtherVolume(volume))
    findings.push(
      finding(
        'other-unit',
        headingLine,
        `The volumes were taken as mL, but their heading is '${shorten(volume)}': turn them into mL first.`,
      ),
    );
  if (twice.length > 0)
    findings.push(
      finding(
        'unused-columns',
        headingLine,
        `Not read, since another column has the same kind of heading: ${twice.join(', ')}. Say columns where these are the right ones.`,
      ),
    );
  if (width > kinds.length) findings.push(beyondColumns(read, width, kinds.length));
  return findings;
}

const widthOf = (read: readonly LineRow[]): number =>
  read.reduce((most, each) => (each.row ? Math.max(most, each.width) : most), 0);

/** The headings of columns that are not read, as far as lines reach. */
const skippedOf = (
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
  width: number,
): readonly string[] =>
  (heading?.cells ?? [])
    .map((name, c) => name || `column ${c + 1}`)
    .filter((_, c) => c < width && kinds[c] === 'skip');

/** What the headings leave out: a column of remarks is no reason to doubt the others. @internal */
export function notesOnColumns(
  read: readonly LineRow[],
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
): readonly string[] {
  const others = skippedOf(heading, kinds, widthOf(read)).filter((name) => kindNamed(name) === 'skip');
  const named = shorten(others.join(', '));
  return others.length > 0 ? [`Not read: ${named}${named.endsWith('.') ? '' : '.'}`] : [];
}

/** Cells beyond the columns: in every row they are columns more, in some a slip. */
function beyondColumns(read: readonly LineRow[], width: number, columns: number): ReadingFinding {
  const rows = read.filter(({ row }) => row);
  const long = rows.filter((each) => each.width > columns).map(({ line }) => line);
  return long.length === rows.length
    ? finding('unused-columns', [], `Of ${width} columns the first ${columns} were read.`)
    : finding(
        'unused-columns',
        long,
        `In ${lineWords(long)}: more cells than the ${columns} columns; the rest was not read, and may be what follows a decimal comma.`,
      );
}

/** Readings of a burette that were taken for totals, unless the caller says that they are. @internal */
export function buretteFinding(
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
  first: Row | undefined,
  { volumes, stated }: ReadingOptionsRead,
): ReadingFinding[] {
  const name = heading?.cells[kinds.indexOf('mL')] ?? '';
  if (stated || volumes !== 'totals' || !/\bburette\b/i.test(name) || !first?.mL.gt(0)) return [];
  return [
    finding(
      'burette-as-totals',
      heading ? [heading.line] : [],
      `The heading '${name}' names a burette that began at ${first.mL} mL, and its readings were taken as totals: say volumes: 'burette' with initial, or volumes: 'totals' where they are.`,
    ),
  ];
}

/** What is said where commas can be read in several ways. @internal */
export const commaWords =
  'Commas stand between the columns and, it seems, in the numbers: write the columns apart with tabs or semicolons.';

/** Whether every line has more whole numbers than there are columns: 1,00,3,45. @internal */
export function commasAreUnclear(lines: readonly Line[], kinds: readonly ColumnKind[]): boolean {
  const isUnclear = ({ cells, text }: Line) =>
    cells.length > kinds.length && text.includes(',') && cells.every((cell) => /^\d+$/.test(cell));
  const hasNumber = ({ cells }: Line) => cells.some((cell) => exactDecimal(cell) !== undefined);
  return lines.some(isUnclear) && lines.every((line) => isUnclear(line) || !hasNumber(line));
}

const marksIn = (lines: readonly Line[]): ReadonlySet<string> =>
  new Set(lines.flatMap(({ cells }) => cells.map(markOf)));

const markOf = (cell: string): string => /^[+\-−]?\d*([.,])\d*$/.exec(cell)?.[1] ?? '';
