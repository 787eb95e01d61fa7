import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

/** Of the bands in the catalogue. */
export const bandsFromMemory: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  note: 'absorption maxima of the two forms in water as commonly quoted, to some 5 nm; widths are rough, and depths are set so that two drops in 50 mL give the strength of colour that is usual in a flask',
});

/** Of the bands of mixed indicators. */
export const bandsInMixtures: Source = /*#__PURE__*/ frozen({
  kind: 'fromMemory',
  note: 'maxima and widths as those of the dyes alone; base to acid form in the ratio of molar absorptivities that seawater spectrophotometry uses (bromocresol green 2.31, cresol red 2.80, thymol blue 2.39), methyl red 45 to 21; between dyes per mole, bromocresol green 0.9 of methyl red, thymol blue 0.7 of cresol red; the short-wave band of the red form of methyl red, and the methylene blue, are set so that the mixture is grey at its printed pH',
});
