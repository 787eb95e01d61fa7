import { fixed } from '../print-number.js';
import type { Answers } from './answers.js';
import type { ReadHandout } from './handout-options.js';
import { element, grid, type Markup, paragraph, section } from './markup.js';

/** Lines to write into: as many as a page holds, whatever the titration. */
const blocksFor = { student: 5, instructor: 6 } as const;
const linesEach = { besideBuffer: 23, alone: 34 } as const;

/** The table to fill in, on a page of its own; the instructor's holds the planned additions. @internal */
export function readingsSheet({ words, buffer }: ReadHandout, answers: Answers | null): Markup {
  const planned = [words.volumeColumn, words.pHColumn];
  const headings = answers ? planned : [words.buretteColumn, ...planned];
  const blocks = blocksFor[answers ? 'instructor' : 'student'];
  const rows = answers
    ? answers.plan.mL.map((mL, k) => [fixed(mL, 2), fixed(answers.plan.pH[k] ?? Number.NaN, 2)])
    : [];
  const each = Math.max(buffer ? linesEach.besideBuffer : linesEach.alone, Math.ceil(rows.length / blocks));
  const tables = Array.from({ length: blocks }, (_, block) =>
    grid(
      headings,
      Array.from({ length: each }, (_, line) => rows[block * each + line] ?? headings.map(() => '')),
      answers ? 'grid answer' : 'grid',
    ),
  );
  return section(
    words.sheetHeading,
    [
      paragraph(answers ? words.expectedSheetHint : words.sheetHint),
      element('div', tables, ' class="blocks"'),
    ],
    'sheet',
  );
}
