import { cataloguedIndicator } from '../catalogued.js';
import { bandsFromMemory } from './bands-from-memory.js';
import {
  alberta,
  bishop,
  crc,
  crcDirections,
  crcInEasychem,
  crcInEncyclopedia,
  crcInGuide,
  harris,
  harrisInSlides,
  juniorOlympiad,
  kolthoff,
  monk,
  wikipedia2004,
  wikipedia2007,
} from './handbooks.js';

/** Methyl violet, yellow to blue-violet. */
export const methylViolet = /*#__PURE__*/ cataloguedIndicator({
  id: 'methylViolet',
  name: 'methyl violet',
  transition: { from: 0, to: 1.6 },
  acidColour: 'yellow',
  baseColour: 'blue-violet',
  source: crcInGuide,
  pKIn: 0.8,
  pKInSource: juniorOlympiad,
  bands: {
    acid: [
      { nm: 425, width: 80, absorbance: 1.1 },
      { nm: 630, width: 80, absorbance: 0.15 },
    ],
    base: [
      { nm: 585, width: 65, absorbance: 1.4 },
      { nm: 545, width: 60, absorbance: 0.6 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of water', source: crcDirections },
  alternatives: {
    transitions: [
      { from: 0, to: 1.6, source: harris },
      { from: 0, to: 2, source: wikipedia2007 },
      { from: 0, to: 1.6, source: wikipedia2004 },
      { from: 0, to: 1.6, source: alberta },
      { from: 0, to: 1.6, source: monk },
    ],
    pKIns: [{ pKIn: 0.7, source: alberta, note: 'booklet gives Ka about 2e-1' }],
  },
  hazard:
    'Harmful if swallowed, can damage the eyes badly, and suspected of causing cancer; it stains. See the safety data sheet.',
});

/** Litmus (azolitmin), red to blue. */
export const litmus = /*#__PURE__*/ cataloguedIndicator({
  id: 'litmus',
  name: 'litmus (azolitmin)',
  transition: { from: 4.5, to: 8.3 },
  acidColour: 'red',
  baseColour: 'blue',
  source: crcInEncyclopedia,
  pKIn: 6.5,
  pKInSource: bishop,
  bands: {
    acid: [
      { nm: 520, width: 105, absorbance: 1.1 },
      { nm: 410, width: 100, absorbance: 0.55 },
    ],
    base: [{ nm: 590, width: 95, absorbance: 1.1 }],
    source: bandsFromMemory,
  },
  stock: {
    text: '1 g in 100 mL of hot water, filtered when cold',
    source: { kind: 'fromMemory', note: 'a usual strength; azolitmin is taken at half of it' },
  },
  alternatives: {
    transitions: [
      { from: 4.5, to: 8.3, source: wikipedia2004 },
      { from: 5, to: 8, source: harrisInSlides },
    ],
  },
  notForUse: {
    reason: 'its change is too broad for the end point of a titration',
    source: { kind: 'commonPractice', note: 'litmus tells acid from base and is not used for end points' },
  },
  notes: ['Changes too broadly for the end point of a titration.', 'pKIn: mixture; nominal.'],
});

/** Neutral red, red to yellow. */
export const neutralRed = /*#__PURE__*/ cataloguedIndicator({
  id: 'neutralRed',
  name: 'neutral red',
  transition: { from: 6.8, to: 8 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: crcInEasychem,
  pKIn: 7.4,
  pKInSource: kolthoff,
  bands: {
    acid: [
      { nm: 528, width: 85, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 1.1 },
    ],
    base: [{ nm: 454, width: 100, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of 70 % ethanol', source: crcDirections },
  alternatives: {
    transitions: [{ from: 6.8, to: 8, source: harris }],
    pKIns: [{ pKIn: 6.8, source: bishop }],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** Nitramine (2,4,6-trinitrophenylmethylnitramine), colourless to orange-brown. */
export const nitramine = /*#__PURE__*/ cataloguedIndicator({
  id: 'nitramine',
  name: 'nitramine (2,4,6-trinitrophenylmethylnitramine)',
  transition: { from: 10.8, to: 13 },
  acidColour: 'colourless',
  baseColour: 'orange-brown',
  source: harris,
  pKIn: 11.9,
  pKInSource: kolthoff,
  alternatives: {
    transitions: [{ from: 10.8, to: 12.8, source: crc }],
  },
  hazard:
    'The solid (tetryl) is an explosive, and poisonous: listed for history, not for use. See the safety data sheet.',
  notForUse: {
    reason: 'the solid is an explosive, and poisonous; it is listed for history',
    source: { kind: 'commonPractice', note: 'laboratories do not keep tetryl as an indicator any more' },
  },
});

/** Indigo carmine, blue to yellow. */
export const indigoCarmine = /*#__PURE__*/ cataloguedIndicator({
  id: 'indigoCarmine',
  name: 'indigo carmine',
  transition: { from: 11.4, to: 13 },
  acidColour: 'blue',
  baseColour: 'yellow',
  source: juniorOlympiad,
  pKIn: 12.2,
  pKInSource: juniorOlympiad,
  bands: {
    acid: [{ nm: 610, width: 75, absorbance: 1.3 }],
    base: [{ nm: 440, width: 100, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: { text: '0.25 g in 100 mL of 50 % ethanol', source: crcDirections },
  alternatives: {
    transitions: [{ from: 11.4, to: 13, source: wikipedia2004 }],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** p-Nitrophenol, colourless to yellow. */
export const pNitrophenol = /*#__PURE__*/ cataloguedIndicator({
  id: 'pNitrophenol',
  name: 'p-nitrophenol',
  transition: { from: 5.6, to: 7.6 },
  acidColour: 'colourless',
  baseColour: 'yellow',
  source: harris,
  pKIn: 7.15,
  pKInSource: bishop,
  // Width and depth are chosen so that yellow shows at 5.6, the start that is printed: no spectrum gave them.
  bands: {
    acid: [],
    base: [{ nm: 401, width: 85, absorbance: 3.3 }],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.25 g in 100 mL of water',
    source: {
      kind: 'commonPractice',
      note: 'the strength that soil laboratories use; yellow is faint below it',
    },
  },
  // Works that print a lower start worked with more of it: yellow shows at pKIn − 1.5 with this stock, and ten times the
  // amount shows it one unit of pH earlier.
  alternatives: {
    transitions: [
      { from: 5, to: 7, source: kolthoff },
      { from: 5.4, to: 6.6, source: crc },
    ],
  },
  hazard:
    'Harmful if swallowed, breathed in or on the skin, and to organs on long exposure. See the safety data sheet.',
  notes: [
    'pKIn: zero ionic strength.',
    'Yellow shows while most of it is still colourless, so the range lies below pKIn.',
  ],
});
