import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** Of the primary standards in the catalogue and of how they are treated. */
export const standardsPractice: Source = /*#__PURE__*/ frozen({
  kind: 'commonPractice',
  note: 'primary standards and drying of the analytical laboratory',
});
