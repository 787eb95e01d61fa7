import { cataloguedProtolyte } from '../catalogued.js';

// Labels of the zwitterionic buffers: the bare abbreviation is the form that is sold; `HEPESH+` has one proton more
// than that, `HEPES-` one fewer.

/** Tris, tris(hydroxymethyl)aminomethane (THAM, trometamol), protonated and as sold. */
export const tris = /*#__PURE__*/ cataloguedProtolyte({
  id: 'tris',
  name: 'Tris',
  species: [
    { formula: '(HOCH2)3CNH3+', charge: 1 },
    { formula: '(HOCH2)3CNH2', charge: 0 },
  ],
  steps: [
    {
      pKa: 8.072,
      dH: 47.45,
      dCp: -59,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'Tris',
        checked:
          'IUPAC Digitized pKa Dataset: 8.0746 (Bates & Hetzer 1961) and 8.0686 (Datta et al. 1963), both reliable',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'Tris',
        checked: 'reproduces both 0 to 60 °C series in IUPAC Digitized pKa Dataset within 0.007',
      },
    },
  ],
});

/** Bis-Tris, bis(2-hydroxyethyl)aminotris(hydroxymethyl)methane, protonated and as sold. */
export const bisTris = /*#__PURE__*/ cataloguedProtolyte({
  id: 'bisTris',
  name: 'Bis-Tris',
  species: [
    { formula: '(HOCH2)3CNH(CH2CH2OH)2+', charge: 1 },
    { formula: '(HOCH2)3CN(CH2CH2OH)2', charge: 0 },
  ],
  // dCp stays with the evaluation: the other comes from cells, where it is a second derivative of pKa, and moves pKa
  // by less than 0.002 at 50 °C.
  steps: [
    {
      pKa: 6.484,
      dH: 28.4,
      dCp: 27,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'value at 25 °C',
        checked: 'Roy et al., J. Biophys. Chem. 5, 118 (2014), abstract: 6.4828 ± 0.0005',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'Roy et al., J. Biophys. Chem. 5, 118 (2014), abstract: dH 28.273, dCp 36',
      },
    },
  ],
});

/** MES, 2-(N-morpholino)ethanesulfonic acid. */
export const mes = /*#__PURE__*/ cataloguedProtolyte({
  id: 'mes',
  name: 'MES',
  species: [
    { formula: 'MES', charge: 0 },
    { formula: 'MES-', charge: -1 },
  ],
  steps: [
    {
      pKa: 6.27,
      dH: 14.8,
      dCp: 5,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'MES',
        checked: 'abstract of Vega & Bates 1976 gives 6.270; Roy et al. 1997 6.269',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** ADA, N-(2-acetamido)iminodiacetic acid. */
export const ada = /*#__PURE__*/ cataloguedProtolyte({
  id: 'ada',
  name: 'ADA',
  species: [
    { formula: 'ADAH+', charge: 1 },
    { formula: 'ADA', charge: 0 },
    { formula: 'ADA-', charge: -1 },
    { formula: 'ADA(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 1.59,
      source: { kind: 'published', work: 'goldberg-2002', where: 'p. 242, ADA' },
    },
    {
      pKa: 2.48,
      dH: 16.7,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'p. 242, ADA, mean of 2.51, 2.52, 2.34, 2.56',
      },
      thermalSource: { kind: 'published', work: 'goldberg-2002', where: 'p. 242, ADA' },
    },
    {
      pKa: 6.844,
      dH: 12.23,
      dCp: -144,
      source: { kind: 'published', work: 'goldberg-2002', where: 'p. 242, ADA' },
    },
  ],
});

/** ACES, N-(2-acetamido)-2-aminoethanesulfonic acid. */
export const aces = /*#__PURE__*/ cataloguedProtolyte({
  id: 'aces',
  name: 'ACES',
  species: [
    { formula: 'ACES', charge: 0 },
    { formula: 'ACES-', charge: -1 },
  ],
  steps: [
    {
      pKa: 6.847,
      dH: 30.43,
      dCp: -49,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'ACES',
        checked: "Roy et al. 1997 (ACES, CHES) pK2(T) equation in the article's abstract gives 6.8468",
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'ACES',
        checked: 'reproduces pK2 = 2548.60/T - 20.03159 + 3.2172 ln T (5 to 55 °C) within 0.003',
      },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** PIPES, piperazine-1,4-bis(2-ethanesulfonic acid). */
export const pipes = /*#__PURE__*/ cataloguedProtolyte({
  id: 'pipes',
  name: 'PIPES',
  species: [
    { formula: 'PIPES', charge: 0 },
    { formula: 'PIPES-', charge: -1 },
    { formula: 'PIPES(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 2.7,
      source: { kind: 'fromMemory', note: 'approximate value of suppliers, without a primary source' },
    },
    {
      pKa: 7.141,
      dH: 11.2,
      dCp: 22,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
    'The first step is approximate.',
  ],
});

/** MOPSO, 3-(N-morpholino)-2-hydroxypropanesulfonic acid. */
export const mopso = /*#__PURE__*/ cataloguedProtolyte({
  id: 'mopso',
  name: 'MOPSO',
  species: [
    { formula: 'MOPSO', charge: 0 },
    { formula: 'MOPSO-', charge: -1 },
  ],
  // dCp stays with the evaluation: the other comes from cells, where it is a second derivative of pKa, and moves pKa
  // by less than 0.01 from 10 to 40 °C. So does dH: the slope of those cells, 0.88 kJ/mol more, moves pKa by 0.012 at
  // 50 °C. Their 6.877 is older than the 6.90 of the evaluation, which stays.
  steps: [
    {
      pKa: 6.9,
      dH: 25,
      dCp: 38,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'MOPSO',
        checked:
          'Sigma buffer reference table 6.90; the equation in the abstract of Roy et al. 1997 gives 6.877',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'the equation in the abstract of J. Chem. Thermodyn. 29, 1323 (1997) gives dH 25.88, dCp 59',
      },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** BES, N,N-bis(2-hydroxyethyl)-2-aminoethanesulfonic acid. */
export const bes = /*#__PURE__*/ cataloguedProtolyte({
  id: 'bes',
  name: 'BES',
  species: [
    { formula: 'BES', charge: 0 },
    { formula: 'BES-', charge: -1 },
  ],
  steps: [
    {
      pKa: 7.187,
      dH: 24.25,
      dCp: -2,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'BES',
        checked: 'abstract of Vega & Bates 1976 gives 7.187',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** MOPS, 3-(N-morpholino)propanesulfonic acid. */
export const mops = /*#__PURE__*/ cataloguedProtolyte({
  id: 'mops',
  name: 'MOPS',
  species: [
    { formula: 'MOPS', charge: 0 },
    { formula: 'MOPS-', charge: -1 },
  ],
  steps: [
    {
      pKa: 7.184,
      dH: 21.1,
      dCp: 25,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'MOPS',
        checked: 'abstract of Roy et al. 1998 gives 7.18 ± 0.001 at 25 °C and 7.044 at 37 °C',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'gives 7.040 at 37 °C against the published 7.044',
      },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** TES, N-tris(hydroxymethyl)methyl-2-aminoethanesulfonic acid. */
export const tes = /*#__PURE__*/ cataloguedProtolyte({
  id: 'tes',
  name: 'TES',
  species: [
    { formula: 'TES', charge: 0 },
    { formula: 'TES-', charge: -1 },
  ],
  steps: [
    {
      pKa: 7.55,
      dH: 32.13,
      dCp: 0,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'TES',
        checked: 'abstract of Vega & Bates 1976 gives 7.550',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** HEPES, 4-(2-hydroxyethyl)piperazine-1-ethanesulfonic acid. */
export const hepes = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hepes',
  name: 'HEPES',
  species: [
    { formula: 'HEPESH+', charge: 1 },
    { formula: 'HEPES', charge: 0 },
    { formula: 'HEPES-', charge: -1 },
  ],
  steps: [
    {
      pKa: 3,
      dH: 8.4,
      source: {
        kind: 'fromMemory',
        note: 'approximate value of suppliers, without a primary source; dH 8.4 confirmed from the abstract of a 2006 Thermochimica Acta paper',
      },
    },
    {
      pKa: 7.564,
      dH: 20.4,
      dCp: 47,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'HEPES',
        checked: 'abstract of Vega & Bates 1976 gives 7.565',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'calorimetric dH 20.8 in water confirmed from the abstract of a 2006 Thermochimica Acta paper',
      },
    },
  ],
  notes: ['Sold as the zwitterion that is left after step 1. The first step is approximate.'],
});

/** EPPS (HEPPS), 4-(2-hydroxyethyl)piperazine-1-propanesulfonic acid. */
export const epps = /*#__PURE__*/ cataloguedProtolyte({
  id: 'epps',
  name: 'EPPS',
  species: [
    { formula: 'EPPS', charge: 0 },
    { formula: 'EPPS-', charge: -1 },
  ],
  steps: [
    {
      pKa: 7.957,
      dH: 21.3,
      dCp: 48,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'EPPS',
        checked: 'abstract of Roy et al. 1997 (pK2 = 359.23/T + 21.0324 - 2.50647 ln T) gives 7.956',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'EPPS',
        checked: 'reproduces that equation (5 to 55 °C) within 0.003',
      },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** Tricine, N-tris(hydroxymethyl)methylglycine. */
export const tricine = /*#__PURE__*/ cataloguedProtolyte({
  id: 'tricine',
  name: 'Tricine',
  species: [
    { formula: 'TricineH+', charge: 1 },
    { formula: 'Tricine', charge: 0 },
    { formula: 'Tricine-', charge: -1 },
  ],
  steps: [
    {
      pKa: 2.023,
      dH: 5.85,
      dCp: -196,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 8.135,
      dH: 31.37,
      dCp: -53,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
});

/** Bicine, N,N-bis(2-hydroxyethyl)glycine. */
export const bicine = /*#__PURE__*/ cataloguedProtolyte({
  id: 'bicine',
  name: 'Bicine',
  species: [
    { formula: 'BicineH+', charge: 1 },
    { formula: 'Bicine', charge: 0 },
    { formula: 'Bicine-', charge: -1 },
  ],
  steps: [
    {
      pKa: 1.81,
      source: {
        kind: 'published',
        work: 'perrin-1965',
        where: 'Bicine',
        checked: 'IUPAC Digitized pKa Dataset (approximate, 1.81 at C = 0.02 M)',
      },
    },
    {
      pKa: 8.334,
      dH: 26.34,
      dCp: 0,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'Bicine',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 8.3327); abstract of Roy et al. 2006 gives 8.333',
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'Bicine',
        checked:
          'reproduces the Datta, Grzybowski & Bates 1964 0 to 55 °C series in IUPAC Digitized pKa Dataset within 0.004; 8.155 at 37 °C against 8.156 published by Roy et al. 2006',
      },
    },
  ],
  notes: ['The first step is approximate.'],
});

/** TAPS, N-tris(hydroxymethyl)methyl-3-aminopropanesulfonic acid. */
export const taps = /*#__PURE__*/ cataloguedProtolyte({
  id: 'taps',
  name: 'TAPS',
  species: [
    { formula: 'TAPS', charge: 0 },
    { formula: 'TAPS-', charge: -1 },
  ],
  // The 8.40 of a buffer table at 0.1 mol/L is 8.51 at zero ionic strength by the Davies law: it speaks for the cells,
  // not for 8.44. Calorimetry speaks for the dH of the evaluation, whose dCp goes with it; the slope of the cells and
  // their second derivative together make less than 0.001 in pKa at 50 °C.
  steps: [
    {
      pKa: 8.502,
      dH: 40.4,
      dCp: 15,
      source: {
        kind: 'published',
        work: 'roy-2006-taps',
        where: 'abstract, ± 0.0007',
        checked: 'abstract; Sigma buffer reference table gives 8.40 at I about 0.1',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'dH 40.1 by calorimetry, Thermochim. Acta 475, 22 (2008); 41.23 and dCp -52 by the equation in J. Chem. Thermodyn. 38, 413 (2006), both abstracts',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 8.44,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** CHES, 2-(N-cyclohexylamino)ethanesulfonic acid. */
export const ches = /*#__PURE__*/ cataloguedProtolyte({
  id: 'ches',
  name: 'CHES',
  species: [
    { formula: 'CHES', charge: 0 },
    { formula: 'CHES-', charge: -1 },
  ],
  steps: [
    {
      pKa: 9.394,
      dH: 39.55,
      dCp: 9,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'CHES',
        checked: "Roy et al. 1997 (ACES, CHES) pK2(T) equation in the article's abstract gives 9.3936",
      },
      thermalSource: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'CHES',
        checked: 'reproduces pK2 = 1917.66/T + 5.7940 - 0.4971 ln T (5 to 55 °C) within 0.001',
      },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});

/** CAPS, 3-(N-cyclohexylamino)propanesulfonic acid. */
export const caps = /*#__PURE__*/ cataloguedProtolyte({
  id: 'caps',
  name: 'CAPS',
  species: [
    { formula: 'CAPS', charge: 0 },
    { formula: 'CAPS-', charge: -1 },
  ],
  // dCp stays with the evaluation: the other comes from cells, where it is a second derivative of pKa, and moves pKa
  // by 0.006 at 50 °C.
  steps: [
    {
      pKa: 10.499,
      dH: 48.1,
      dCp: 57,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'value at 25 °C',
        checked: 'the equation in the abstract of J. Chem. Thermodyn. 29, 749 (1997) gives 10.499',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'the equation in the abstract of J. Chem. Thermodyn. 29, 749 (1997) gives dH 48.20, dCp 94',
      },
    },
  ],
  notes: [
    'The sulfonic acid group counts as fully ionised: the first form is the zwitterion that is sold as the free acid.',
  ],
});
