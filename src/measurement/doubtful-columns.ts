import type { ColumnKind } from './column-kinds.js';
import { exactDecimal } from './exact-decimal.js';
import type { LineRow } from './line-as-row.js';
import type { Line } from './lines-of.js';
import { finding, type ReadingFinding } from './reading-report.js';

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
  if (kinds.slice(0, width).includes('skip') && byHeading)
    findings.push(finding('unused-columns', headingLine, `Not read: ${skipped}.`));
  if (width > kinds.length)
    findings.push(finding('unused-columns', [], `Of ${width} columns the first ${kinds.length} were read.`));
  return findings;
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
