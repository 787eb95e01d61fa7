import { cataloguedProtolyte } from '../catalogued.js';

/** Glycine: cation, zwitterion (as sold), anion. */
export const glycine = /*#__PURE__*/ cataloguedProtolyte({
  id: 'glycine',
  name: 'glycine',
  species: [
    { formula: 'H3NCH2COOH+', charge: 1 },
    { formula: 'H3NCH2COO', charge: 0 },
    { formula: 'H2NCH2COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 2.351,
      dH: 4,
      dCp: -139,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'glycine',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 2.3503 to 2.3508)',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'glycine',
        checked: 'reproduces the King 1951 10 to 50 °C series in IUPAC Digitized pKa Dataset within 0.003',
      },
    },
    {
      pKa: 9.78,
      dH: 44.2,
      dCp: -57,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'glycine',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 9.7796)',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'glycine',
        checked: 'reproduces the King 1951 10 to 50 °C series in IUPAC Digitized pKa Dataset within 0.003',
      },
    },
  ],
});

/** Alanine: cation, zwitterion (as sold), anion. */
export const alanine = /*#__PURE__*/ cataloguedProtolyte({
  id: 'alanine',
  name: 'L-alanine',
  species: [
    { formula: 'CH3CH(NH3)COOH+', charge: 1 },
    { formula: 'CH3CH(NH3)COO', charge: 0 },
    { formula: 'CH3CH(NH2)COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 2.348,
      dH: 3.2,
      dCp: -158,
      source: {
        kind: 'published',
        work: 'smith-1937',
        where: 'value at 25 °C',
        checked: 'LibreTexts table E5: 2.348',
      },
      thermalSource: {
        kind: 'published',
        work: 'smith-1937',
        where: 'value at 25 °C',
        checked: 'fit of the 1 to 50 °C series in IUPAC Digitized pKa Dataset (rms 0.002)',
      },
    },
    {
      pKa: 9.867,
      dH: 46,
      dCp: -71,
      source: {
        kind: 'published',
        work: 'smith-1937',
        where: 'value at 25 °C',
        checked: 'LibreTexts table E5: 9.867',
      },
      thermalSource: {
        kind: 'published',
        work: 'smith-1937',
        where: 'value at 25 °C',
        checked: 'fit of the 1 to 50 °C series in IUPAC Digitized pKa Dataset (rms 0.001)',
      },
    },
  ],
});

/** Histidine, from the dication on. */
export const histidine = /*#__PURE__*/ cataloguedProtolyte({
  // Tables of amino acids mix media and state no ionic strength (1.80, 6.04 and 9.17 to 9.33): the evaluation stays.
  id: 'histidine',
  name: 'L-histidine',
  species: [
    { formula: 'C6H11N3O2(2+)', charge: 2 },
    { formula: 'C6H10N3O2+', charge: 1 },
    { formula: 'C6H9N3O2', charge: 0 },
    { formula: 'C6H8N3O2-', charge: -1 },
  ],
  steps: [
    {
      pKa: 1.5,
      dH: 3.6,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'CRC-type table gives 1.80' },
    },
    {
      pKa: 6.07,
      dH: 29.5,
      dCp: 176,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'CRC-type table gives 6.04' },
    },
    {
      pKa: 9.34,
      dH: 43.8,
      dCp: -233,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'L-histidine',
        checked: 'amino-acid table of Keene State College (CRC-type values): 9.33',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 1.8,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 2,
      pKa: 6.04,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 3,
      pKa: 9.33,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 1,
      pKa: 1.82,
      source: {
        kind: 'published',
        work: 'biochemistry-tables',
        where: 'tables of pK',
        checked: 'scribd.com document 327935375',
      },
      note: 'ionic strength not stated',
    },
    {
      step: 2,
      pKa: 6,
      source: {
        kind: 'published',
        work: 'biochemistry-tables',
        where: 'tables of pK',
        checked: 'scribd.com document 327935375',
      },
      note: 'ionic strength not stated',
    },
    {
      step: 3,
      pKa: 9.17,
      source: {
        kind: 'published',
        work: 'biochemistry-tables',
        where: 'tables of pK',
        checked: 'scribd.com document 327935375',
      },
      note: 'ionic strength not stated',
    },
  ],
});

/** Glutamic acid, from the cation on. */
export const glutamicAcid = /*#__PURE__*/ cataloguedProtolyte({
  // The least certain family: from memory, and 0.1 to 0.5 above what others print at other or no stated ionic strength.
  id: 'glutamicAcid',
  name: 'L-glutamic acid',
  species: [
    { formula: 'C5H10NO4+', charge: 1 },
    { formula: 'C5H9NO4', charge: 0 },
    { formula: 'C5H8NO4-', charge: -1 },
    { formula: 'C5H7NO4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 2.23,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
    {
      pKa: 4.42,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
    {
      pKa: 9.95,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 2.1,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 2,
      pKa: 4.07,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 3,
      pKa: 9.47,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 1,
      pKa: 2.13,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'L-glutamic acid',
        checked: 'IUPAC Digitized pKa Dataset',
      },
    },
    {
      step: 2,
      pKa: 4.31,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'L-glutamic acid',
        checked: 'IUPAC Digitized pKa Dataset',
      },
    },
    {
      step: 3,
      pKa: 9.76,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'L-glutamic acid',
        checked: 'IUPAC Digitized pKa Dataset',
      },
    },
    {
      step: 1,
      pKa: 2.19,
      source: {
        kind: 'published',
        work: 'biochemistry-tables',
        where: 'tables of pK',
        checked: 'page at buffalobrewingstl.com',
      },
      note: 'ionic strength not stated',
    },
    {
      step: 2,
      pKa: 4.25,
      source: {
        kind: 'published',
        work: 'biochemistry-tables',
        where: 'tables of pK',
        checked: 'page at buffalobrewingstl.com',
      },
      note: 'ionic strength not stated',
    },
    {
      step: 3,
      pKa: 9.67,
      source: {
        kind: 'published',
        work: 'biochemistry-tables',
        where: 'tables of pK',
        checked: 'page at buffalobrewingstl.com',
      },
      note: 'ionic strength not stated',
    },
  ],
  notes: [
    'The 2.10, 4.07 and 9.47 of the CRC Handbook are concentration constants at finite ionic strength.',
  ],
});

/** Lysine, from the dication on. */
export const lysine = /*#__PURE__*/ cataloguedProtolyte({
  id: 'lysine',
  name: 'L-lysine',
  species: [
    { formula: 'C6H16N2O2(2+)', charge: 2 },
    { formula: 'C6H15N2O2+', charge: 1 },
    { formula: 'C6H14N2O2', charge: 0 },
    { formula: 'C6H13N2O2-', charge: -1 },
  ],
  steps: [
    {
      pKa: 2.16,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      pKa: 9.06,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked:
          'amino-acid table of Keene State College (CRC-type values); IUPAC Digitized pKa Dataset 9.06',
      },
    },
    {
      pKa: 10.54,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked:
          'amino-acid table of Keene State College (CRC-type values); IUPAC Digitized pKa Dataset 10.54',
      },
    },
  ],
});

/** Cysteine, from the cation on. */
export const cysteine = /*#__PURE__*/ cataloguedProtolyte({
  // Tables of amino acids mix media and state no ionic strength (1.92 and 10.70): the evaluation stays.
  id: 'cysteine',
  name: 'L-cysteine',
  species: [
    { formula: 'C3H8NO2S+', charge: 1 },
    { formula: 'C3H7NO2S', charge: 0 },
    { formula: 'C3H6NO2S-', charge: -1 },
    { formula: 'C3H5NO2S(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 1.71,
      dH: -0.6,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'L-cysteine',
        checked: 'IUPAC Digitized pKa Dataset: 1.71 (uncertain)',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 8.36,
      dH: 36.1,
      dCp: -66,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'L-cysteine',
        checked: 'IUPAC Digitized pKa Dataset: 8.37 to 8.39',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 10.75,
      dH: 34.1,
      dCp: -204,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'L-cysteine',
        checked: 'IUPAC Digitized pKa Dataset: 10.70 to 10.76',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 1.92,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 2,
      pKa: 8.37,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
    {
      step: 3,
      pKa: 10.7,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Properties of Amino Acids',
        checked: 'amino-acid table of Keene State College (CRC-type values)',
      },
    },
  ],
});
