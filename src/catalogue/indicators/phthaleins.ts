import { candidateList } from '../candidate-list.js';
import { cataloguedIndicator } from '../catalogued.js';
import { bandsFromMemory } from './bands-from-memory.js';
import {
  alberta,
  bishop,
  bishopInAlberta,
  crc,
  crcDirections,
  crcInWikipedia2004,
  harris,
  juniorOlympiad,
  monk,
  sydney,
  usp32,
} from './handbooks.js';

/**
 * Phenolphthalein, colourless to pink.
 *
 * It stays in use though it is classified as a carcinogen (Regulation (EC) No 1272/2008, Annex VI; from memory, with 1
 * % as the concentration from which that holds): its stock of 0.5 % is below the limit, and a flask holds a thousandth
 * of that. Thymol blue and cresol red change over the same range, from one colour to another; none of them goes from no
 * colour to a first pink. The hazard goes with every result.
 */
export const phenolphthalein = /*#__PURE__*/ cataloguedIndicator({
  id: 'phenolphthalein',
  name: 'phenolphthalein',
  transition: { from: 8.2, to: 10 },
  acidColour: 'colourless',
  baseColour: 'pink',
  source: crcInWikipedia2004,
  pKIn: 9.5,
  pKInSource: bishopInAlberta,
  bands: {
    acid: [],
    base: [
      { nm: 553, width: 46, absorbance: 1.5 },
      { nm: 513, width: 60, absorbance: 0.75 },
      { nm: 390, width: 90, absorbance: 0.45 },
    ],
    source: bandsFromMemory,
  },
  // Older books take 1 g in 100 mL (Talbot), which is at the limit of the hazard.
  stock: {
    text: '0.5 g in 50 mL of 95 % ethanol, made up to 100 mL with water',
    source: { kind: 'fromMemory', note: 'the 5 g/L of the standard methods of water analysis' },
  },
  alternatives: {
    transitions: [
      { from: 8, to: 9.6, source: harris },
      { from: 8, to: 9.8, source: juniorOlympiad },
      { from: 8.2, to: 10, source: alberta },
      { from: 8.2, to: 10, source: monk },
    ],
    pKIns: [
      { pKIn: 9.49, source: alberta, note: 'Ka = 3.2e-10' },
      { pKIn: 9.6, source: sydney },
      { pKIn: 9.7, source: juniorOlympiad },
    ],
  },
  hazard:
    'The solid, and solutions from 1 % on, may cause cancer: do not raise dust. The stock solution of 0.5 % is below that limit; it is flammable alcohol. See the safety data sheet.',
  notes: [
    'The pH at which pink is first seen moves with the logarithm of the amount added. The colour fades above pH 12.',
    'pKIn: effective; two steps 8.9 and 9.4 reported.',
  ],
  veryHighConcern: candidateList,
});

/** o-Cresolphthalein, colourless to red. */
export const oCresolphthalein = /*#__PURE__*/ cataloguedIndicator({
  id: 'oCresolphthalein',
  name: 'o-cresolphthalein',
  transition: { from: 8.2, to: 9.8 },
  acidColour: 'colourless',
  baseColour: 'red',
  source: { kind: 'fromMemory', work: 'merck-table', note: 'table, not checked against the page' },
  pKIn: 9.4,
  pKInSource: bishop,
  bands: {
    acid: [],
    base: [
      { nm: 567, width: 46, absorbance: 1.5 },
      { nm: 527, width: 60, absorbance: 0.75 },
      { nm: 390, width: 90, absorbance: 0.45 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of ethanol', source: crcDirections },
  alternatives: {
    transitions: [{ from: 8.2, to: 9.8, source: crc }],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** Thymolphthalein, colourless to blue. */
export const thymolphthalein = /*#__PURE__*/ cataloguedIndicator({
  id: 'thymolphthalein',
  name: 'thymolphthalein',
  transition: { from: 9.3, to: 10.5 },
  acidColour: 'colourless',
  baseColour: 'blue',
  source: juniorOlympiad,
  pKIn: 9.9,
  pKInSource: juniorOlympiad,
  bands: {
    acid: [],
    base: [
      { nm: 595, width: 70, absorbance: 1.3 },
      { nm: 555, width: 60, absorbance: 0.45 },
      { nm: 390, width: 90, absorbance: 0.13 },
    ],
    source: bandsFromMemory,
  },
  stock: { text: '0.1 g in 100 mL of 90 % ethanol', source: crcDirections },
  // A pharmacopoeia prints 8.6 to 10.0: it calls the first blue in a drop. Two tables of dyes agree within 0.1 on the
  // range in use, which has the pKIn in its middle.
  alternatives: {
    transitions: [
      { from: 9.4, to: 10.6, source: crcInWikipedia2004 },
      { from: 8.3, to: 10.5, source: harris },
      { from: 8.6, to: 10, source: usp32 },
    ],
    pKIns: [{ pKIn: 9.7, source: bishop }],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** Alpha-naphtholphthalein, pale pink to green-blue. */
export const alphaNaphtholphthalein = /*#__PURE__*/ cataloguedIndicator({
  id: 'alphaNaphtholphthalein',
  name: 'α-naphtholphthalein',
  transition: { from: 7.3, to: 8.7 },
  acidColour: 'pale pink',
  baseColour: 'green-blue',
  source: {
    kind: 'published',
    work: 'naphtholphthalein-suppliers',
    where: 'range and colours',
    checked: 'both pages print 7.3 to 8.7; they differ in their word for the basic colour',
  },
  pKIn: 8.4,
  pKInSource: {
    kind: 'fromMemory',
    note: 'tables of indicators in handbooks, to one decimal, not checked against a page',
  },
  // The base form absorbs several times as much, so it shows from well below pKIn and the range lies below it.
  bands: {
    acid: [{ nm: 500, width: 90, absorbance: 0.25 }],
    base: [{ nm: 650, width: 90, absorbance: 1.2 }],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 100 mL of 50 % ethanol',
    source: { kind: 'fromMemory', note: 'a usual strength of suppliers' },
  },
  alternatives: { transitions: [{ from: 7.3, to: 8.7, source: harris }] },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});
