import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import type { SparinglySoluble } from '../substance/sparingly-soluble.js';

type Forms = SparinglySoluble['forms'];

const product = (name: string, forms: Forms, log10K: number, source: Source): SparinglySoluble =>
  frozen({
    name,
    forms,
    log10K,
    of: 'activities',
    source,
  });

const saturated = (name: string, forms: Forms, log10K: number, note: string): SparinglySoluble =>
  frozen({
    name,
    forms,
    log10K,
    of: 'concentrations',
    source: { kind: 'fromMemory', note: `solubility: ${note}` },
  });

const crc = (where: string): Source => ({
  kind: 'published',
  work: 'crc-handbook',
  where: 'table Solubility Product Constants of Inorganic Salts',
  checked: where,
});
const crcInAppendix = /*#__PURE__*/ crc('open textbook appendix with the figures of the handbook');
const lange: Source = { kind: 'fromMemory', note: "Lange's Handbook of Chemistry, solubility products" };
const gregory = (note: string): Source => ({
  kind: 'fromMemory',
  note: `T. M. Gregory, E. C. Moreno, W. E. Brown, J. Res. NBS 74A, 461 (1970) and 78A, 667 (1974): ${note}`,
});

// Tables that name no origin print other products, some 0.2 to 0.5 apart in log10 (barium carbonate, the oxalates,
// calcium sulfate and hydrogen phosphate), calcium fluoride 2.2: older values, or for use without ion pairs. The
// handbook and the measurements stay.

// Solids that a teaching lab meets. The source of a saturated solution has its concentration; the product follows from
// the ideal equilibrium of that solution, so that it holds to a factor of two among other salts.

/** Calcium carbonate. */
export const calciumCarbonate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium carbonate',
  { 'Ca(2+)': 1, 'CO3(2-)': 1 },
  -8.48,
  {
    kind: 'published',
    work: 'plummer-busenberg-1982',
    where: 'calcite at 25 °C',
    checked: 'from memory; 3.36e-9 in the CRC Handbook',
  },
);

/** Barium carbonate. */
export const bariumCarbonate: SparinglySoluble = /*#__PURE__*/ product(
  'barium carbonate',
  { 'Ba(2+)': 1, 'CO3(2-)': 1 },
  -8.588,
  crcInAppendix,
);

/** Calcium sulfate. */
export const calciumSulfate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium sulfate',
  { 'Ca(2+)': 1, 'SO4(2-)': 1 },
  -4.503,
  crcInAppendix,
);

/** Barium sulfate. */
export const bariumSulfate: SparinglySoluble = /*#__PURE__*/ product(
  'barium sulfate',
  { 'Ba(2+)': 1, 'SO4(2-)': 1 },
  -9.967,
  crcInAppendix,
);

/** Calcium oxalate. */
export const calciumOxalate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium oxalate',
  { 'Ca(2+)': 1, 'C2O4(2-)': 1 },
  -8.635,
  crcInAppendix,
);

/** Barium oxalate. */
export const bariumOxalate: SparinglySoluble = /*#__PURE__*/ product(
  'barium oxalate',
  { 'Ba(2+)': 1, 'C2O4(2-)': 1 },
  -6.959,
  {
    kind: 'commonPractice',
    note: 'table of solubility products of a university, 1.1e-7; 1.6e-7 in an open textbook',
  },
);

// Handbooks print −32.7, from Gibbs energies: four powers of ten below the solubility that was measured. −25 is that of
// the alpha form.
/** Calcium phosphate. */
export const calciumPhosphate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium phosphate',
  { 'Ca(2+)': 3, 'PO4(3-)': 2 },
  -28.92,
  /*#__PURE__*/ gregory('28.9 in a review'),
);

/** Calcium hydrogen phosphate. */
export const calciumHydrogenPhosphate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium hydrogen phosphate',
  { 'Ca(2+)': 1, 'HPO4(2-)': 1 },
  -6.59,
  /*#__PURE__*/ gregory('6.59 in two reviews'),
);

/** Barium hydrogen phosphate. */
export const bariumHydrogenPhosphate: SparinglySoluble = /*#__PURE__*/ product(
  'barium hydrogen phosphate',
  { 'Ba(2+)': 1, 'HPO4(2-)': 1 },
  -6.495,
  lange,
);

/** Calcium fluoride. */
export const calciumFluoride: SparinglySoluble = /*#__PURE__*/ product(
  'calcium fluoride',
  { 'Ca(2+)': 1, 'F-': 2 },
  -10.462,
  crcInAppendix,
);

/** Calcium tartrate. */
export const calciumTartrate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium tartrate',
  { 'Ca(2+)': 1, 'C4H4O6(2-)': 1 },
  -6.114,
  lange,
);

// −17.63 is of 21 °C, and drawn to zero along a law of √I alone.
/** Calcium citrate. */
export const calciumCitrate: SparinglySoluble = /*#__PURE__*/ product(
  'calcium citrate',
  { 'Ca(2+)': 3, 'C6H5O7(3-)': 2 },
  -17.81,
  {
    kind: 'fromMemory',
    note: 'L. Ciavatta, G. De Tommaso, M. Iuliano, Anal. Lett. 34, 1053 (2001), abstract',
  },
);

/** Potassium perchlorate. */
export const potassiumPerchlorate: SparinglySoluble = /*#__PURE__*/ saturated(
  'potassium perchlorate',
  { 'K+': 1, 'ClO4-': 1 },
  -1.665,
  '0.147 mol/L, 2.05 g in 100 g of water',
);

/** Potassium hydrogen tartrate. */
export const potassiumHydrogenTartrate: SparinglySoluble = /*#__PURE__*/ saturated(
  'potassium hydrogen tartrate',
  { 'K+': 1, 'HC4H4O6-': 1 },
  -3.091,
  '0.0341 mol/kg, the pH standard (R. P. Buck et al., 2002, table 2)',
);

// Perry's Handbook has 6 % more: the molality of the pH standard goes before.
/** Calcium hydroxide. */
export const calciumHydroxide: SparinglySoluble = /*#__PURE__*/ saturated(
  'calcium hydroxide',
  { 'Ca(2+)': 1, 'OH-': 2 },
  -4.475,
  '0.0203 mol/kg, the pH standard (R. G. Bates, 1973)',
);

/** Barium hydroxide. */
export const bariumHydroxide: SparinglySoluble = /*#__PURE__*/ saturated(
  'barium hydroxide',
  { 'Ba(2+)': 1, 'OH-': 2 },
  -1.089,
  '0.273 mol/L, 4.68 g anhydrous in 100 g of water (A. Seidell)',
);

/** Borax. */
export const borax: SparinglySoluble = /*#__PURE__*/ saturated(
  'borax',
  { 'Na+': 2, 'B(OH)3': 2, 'B(OH)4-': 2 },
  -3.035,
  '0.156 mol/L, 5.80 % of the decahydrate by mass (U.S. Borax)',
);

/** Boric acid. */
export const boricAcid: SparinglySoluble = /*#__PURE__*/ saturated(
  'boric acid',
  { 'B(OH)3': 1 },
  -0.046,
  '0.899 mol/L, 5.46 % by mass (U.S. Borax)',
);

/** Benzoic acid. */
export const benzoicAcid: SparinglySoluble = /*#__PURE__*/ saturated(
  'benzoic acid',
  { C6H5COOH: 1 },
  -1.57,
  '0.0282 mol/L, 3.44 g/L',
);

/** Salicylic acid. */
export const salicylicAcid: SparinglySoluble = /*#__PURE__*/ saturated(
  'salicylic acid',
  { HOC6H4COOH: 1 },
  -1.85,
  '0.018 mol/L, 2.48 g/L',
);

/** Succinic acid. */
export const succinicAcid: SparinglySoluble = /*#__PURE__*/ saturated(
  'succinic acid',
  { H2C4H4O4: 1 },
  -0.181,
  '0.665 mol/L, 8.35 g in 100 g of water (A. Seidell)',
);

/** Oxalic acid. */
export const oxalicAcid: SparinglySoluble = /*#__PURE__*/ saturated(
  'oxalic acid',
  { H2C2O4: 1 },
  0.029,
  '1.31 mol/L, 118 g/L anhydrous; 143 g/L is printed too',
);

/** Sodium oxalate. */
export const sodiumOxalate: SparinglySoluble = /*#__PURE__*/ saturated(
  'sodium oxalate',
  { 'Na+': 2, 'C2O4(2-)': 1 },
  -1.099,
  '0.271 mol/L, 0.274 mol/kg',
);

/** Potassium tetroxalate. */
export const potassiumTetroxalate: SparinglySoluble = /*#__PURE__*/ saturated(
  'potassium tetroxalate',
  { 'K+': 1, 'HC2O4-': 1, H2C2O4: 1 },
  -3.51,
  '0.0708 mol/L at 13 °C, one old figure',
);

/** Potassium hydrogen phthalate. */
export const potassiumHydrogenPhthalate: SparinglySoluble = /*#__PURE__*/ saturated(
  'potassium hydrogen phthalate',
  { 'K+': 1, 'HC8H4O4-': 1 },
  -0.862,
  '0.392 mol/L, 80 g/L at 20 °C',
);

/** Disodium hydrogen phosphate. */
export const disodiumHydrogenPhosphate: SparinglySoluble = /*#__PURE__*/ saturated(
  'disodium hydrogen phosphate',
  { 'Na+': 2, 'HPO4(2-)': 1 },
  0.336,
  '0.817 mol/L, 10.55 % anhydrous by mass (CRC Handbook)',
);

/** Trisodium phosphate. */
export const trisodiumPhosphate: SparinglySoluble = /*#__PURE__*/ saturated(
  'trisodium phosphate',
  { 'Na+': 3, 'PO4(3-)': 1 },
  1.115,
  '0.868 mol/L, 12.6 % anhydrous by mass (CRC Handbook)',
);

/** Potassium dihydrogen phosphate. */
export const potassiumDihydrogenPhosphate: SparinglySoluble = /*#__PURE__*/ saturated(
  'potassium dihydrogen phosphate',
  { 'K+': 1, 'H2PO4-': 1 },
  0.443,
  '1.67 mol/L, 19.97 % by mass (CRC Handbook)',
);

/** Sodium hydrogen carbonate. */
export const sodiumHydrogenCarbonate: SparinglySoluble = /*#__PURE__*/ saturated(
  'sodium hydrogen carbonate',
  { 'Na+': 1, 'HCO3-': 1 },
  0.139,
  "1.185 mol/L, 10.3 g in 100 g of water (Perry's Handbook)",
);

/** Sodium carbonate. */
export const sodiumCarbonate: SparinglySoluble = /*#__PURE__*/ saturated(
  'sodium carbonate',
  { 'Na+': 2, 'CO3(2-)': 1 },
  1.873,
  "2.66 mol/L, 29.4 g anhydrous in 100 g of water (Perry's Handbook)",
);

/** Sodium sulfate. */
export const sodiumSulfate: SparinglySoluble = /*#__PURE__*/ saturated(
  'sodium sulfate',
  { 'Na+': 2, 'SO4(2-)': 1 },
  1.404,
  "1.85 mol/L, 28.1 g anhydrous in 100 g of water (Perry's Handbook)",
);

/** Disodium EDTA. */
export const disodiumEdta: SparinglySoluble = /*#__PURE__*/ saturated(
  'disodium EDTA',
  { 'Na+': 2, 'H2EDTA(2-)': 1 },
  -1.125,
  '0.269 mol/L, 100 g/L at 20 °C',
);
