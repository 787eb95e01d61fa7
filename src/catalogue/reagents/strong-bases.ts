import { cataloguedReagent } from '../catalogued.js';
import { barium, calcium, lithium, potassium, sodium } from '../ions.js';
import { concentrationLimits } from './concentration-limits.js';

// Strong bases, as their cations alone: hydroxide follows from the charge balance. They count as fully ionised in
// water (P. Flowers et al., Chemistry 2e, OpenStax, chapter 14; for lithium hydroxide from memory).

/** Sodium hydroxide, NaOH. Takes up carbon dioxide from the air. */
export const sodiumHydroxide = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumHydroxide',
  name: 'sodium hydroxide',
  formula: 'NaOH',
  molarMass: 39.9968,
  protolytes: [],
  ions: [{ ion: sodium, count: 1 }],
  hazard: {
    limits: [
      { percent: 5, effect: 'severely corrosive' },
      { percent: 2, effect: 'corrosive' },
      { percent: 0.5, effect: 'irritating' },
    ],
    words:
      'A danger to the eyes above all. The solid and strong solutions get hot in water: add them to cold water in portions.',
    source: concentrationLimits,
  },
});

/** Potassium hydroxide, KOH. Takes up carbon dioxide from the air. */
export const potassiumHydroxide = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumHydroxide',
  name: 'potassium hydroxide',
  formula: 'KOH',
  molarMass: 56.1053,
  protolytes: [],
  ions: [{ ion: potassium, count: 1 }],
  hazard: {
    limits: [
      { percent: 5, effect: 'severely corrosive' },
      { percent: 2, effect: 'corrosive' },
      { percent: 0.5, effect: 'irritating' },
    ],
    words:
      'A danger to the eyes above all. The solid and strong solutions get hot in water: add them to cold water in portions.',
    source: concentrationLimits,
  },
});

/** Lithium hydroxide, LiOH. */
export const lithiumHydroxide = /*#__PURE__*/ cataloguedReagent({
  id: 'lithiumHydroxide',
  name: 'lithium hydroxide',
  formula: 'LiOH',
  molarMass: 23.947,
  protolytes: [],
  ions: [{ ion: lithium, count: 1 }],
  hazard:
    'Corrosive, a danger to the eyes above all, and harmful if swallowed. For solutions, see the safety data sheet.',
});

/** Lithium hydroxide monohydrate, LiOH·H2O. */
export const lithiumHydroxideMonohydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'lithiumHydroxideMonohydrate',
  name: 'lithium hydroxide monohydrate',
  formula: 'LiOH·H2O',
  molarMass: 41.962,
  protolytes: [],
  ions: [{ ion: lithium, count: 1 }],
  hazard:
    'Corrosive, a danger to the eyes above all, and harmful if swallowed. For solutions, see the safety data sheet.',
});

/**
 * Calcium hydroxide, Ca(OH)2. Sparingly soluble, about 0.02 mol/L at 25 °C (Lange's Handbook of Chemistry, 15th ed.,
 * table 8.15).
 */
export const calciumHydroxide = /*#__PURE__*/ cataloguedReagent({
  id: 'calciumHydroxide',
  name: 'calcium hydroxide',
  formula: 'Ca(OH)2',
  molarMass: 74.092,
  protolytes: [],
  ions: [{ ion: calcium, count: 1 }],
  hazard:
    'Irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Barium hydroxide, Ba(OH)2. */
export const bariumHydroxide = /*#__PURE__*/ cataloguedReagent({
  id: 'bariumHydroxide',
  name: 'barium hydroxide',
  formula: 'Ba(OH)2',
  molarMass: 171.341,
  protolytes: [],
  ions: [{ ion: barium, count: 1 }],
  hazard:
    'Corrosive, and poisonous if swallowed or breathed in as dust, as soluble barium salts are. Collect the waste. For solutions, see the safety data sheet.',
});

/** Barium hydroxide octahydrate, Ba(OH)2·8H2O. */
export const bariumHydroxideOctahydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'bariumHydroxideOctahydrate',
  name: 'barium hydroxide octahydrate',
  formula: 'Ba(OH)2·8H2O',
  molarMass: 315.461,
  protolytes: [],
  ions: [{ ion: barium, count: 1 }],
  hazard:
    'Corrosive, and poisonous if swallowed or breathed in as dust, as soluble barium salts are. Collect the waste. For solutions, see the safety data sheet.',
});
