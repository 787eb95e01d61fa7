import { shorten } from '../input/describe-value.js';
import { type ColumnKind, isOtherVolume } from './column-kinds.js';
import { exactDecimal } from './exact-decimal.js';
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
  const volume = heading?.cells[kinds.indexOf('mL')] ?? '';
  if (isOtherVolume(volume))
    findings.push(
      finding(
        'other-unit',
        headingLine,
        `The volumes were taken as mL, but their heading is '${shorten(volume)}': turn them into mL first.`,
      ),
    );
  if (kinds.slice(0, width).includes('skip') && byHeading)
    findings.push(finding('unused-columns', headingLine, `Not read: ${skipped}.`));
  if (width > kinds.length) findings.push(beyondColumns(read, width, kinds.length));
  return findings;
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

/** @internal */
export const commaWords =
  'Commas stand between the columns and, it seems, in the numbers: write the columns apart with tabs or semicolons.';

/** The first line that is not blank, where none of its cells is a number. @internal */
export function headingIn(lines: readonly Line[]): Line | undefined {
  const first = lines.find(({ cells, text }) => cells.length > 0 && !text.startsWith('#'));
  return first?.cells.every((cell) => exactDecimal(cell) === undefined) && first.cells.length > 1
    ? first
    : undefined;
}

/** Whether every line has more whole numbers than there are columns: 1,00,3,45. @internal */
export function commasAreUnclear(lines: readonly Line[], kinds: readonly ColumnKind[]): boolean {
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
