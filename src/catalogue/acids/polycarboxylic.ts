import { cataloguedProtolyte } from '../catalogued.js';
import {
  bariumOxalate,
  calciumCitrate,
  calciumOxalate,
  calciumTartrate,
  oxalicAcid,
  potassiumHydrogenPhthalate,
  potassiumHydrogenTartrate,
  potassiumTetroxalate,
  sodiumOxalate,
  succinicAcid,
} from '../sparingly-soluble.js';

/** Oxalic acid and the oxalates. */
export const oxalic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'oxalic',
  name: 'oxalic acid',
  solids: [calciumOxalate, bariumOxalate, oxalicAcid, sodiumOxalate, potassiumTetroxalate],
  species: [
    { formula: 'H2C2O4', charge: 0 },
    { formula: 'HC2O4-', charge: -1 },
    { formula: 'C2O4(2-)', charge: -2 },
  ],
  // The evaluation in use and the solubility cells of 1991 differ by 0.009 at most in pKa, less than either scatters,
  // so the evaluation stays.
  steps: [
    {
      pKa: 1.27,
      dH: -3.9,
      dCp: -231,
      source: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'IUPAC Digitized pKa Dataset: 1.252 (reliable), CRC 1.25',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'Kettler, Palmer and Wesolowski 1991, abstract: dH -4.1 ± 1.1, dCp -168 ± 41',
      },
    },
    {
      pKa: 4.266,
      dH: -7,
      dCp: -231,
      source: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'reproduces pH(S) 1.679 of the tetroxalate standard to 0.005 together with step 1',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'Kettler, Palmer and Wesolowski 1991, abstract: dH -6.8 ± 0.5, dCp -261 ± 12; the same dCp for both steps is to be checked',
      },
    },
  ],
  alternatives: [
    {
      step: 2,
      pKa: 3.81,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Organic Acids and Bases',
        checked: 'LibreTexts table E1',
      },
      note: 'mixed constant at I = 0.1 according to IUPAC Digitized pKa Dataset',
    },
    {
      step: 1,
      pKa: 1.277,
      source: {
        kind: 'published',
        work: 'kettler-1991',
        where: 'abstract, ± 0.010',
        checked: 'abstract, digitalcommons.unl.edu/geosciencefacpub/195',
      },
    },
    {
      step: 2,
      pKa: 4.275,
      source: {
        kind: 'published',
        work: 'kettler-1991',
        where: 'abstract, ± 0.006',
        checked: 'abstract, digitalcommons.unl.edu/geosciencefacpub/195',
      },
    },
  ],
  notes: [
    'The 3.81 of the CRC Handbook for the second step is a mixed constant at an ionic strength of 0.1 mol/L.',
  ],
  hazard: 'Harmful if swallowed and on the skin; damages eyes and kidneys.',
});

/** Malonic acid and the malonates. */
export const malonic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'malonic',
  name: 'malonic acid',
  species: [
    { formula: 'H2C3H2O4', charge: 0 },
    { formula: 'HC3H2O4-', charge: -1 },
    { formula: 'C3H2O4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 2.847,
      dH: 0.1,
      dCp: -262,
      source: {
        kind: 'published',
        work: 'das-ives-1961',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 2.847)',
      },
      thermalSource: {
        kind: 'published',
        work: 'das-ives-1961',
        where: 'value at 25 °C',
        checked: 'fit of two 5 to 45 °C series in IUPAC Digitized pKa Dataset (rms 0.0008)',
      },
    },
    {
      pKa: 5.696,
      dH: -4.9,
      dCp: -231,
      source: {
        kind: 'published',
        work: 'das-ives-1961',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 5.696)',
      },
      thermalSource: {
        kind: 'published',
        work: 'das-ives-1961',
        where: 'value at 25 °C',
        checked: 'fit of two 5 to 45 °C series in IUPAC Digitized pKa Dataset (rms 0.0006)',
      },
    },
  ],
});

/** Succinic acid and the succinates. */
export const succinic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'succinic',
  name: 'succinic acid',
  solids: [succinicAcid],
  species: [
    { formula: 'H2C4H4O4', charge: 0 },
    { formula: 'HC4H4O4-', charge: -1 },
    { formula: 'C4H4O4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 4.207,
      dH: 3,
      dCp: -121,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'succinic acid',
        checked: 'IUPAC Digitized pKa Dataset: 4.206',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 5.636,
      dH: -0.5,
      dCp: -217,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'succinic acid',
        checked: 'IUPAC Digitized pKa Dataset: 5.639',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
});

/** Malic acid and the malates. */
export const malic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'malic',
  name: 'malic acid',
  species: [
    { formula: 'H2C4H4O5', charge: 0 },
    { formula: 'HC4H4O5-', charge: -1 },
    { formula: 'C4H4O5(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 3.459,
      dH: 2.9,
      dCp: -155,
      source: {
        kind: 'published',
        work: 'eden-bates-1959',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 3.459)',
      },
      thermalSource: {
        kind: 'published',
        work: 'eden-bates-1959',
        where: 'value at 25 °C',
        checked: 'fit of the 0 to 50 °C series in IUPAC Digitized pKa Dataset (rms 0.002)',
      },
    },
    {
      pKa: 5.097,
      dH: -1.2,
      dCp: -215,
      source: {
        kind: 'published',
        work: 'eden-bates-1959',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 5.097)',
      },
      thermalSource: {
        kind: 'published',
        work: 'eden-bates-1959',
        where: 'value at 25 °C',
        checked: 'fit of the 0 to 50 °C series in IUPAC Digitized pKa Dataset (rms 0.002)',
      },
    },
  ],
});

/** Tartaric acid and the tartrates. */
export const tartaric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'tartaric',
  name: 'L-(+)-tartaric acid',
  solids: [calciumTartrate, potassiumHydrogenTartrate],
  species: [
    { formula: 'H2C4H4O6', charge: 0 },
    { formula: 'HC4H4O6-', charge: -1 },
    { formula: 'C4H4O6(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 3.036,
      dH: 3.19,
      dCp: -147,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'tartaric acid',
        checked:
          'IUPAC Digitized pKa Dataset: 3.03 (approximate); reproduces pH(S) 3.557 of saturated KH tartrate to 0.002',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      // The 4.46 of the data set is graded approximate; 4.36 ± 0.02 was measured in 1994.
      pKa: 4.366,
      dH: 0.93,
      dCp: -218,
      source: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'IUPAC Digitized pKa Dataset: 4.46 (approximate)',
      },
    },
  ],
  alternatives: [
    {
      step: 2,
      pKa: 4.36,
      source: {
        kind: 'published',
        work: 'tartrate-dalton-1994',
        where: 'abstract, log β1, ± 0.02',
        checked: 'abstract',
      },
    },
    {
      step: 1,
      pKa: 3,
      source: {
        kind: 'published',
        work: 'tartrate-dalton-1994',
        where: 'abstract, log β2 7.36 less log β1 4.36',
        checked: 'abstract',
      },
    },
  ],
});

/** Maleic acid (cis-butenedioic) and the maleates. */
export const maleic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'maleic',
  name: 'maleic acid',
  species: [
    { formula: 'H2C4H2O4', charge: 0 },
    { formula: 'HC4H2O4-', charge: -1 },
    { formula: 'C4H2O4(2-)', charge: -2 },
  ],
  // Step 1 stays at 1.92: the authors of 2.038 call their own value higher than the accepted one.
  steps: [
    {
      pKa: 1.92,
      dH: 1.1,
      dCp: -21,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 6.27,
      dH: -3.6,
      dCp: -31,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 2,
      pKa: 6.23,
      source: { kind: 'fromMemory', work: 'crc-handbook', note: 'not checked against the page' },
    },
    {
      step: 1,
      pKa: 2.038,
      source: {
        kind: 'published',
        work: 'maleic-bits',
        where: 'abstract, ± 0.008',
        checked: 'BITS Pilani repository, item 18980',
      },
      note: 'for an ion size of 5 Å; its authors call it higher than the accepted value',
    },
  ],
  notes: ['Goldberg et al. give the dCp values as approximate.'],
});

/** Fumaric acid (trans-butenedioic) and the fumarates. */
export const fumaric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'fumaric',
  name: 'fumaric acid',
  species: [
    { formula: 'H2C4H2O4', charge: 0 },
    { formula: 'HC4H2O4-', charge: -1 },
    { formula: 'C4H2O4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 3.095,
      source: {
        kind: 'published',
        work: 'dahlgren-long-1960',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 3.095)',
      },
    },
    {
      pKa: 4.602,
      source: {
        kind: 'published',
        work: 'dahlgren-long-1960',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 4.602)',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 3.02,
      source: { kind: 'fromMemory', work: 'crc-handbook', note: 'not checked against the page' },
      note: '18 °C',
    },
    {
      step: 2,
      pKa: 4.38,
      source: { kind: 'fromMemory', work: 'crc-handbook', note: 'not checked against the page' },
      note: '18 °C',
    },
    {
      step: 1,
      pKa: 3.053,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
    {
      step: 2,
      pKa: 4.494,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
  ],
  notes: ['Handbooks disagree: 3.02 and 4.38 (18 °C) in the CRC Handbook, 3.05 and 4.49 in Martell & Smith.'],
});

/** Adipic acid and the adipates. */
export const adipic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'adipic',
  name: 'adipic acid',
  species: [
    { formula: 'H2C6H8O4', charge: 0 },
    { formula: 'HC6H8O4-', charge: -1 },
    { formula: 'C6H8O4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 4.42,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'adipic acid',
        checked: 'LibreTexts table E5',
      },
    },
    {
      pKa: 5.42,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'adipic acid',
        checked: 'LibreTexts table E5',
      },
    },
  ],
});

/** Phthalic acid and the phthalates. */
export const phthalic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'phthalic',
  name: 'o-phthalic acid',
  solids: [potassiumHydrogenPhthalate],
  species: [
    { formula: 'H2C8H4O4', charge: 0 },
    { formula: 'HC8H4O4-', charge: -1 },
    { formula: 'C8H4O4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 2.95,
      dH: -2.7,
      dCp: -91,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'CRC gives 2.89 to 2.943' },
    },
    {
      pKa: 5.408,
      dH: -2.17,
      dCp: -295,
      source: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'reproduces pH(S) 4.005 of 0.05 m KHP to 0.007 together with step 1',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 2.89,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Organic Acids and Bases',
        checked: 'table of acids at 25 °C (copy of a general chemistry appendix)',
      },
    },
    {
      step: 2,
      pKa: 5.51,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Organic Acids and Bases',
        checked: 'table of acids at 25 °C (copy of a general chemistry appendix)',
      },
    },
  ],
  notes: [
    'The widely copied 5.51 for the second step would put the pH of 0.05 mol/kg potassium hydrogen phthalate about 0.02 too high.',
  ],
});

/** Citric acid and the citrates. */
export const citric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'citric',
  name: 'citric acid',
  solids: [calciumCitrate],
  species: [
    { formula: 'H3C6H5O7', charge: 0 },
    { formula: 'H2C6H5O7-', charge: -1 },
    { formula: 'HC6H5O7(2-)', charge: -2 },
    { formula: 'C6H5O7(3-)', charge: -3 },
  ],
  steps: [
    {
      pKa: 3.128,
      dH: 4.07,
      dCp: -131,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'citric acid',
        checked: 'LibreTexts table E1: 3.13',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 4.761,
      dH: 2.23,
      dCp: -178,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'citric acid',
        checked: 'LibreTexts table E1: 4.76',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 6.396,
      dH: -3.38,
      dCp: -254,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'citric acid',
        checked: 'LibreTexts table E1: 6.40',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
});
