import { candidateList } from '../candidate-list.js';
import { cataloguedIndicator } from '../catalogued.js';
import { bandsFromMemory } from './bands-from-memory.js';
import {
  bishop,
  crc,
  crcDirections,
  crcInEasychem,
  crcInUniversal,
  crcInWikipedia2004,
  harris,
  harrisInGuide,
  juniorOlympiad,
  kolthoff,
  kolthoffInEncyclopedia,
  skoog,
  skoogInGuide,
  sydney,
  usp32,
  wikipedia2004,
  wikipedia2007,
} from './handbooks.js';

/** Methyl yellow (dimethyl yellow), red to yellow. */
export const methylYellow = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylYellow',
  name: 'methyl yellow (dimethyl yellow)',
  transition: { from: 2.9, to: 4 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: usp32,
  pKIn: 3.25,
  pKInSource: kolthoff,
  bands: {
    acid: [
      { nm: 515, width: 95, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 0.65 },
    ],
    base: [{ nm: 447, width: 100, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of 90 % ethanol', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 2.9, to: 4, source: crc },
      { from: 2.9, to: 4, source: wikipedia2007 },
      { from: 2.9, to: 4, source: wikipedia2004 },
    ],
    pKIns: [
      { pKIn: 3.3, source: juniorOlympiad },
      { pKIn: 3.1, source: sydney },
    ],
  },
  hazard: 'May cause cancer; teaching laboratories use other indicators instead. See the safety data sheet.',
  notForUse: {
    reason: 'it may cause cancer, and other indicators take its place',
    source: { kind: 'commonPractice', note: 'teaching laboratories do not use it any more' },
  },
});

/** Congo red, blue-violet to red. */
export const congoRed = /*#__PURE__*/ cataloguedIndicator({
  id: 'congoRed',
  name: 'Congo red',
  transition: { from: 3, to: 5 },
  acidColour: 'blue-violet',
  baseColour: 'red',
  source: crcInEasychem,
  pKIn: 4.1,
  pKInSource: bishop,
  bands: {
    acid: [{ nm: 580, width: 130, absorbance: 1 }],
    base: [
      { nm: 497, width: 105, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 0.2 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 3, to: 5, source: harris },
      { from: 3, to: 5.2, source: wikipedia2004 },
    ],
  },
  hazard: 'May cause cancer, and may harm the unborn child: do not raise dust. See the safety data sheet.',
  notForUse: {
    reason: 'it may cause cancer and harm the unborn child, and other indicators take its place',
    source: { kind: 'commonPractice', note: 'teaching laboratories do not use it any more' },
  },
  veryHighConcern: candidateList,
});

/** Methyl orange, red to yellow-orange. */
export const methylOrange = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylOrange',
  name: 'methyl orange',
  transition: { from: 3.1, to: 4.4 },
  acidColour: 'red',
  baseColour: 'yellow-orange',
  source: harrisInGuide,
  pKIn: 3.46,
  pKInSource: skoog,
  titrationExponent: {
    pH: 4,
    source: {
      kind: 'fromMemory',
      work: 'kolthoff-1937',
      note: 'titration exponent 4.0; common practice with carbonates as well',
    },
  },
  bands: {
    acid: [
      { nm: 507, width: 95, absorbance: 1.4 },
      { nm: 410, width: 100, absorbance: 0.7 },
    ],
    base: [{ nm: 464, width: 100, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 100 mL of water',
    source: {
      kind: 'published',
      work: 'talbot',
      where: 'section on indicators: 0.05 to 0.1 g in 100 mL, a little alcohol',
      checked: 'Project Gutenberg text 12787',
    },
  },
  alternatives: {
    transitions: [
      { from: 3.1, to: 4.4, source: wikipedia2007 },
      { from: 3.1, to: 4.4, source: wikipedia2004 },
      { from: 3.2, to: 4.4, source: crcInUniversal },
    ],
    pKIns: [
      {
        pKIn: 3.4,
        source: {
          kind: 'published',
          work: 'openstax-chemistry-2e',
          where: 'section 14.7',
          checked: 'read there',
        },
        note: 'Ka = 4.0e-4',
      },
      { pKIn: 3.7, source: sydney },
      { pKIn: 4.2, source: juniorOlympiad },
    ],
  },
  hazard: 'The solid is poisonous if swallowed: do not raise dust. See the safety data sheet.',
  notes: ['The end point of an acid with a carbonate is taken at about pH 4.', 'pKIn: ionic strength 0.1.'],
});

/** Methyl red, red to yellow. */
export const methylRed = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylRed',
  name: 'methyl red',
  transition: { from: 4.4, to: 6.2 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: kolthoffInEncyclopedia,
  pKIn: 5,
  pKInSource: juniorOlympiad,
  bands: {
    acid: [
      { nm: 523, width: 85, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 0.91 },
    ],
    base: [{ nm: 430, width: 90, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of 60 % ethanol', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 4.8, to: 6, source: crcInUniversal },
      { from: 4.8, to: 6, source: harris },
      { from: 4.2, to: 6.2, source: juniorOlympiad },
      { from: 4.2, to: 6.2, source: usp32 },
    ],
    pKIns: [
      { pKIn: 5, source: skoogInGuide, note: 'ionic strength 0.1' },
      { pKIn: 5.1, source: sydney },
    ],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** Alizarin yellow R, yellow to orange-red. */
export const alizarinYellowR = /*#__PURE__*/ cataloguedIndicator({
  id: 'alizarinYellowR',
  name: 'alizarin yellow R',
  transition: { from: 10.1, to: 12 },
  acidColour: 'yellow',
  baseColour: 'orange-red',
  source: crcInWikipedia2004,
  pKIn: 11.2,
  pKInSource: bishop,
  bands: {
    acid: [{ nm: 380, width: 110, absorbance: 1.5 }],
    base: [
      { nm: 493, width: 105, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 0.65 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water', source: crcDirections },
  alternatives: {
    transitions: [{ from: 10.1, to: 12, source: harrisInGuide }],
    pKIns: [
      { pKIn: 11, source: juniorOlympiad },
      { pKIn: 11.1, source: sydney },
    ],
  },
  notes: [
    'Alizarin yellow GG, its relative, goes from colourless to yellow between pH 10.0 and 12.0 (Thai Pharmacopoeia).',
  ],
});

/** Tropaeolin O, yellow to orange. */
export const tropaeolinO = /*#__PURE__*/ cataloguedIndicator({
  id: 'tropaeolinO',
  name: 'tropaeolin O',
  transition: { from: 11.1, to: 12.7 },
  acidColour: 'yellow',
  baseColour: 'orange',
  source: harris,
  pKIn: 11.9,
  pKInSource: kolthoff,
  bands: {
    acid: [{ nm: 430, width: 100, absorbance: 1 }],
    base: [
      { nm: 490, width: 100, absorbance: 1.2 },
      { nm: 410, width: 100, absorbance: 0.6 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water', source: crcDirections },
  alternatives: {
    transitions: [{ from: 11, to: 13, source: crc }],
  },
});
