import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import type { PHStandard } from '../substance/ph-standard.js';
import * as borates from './reagents/borates.js';
import * as buffers from './reagents/buffers.js';
import * as carbonates from './reagents/carbonates.js';
import * as phosphates from './reagents/phosphates.js';
import * as polycarboxylic from './reagents/polycarboxylic.js';
import * as strongBases from './reagents/strong-bases.js';

const iupac = (checked: string): Source => ({
  kind: 'fromMemory',
  work: 'buck-2002',
  note: `table 2; ${checked}`,
});
const bates = (checked: string): Source => ({ kind: 'fromMemory', work: 'bates-1973', note: checked });

const tartrateSaturated: PHStandard = {
  id: 'tartrateSaturated',
  name: 'potassium hydrogen tartrate, saturated at 25 °C',
  contents: [{ reagent: polycarboxylic.potassiumHydrogenTartrate, molar: 0.0341 }],
  primary: true,
  celsius: [25, 30, 35, 37, 40, 50],
  pH: [3.557, 3.552, 3.549, 3.548, 3.547, 3.549],
  source: /*#__PURE__*/ iupac('memory; 3.557 at 25 °C is reproduced by a Bates-Guggenheim model to 0.001'),
};

const citrate: PHStandard = {
  id: 'citrate',
  name: 'potassium dihydrogen citrate',
  contents: [{ reagent: polycarboxylic.potassiumDihydrogenCitrate, molar: 0.05 }],
  primary: true,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 50],
  pH: [3.863, 3.84, 3.82, 3.802, 3.788, 3.776, 3.766, 3.759, 3.756, 3.754, 3.749],
  source: /*#__PURE__*/ iupac(
    '25 °C confirmed: abstract of Staples & Bates 1969 gives 3.776; other temperatures memory',
  ),
};

const phthalate: PHStandard = {
  id: 'phthalate',
  name: 'potassium hydrogen phthalate',
  contents: [{ reagent: polycarboxylic.potassiumHydrogenPhthalate, molar: 0.05 }],
  primary: true,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 50],
  // At 0 °C the equations of 1946 and 1977 give 4.010: the first value is open by 0.01.
  pH: [4.0, 3.998, 3.997, 3.998, 4.0, 4.005, 4.011, 4.018, 4.022, 4.027, 4.05],
  source: /*#__PURE__*/ iupac(
    '25 °C confirmed: 4.005 in Hamer, Pinching & Acree 1946 and in Partanen & Minkkinen 1997; other temperatures memory, within 0.010 of the equation of Hetzer et al. 1977 (which gives 4.010 at 0 °C against 4.000 here)',
  ),
};

const phosphateEqual: PHStandard = {
  id: 'phosphateEqual',
  name: 'potassium dihydrogen phosphate + disodium hydrogen phosphate, 1:1',
  contents: [
    { reagent: phosphates.potassiumDihydrogenPhosphate, molar: 0.025 },
    { reagent: phosphates.disodiumHydrogenPhosphate, molar: 0.025 },
  ],
  primary: true,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 50],
  pH: [6.984, 6.951, 6.923, 6.9, 6.881, 6.865, 6.853, 6.844, 6.841, 6.838, 6.833],
  source: /*#__PURE__*/ iupac(
    'confirmed to 0.01: JIS Z 8802 table (two decimals) on an instrument maker’s page (6.98, 6.95, 6.92, 6.90, 6.88, 6.86, 6.85, 6.84, 6.84 at 40 °C, 6.83 at 50 °C); third decimal memory',
  ),
};

const phosphateBlood: PHStandard = {
  id: 'phosphateBlood',
  name: 'potassium dihydrogen phosphate + disodium hydrogen phosphate, 1:3.5',
  contents: [
    { reagent: phosphates.potassiumDihydrogenPhosphate, molar: 0.008695 },
    { reagent: phosphates.disodiumHydrogenPhosphate, molar: 0.03043 },
  ],
  primary: true,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 50],
  pH: [7.534, 7.5, 7.472, 7.448, 7.429, 7.413, 7.4, 7.389, 7.386, 7.38, 7.367],
  source: /*#__PURE__*/ iupac(
    'confirmed near 25 °C: Bower, Paabo & Bates 1961 abstract gives 7.414 at 25 °C and 7.382 at 38 °C; other temperatures memory',
  ),
};

const borax: PHStandard = {
  id: 'borax',
  name: 'disodium tetraborate decahydrate (borax)',
  contents: [{ reagent: borates.borax, molar: 0.01 }],
  primary: true,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 50],
  pH: [9.464, 9.395, 9.332, 9.276, 9.225, 9.18, 9.139, 9.102, 9.088, 9.068, 9.011],
  source: /*#__PURE__*/ iupac(
    'confirmed to 0.01: JIS Z 8802 table (two decimals) on an instrument maker’s page (9.46, 9.39, 9.33, 9.27, 9.22, 9.18, 9.14, 9.10, 9.07 at 40 °C, 9.01 at 50 °C); third decimal memory',
  ),
};

const carbonate: PHStandard = {
  id: 'carbonate',
  name: 'sodium hydrogen carbonate + sodium carbonate',
  contents: [
    { reagent: carbonates.sodiumHydrogenCarbonate, molar: 0.025 },
    { reagent: carbonates.sodiumCarbonate, molar: 0.025 },
  ],
  primary: true,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 50],
  pH: [10.317, 10.245, 10.179, 10.118, 10.062, 10.012, 9.966, 9.926, 9.91, 9.889, 9.828],
  source: /*#__PURE__*/ iupac(
    '25 °C confirmed: abstract of Staples & Bates 1969 gives 10.012; others to 0.01: JIS Z 8802 table (two decimals) on an instrument maker’s page',
  ),
};

const tetroxalate: PHStandard = {
  id: 'tetroxalate',
  name: 'potassium tetroxalate dihydrate',
  contents: [{ reagent: polycarboxylic.potassiumTetroxalateDihydrate, molar: 0.05 }],
  primary: false,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 38, 40, 45, 50, 55, 60, 70, 80, 90, 95],
  pH: [
    1.666, 1.668, 1.67, 1.672, 1.675, 1.679, 1.683, 1.688, 1.691, 1.694, 1.7, 1.707, 1.715, 1.723, 1.743,
    1.766, 1.792, 1.806,
  ],
  source: /*#__PURE__*/ bates(
    'confirmed to 0.01 from 0 to 95 °C: JIS Z 8802 table (two decimals) on an instrument maker’s page (1.67 at 0 °C, 1.68 at 25 °C, 1.81 at 95 °C); third decimal memory',
  ),
};

const calciumHydroxideSaturated: PHStandard = {
  id: 'calciumHydroxideSaturated',
  name: 'calcium hydroxide, saturated at 25 °C',
  contents: [{ reagent: strongBases.calciumHydroxide, molar: 0.0203 }],
  primary: false,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 38, 40, 45, 50, 55, 60],
  pH: [
    13.423, 13.207, 13.003, 12.81, 12.627, 12.454, 12.289, 12.133, 12.043, 11.984, 11.841, 11.705, 11.574,
    11.449,
  ],
  source: /*#__PURE__*/ bates('memory'),
};

const trisHydrochloride: PHStandard = {
  id: 'trisHydrochloride',
  name: 'Tris + Tris hydrochloride',
  contents: [
    { reagent: buffers.tris, molar: 0.01667 },
    { reagent: buffers.trisHydrochloride, molar: 0.05 },
  ],
  primary: false,
  celsius: [0, 5, 10, 15, 20, 25, 30, 35, 37, 40, 45, 50],
  pH: [8.471, 8.303, 8.142, 7.988, 7.84, 7.699, 7.563, 7.433, 7.382, 7.307, 7.186, 7.07],
  source: /*#__PURE__*/ bates(
    'memory; a Davies model with the Tris pKa of this package gives 7.680 at 25 °C',
  ),
};

/** The pH standards from which pH meters are calibrated, by name. */
export const pHStandards = /*#__PURE__*/ frozen({
  /** Potassium hydrogen tartrate, saturated at 25 °C. */
  tartrateSaturated,
  /** Potassium dihydrogen citrate. */
  citrate,
  /** Potassium hydrogen phthalate. */
  phthalate,
  /** Potassium dihydrogen phosphate + disodium hydrogen phosphate, 1:1. */
  phosphateEqual,
  /** Potassium dihydrogen phosphate + disodium hydrogen phosphate, 1:3.5. */
  phosphateBlood,
  /** Disodium tetraborate decahydrate (borax). */
  borax,
  /** Sodium hydrogen carbonate + sodium carbonate. */
  carbonate,
  /** Potassium tetroxalate dihydrate: a secondary standard. */
  tetroxalate,
  /** Calcium hydroxide, saturated at 25 °C: a secondary standard. */
  calciumHydroxideSaturated,
  /** Tris + Tris hydrochloride: a secondary standard. */
  trisHydrochloride,
} as const);
