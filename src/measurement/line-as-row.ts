import { shorten } from '../input/describe-value.js';
import type { ColumnKind } from './column-kinds.js';
import { exactDecimal } from './exact-decimal.js';
import type { Line } from './lines-of.js';
import type { LineRead } from './reading-report.js';
import type { Row } from './suspicions.js';

/** What a line was read as, with its row where it is a reading. @internal */
export interface LineRow extends LineRead {
  readonly row?: Row;
  readonly width: number;
}

/** One line, as a row of decimals or with the reason why it is none. @internal */
export function lineAsRow(
  line: Line,
  heading: Line | undefined,
  kinds: readonly ColumnKind[],
  unclear: boolean,
): LineRow {
  const { cells, text, fault } = line;
  const as = (what: LineRead['as'], reason = ''): LineRow => ({
    line: line.line,
    as: what,
    reason,
    width: cells.length,
  });
  if (cells.length === 0) return as('blank');
  if (text.startsWith('#')) return as('comment');
  if (line === heading) return as('heading');
  if (heading && line.line < heading.line) return as('comment');
  if (fault !== '') return as('faulty', `it cannot be taken apart: ${fault}`);
  if (unclear) return as('faulty', 'its commas can be read in several ways');
  const cellOf = (kind: ColumnKind) => cells[kinds.indexOf(kind)] ?? '';
  const absent = (['mL', 'pH'] as const).find((kind) => cellOf(kind) === '');
  if (absent !== undefined) return as('faulty', `it has no ${absent}`);
  const [mL, pH, seconds] = [cellOf('mL'), cellOf('pH'), cellOf('seconds')].map(exactDecimal);
  if (mL && pH && seconds) return { ...as('reading'), row: { line: line.line, mL, pH, seconds } };
  if (mL && pH && cellOf('seconds') === '') return { ...as('reading'), row: { line: line.line, mL, pH } };
  const bad = cellOf(!mL ? 'mL' : !pH ? 'pH' : 'seconds');
  return as('faulty', `'${shorten(bad)}' is not a number`);
}
