import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

/** Of the percentages in a reagent's cautions. */
export const concentrationLimits: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'clp-2008',
  note: 'concentration limits in the cautions: those of the substance in annex VI, and where that has none the general ones of annex I, tables 3.2.3 and 3.3.3, in percent by mass',
});

/** Of the percentage in the cautions of boric acid and borates. */
export const boronLimit: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  work: 'clp-2008',
  note: 'general limit of 0.3 % by mass for what is toxic to reproduction, which took the place of the limits of single borates (Regulation (EU) 2021/849)',
});
