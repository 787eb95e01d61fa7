import { cataloguedIndicator } from '../catalogued.js';
import { bandsFromMemory } from './bands-from-memory.js';
import {
  alberta,
  bishop,
  crc,
  crcDirections,
  harris,
  juniorOlympiad,
  monk,
  sydney,
  wikipedia2004,
} from './handbooks.js';

/** Phenolphthalein, colourless to pink. */
export const phenolphthalein = /*#__PURE__*/ cataloguedIndicator({
  id: 'phenolphthalein',
  name: 'phenolphthalein',
  transition: { from: 8.2, to: 10 },
  acidColour: 'colourless',
  baseColour: 'pink',
  source: wikipedia2004,
  pKIn: 9.5,
  pKInSource: bishop,
  bands: {
    acid: [],
    base: [
      { nm: 553, width: 46, absorbance: 1.5 },
      { nm: 513, width: 60, absorbance: 0.75 },
      { nm: 390, width: 90, absorbance: 0.45 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: '1 g in 100 mL of 95 % ethanol',
    source: {
      kind: 'published',
      work: 'talbot',
      where: 'section on indicators: 1 g in 100 mL',
      checked: 'Project Gutenberg text 12787',
    },
  },
  alternatives: {
    transitions: [
      { from: 8.2, to: 10, source: crc },
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
    'May cause cancer (the solid and strong solutions): do not raise dust. The stock solution is flammable alcohol. See the safety data sheet.',
  notes: [
    'The pH at which pink is first seen moves with the logarithm of the amount added. The colour fades above pH 12.',
    'pKIn: effective; two steps 8.9 and 9.4 reported.',
  ],
});

/** O-cresolphthalein, colourless to red. */
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
  alternatives: {
    transitions: [
      { from: 9.4, to: 10.6, source: crc },
      { from: 8.3, to: 10.5, source: harris },
      { from: 9.4, to: 10.6, source: wikipedia2004 },
    ],
    pKIns: [{ pKIn: 9.7, source: bishop }],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});
