import { acetic, benzoic, formic, lactic } from '../acids/carboxylic.js';
import { ascorbic } from '../acids/other-organic.js';
import { cataloguedReagent } from '../catalogued.js';
import { potassium, sodium } from '../ions.js';
import { standardsPractice } from '../standards-practice.js';
import { concentrationLimits } from './concentration-limits.js';

/** Formic acid, HCOOH. */
export const formicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'formicAcid',
  name: 'formic acid',
  formula: 'HCOOH',
  molarMass: 46.025,
  protolytes: [{ protolyte: formic, count: 1 }],
  ions: [],
  hazard: {
    limits: [
      { percent: 90, effect: 'severely corrosive' },
      { percent: 10, effect: 'corrosive' },
      { percent: 2, effect: 'irritating to skin and eyes' },
    ],
    words:
      'The vapour of the concentrated acid is toxic and flammable: open it in a fume cupboard. Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Sodium formate, HCOONa. */
export const sodiumFormate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumFormate',
  name: 'sodium formate',
  formula: 'HCOONa',
  molarMass: 68.0068,
  protolytes: [{ protolyte: formic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Acetic acid, CH3COOH. */
export const aceticAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'aceticAcid',
  name: 'acetic acid',
  formula: 'CH3COOH',
  molarMass: 60.052,
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [],
  hazard: {
    limits: [
      { percent: 90, effect: 'severely corrosive' },
      { percent: 25, effect: 'corrosive' },
      { percent: 10, effect: 'irritating to skin and eyes' },
    ],
    words:
      'The concentrated acid is flammable and its vapour stings: open it in a fume cupboard. Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Sodium acetate, CH3COONa. */
export const sodiumAcetate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumAcetate',
  name: 'sodium acetate',
  formula: 'CH3COONa',
  molarMass: 82.0338,
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Sodium acetate trihydrate, CH3COONa·3H2O. */
export const sodiumAcetateTrihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumAcetateTrihydrate',
  name: 'sodium acetate trihydrate',
  formula: 'CH3COONa·3H2O',
  molarMass: 136.0788,
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Potassium acetate, CH3COOK. */
export const potassiumAcetate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumAcetate',
  name: 'potassium acetate',
  formula: 'CH3COOK',
  molarMass: 98.1423,
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Lactic acid, CH3CH(OH)COOH. */
export const lacticAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'lacticAcid',
  name: 'lactic acid',
  formula: 'CH3CH(OH)COOH',
  molarMass: 90.078,
  protolytes: [{ protolyte: lactic, count: 1 }],
  ions: [],
  hazard:
    'The concentrated acid irritates the skin and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Sodium lactate, CH3CH(OH)COONa. */
export const sodiumLactate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumLactate',
  name: 'sodium lactate',
  formula: 'CH3CH(OH)COONa',
  molarMass: 112.0598,
  protolytes: [{ protolyte: lactic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Benzoic acid, C6H5COOH. A primary standard for bases. */
export const benzoicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'benzoicAcid',
  name: 'benzoic acid',
  formula: 'C6H5COOH',
  molarMass: 122.123,
  protolytes: [{ protolyte: benzoic, count: 1 }],
  ions: [],
  hazard:
    'Irritates the skin and can damage the eyes badly; the dust harms the lungs if breathed in again and again. For solutions, see the safety data sheet.',
  primaryStandard: { standardises: 'bases', treatment: 'dried in a desiccator', source: standardsPractice },
});

/** Sodium benzoate, C6H5COONa. */
export const sodiumBenzoate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumBenzoate',
  name: 'sodium benzoate',
  formula: 'C6H5COONa',
  molarMass: 144.1048,
  protolytes: [{ protolyte: benzoic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
  hazard: 'Irritates the eyes. For solutions, see the safety data sheet.',
});

/** Ascorbic acid, C6H8O6. Vitamin C; oxidises in air, the faster the higher the pH. */
export const ascorbicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'ascorbicAcid',
  name: 'ascorbic acid',
  formula: 'C6H8O6',
  molarMass: 176.124,
  protolytes: [{ protolyte: ascorbic, count: 1 }],
  ions: [],
});

/** Sodium ascorbate, NaC6H7O6. */
export const sodiumAscorbate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumAscorbate',
  name: 'sodium ascorbate',
  formula: 'NaC6H7O6',
  molarMass: 198.1058,
  protolytes: [{ protolyte: ascorbic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});
