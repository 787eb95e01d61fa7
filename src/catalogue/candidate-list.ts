import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/**
 * Of `veryHighConcern`: on the list are boric acid, disodium tetraborate with and without water, hydrazine, chromic
 * acid, arsenic acid, ethane-1,2-diamine, phenolphthalein and Congo red (C.I. Direct Red 28).
 */
export const candidateList: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  note: 'candidate list of Regulation (EC) No 1907/2006 (REACH), article 59; not checked against the list, which grows twice a year',
});
