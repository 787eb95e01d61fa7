import { defineIndicator } from '../indicator.js';
import { bandsFromMemory } from './bands-from-memory.js';

/** Phenolphthalein, colourless to pink. */
export const phenolphthalein = /*#__PURE__*/ defineIndicator({
  id: 'phenolphthalein',
  name: 'phenolphthalein',
  transition: { from: 8.2, to: 10 },
  acidColour: 'colourless',
  baseColour: 'pink',
  source: {
    kind: 'published',
    work: 'wikipedia-ph-indicator-2004',
    where: 'table',
    checked: 'fact-archive.com copy of that table',
  },
  pKIn: 9.5,
  pKInSource: {
    kind: 'fromMemory',
    work: 'bishop-1972',
    note: 'chapter 3 (E. Bányai), not checked against the page',
  },
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
      {
        from: 8.2,
        to: 10,
        source: {
          kind: 'fromMemory',
          work: 'crc-handbook',
          note: 'table Acid-Base Indicators, not checked against the page',
        },
      },
      {
        from: 8,
        to: 9.6,
        source: { kind: 'fromMemory', work: 'harris-2016', note: 'table 11-3, not checked against the page' },
      },
      {
        from: 8,
        to: 9.8,
        source: {
          kind: 'published',
          work: 'junior-olympiad-guide',
          where: 'table of indicators',
          checked: 'read there',
        },
      },
      {
        from: 8.2,
        to: 10,
        source: {
          kind: 'published',
          work: 'alberta-data-booklet',
          where: 'Acid–Base Indicators at 298.15 K',
          checked: 'Moodle course page that reprints part of it',
        },
      },
      {
        from: 8.2,
        to: 10,
        source: { kind: 'published', work: 'monk-2004', where: 'table 6.7, page 277', checked: 'read there' },
      },
    ],
    pKIns: [
      {
        pKIn: 9.49,
        source: {
          kind: 'published',
          work: 'alberta-data-booklet',
          where: 'Acid–Base Indicators at 298.15 K',
          checked: 'Moodle course page that reprints part of it',
        },
        note: 'Ka = 3.2e-10',
      },
      {
        pKIn: 9.6,
        source: { kind: 'published', work: 'sydney-data-sheet', where: 'table', checked: 'read there' },
      },
      {
        pKIn: 9.7,
        source: {
          kind: 'published',
          work: 'junior-olympiad-guide',
          where: 'table of indicators',
          checked: 'read there',
        },
      },
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
export const oCresolphthalein = /*#__PURE__*/ defineIndicator({
  id: 'oCresolphthalein',
  name: 'o-cresolphthalein',
  transition: { from: 8.2, to: 9.8 },
  acidColour: 'colourless',
  baseColour: 'red',
  source: { kind: 'fromMemory', work: 'merck-table', note: 'table, not checked against the page' },
  pKIn: 9.4,
  pKInSource: {
    kind: 'fromMemory',
    work: 'bishop-1972',
    note: 'chapter 3 (E. Bányai), not checked against the page',
  },
  bands: {
    acid: [],
    base: [
      { nm: 567, width: 46, absorbance: 1.5 },
      { nm: 527, width: 60, absorbance: 0.75 },
      { nm: 390, width: 90, absorbance: 0.45 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 100 mL of ethanol',
    source: {
      kind: 'fromMemory',
      work: 'crc-handbook',
      note: 'directions for indicator solutions, not checked against the page',
    },
  },
  alternatives: {
    transitions: [
      {
        from: 8.2,
        to: 9.8,
        source: {
          kind: 'fromMemory',
          work: 'crc-handbook',
          note: 'table Acid-Base Indicators, not checked against the page',
        },
      },
    ],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});

/** Thymolphthalein, colourless to blue. */
export const thymolphthalein = /*#__PURE__*/ defineIndicator({
  id: 'thymolphthalein',
  name: 'thymolphthalein',
  transition: { from: 9.3, to: 10.5 },
  acidColour: 'colourless',
  baseColour: 'blue',
  source: {
    kind: 'published',
    work: 'junior-olympiad-guide',
    where: 'table of indicators',
    checked: 'read there',
  },
  pKIn: 9.9,
  pKInSource: {
    kind: 'published',
    work: 'junior-olympiad-guide',
    where: 'table of indicators',
    checked: 'read there',
  },
  bands: {
    acid: [],
    base: [
      { nm: 595, width: 70, absorbance: 1.3 },
      { nm: 555, width: 60, absorbance: 0.45 },
      { nm: 390, width: 90, absorbance: 0.13 },
    ],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 100 mL of 90 % ethanol',
    source: {
      kind: 'fromMemory',
      work: 'crc-handbook',
      note: 'directions for indicator solutions, not checked against the page',
    },
  },
  alternatives: {
    transitions: [
      {
        from: 9.4,
        to: 10.6,
        source: {
          kind: 'fromMemory',
          work: 'crc-handbook',
          note: 'table Acid-Base Indicators, not checked against the page',
        },
      },
      {
        from: 8.3,
        to: 10.5,
        source: { kind: 'fromMemory', work: 'harris-2016', note: 'table 11-3, not checked against the page' },
      },
      {
        from: 9.4,
        to: 10.6,
        source: {
          kind: 'published',
          work: 'wikipedia-ph-indicator-2004',
          where: 'table',
          checked: 'fact-archive.com copy of that table',
        },
      },
    ],
    pKIns: [
      {
        pKIn: 9.7,
        source: {
          kind: 'fromMemory',
          work: 'bishop-1972',
          note: 'chapter 3 (E. Bányai), not checked against the page',
        },
      },
    ],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});
