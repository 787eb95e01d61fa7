import { candidateList } from '../candidate-list.js';
import { cataloguedProtolyte } from '../catalogued.js';
import { hazardPractice } from './hazard-practice.js';

/** Ammonium and ammonia. */
export const ammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'ammonium',
  name: 'ammonium',
  species: [
    { formula: 'NH4+', charge: 1 },
    { formula: 'NH3', charge: 0 },
  ],
  steps: [
    {
      pKa: 9.245,
      dH: 51.95,
      dCp: 8,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'ammonium',
        checked: 'LibreTexts table E5: 9.244; CRC gives 9.25',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
});

/** Methylammonium and methylamine. */
export const methylammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'methylammonium',
  name: 'methylammonium',
  species: [
    { formula: 'CH3NH3+', charge: 1 },
    { formula: 'CH3NH2', charge: 0 },
  ],
  steps: [
    {
      pKa: 10.645,
      dH: 55.34,
      dCp: 33,
      source: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'IUPAC Digitized pKa Dataset: 10.657 (reliable) at 25 °C, CRC 10.66',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'fit of the Everett & Wynne-Jones 1941 series (0 to 50 °C) in IUPAC Digitized pKa Dataset gives dH 54.8, dCp 32 (pK 10.624)',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 10.66,
      source: {
        kind: 'published',
        work: 'organic-text',
        where: 'exercise 46E',
        checked: 'reproduced at studyquestionhub.com',
      },
    },
  ],
});

/** Dimethylammonium and dimethylamine. */
export const dimethylammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'dimethylammonium',
  name: 'dimethylammonium',
  species: [
    { formula: '(CH3)2NH2+', charge: 1 },
    { formula: '(CH3)2NH', charge: 0 },
  ],
  steps: [
    {
      pKa: 10.732,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'dimethylammonium',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 10.732)',
      },
    },
  ],
});

/** Trimethylammonium and trimethylamine. */
export const trimethylammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'trimethylammonium',
  name: 'trimethylammonium',
  species: [
    { formula: '(CH3)3NH+', charge: 1 },
    { formula: '(CH3)3N', charge: 0 },
  ],
  steps: [
    {
      // 0.05 from another measurement that the same compilation calls reliable: the third decimal means nothing.
      pKa: 9.801,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'trimethylammonium',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 9.801; another reliable entry 9.752)',
      },
    },
  ],
});

/** Hydroxylammonium and hydroxylamine. */
export const hydroxylammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hydroxylammonium',
  name: 'hydroxylammonium',
  species: [
    { formula: 'NH3OH+', charge: 1 },
    { formula: 'NH2OH', charge: 0 },
  ],
  steps: [
    {
      pKa: 5.94,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 5.96,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
    },
  ],
  hazard:
    'Harmful, suspected of causing cancer, sensitises the skin; the free base may explode when hot or concentrated.',
  notForBuffers: {
    reason: 'it is suspected of causing cancer and its free base may explode',
    source: hazardPractice,
  },
});

/** Hydrazinium(2+), hydrazinium(1+), hydrazine. */
export const hydrazinium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hydrazinium',
  name: 'hydrazinium(2+)',
  species: [
    { formula: 'N2H6(2+)', charge: 2 },
    { formula: 'N2H5+', charge: 1 },
    { formula: 'N2H4', charge: 0 },
  ],
  // The evaluation stays: 7.92 and −1.06 are computed from a base constant, and two handbooks stand on either side of
  // 8.02.
  steps: [
    {
      pKa: -0.99,
      dH: 38.1,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 8.02,
      dH: 41.7,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'CRC gives 8.1, Sydney sheet 7.94' },
    },
  ],
  alternatives: [
    {
      step: 2,
      pKa: 8.1,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      step: 2,
      pKa: 7.94,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
    },
    {
      step: 1,
      pKa: -1.06,
      source: {
        kind: 'published',
        work: 'hydrazine-page',
        where: 'base constants 8.5e-7 and 8.9e-16',
        checked: 'read there',
      },
      note: 'from the base constant, with pKw 13.995',
    },
    {
      step: 2,
      pKa: 7.92,
      source: {
        kind: 'published',
        work: 'hydrazine-page',
        where: 'base constants 8.5e-7 and 8.9e-16',
        checked: 'read there',
      },
      note: 'from the base constant, with pKw 13.995',
    },
  ],
  hazard: 'Toxic, may cause cancer, sensitises the skin; explosive with oxidisers.',
  notForBuffers: {
    reason: 'it is toxic and may cause cancer',
    source: hazardPractice,
  },
  veryHighConcern: candidateList,
});

/** Ethane-1,2-diammonium, its first base, and ethylenediamine. */
export const ethylenediammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'ethylenediammonium',
  name: 'ethane-1,2-diammonium',
  species: [
    { formula: 'H3NCH2CH2NH3(2+)', charge: 2 },
    { formula: 'H2NCH2CH2NH3+', charge: 1 },
    { formula: 'H2NCH2CH2NH2', charge: 0 },
  ],
  steps: [
    {
      pKa: 6.848,
      dH: 45.5,
      dCp: 71,
      source: {
        kind: 'published',
        work: 'everett-pinsent-1952',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 6.848)',
      },
      thermalSource: {
        kind: 'published',
        work: 'everett-pinsent-1952',
        where: 'value at 25 °C',
        checked: 'fit of the 0 to 60 °C series in IUPAC Digitized pKa Dataset (rms 0.0005)',
      },
    },
    {
      pKa: 9.928,
      dH: 49.4,
      dCp: 40,
      source: {
        kind: 'published',
        work: 'everett-pinsent-1952',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 9.928)',
      },
      thermalSource: {
        kind: 'published',
        work: 'everett-pinsent-1952',
        where: 'value at 25 °C',
        checked: 'fit of the 0 to 60 °C series in IUPAC Digitized pKa Dataset (rms 0.0005)',
      },
    },
  ],
  veryHighConcern: candidateList,
});

/** Pyridinium and pyridine. */
export const pyridinium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'pyridinium',
  name: 'pyridinium',
  species: [
    { formula: 'C5H5NH+', charge: 1 },
    { formula: 'C5H5N', charge: 0 },
  ],
  steps: [
    {
      pKa: 5.229,
      dH: 20.1,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'pyridinium',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 5.229)',
      },
      thermalSource: {
        kind: 'fromMemory',
        note: 'common value of calorimetric studies, 20.1 to 20.2 kJ/mol',
      },
    },
  ],
  notes: [
    'A free fit of dH and dCp to the series from 5 to 50 °C is not well conditioned (dCp 275): only dH is given.',
  ],
});

/** Imidazolium and imidazole. */
export const imidazolium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'imidazolium',
  name: 'imidazolium',
  species: [
    { formula: 'C3H5N2+', charge: 1 },
    { formula: 'C3H4N2', charge: 0 },
  ],
  steps: [
    {
      pKa: 6.993,
      dH: 36.64,
      dCp: -9,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'imidazole',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 6.9929)',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'imidazole',
        checked:
          'reproduces the 0 to 50 °C series of Datta & Grzybowski 1966 in IUPAC Digitized pKa Dataset to 0.003',
      },
    },
  ],
});

/** Anilinium and aniline. */
export const anilinium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'anilinium',
  name: 'anilinium',
  species: [
    { formula: 'C6H5NH3+', charge: 1 },
    { formula: 'C6H5NH2', charge: 0 },
  ],
  steps: [
    {
      pKa: 4.596,
      dH: 30.8,
      dCp: 118,
      source: {
        kind: 'published',
        work: 'bolton-hall-1967',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 4.596)',
      },
      thermalSource: {
        kind: 'published',
        work: 'bolton-hall-1967',
        where: 'value at 25 °C',
        checked:
          'fit of the Bolton & Hall 1967 10 to 50 °C series in IUPAC Digitized pKa Dataset (rms 0.0015)',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 4.601,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'anilinium',
        checked: 'LibreTexts table E5',
      },
    },
  ],
});

/** 2-Hydroxyethylammonium and ethanolamine. */
export const ethanolammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'ethanolammonium',
  name: '2-hydroxyethylammonium',
  species: [
    { formula: 'HOCH2CH2NH3+', charge: 1 },
    { formula: 'HOCH2CH2NH2', charge: 0 },
  ],
  steps: [
    {
      pKa: 9.498,
      dH: 50.52,
      dCp: 26,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'ethanolamine',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 9.4980)',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'ethanolamine',
        checked:
          'reproduces the Bates & Pinching 1951 0 to 50 °C series in IUPAC Digitized pKa Dataset within 0.004',
      },
    },
  ],
});

/** Bis(2-hydroxyethyl)ammonium and diethanolamine. */
export const diethanolammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'diethanolammonium',
  name: 'bis(2-hydroxyethyl)ammonium',
  species: [
    { formula: '(HOCH2CH2)2NH2+', charge: 1 },
    { formula: '(HOCH2CH2)2NH', charge: 0 },
  ],
  steps: [
    {
      pKa: 8.883,
      dH: 42.08,
      dCp: 36,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'diethanolamine',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 8.883)',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'diethanolamine',
        checked:
          'reproduces the Bower, Robinson & Bates 1962 0 to 50 °C series in IUPAC Digitized pKa Dataset within 0.011',
      },
    },
  ],
});

/** Tris(2-hydroxyethyl)ammonium and triethanolamine. */
export const triethanolammonium = /*#__PURE__*/ cataloguedProtolyte({
  id: 'triethanolammonium',
  name: 'tris(2-hydroxyethyl)ammonium',
  species: [
    { formula: '(HOCH2CH2)3NH+', charge: 1 },
    { formula: '(HOCH2CH2)3N', charge: 0 },
  ],
  steps: [
    {
      pKa: 7.762,
      dH: 33.6,
      dCp: 50,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'Bates and Allen, J. Res. Natl. Bur. Stand. 64A, 343 (1960), abstract: dH 33.450, dCp 52',
      },
    },
  ],
});
