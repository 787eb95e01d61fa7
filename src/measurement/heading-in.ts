import { kindsOf } from './column-kinds.js';
import { exactDecimal } from './exact-decimal.js';
import type { Line } from './lines-of.js';

/**
 * The first line without a number that names both volume and pH, above all readings; or else the first line of all, where it
 * holds no number.
 *
 * @internal
 */
export function headingIn(lines: readonly Line[]): Line | undefined {
  const typed = lines.filter(({ cells, text }) => cells.length > 0 && !text.startsWith('#'));
  const firstReading = typed.findIndex((line) => numbersIn(line) > 1);
  const above = (firstReading < 0 ? typed : typed.slice(0, firstReading)).filter(
    (line) => line.cells.length > 1 && numbersIn(line) === 0,
  );
  const naming = above.find(({ cells }) => {
    const kinds = kindsOf(cells);
    return kinds.includes('mL') && kinds.includes('pH');
  });
  return naming ?? above.find((line) => line === typed[0]);
}

const numbersIn = ({ cells }: Line): number =>
  cells.filter((cell) => exactDecimal(cell) !== undefined).length;

/** The lines below the heading: what stands above it is a title. @internal */
export const belowHeading = (lines: readonly Line[], heading: Line | undefined): readonly Line[] =>
  heading ? lines.slice(lines.indexOf(heading) + 1) : lines;
