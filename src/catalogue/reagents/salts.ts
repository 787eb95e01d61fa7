import { sulfuric } from '../acids/inorganic.js';
import { cataloguedReagent } from '../catalogued.js';
import { calcium, chloride, potassium, sodium } from '../ions.js';

// Salts that set the ionic strength.

/** Sodium chloride, NaCl. */
export const sodiumChloride = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumChloride',
  name: 'sodium chloride',
  formula: 'NaCl',
  molarMass: 58.4398,
  protolytes: [],
  ions: [
    { ion: sodium, count: 1 },
    { ion: chloride, count: 1 },
  ],
});

/** Potassium chloride, KCl. */
export const potassiumChloride = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumChloride',
  name: 'potassium chloride',
  formula: 'KCl',
  molarMass: 74.5483,
  protolytes: [],
  ions: [
    { ion: potassium, count: 1 },
    { ion: chloride, count: 1 },
  ],
});

/** Sodium sulfate, Na2SO4. Its sulfate takes up protons below about pH 4. */
export const sodiumSulfate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumSulfate',
  name: 'sodium sulfate',
  formula: 'Na2SO4',
  molarMass: 142.0355,
  protolytes: [{ protolyte: sulfuric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Sodium sulfate decahydrate, Na2SO4·10H2O. Glauber's salt. */
export const sodiumSulfateDecahydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumSulfateDecahydrate',
  name: 'sodium sulfate decahydrate',
  formula: 'Na2SO4·10H2O',
  molarMass: 322.1855,
  protolytes: [{ protolyte: sulfuric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Calcium chloride, CaCl2. */
export const calciumChloride = /*#__PURE__*/ cataloguedReagent({
  id: 'calciumChloride',
  name: 'calcium chloride',
  formula: 'CaCl2',
  molarMass: 110.978,
  protolytes: [],
  ions: [
    { ion: calcium, count: 1 },
    { ion: chloride, count: 2 },
  ],
  hazard: 'Irritates the eyes; gets hot as it dissolves. For solutions, see the safety data sheet.',
});

/** Calcium chloride dihydrate, CaCl2·2H2O. */
export const calciumChlorideDihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'calciumChlorideDihydrate',
  name: 'calcium chloride dihydrate',
  formula: 'CaCl2·2H2O',
  molarMass: 147.008,
  protolytes: [],
  ions: [
    { ion: calcium, count: 1 },
    { ion: chloride, count: 2 },
  ],
  hazard: 'Irritates the eyes. For solutions, see the safety data sheet.',
});
