import { cataloguedIndicator } from '../catalogued.js';
import { bandsFromMemory } from './bands-from-memory.js';
import {
  alberta,
  bishop,
  bishopInGuide,
  crc,
  crcDirections,
  crcInGuide,
  crcInUsp,
  crcInWikipedia2004,
  harris,
  harrisInGuide,
  juniorOlympiad,
  kolthoff,
  kolthoffInAlberta,
  kolthoffInGuide,
  lai,
  skoog,
  skoogInCourse,
  skoogInGuide,
  sydney,
  thaiPharmacopoeia,
  thymolBlue1998,
  usp32,
  wikipedia2004,
  wikipedia2007,
  yaoByrne,
} from './handbooks.js';

/** Cresol red (first change), red to yellow. */
export const cresolRedAcid = /*#__PURE__*/ cataloguedIndicator({
  id: 'cresolRedAcid',
  name: 'cresol red (first change)',
  transition: { from: 0.2, to: 1.8 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: harris,
  bands: {
    acid: [
      { nm: 518, width: 80, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 0.65 },
    ],
    base: [{ nm: 434, width: 90, absorbance: 0.75 }],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  alternatives: {
    transitions: [{ from: 0.2, to: 1.8, source: kolthoff }],
  },
});

/** Thymol blue (first change), red to yellow. */
export const thymolBlueAcid = /*#__PURE__*/ cataloguedIndicator({
  id: 'thymolBlueAcid',
  name: 'thymol blue (first change)',
  transition: { from: 1.2, to: 2.8 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: usp32,
  pKIn: 1.65,
  pKInSource: skoogInCourse,
  bands: {
    acid: [
      { nm: 544, width: 75, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 1.3 },
    ],
    base: [{ nm: 435, width: 90, absorbance: 0.75 }],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 1.2, to: 2.8, source: crc },
      { from: 1.2, to: 2.8, source: harris },
      { from: 1.2, to: 2.8, source: wikipedia2007 },
    ],
    pKIns: [{ pKIn: 1.6, source: juniorOlympiad }],
  },
  notes: ['pKIn: ionic strength 0.1.'],
});

/** Bromophenol blue, yellow to blue-violet. */
export const bromophenolBlue = /*#__PURE__*/ cataloguedIndicator({
  id: 'bromophenolBlue',
  name: 'bromophenol blue',
  transition: { from: 3, to: 4.6 },
  acidColour: 'yellow',
  baseColour: 'blue-violet',
  source: usp32,
  pKIn: 3.85,
  pKInSource: bishop,
  bands: {
    acid: [{ nm: 436, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 590, width: 55, absorbance: 1.5 },
      { nm: 550, width: 60, absorbance: 0.68 },
      { nm: 390, width: 90, absorbance: 0.15 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 3, to: 4.6, source: crc },
      { from: 3, to: 4.6, source: wikipedia2007 },
      { from: 2.8, to: 4.6, source: thaiPharmacopoeia },
    ],
    pKIns: [{ pKIn: 4.1, source: kolthoff, note: 'zero ionic strength' }],
  },
  notes: ['pKIn: ionic strength 0.1.'],
});

/** Bromocresol green, yellow to blue. */
export const bromocresolGreen = /*#__PURE__*/ cataloguedIndicator({
  id: 'bromocresolGreen',
  name: 'bromocresol green',
  transition: { from: 3.8, to: 5.4 },
  acidColour: 'yellow',
  baseColour: 'blue',
  source: crcInGuide,
  pKIn: 4.66,
  pKInSource: skoogInGuide,
  bands: {
    acid: [{ nm: 444, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 616, width: 75, absorbance: 1.4 },
      { nm: 576, width: 60, absorbance: 0.49 },
      { nm: 390, width: 90, absorbance: 0.21 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.05 g in 100 mL of ethanol',
    source: {
      kind: 'published',
      work: 'thai-pharmacopoeia',
      where: 'section 1.4: 50 mg in 100 mL ethanol',
      checked: 'Bureau of Drug and Narcotic web edition',
    },
  },
  alternatives: {
    transitions: [
      { from: 3.8, to: 5.4, source: harris },
      { from: 3.8, to: 5.4, source: wikipedia2007 },
      { from: 4, to: 5.4, source: thaiPharmacopoeia },
      { from: 4, to: 5.4, source: usp32 },
    ],
    pKIns: [
      { pKIn: 4.9, source: kolthoff, note: 'zero ionic strength' },
      { pKIn: 4.7, source: juniorOlympiad },
    ],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
  notes: ['pKIn: ionic strength 0.1.'],
});

/** Chlorophenol red, yellow to red. */
export const chlorophenolRed = /*#__PURE__*/ cataloguedIndicator({
  id: 'chlorophenolRed',
  name: 'chlorophenol red',
  transition: { from: 4.8, to: 6.4 },
  acidColour: 'yellow',
  baseColour: 'red',
  source: harrisInGuide,
  pKIn: 6,
  pKInSource: juniorOlympiad,
  bands: {
    acid: [{ nm: 434, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 573, width: 50, absorbance: 1.4 },
      { nm: 533, width: 60, absorbance: 0.7 },
      { nm: 390, width: 90, absorbance: 0.63 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  alternatives: {
    transitions: [{ from: 5.2, to: 6.8, source: crc }],
    pKIns: [
      { pKIn: 6.25, source: kolthoff, note: 'zero ionic strength' },
      { pKIn: 6, source: bishopInGuide, note: 'ionic strength 0.1' },
    ],
  },
});

/** Bromocresol purple, yellow to purple. */
export const bromocresolPurple = /*#__PURE__*/ cataloguedIndicator({
  id: 'bromocresolPurple',
  name: 'bromocresol purple',
  transition: { from: 5.2, to: 6.8 },
  acidColour: 'yellow',
  baseColour: 'purple',
  source: usp32,
  pKIn: 6.12,
  pKInSource: skoog,
  bands: {
    acid: [{ nm: 430, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 586, width: 44, absorbance: 1.6 },
      { nm: 546, width: 60, absorbance: 0.8 },
      { nm: 390, width: 90, absorbance: 0.56 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  // 6.494 at zero ionic strength less 0.32 for an acid of charge −1 in 0.1 mol/L (Davies) is 6.17, and 6.4 less 0.32 is
  // 6.08: 6.12 lies between them, and is the constant in use at the bench.
  alternatives: {
    transitions: [
      { from: 5.2, to: 6.8, source: crc },
      { from: 5.2, to: 6.8, source: harris },
      { from: 5.2, to: 6.8, source: wikipedia2007 },
      { from: 5.2, to: 6.8, source: thaiPharmacopoeia },
    ],
    pKIns: [
      { pKIn: 6.4, source: kolthoff, note: 'zero ionic strength' },
      { pKIn: 6.494, source: yaoByrne, note: '5.226 + 378.1/T at 25 C, zero ionic strength' },
    ],
  },
  notes: ['pKIn: ionic strength 0.1.'],
});

/** Bromothymol blue, yellow to blue. */
export const bromothymolBlue = /*#__PURE__*/ cataloguedIndicator({
  id: 'bromothymolBlue',
  name: 'bromothymol blue',
  transition: { from: 6, to: 7.6 },
  acidColour: 'yellow',
  baseColour: 'blue',
  source: usp32,
  pKIn: 7.1,
  pKInSource: juniorOlympiad,
  bands: {
    acid: [{ nm: 433, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 616, width: 80, absorbance: 1.3 },
      { nm: 576, width: 60, absorbance: 0.45 },
      { nm: 390, width: 90, absorbance: 0.13 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 100 mL of 50 % ethanol',
    source: {
      kind: 'published',
      work: 'thai-pharmacopoeia',
      where: 'section 1.4: 100 mg per 100 mL',
      checked: 'Bureau of Drug and Narcotic web edition',
    },
  },
  alternatives: {
    transitions: [
      { from: 6, to: 7.6, source: crc },
      { from: 6, to: 7.6, source: harris },
      { from: 6, to: 7.6, source: wikipedia2007 },
      { from: 6, to: 7.6, source: thaiPharmacopoeia },
    ],
    pKIns: [
      { pKIn: 7.1, source: skoogInGuide, note: 'ionic strength 0.1' },
      { pKIn: 7.3, source: kolthoffInAlberta, note: 'zero ionic strength' },
      { pKIn: 7.3, source: alberta, note: 'Ka = 5.0e-8' },
      { pKIn: 7, source: sydney },
    ],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** Phenol red, yellow to red. */
export const phenolRed = /*#__PURE__*/ cataloguedIndicator({
  id: 'phenolRed',
  name: 'phenol red',
  transition: { from: 6.6, to: 8 },
  acidColour: 'yellow',
  baseColour: 'red',
  source: crcInWikipedia2004,
  pKIn: 7.81,
  pKInSource: skoog,
  bands: {
    acid: [{ nm: 433, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 558, width: 50, absorbance: 1.5 },
      { nm: 518, width: 60, absorbance: 0.75 },
      { nm: 390, width: 90, absorbance: 1.65 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  // 8.034 and 8.064 at zero ionic strength less 0.32 for an acid of charge −1 in 0.1 mol/L (Davies) are 7.71 and 7.74:
  // 7.81 stays, 0.1 above them, as what a handbook prints for that strength. 7.4, of a teaching guide, stands alone. Of
  // the ranges the one in use lies in the middle of five and is printed twice.
  alternatives: {
    transitions: [
      { from: 6.4, to: 8, source: harrisInGuide },
      { from: 6.8, to: 8.4, source: wikipedia2007 },
      { from: 6.6, to: 8, source: alberta },
      { from: 6.8, to: 8.2, source: usp32 },
    ],
    pKIns: [
      { pKIn: 8, source: kolthoff, note: 'zero ionic strength' },
      { pKIn: 8, source: alberta, note: 'Ka = 1.0e-8' },
      { pKIn: 7.4, source: juniorOlympiad },
      { pKIn: 8.034, source: yaoByrne, note: 'zero ionic strength' },
      { pKIn: 8.0642, source: lai, note: 'infinite dilution, 25 C, purified dye' },
    ],
  },
  notes: ['pKIn: ionic strength 0.1.'],
});

/** Cresol red (second change), yellow to purple-red. */
export const cresolRed = /*#__PURE__*/ cataloguedIndicator({
  id: 'cresolRed',
  name: 'cresol red (second change)',
  transition: { from: 7.2, to: 8.8 },
  acidColour: 'yellow',
  baseColour: 'purple-red',
  source: { kind: 'published', work: 'clark-1996', where: 'letter of 28 September', checked: 'read there' },
  pKIn: 8.25,
  pKInSource: bishop,
  bands: {
    acid: [{ nm: 434, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 572, width: 50, absorbance: 1.4 },
      { nm: 532, width: 60, absorbance: 0.7 },
      { nm: 390, width: 90, absorbance: 0.56 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  alternatives: {
    transitions: [{ from: 7, to: 8.8, source: crc }],
    pKIns: [
      { pKIn: 8.46, source: kolthoff, note: 'zero ionic strength' },
      { pKIn: 8.3, source: sydney },
    ],
  },
  notes: ['pKIn: ionic strength 0.1.'],
});

/** m-Cresol purple (second change), yellow to purple. */
export const mCresolPurple = /*#__PURE__*/ cataloguedIndicator({
  id: 'mCresolPurple',
  name: 'm-cresol purple (second change)',
  transition: { from: 7.6, to: 9.2 },
  acidColour: 'yellow',
  baseColour: 'purple',
  source: harris,
  pKIn: 8.32,
  pKInSource: kolthoffInGuide,
  bands: {
    acid: [{ nm: 434, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 578, width: 48, absorbance: 1.4 },
      { nm: 538, width: 60, absorbance: 0.7 },
      { nm: 390, width: 90, absorbance: 0.42 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 26.2 mL of 0.01 mol/L sodium hydroxide, made up to 250 mL with water',
    source: crcDirections,
  },
  // 8.66 at zero ionic strength less 0.32 for an acid of charge −1 in 0.1 mol/L (Davies) is 8.34: 8.32 is the constant
  // in use at the bench.
  alternatives: {
    transitions: [{ from: 7.4, to: 9, source: juniorOlympiad }],
    pKIns: [
      { pKIn: 8.3, source: juniorOlympiad },
      { pKIn: 8.6606, source: lai, note: 'infinite dilution, 25 C, purified dye' },
    ],
  },
  notes: ['pKIn: ionic strength about 0.1.'],
});

/** Thymol blue (second change), yellow to blue. */
export const thymolBlue = /*#__PURE__*/ cataloguedIndicator({
  id: 'thymolBlue',
  name: 'thymol blue (second change)',
  transition: { from: 8, to: 9.6 },
  acidColour: 'yellow',
  baseColour: 'blue',
  source: harrisInGuide,
  pKIn: 8.96,
  pKInSource: skoogInCourse,
  bands: {
    acid: [{ nm: 435, width: 90, absorbance: 0.75 }],
    base: [
      { nm: 596, width: 65, absorbance: 1.3 },
      { nm: 556, width: 60, absorbance: 0.52 },
      { nm: 390, width: 90, absorbance: 0.13 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water, as sodium salt', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 8, to: 9.2, source: crcInUsp },
      { from: 8, to: 9.6, source: wikipedia2007 },
      { from: 8, to: 9.6, source: wikipedia2004 },
    ],
    pKIns: [
      { pKIn: 9.2, source: kolthoff, note: 'zero ionic strength' },
      { pKIn: 8.9, source: juniorOlympiad },
      { pKIn: 8.918, source: thymolBlue1998, note: '+/- 0.070, low ionic strength' },
    ],
  },
  notes: ['pKIn: ionic strength 0.1.'],
});
