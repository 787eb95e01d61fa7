import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

/** Of what is left out of the choice of a buffer. */
export const hazardPractice: Source = /*#__PURE__*/ frozen({
  kind: 'commonPractice',
  note: 'not taken as a buffer in a teaching lab; the hazard as the usual safety data sheet has it',
});
