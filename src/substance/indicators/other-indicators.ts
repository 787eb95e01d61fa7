import { defineIndicator } from '../indicator.js';
import { bandsFromMemory } from './bands-from-memory.js';

/** Methyl violet, yellow to blue-violet. */
export const methylViolet = /*#__PURE__*/ defineIndicator({
  id: 'methylViolet',
  name: 'methyl violet',
  transition: { from: 0, to: 1.6 },
  acidColour: 'yellow',
  baseColour: 'blue-violet',
  source: {
    kind: 'published',
    work: 'wikipedia-ph-indicator-2004',
    where: 'table',
    checked: 'fact-archive.com copy of that table',
  },
  pKIn: 0.8,
  pKInSource: {
    kind: 'published',
    work: 'junior-olympiad-guide',
    where: 'table of indicators',
    checked: 'read there',
  },
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
  stock: {
    text: '0.1 g in 100 mL of water',
    source: {
      kind: 'fromMemory',
      work: 'crc-handbook',
      note: 'directions for indicator solutions, not checked against the page',
    },
  },
  alternatives: {
    transitions: [
      {
        from: 0,
        to: 1.6,
        source: {
          kind: 'fromMemory',
          work: 'crc-handbook',
          note: 'table Acid-Base Indicators, not checked against the page',
        },
      },
      {
        from: 0,
        to: 1.6,
        source: { kind: 'fromMemory', work: 'harris-2016', note: 'table 11-3, not checked against the page' },
      },
      {
        from: 0,
        to: 2,
        source: {
          kind: 'published',
          work: 'wikipedia-ph-indicator-2007',
          where: 'table',
          checked: 'chemeurope.com encyclopedia and easychem.com.au copies of that table',
        },
      },
      {
        from: 0,
        to: 1.6,
        source: {
          kind: 'published',
          work: 'alberta-data-booklet',
          where: 'Acid–Base Indicators at 298.15 K',
          checked: 'Moodle course page that reprints part of it',
        },
      },
      {
        from: 0,
        to: 1.6,
        source: { kind: 'published', work: 'monk-2004', where: 'table 6.7, page 277', checked: 'read there' },
      },
    ],
    pKIns: [
      {
        pKIn: 0.7,
        source: {
          kind: 'published',
          work: 'alberta-data-booklet',
          where: 'Acid–Base Indicators at 298.15 K',
          checked: 'Moodle course page that reprints part of it',
        },
        note: 'booklet gives Ka about 2e-1',
      },
    ],
  },
  hazard:
    'Harmful if swallowed, can damage the eyes badly, and suspected of causing cancer; it stains. See the safety data sheet.',
});

/** Litmus (azolitmin), red to blue. */
export const litmus = /*#__PURE__*/ defineIndicator({
  id: 'litmus',
  name: 'litmus (azolitmin)',
  transition: { from: 4.5, to: 8.3 },
  acidColour: 'red',
  baseColour: 'blue',
  source: {
    kind: 'published',
    work: 'wikipedia-ph-indicator-2007',
    where: 'table',
    checked: 'chemeurope.com encyclopedia and easychem.com.au copies of that table',
  },
  pKIn: 6.5,
  pKInSource: {
    kind: 'fromMemory',
    work: 'bishop-1972',
    note: 'chapter 3 (E. Bányai), not checked against the page',
  },
  bands: {
    acid: [
      { nm: 520, width: 105, absorbance: 1.1 },
      { nm: 410, width: 100, absorbance: 0.55 },
    ],
    base: [{ nm: 590, width: 95, absorbance: 1.1 }],
    source: bandsFromMemory,
  },
  alternatives: {
    transitions: [
      {
        from: 4.5,
        to: 8.3,
        source: {
          kind: 'published',
          work: 'wikipedia-ph-indicator-2004',
          where: 'table',
          checked: 'fact-archive.com copy of that table',
        },
      },
      {
        from: 5,
        to: 8,
        source: { kind: 'fromMemory', work: 'harris-2016', note: 'table 11-3, not checked against the page' },
      },
    ],
  },
  notes: ['Changes too broadly for the end point of a titration.', 'pKIn: mixture; nominal.'],
});

/** Neutral red, red to yellow. */
export const neutralRed = /*#__PURE__*/ defineIndicator({
  id: 'neutralRed',
  name: 'neutral red',
  transition: { from: 6.8, to: 8 },
  acidColour: 'red',
  baseColour: 'yellow',
  source: {
    kind: 'published',
    work: 'wikipedia-ph-indicator-2007',
    where: 'table',
    checked: 'chemeurope.com encyclopedia and easychem.com.au copies of that table',
  },
  pKIn: 7.4,
  pKInSource: {
    kind: 'fromMemory',
    work: 'kolthoff-1937',
    note: 'table of indicator constants, not checked against the page',
  },
  bands: {
    acid: [
      { nm: 528, width: 85, absorbance: 1.3 },
      { nm: 410, width: 100, absorbance: 1.1 },
    ],
    base: [{ nm: 454, width: 100, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.1 g in 100 mL of 70 % ethanol',
    source: {
      kind: 'fromMemory',
      work: 'crc-handbook',
      note: 'directions for indicator solutions, not checked against the page',
    },
  },
  alternatives: {
    transitions: [
      {
        from: 6.8,
        to: 8,
        source: {
          kind: 'fromMemory',
          work: 'crc-handbook',
          note: 'table Acid-Base Indicators, not checked against the page',
        },
      },
      {
        from: 6.8,
        to: 8,
        source: { kind: 'fromMemory', work: 'harris-2016', note: 'table 11-3, not checked against the page' },
      },
    ],
    pKIns: [
      {
        pKIn: 6.8,
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

/** Nitramine (2,4,6-trinitrophenylmethylnitramine), colourless to orange-brown. */
export const nitramine = /*#__PURE__*/ defineIndicator({
  id: 'nitramine',
  name: 'nitramine (2,4,6-trinitrophenylmethylnitramine)',
  transition: { from: 10.8, to: 13 },
  acidColour: 'colourless',
  baseColour: 'orange-brown',
  source: { kind: 'fromMemory', work: 'harris-2016', note: 'table 11-3, not checked against the page' },
  pKIn: 11.9,
  pKInSource: {
    kind: 'fromMemory',
    work: 'kolthoff-1937',
    note: 'table of indicator constants, not checked against the page',
  },
  alternatives: {
    transitions: [
      {
        from: 10.8,
        to: 12.8,
        source: {
          kind: 'fromMemory',
          work: 'crc-handbook',
          note: 'table Acid-Base Indicators, not checked against the page',
        },
      },
    ],
  },
  hazard:
    'The solid (tetryl) is an explosive, and poisonous: listed for history, not for use. See the safety data sheet.',
});

/** Indigo carmine, blue to yellow. */
export const indigoCarmine = /*#__PURE__*/ defineIndicator({
  id: 'indigoCarmine',
  name: 'indigo carmine',
  transition: { from: 11.4, to: 13 },
  acidColour: 'blue',
  baseColour: 'yellow',
  source: {
    kind: 'published',
    work: 'wikipedia-ph-indicator-2004',
    where: 'table',
    checked: 'fact-archive.com copy of that table',
  },
  pKIn: 12.2,
  pKInSource: {
    kind: 'published',
    work: 'junior-olympiad-guide',
    where: 'table of indicators',
    checked: 'read there',
  },
  bands: {
    acid: [{ nm: 610, width: 75, absorbance: 1.3 }],
    base: [{ nm: 440, width: 100, absorbance: 0.9 }],
    source: bandsFromMemory,
  },
  stock: {
    text: '0.25 g in 100 mL of 50 % ethanol',
    source: {
      kind: 'fromMemory',
      work: 'crc-handbook',
      note: 'directions for indicator solutions, not checked against the page',
    },
  },
  alternatives: {
    transitions: [
      {
        from: 11.4,
        to: 13,
        source: {
          kind: 'published',
          work: 'junior-olympiad-guide',
          where: 'table of indicators',
          checked: 'read there',
        },
      },
    ],
  },
  hazard: 'The stock solution is flammable alcohol. See the safety data sheet.',
});
