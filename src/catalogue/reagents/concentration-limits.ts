import type { Source } from '../../source.js';

/** Of the percentages in a reagent's cautions. */
export const concentrationLimits: Source = {
  kind: 'fromMemory',
  work: 'clp-2008',
  note: 'concentration limits in the cautions: those of the substance in annex VI, in percent by mass',
};
