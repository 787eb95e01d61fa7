import { candidateList } from '../candidate-list.js';
import { cataloguedProtolyte } from '../catalogued.js';
import {
  bariumCarbonate,
  bariumHydrogenPhosphate,
  bariumSulfate,
  borax,
  boricAcid,
  calciumCarbonate,
  calciumFluoride,
  calciumHydrogenPhosphate,
  calciumPhosphate,
  calciumSulfate,
  disodiumHydrogenPhosphate,
  potassiumDihydrogenPhosphate,
  sodiumCarbonate,
  sodiumHydrogenCarbonate,
  sodiumSulfate,
  trisodiumPhosphate,
} from '../sparingly-soluble.js';
import { hazardPractice } from './hazard-practice.js';

/** Carbonic acid: dissolved carbon dioxide, hydrogencarbonate, carbonate. */
export const carbonic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'carbonic',
  name: 'carbonic acid',
  solids: [calciumCarbonate, bariumCarbonate, sodiumHydrogenCarbonate, sodiumCarbonate],
  species: [
    { formula: 'CO2(aq)', charge: 0 },
    { formula: 'HCO3-', charge: -1 },
    { formula: 'CO3(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 6.351,
      dH: 9.15,
      dCp: -371,
      log10K: {
        coefficients: [-356.3094, -0.06091964, 21834.37, 126.8339, -1684915],
        celsius: [0, 90],
        source: {
          kind: 'fromMemory',
          work: 'plummer-busenberg-1982',
          note: 'the coefficients of the equation for K1; they give the printed −6.35 at 25 °C',
        },
      },
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'carbonic acid',
        checked: 'LibreTexts table E1: 6.35',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'not checked against the page; agrees with the equations of Plummer & Busenberg (1982) within 0.006 in pKa 1 and 0.013 in pKa 2 from 0 to 50 °C',
      },
    },
    {
      pKa: 10.329,
      dH: 14.7,
      dCp: -249,
      log10K: {
        coefficients: [-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9],
        celsius: [0, 90],
        source: {
          kind: 'fromMemory',
          work: 'plummer-busenberg-1982',
          note: 'the coefficients of the equation for K2; they give the printed −10.33 at 25 °C',
        },
      },
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'carbonic acid',
        checked: 'LibreTexts table E1: 10.33',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'goldberg-2002',
        note: 'not checked against the page; agrees with the equations of Plummer & Busenberg (1982) within 0.006 in pKa 1 and 0.013 in pKa 2 from 0 to 50 °C',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 6.352,
      source: {
        kind: 'published',
        work: 'plummer-busenberg-1982',
        where: 'carbonic acid',
        checked: 'same value quoted in a published Na2CO3/HCl exercise (pKa1 6.352)',
      },
    },
    {
      step: 2,
      pKa: 10.329,
      source: {
        kind: 'published',
        work: 'plummer-busenberg-1982',
        where: 'carbonic acid',
        checked: 'same value quoted in a published Na2CO3/HCl exercise (pKa2 10.329)',
      },
    },
  ],
  notes: ['The first step is that of CO2(aq) and H2CO3 together, written CO2(aq).'],
});

/** Phosphoric acid and the phosphates. */
export const phosphoric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'phosphoric',
  name: 'phosphoric acid',
  solids: [
    calciumPhosphate,
    calciumHydrogenPhosphate,
    bariumHydrogenPhosphate,
    disodiumHydrogenPhosphate,
    trisodiumPhosphate,
    potassiumDihydrogenPhosphate,
  ],
  species: [
    { formula: 'H3PO4', charge: 0 },
    { formula: 'H2PO4-', charge: -1 },
    { formula: 'HPO4(2-)', charge: -2 },
    { formula: 'PO4(3-)', charge: -3 },
  ],
  steps: [
    {
      pKa: 2.148,
      dH: -8,
      dCp: -141,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'CRC gives 2.16' },
    },
    {
      pKa: 7.198,
      dH: 3.6,
      dCp: -230,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'phosphoric acid',
        checked:
          'Sydney data sheet: 7.20; CRC gives 7.21; with a Bates-Guggenheim activity model it reproduces pH(S) 6.865 of the 1:1 phosphate standard to 0.005',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      // 12.32 is of an older compilation; a data sheet lies on the other side, at 12.36.
      pKa: 12.35,
      dH: 16,
      dCp: -242,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'phosphoric acid',
        checked: 'Sydney data sheet: 12.36; CRC gives 12.32',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 2.16,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      step: 2,
      pKa: 7.21,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases',
        checked: 'LibreTexts table E1',
      },
    },
    {
      step: 3,
      pKa: 12.32,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases',
        checked: 'Calbiochem buffer booklet lists 12.32',
      },
    },
  ],
});

/** Sulfuric acid from hydrogensulfate on: its first proton is always lost. */
export const sulfuric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'sulfuric',
  name: 'sulfuric acid',
  solids: [calciumSulfate, bariumSulfate, sodiumSulfate],
  species: [
    { formula: 'HSO4-', charge: -1 },
    { formula: 'SO4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 1.987,
      dH: -22.4,
      dCp: -258,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'sulfuric acid',
        checked: 'LibreTexts table E1: 1.99',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  notes: ['The first step counts as complete in dilute water, so the family starts at HSO4-.'],
});

/** Sulfurous acid: dissolved sulfur dioxide, hydrogensulfite, sulfite. */
export const sulfurous = /*#__PURE__*/ cataloguedProtolyte({
  id: 'sulfurous',
  name: 'sulfurous acid',
  species: [
    { formula: 'SO2(aq)', charge: 0 },
    { formula: 'HSO3-', charge: -1 },
    { formula: 'SO3(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 1.857,
      dH: -17.8,
      dCp: -272,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'sulfurous acid',
        checked: 'LibreTexts table E1: 1.85',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 7.172,
      dH: -3.65,
      dCp: -262,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'sulfurous acid',
        checked: 'LibreTexts table E1: 7.2',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 1.9,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
    },
    {
      step: 2,
      pKa: 7.2,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
    },
  ],
  hazard: 'Acid sets sulfur dioxide free, which irritates the airways and may set off asthma.',
  notForBuffers: {
    reason: 'it gives off sulfur dioxide in acid',
    source: hazardPractice,
  },
});

/** Boric acid and borate. */
export const boric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'boric',
  name: 'boric acid',
  solids: [borax, boricAcid],
  species: [
    { formula: 'B(OH)3', charge: 0 },
    { formula: 'B(OH)4-', charge: -1 },
  ],
  steps: [
    {
      pKa: 9.237,
      dH: 13.8,
      dCp: -240,
      source: {
        kind: 'published',
        work: 'goldberg-2002',
        where: 'boric acid',
        checked: 'Sydney data sheet: 9.24; reproduces pH(S) 9.180 of 0.01 m borax to 0.004',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 9.27,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
      note: 'at 20 °C',
    },
  ],
  notes: [
    'Goldberg et al. give dCp as approximate.',
    'Polyborates form above about 0.025 mol/L of boron in all: for dilute solutions only.',
  ],
  hazard: 'May damage fertility and the unborn child.',
  veryHighConcern: candidateList,
});

/** Orthosilicic acid and the silicates. */
export const silicic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'silicic',
  name: 'orthosilicic acid',
  species: [
    { formula: 'Si(OH)4', charge: 0 },
    { formula: 'SiO(OH)3-', charge: -1 },
    { formula: 'SiO2(OH)2(2-)', charge: -2 },
  ],
  // Step 2 of 13.43 is an extrapolation to pure water from salt media; 13.1 comes from cells at low strength. Neither
  // is ever half ionised in a beaker.
  steps: [
    {
      pKa: 9.82,
      dH: 25.6,
      source: { kind: 'fromMemory', work: 'busey-mesmer-1977', note: 'not checked against the page' },
    },
    {
      pKa: 13.1,
      source: { kind: 'fromMemory', work: 'busey-mesmer-1977', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 9.9,
      source: { kind: 'fromMemory', work: 'crc-handbook', note: 'not checked against the page' },
      note: 'CRC value at 30 °C',
    },
    {
      step: 2,
      pKa: 11.8,
      source: { kind: 'fromMemory', work: 'crc-handbook', note: 'not checked against the page' },
      note: 'CRC value at 30 °C; not consistent with zero ionic strength data',
    },
    {
      step: 1,
      pKa: 9.84,
      source: { kind: 'published', work: 'sjoberg-1983', where: 'abstract', checked: 'abstract' },
      note: 'extrapolated to pure water',
    },
    {
      step: 2,
      pKa: 13.43,
      source: { kind: 'published', work: 'sjoberg-1983', where: 'abstract', checked: 'abstract' },
      note: 'extrapolated to pure water',
    },
  ],
  notes: ['Polymerises above about 2 mmol/L.'],
});

/** Arsenic acid and the arsenates. */
export const arsenic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'arsenic',
  // The compilations are older and state no medium: 0.1 to 0.3 lower in steps 2 and 3 than at zero ionic strength.
  name: 'arsenic acid',
  species: [
    { formula: 'H3AsO4', charge: 0 },
    { formula: 'H2AsO4-', charge: -1 },
    { formula: 'HAsO4(2-)', charge: -2 },
    { formula: 'AsO4(3-)', charge: -3 },
  ],
  steps: [
    {
      pKa: 2.25,
      dH: -7.8,
      source: {
        kind: 'published',
        work: 'raposo-2002',
        where: 'abstract, at zero ionic strength, ± 0.01',
        checked: 'abstract',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 7.06,
      dH: 1.7,
      source: {
        kind: 'published',
        work: 'raposo-2002',
        where: 'abstract, at zero ionic strength, ± 0.01',
        checked: 'abstract',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
    {
      pKa: 11.58,
      dH: 15.9,
      source: {
        kind: 'published',
        work: 'raposo-2002',
        where: 'abstract, at zero ionic strength, ± 0.01',
        checked: 'abstract',
      },
      thermalSource: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 2.26,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      step: 2,
      pKa: 6.76,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      step: 3,
      pKa: 11.29,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      step: 1,
      pKa: 2.24,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'arsenic acid',
        checked: 'LibreTexts table E5',
      },
    },
    {
      step: 2,
      pKa: 6.96,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'arsenic acid',
        checked: 'LibreTexts table E5',
      },
    },
    {
      step: 3,
      pKa: 11.5,
      source: {
        kind: 'published',
        work: 'martell-smith-1974',
        where: 'arsenic acid',
        checked: 'LibreTexts table E5',
      },
    },
    {
      step: 1,
      pKa: 2.31,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
      note: 'in use before 2.25',
    },
    {
      step: 2,
      pKa: 7.05,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
      note: 'in use before 7.06',
    },
    {
      step: 3,
      pKa: 11.9,
      source: { kind: 'fromMemory', work: 'goldberg-2002', note: 'not checked against the page' },
      note: 'in use before 11.58; every other evaluation is lower',
    },
  ],
  notes: ['Sources disagree by up to 0.6 in the third step.'],
  hazard: 'Very toxic and may cause cancer; very toxic to water life.',
  notForBuffers: {
    reason: 'it is very toxic and may cause cancer',
    source: hazardPractice,
  },
  veryHighConcern: candidateList,
});

/** Chromic acid, hydrogenchromate, chromate. */
export const chromic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'chromic',
  name: 'chromic acid',
  species: [
    { formula: 'H2CrO4', charge: 0 },
    { formula: 'HCrO4-', charge: -1 },
    { formula: 'CrO4(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 0.74,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      pKa: 6.49,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
  ],
  notes: ['The dimer Cr2O7(2-) is left out: keep chromium(VI) below about 1 mmol/L in all.'],
  hazard: 'Very toxic, may cause cancer, sensitises the skin; oxidises organic matter.',
  notForBuffers: {
    reason: 'it is very toxic and may cause cancer',
    source: hazardPractice,
  },
  veryHighConcern: candidateList,
});

/** Hydrofluoric acid and fluoride. */
export const hydrofluoric = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hydrofluoric',
  name: 'hydrofluoric acid',
  solids: [calciumFluoride],
  species: [
    { formula: 'HF', charge: 0 },
    { formula: 'F-', charge: -1 },
  ],
  steps: [
    {
      // The handbook's 3.20 is of an older compilation.
      pKa: 3.17,
      dH: -12.2,
      source: {
        kind: 'published',
        work: 'wagman-1982',
        where: 'hydrofluoric acid',
        checked: 'Sydney data sheet: 3.17',
      },
      thermalSource: { kind: 'fromMemory', work: 'wagman-1982', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 3.2,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
  ],
  notes: ['The complex HF2- (K about 3.9 L/mol) is left out.'],
  hazard:
    'Very toxic by every route. Burns may be painless at first and reach the bone; it attacks glass. Calcium gluconate gel must be at hand.',
  notForBuffers: {
    reason: 'it is very toxic through the skin and attacks glass',
    source: hazardPractice,
  },
});

/** Hypochlorous acid and hypochlorite. */
export const hypochlorous = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hypochlorous',
  name: 'hypochlorous acid',
  species: [
    { formula: 'HClO', charge: 0 },
    { formula: 'ClO-', charge: -1 },
  ],
  steps: [
    {
      pKa: 7.537,
      dH: 14.4,
      dCp: -289,
      source: {
        kind: 'published',
        work: 'morris-1966',
        where: 'value at 25 °C',
        checked: 'Sydney data sheet: 7.54',
      },
      thermalSource: {
        kind: 'fromMemory',
        work: 'morris-1966',
        note: 'derived from pKa = 3000.00/T - 10.0686 + 0.0253 T',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 7.4,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
  ],
  notes: ['The 7.40 of the CRC Handbook is 0.14 below the value of Morris, which most water chemistry uses.'],
  hazard:
    'Corrosive. With acid it gives chlorine, with ammonia chloramines, both toxic; very toxic to water life.',
  notForBuffers: {
    reason: 'it bleaches, decays, and gives off chlorine with acid',
    source: hazardPractice,
  },
});

/** Hydrogen cyanide and cyanide. */
export const hydrocyanic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hydrocyanic',
  name: 'hydrogen cyanide',
  species: [
    { formula: 'HCN', charge: 0 },
    { formula: 'CN-', charge: -1 },
  ],
  steps: [
    {
      pKa: 9.21,
      dH: 43.5,
      source: {
        kind: 'published',
        work: 'izatt-1962',
        where: 'value at 25 °C',
        checked: 'CRC Handbook, 85th to 86th ed., page (values from Perrin 1982) gives 9.21',
      },
      thermalSource: { kind: 'fromMemory', work: 'izatt-1962', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 9.22,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
    },
  ],
  hazard:
    'Very toxic, through the skin too. Never acidify a cyanide: below about pH 11 hydrogen cyanide escapes.',
  notForBuffers: {
    reason: 'it gives off hydrogen cyanide at every pH where it buffers',
    source: hazardPractice,
  },
});

/** Hydrogen sulfide, hydrogensulfide, sulfide. */
export const hydrogenSulfide = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hydrogenSulfide',
  name: 'hydrogen sulfide',
  species: [
    { formula: 'H2S', charge: 0 },
    { formula: 'HS-', charge: -1 },
    { formula: 'S(2-)', charge: -2 },
  ],
  steps: [
    {
      // The handbook's 7.05 is of an older compilation.
      pKa: 7.02,
      dH: 22.1,
      source: {
        kind: 'published',
        work: 'wagman-1982',
        where: 'hydrogen sulfide',
        checked: 'Sydney data sheet: 7.02',
      },
      thermalSource: { kind: 'fromMemory', work: 'wagman-1982', note: 'not checked against the page' },
    },
    {
      pKa: 19,
      standardUncertainty: 2,
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
      pKa: 7.05,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
    {
      step: 2,
      pKa: 12.89,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
      note: 'older value, considered wrong today',
    },
  ],
  notes: [
    'The second step is far outside the range of water and poorly known (12.9 to 19 in the literature).',
    'The standard uncertainty is a judgement from the spread of the sources.',
  ],
  hazard: 'Very toxic gas, set free by acid; at dangerous levels the nose no longer smells it.',
  notForBuffers: {
    reason: 'it gives off hydrogen sulfide where it buffers',
    source: hazardPractice,
  },
});

/** Nitrous acid and nitrite. */
export const nitrous = /*#__PURE__*/ cataloguedProtolyte({
  id: 'nitrous',
  name: 'nitrous acid',
  species: [
    { formula: 'HNO2', charge: 0 },
    { formula: 'NO2-', charge: -1 },
  ],
  steps: [
    {
      // 3.14 is of a sheet that names no origin; it stands for less than a compilation, but 3.15 is quoted beside it.
      pKa: 3.25,
      dH: 14.6,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
      thermalSource: { kind: 'fromMemory', work: 'wagman-1982', note: 'not checked against the page' },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 3.14,
      source: {
        kind: 'published',
        work: 'sydney-data-sheet',
        where: 'ionisation constants of acids at 298 K',
      },
    },
    {
      step: 1,
      pKa: 3.15,
      source: { kind: 'fromMemory', work: 'martell-smith-1974', note: 'not checked against the page' },
    },
  ],
  hazard:
    'Toxic if swallowed; acid sets nitrogen oxides free; with amines it forms nitrosamines, which may cause cancer.',
  notForBuffers: {
    reason: 'it decomposes and gives off nitrogen oxides in acid',
    source: hazardPractice,
  },
});

/** Iodic acid and iodate. */
export const iodic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'iodic',
  name: 'iodic acid',
  species: [
    { formula: 'HIO3', charge: 0 },
    { formula: 'IO3-', charge: -1 },
  ],
  steps: [
    {
      pKa: 0.78,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
  ],
});

/** Hydrogen peroxide and hydroperoxide. */
export const hydrogenPeroxide = /*#__PURE__*/ cataloguedProtolyte({
  id: 'hydrogenPeroxide',
  name: 'hydrogen peroxide',
  species: [
    { formula: 'H2O2', charge: 0 },
    { formula: 'HO2-', charge: -1 },
  ],
  steps: [
    {
      pKa: 11.62,
      source: {
        kind: 'published',
        work: 'crc-handbook',
        where: 'Dissociation Constants of Inorganic Acids and Bases, 85th to 86th ed.',
      },
    },
  ],
});

/** Sulfamic acid (amidosulfuric) and the sulfamates. */
export const sulfamic = /*#__PURE__*/ cataloguedProtolyte({
  id: 'sulfamic',
  name: 'sulfamic acid',
  species: [
    { formula: 'H3NSO3', charge: 0 },
    { formula: 'H2NSO3-', charge: -1 },
  ],
  steps: [
    {
      pKa: 0.99,
      source: {
        kind: 'fromMemory',
        work: 'king-1952',
        note: 'not checked against the page; Wikipedia prints 1.0',
      },
    },
  ],
  alternatives: [
    {
      step: 1,
      pKa: 0.996,
      source: {
        kind: 'published',
        work: 'wikipedia-sulfamic-acid',
        where: 'older copy, Ka = 1.01e-1',
        checked: 'the-uncensored-wiki.com',
      },
    },
  ],
  notes: ['Its solutions turn slowly to hydrogen sulfate and ammonium.'],
  hazard: 'Irritates skin and eyes.',
});
