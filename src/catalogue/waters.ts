import { frozen } from '../frozen.js';
import type { Water } from '../solution/pure-water.js';
import { carbonDioxide } from './reagents/carbonates.js';
import { calciumHydroxide } from './reagents/strong-bases.js';

const freshDeionised: Water = {
  name: 'fresh deionised water',
  mL: 1000,
  contents: [],
  source: {
    kind: 'commonPractice',
    note: 'water freshly deionised or boiled counts as free of carbon dioxide',
  },
};

const inAir: Water = {
  name: 'deionised water in equilibrium with air',
  mL: 1000,
  contents: [{ reagent: carbonDioxide, mmol: 0.0165 }],
  source: {
    kind: 'fromMemory',
    work: 'plummer-busenberg-1982',
    note: 'computed with KH and K1 at 25 °C for 423.9 ppm of CO2 (WMO Greenhouse Gas Bulletin No. 21), saturated with water vapour',
  },
};

const stoodInBottle: Water = {
  name: 'deionised water that stood in a bottle',
  mL: 1000,
  contents: [{ reagent: carbonDioxide, mmol: 0.0368 }],
  source: {
    kind: 'commonPractice',
    note: 'room air in teaching laboratories commonly holds 600 to 1500 ppm of CO2; computed as for water in air, for 1000 ppm',
  },
};

const tapLike: Water = {
  name: 'tap-like water',
  mL: 1000,
  contents: [
    { reagent: calciumHydroxide, mmol: 1 },
    { reagent: carbonDioxide, mmol: 2.2 },
  ],
  source: {
    kind: 'commonPractice',
    note: 'a moderately hard tap water, 100 mg/L of alkalinity as CaCO3, near pH 7.3; tap waters differ widely, so ask the supplier',
  },
};

/** Waters of four qualities, a litre each, by name. */
export const waters = /*#__PURE__*/ frozen({
  /** Fresh deionised water, boiled out or straight from the cartridge: no carbon dioxide. */
  freshDeionised,
  /** Deionised water in equilibrium with outdoor air: 16.5 µmol/L of carbon dioxide and its ions, pH 5.6. */
  inAir,
  /** Deionised water that stood in a bottle in a full laboratory, in equilibrium with 1000 ppm of CO2: pH 5.4. */
  stoodInBottle,
  /**
   * Tap-like water: 2 mmol/L of alkalinity as calcium hydrogen carbonate, 0.2 mmol/L of free carbon dioxide, pH 7.3.
   */
  tapLike,
} as const);
