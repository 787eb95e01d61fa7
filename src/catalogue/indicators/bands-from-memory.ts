import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

/** Of the bands in the catalogue. */
export const bandsFromMemory: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  note: 'absorption maxima of the two forms in water as commonly quoted, to some 5 nm; widths are rough, and depths are set so that two drops in 50 mL give the strength of colour that is usual in a flask',
});
