import { ammonium } from '../acids/amines.js';
import { acetic } from '../acids/carboxylic.js';
import { sulfuric } from '../acids/inorganic.js';
import { cataloguedReagent } from '../catalogued.js';
import { chloride, nitrate } from '../ions.js';
import { concentrationLimits } from './concentration-limits.js';

/** Ammonia, NH3. Dissolved in water. */
export const ammonia = /*#__PURE__*/ cataloguedReagent({
  id: 'ammonia',
  name: 'ammonia',
  formula: 'NH3',
  molarMass: 17.031,
  protolytes: [{ protolyte: ammonium, count: 1 }],
  ions: [],
  hazard: {
    limits: [
      { percent: 5, effect: 'corrosive, and stinging to eyes and airways' },
      { percent: 3, effect: 'irritating to skin and a danger to the eyes' },
      { percent: 1, effect: 'irritating to skin and eyes' },
    ],
    words: 'Very toxic to water life. Open the concentrated solution in a fume cupboard.',
    source: concentrationLimits,
  },
});

/** Ammonium chloride, NH4Cl. */
export const ammoniumChloride = /*#__PURE__*/ cataloguedReagent({
  id: 'ammoniumChloride',
  name: 'ammonium chloride',
  formula: 'NH4Cl',
  molarMass: 53.489,
  protolytes: [{ protolyte: ammonium, count: 1 }],
  ions: [{ ion: chloride, count: 1 }],
  hazard: 'Harmful if swallowed, and irritates the eyes. For solutions, see the safety data sheet.',
});

/** Ammonium sulfate, (NH4)2SO4. */
export const ammoniumSulfate = /*#__PURE__*/ cataloguedReagent({
  id: 'ammoniumSulfate',
  name: 'ammonium sulfate',
  formula: '(NH4)2SO4',
  molarMass: 132.134,
  protolytes: [
    { protolyte: ammonium, count: 2 },
    { protolyte: sulfuric, count: 1 },
  ],
  ions: [],
});

/** Ammonium nitrate, NH4NO3. */
export const ammoniumNitrate = /*#__PURE__*/ cataloguedReagent({
  id: 'ammoniumNitrate',
  name: 'ammonium nitrate',
  formula: 'NH4NO3',
  molarMass: 80.043,
  protolytes: [{ protolyte: ammonium, count: 1 }],
  ions: [{ ion: nitrate, count: 1 }],
  hazard:
    'An oxidiser that can explode when heated or mixed with anything that burns; irritates the eyes. Local rules may limit who can buy or store it. For solutions, see the safety data sheet.',
});

/** Ammonium acetate, CH3COONH4. */
export const ammoniumAcetate = /*#__PURE__*/ cataloguedReagent({
  id: 'ammoniumAcetate',
  name: 'ammonium acetate',
  formula: 'CH3COONH4',
  molarMass: 77.083,
  protolytes: [
    { protolyte: ammonium, count: 1 },
    { protolyte: acetic, count: 1 },
  ],
  ions: [],
});
