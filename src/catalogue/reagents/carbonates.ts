import { carbonic } from '../acids/inorganic.js';
import { cataloguedReagent } from '../catalogued.js';
import { potassium, sodium } from '../ions.js';
import { standardsPractice } from '../standards-practice.js';

/** Sodium carbonate, Na2CO3. Anhydrous (soda ash); a primary standard for acids when dried. */
export const sodiumCarbonate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumCarbonate',
  name: 'sodium carbonate',
  formula: 'Na2CO3',
  molarMass: 105.9875,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard:
    'Irritates the eyes; do not raise dust. It foams with acid. For solutions, see the safety data sheet.',
  primaryStandard: {
    standardises: 'acids',
    treatment: 'dried at 250 to 270 °C for two hours, and cooled in a desiccator',
    source: standardsPractice,
  },
});

/** Sodium carbonate monohydrate, Na2CO3·H2O. */
export const sodiumCarbonateMonohydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumCarbonateMonohydrate',
  name: 'sodium carbonate monohydrate',
  formula: 'Na2CO3·H2O',
  molarMass: 124.0025,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard:
    'Irritates the eyes; do not raise dust. It foams with acid. For solutions, see the safety data sheet.',
});

/** Sodium carbonate decahydrate, Na2CO3·10H2O. Washing soda; loses water in dry air. */
export const sodiumCarbonateDecahydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumCarbonateDecahydrate',
  name: 'sodium carbonate decahydrate',
  formula: 'Na2CO3·10H2O',
  molarMass: 286.1375,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard:
    'Irritates the eyes; do not raise dust. It foams with acid. For solutions, see the safety data sheet.',
});

/** Sodium hydrogen carbonate, NaHCO3. */
export const sodiumHydrogenCarbonate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumHydrogenCarbonate',
  name: 'sodium hydrogen carbonate',
  formula: 'NaHCO3',
  molarMass: 84.0058,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
  hazard: 'Foams with acid: add acid in portions, in a vessel with room to spare.',
});

/** Potassium carbonate, K2CO3. */
export const potassiumCarbonate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumCarbonate',
  name: 'potassium carbonate',
  formula: 'K2CO3',
  molarMass: 138.2046,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
  hazard:
    'Irritates skin, eyes and airways; do not raise dust. It foams with acid. For solutions, see the safety data sheet.',
});

/** Potassium carbonate sesquihydrate, K2CO3·1.5H2O. */
export const potassiumCarbonateSesquihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumCarbonateSesquihydrate',
  name: 'potassium carbonate sesquihydrate',
  formula: 'K2CO3·1.5H2O',
  molarMass: 165.2271,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
  hazard:
    'Irritates skin, eyes and airways; do not raise dust. It foams with acid. For solutions, see the safety data sheet.',
});

/** Potassium hydrogen carbonate, KHCO3. */
export const potassiumHydrogenCarbonate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumHydrogenCarbonate',
  name: 'potassium hydrogen carbonate',
  formula: 'KHCO3',
  molarMass: 100.1143,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
  hazard: 'Foams with acid: add acid in portions, in a vessel with room to spare.',
});

/** Carbon dioxide, CO2. Dissolved in water. */
export const carbonDioxide = /*#__PURE__*/ cataloguedReagent({
  id: 'carbonDioxide',
  name: 'carbon dioxide',
  formula: 'CO2',
  molarMass: 44.009,
  protolytes: [{ protolyte: carbonic, count: 1 }],
  ions: [],
  hazard:
    'Gas and dry ice push out the air: use them only where it is well ventilated, and never close dry ice in. Dry ice burns the skin.',
});
