import { cataloguedIndicator } from '../catalogued.js';
import { bandsInMixtures } from './bands-from-memory.js';
import { crc, harris, harrisInGuide, kolthoff, kolthoffInEncyclopedia, sydney } from './handbooks.js';

// The dyes of mixed indicators as they are in the mixture. The bands of a dye alone are set to the word that handbooks
// have for each form. In a mixture the colours of two dyes cancel, and where they do depends on how deep each band is
// for one mole of dye: here the depths are in the ratio of the molar absorptivities. Where works give several constants,
// that one is taken which has the mixture turn at its printed pH.

/** With methyl red: its constant at zero ionic strength. */
export const bromocresolGreenInMixture = /*#__PURE__*/ cataloguedIndicator({
  id: 'bromocresolGreenInMixture',
  name: 'bromocresol green',
  transition: { from: 3.8, to: 5.4 },
  acidColour: 'yellow',
  baseColour: 'blue',
  source: harrisInGuide,
  pKIn: 4.9,
  pKInSource: kolthoff,
  bands: {
    acid: [{ nm: 444, width: 90, absorbance: 0.308 }],
    base: [
      { nm: 616, width: 60, absorbance: 0.711 },
      { nm: 576, width: 60, absorbance: 0.249 },
      { nm: 390, width: 90, absorbance: 0.107 },
    ],
    source: bandsInMixtures,
  },
});

/** With bromocresol green. */
export const methylRedInMixture = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylRedInMixture',
  name: 'methyl red',
  transition: { from: 4.4, to: 6.2 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: kolthoffInEncyclopedia,
  pKIn: 5.1,
  pKInSource: sydney,
  bands: {
    acid: [
      { nm: 523, width: 85, absorbance: 1.384 },
      { nm: 410, width: 100, absorbance: 0.55 },
    ],
    base: [{ nm: 430, width: 90, absorbance: 0.646 }],
    source: bandsInMixtures,
  },
});

/** With thymol blue: its constant 8.46 at zero ionic strength, less 0.36 for the 0.15 mol/L of a carbonate titration. */
export const cresolRedInMixture = /*#__PURE__*/ cataloguedIndicator({
  id: 'cresolRedInMixture',
  name: 'cresol red',
  transition: { from: 7.2, to: 8.8 },
  acidColour: 'yellow',
  baseColour: 'purple-red',
  source: harris,
  pKIn: 8.1,
  pKInSource: {
    kind: 'fromMemory',
    work: 'kolthoff-1937',
    note: '8.46 at zero ionic strength; brought to 0.15 mol/L by the Davies equation, −3·0.509·0.234',
  },
  bands: {
    acid: [{ nm: 434, width: 90, absorbance: 0.5 }],
    base: [
      { nm: 572, width: 50, absorbance: 1.4 },
      { nm: 532, width: 60, absorbance: 0.7 },
      { nm: 390, width: 90, absorbance: 0.05 },
    ],
    source: bandsInMixtures,
  },
});

/** With cresol red: its constant 9.2 at zero ionic strength, less 0.36 likewise. */
export const thymolBlueInMixture = /*#__PURE__*/ cataloguedIndicator({
  id: 'thymolBlueInMixture',
  name: 'thymol blue',
  transition: { from: 8, to: 9.2 },
  acidColour: 'yellow',
  baseColour: 'blue',
  source: crc,
  pKIn: 8.84,
  pKInSource: {
    kind: 'fromMemory',
    work: 'kolthoff-1937',
    note: '9.2 at zero ionic strength; brought to 0.15 mol/L by the Davies equation, −3·0.509·0.234',
  },
  bands: {
    acid: [{ nm: 435, width: 90, absorbance: 0.544 }],
    base: [
      { nm: 596, width: 65, absorbance: 1.3 },
      { nm: 556, width: 60, absorbance: 0.52 },
      { nm: 390, width: 90, absorbance: 0.08 },
    ],
    source: bandsInMixtures,
  },
});
