import { fourDigits } from '../../print-number.js';
import type { Grade } from './grade.js';

/** The points, and each question with its own, a line each. @internal */
export const viewGrade = ({ points, of, items }: Grade): string =>
  [
    `${fourDigits(points)} of ${fourDigits(of)} points`,
    ...items.map((item) => `  ${fourDigits(item.points)} of ${fourDigits(item.of)}: ${item.words}`),
  ].join('\n');
