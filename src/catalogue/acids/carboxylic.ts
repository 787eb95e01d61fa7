import { cataloguedProtolyte } from '../catalogued.js';
import { benzoicAcid, salicylicAcid } from '../sparingly-soluble.js';

/** Formic acid and formate. */
export const formic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'formic',
  name: 'formic acid',
  species: [
    { formula: 'HCOOH', charge: 0 },
    { formula: 'HCOO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 3.752,
      dH: -0.05,
      dCp: -170,
      source: {
        kind: 'published',
        work: 'harned-embree-1934',
        where: 'value at 25 °C',
        checked: 'LibreTexts table E1: 3.75',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'harned-embree-1934',
        note: 'derived from the Harned-Embree parabola (minimum near 25 °C, 5.0e-5 per K²)',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 3.739,
      source: {
        kind: 'published',
        work: 'serjeant-dempsey-1979',
        where: 'formic acid',
        checked: 'IUPAC Digitized pKa Dataset (reliable, Prue & Read 1966)',
      },
    },
    {
      step: 1,
      pKa: 3.745,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
  ],
});

/** Acetic acid and acetate. */
export const acetic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'acetic',
  name: 'acetic acid',
  species: [
    { formula: 'CH3COOH', charge: 0 },
    { formula: 'CH3COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 4.756,
      dH: -0.41,
      dCp: -142,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'acetic acid',
        checked: 'LibreTexts table E1: 4.756; Martell & Smith give 4.757',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
});

/** Propanoic acid and propanoate. */
export const propanoic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'propanoic',
  name: 'propanoic acid',
  species: [
    { formula: 'C2H5COOH', charge: 0 },
    { formula: 'C2H5COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 4.874,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'propanoic acid',
        checked: 'Sydney data sheet: 4.87',
      },
    },
  ],
});

/** Chloroacetic acid and chloroacetate. */
export const chloroacetic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'chloroacetic',
  name: 'chloroacetic acid',
  species: [
    { formula: 'CH2ClCOOH', charge: 0 },
    { formula: 'CH2ClCOO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 2.866,
      dH: -5.1,
      dCp: -111,
      source: {
        kind: 'published',
        work: 'smolyakov-primanchuk-1966',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 2.866)',
      },
      thermalSource: {
        kind: 'published',
        work: 'smolyakov-primanchuk-1966',
        where: 'value at 25 °C',
        checked: 'fit of the 15 to 90 °C series in IUPAC Digitized pKa Dataset (rms 0.003)',
      },
    },
  ],
});

/** Dichloroacetic acid and dichloroacetate. */
export const dichloroacetic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'dichloroacetic',
  name: 'dichloroacetic acid',
  species: [
    { formula: 'CHCl2COOH', charge: 0 },
    { formula: 'CHCl2COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 1.35,
      dH: -7.8,
      source: {
        kind: 'published',
        work: 'kurz-farrar-1969',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (approximate, 1.35); CRC also 1.35',
      },
      thermalSource: {
        kind: 'published',
        work: 'kurz-farrar-1969',
        where: 'value at 25 °C',
        checked: 'fit of the 15 to 50 °C series in IUPAC Digitized pKa Dataset (rms 0.003)',
      },
    },
  ],
});

/** Lactic acid and lactate. */
export const lactic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'lactic',
  name: 'lactic acid',
  species: [
    { formula: 'CH3CH(OH)COOH', charge: 0 },
    { formula: 'CH3CH(OH)COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 3.86,
      dH: -0.33,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'lactic acid',
        checked: 'Sydney data sheet: 3.86',
      },
      thermalSource: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
  ],
});

/** Glycolic acid and glycolate. */
export const glycolic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'glycolic',
  name: 'glycolic acid',
  species: [
    { formula: 'HOCH2COOH', charge: 0 },
    { formula: 'HOCH2COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 3.831,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'value at 25 °C',
        checked:
          'Wikipedia, Glycolic acid, prints 3.83; Kilpatrick and Eanes 1953, first page, Ka 1.51e-4 and 1.45e-4, so 3.821 and 3.839',
      },
    },
  ],
});

/** Benzoic acid and benzoate. */
export const benzoic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'benzoic',
  name: 'benzoic acid',
  solids: [benzoicAcid],
  species: [
    { formula: 'C6H5COOH', charge: 0 },
    { formula: 'C6H5COO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 4.204,
      dH: 0.4,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'benzoic acid',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 4.204) and LibreTexts table E1',
      },
      thermalSource: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
  ],
});

/** Salicylic acid and the salicylates. */
export const salicylic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'salicylic',
  name: 'salicylic acid',
  solids: [salicylicAcid],
  species: [
    { formula: 'HOC6H4COOH', charge: 0 },
    { formula: 'HOC6H4COO-', charge: -1 },
    { formula: 'OC6H4COO(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 2.97,
      source: {
        kind: 'published',
        work: 'ernst-menashi-1963',
        where: 'value at 25 °C',
        checked: 'IUPAC Digitized pKa Dataset (reliable, 2.97)',
      },
    },
    {
      pKa: 13.6,
      standardUncertainty: 0.3,
      source: {
        kind: 'published',
        work: 'serjeant-dempsey-1979',
        where: 'salicylic acid',
        checked: 'IUPAC Digitized pKa Dataset (uncertain, 13.6)',
      },
    },
  ],
  notes: ['The standard uncertainty is a judgement from the spread of the sources.'],
});
