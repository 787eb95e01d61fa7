import { cataloguedProtolyte } from '../catalogued.js';
import { disodiumEdta } from '../sparingly-soluble.js';
import { hazardPractice } from './hazard-practice.js';

/** Ascorbic acid (vitamin C) and the ascorbates. */
export const ascorbic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'ascorbic',
  name: 'L-ascorbic acid',
  species: [
    { formula: 'H2C6H6O6', charge: 0 },
    { formula: 'HC6H6O6-', charge: -1 },
    { formula: 'C6H6O6(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 4.17,
      source: { kind: 'fromMemory', work: 'merck-index', note: 'not checked against the page' },
    },
    {
      pKa: 11.57,
      source: {
        kind: 'published',
        work: 'merck-index',
        where: 'value at 25 °C',
        checked: 'to one decimal, 11.6, in a text of pharmaceutical chemistry (pharmacologicalsciences.us)',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 4.1,
      source: { kind: 'commonPractice', note: 'textbook tables for general chemistry: Ka1 = 8.0e-5' },
    },
    {
      step: 2,
      pKa: 11.8,
      source: { kind: 'commonPractice', note: 'textbook tables for general chemistry: Ka2 = 1.6e-12' },
    },
  ],
  notes: ['Poorly determined; oxidises in air at high pH.'],
});

/** Phenol and phenolate. */
export const phenol = /*#__PURE__*/ cataloguedProtolyte({
  id: 'phenol',
  name: 'phenol',
  species: [
    { formula: 'C6H5OH', charge: 0 },
    { formula: 'C6H5O-', charge: -1 },
  ],
  steps: [
    {
      pKa: 9.994,
      dH: 23.6,
      source: {
        kind: 'published',
        work: 'fernandez-hepler-1959',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 9.994)',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'fernandez-hepler-1959',
        note: 'not checked against the page',
      },
    },
  ],
  hazard: 'Toxic by every route and corrosive; it numbs the skin, and even a small wetted area can be fatal.',
  notForBuffers: {
    reason: 'it is toxic through the skin',
    source: hazardPractice,
  },
});

/** Barbituric acid and barbiturate. */
export const barbituric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'barbituric',
  name: 'barbituric acid',
  species: [
    { formula: 'C4H4N2O3', charge: 0 },
    { formula: 'C4H3N2O3-', charge: -1 },
  ],
  steps: [
    {
      pKa: 4.01,
      source: { kind: 'published', work: 'openstax-chemistry-2e', where: 'section 14.7, Ka = 9.8e-5' },
    },
  ],
});

/** EDTA, ethylenediaminetetraacetic acid, with its two ammonium groups. */
export const edta = /*#__PURE__*/ cataloguedProtolyte({
  id: 'edta',
  name: 'EDTA',
  solids: [disodiumEdta],
  species: [
    { formula: 'H6EDTA(2+)', charge: 2 },
    { formula: 'H5EDTA+', charge: 1 },
    { formula: 'H4EDTA', charge: 0 },
    { formula: 'H3EDTA-', charge: -1 },
    { formula: 'H2EDTA(2-)', charge: -2 },
    { formula: 'HEDTA(3-)', charge: -3 },
    { formula: 'EDTA(4-)', charge: -4 },
  ],
  steps: [
    {
      pKa: 0,
      ionicStrength: 1,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'EDTA',
        checked: 'a published list: 0.00, 1.50, 2.00, 2.69, 6.13, 10.37',
      },
    },
    {
      pKa: 1.5,
      ionicStrength: 0.1,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'EDTA',
        checked: 'a published list: 0.00, 1.50, 2.00, 2.69, 6.13, 10.37',
      },
    },
    {
      pKa: 2,
      ionicStrength: 0.1,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'EDTA',
        checked: 'a published list: 0.00, 1.50, 2.00, 2.69, 6.13, 10.37',
      },
    },
    {
      pKa: 2.69,
      ionicStrength: 0.1,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'EDTA',
        checked: 'a published list: 0.00, 1.50, 2.00, 2.69, 6.13, 10.37',
      },
    },
    {
      pKa: 6.13,
      ionicStrength: 0.1,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'EDTA',
        checked:
          'a published list: 0.00, 1.50, 2.00, 2.69, 6.13, 10.37; IUPAC Digitized pKa Dataset 6.16 at 20 °C, I = 0.1',
      },
    },
    {
      pKa: 10.37,
      ionicStrength: 0.1,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'EDTA',
        checked:
          'a published list: 0.00, 1.50, 2.00, 2.69, 6.13, 10.37; IUPAC Digitized pKa Dataset 10.26 to 10.31 at 20 °C, I = 0.1',
      },
    },
  ],
  alternatives: [
    {
      step: 5,
      pKa: 6.273,
      source: { kind: 'fromMemory', work: 'nist-srd-46', note: 'not checked against the page' },
      note: 'zero ionic strength',
    },
    {
      step: 6,
      pKa: 10.948,
      source: { kind: 'fromMemory', work: 'nist-srd-46', note: 'not checked against the page' },
      note: 'zero ionic strength',
    },
  ],
  notes: [
    'Concentration constants, measured at the ionic strength given with each step.',
    'Binds Na+ weakly, which is left out.',
  ],
});
