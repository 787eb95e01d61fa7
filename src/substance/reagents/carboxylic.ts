import { acetic, benzoic, formic, lactic } from '../acids/carboxylic.js';
import { ascorbic } from '../acids/other-organic.js';
import { potassium, sodium } from '../ions.js';
import { defineReagent } from '../reagent.js';
import { concentrationLimits } from './concentration-limits.js';

/** Formic acid, HCOOH. */
export const formicAcid = /*#__PURE__*/ defineReagent({
  id: 'formicAcid',
  name: 'formic acid',
  formula: 'HCOOH',
  protolytes: [{ protolyte: formic, count: 1 }],
  ions: [],
  hazard:
    'Corrosive from 10 % by mass, severely from 90 %, irritating to skin and eyes from 2 %. The vapour of the concentrated acid is toxic and flammable: open it in a fume cupboard. Pour acid into water, never water into acid.',
  source: concentrationLimits,
});

/** Sodium formate, HCOONa. */
export const sodiumFormate = /*#__PURE__*/ defineReagent({
  id: 'sodiumFormate',
  name: 'sodium formate',
  formula: 'HCOONa',
  protolytes: [{ protolyte: formic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Acetic acid, CH3COOH. */
export const aceticAcid = /*#__PURE__*/ defineReagent({
  id: 'aceticAcid',
  name: 'acetic acid',
  formula: 'CH3COOH',
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [],
  hazard:
    'Corrosive from 25 % by mass, severely from 90 %, irritating to skin and eyes from 10 %. The concentrated acid is flammable and its vapour stings: open it in a fume cupboard. Pour acid into water, never water into acid.',
  source: concentrationLimits,
});

/** Sodium acetate, CH3COONa. */
export const sodiumAcetate = /*#__PURE__*/ defineReagent({
  id: 'sodiumAcetate',
  name: 'sodium acetate',
  formula: 'CH3COONa',
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Sodium acetate trihydrate, CH3COONa·3H2O. */
export const sodiumAcetateTrihydrate = /*#__PURE__*/ defineReagent({
  id: 'sodiumAcetateTrihydrate',
  name: 'sodium acetate trihydrate',
  formula: 'CH3COONa·3H2O',
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Potassium acetate, CH3COOK. */
export const potassiumAcetate = /*#__PURE__*/ defineReagent({
  id: 'potassiumAcetate',
  name: 'potassium acetate',
  formula: 'CH3COOK',
  protolytes: [{ protolyte: acetic, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Lactic acid, CH3CH(OH)COOH. */
export const lacticAcid = /*#__PURE__*/ defineReagent({
  id: 'lacticAcid',
  name: 'lactic acid',
  formula: 'CH3CH(OH)COOH',
  protolytes: [{ protolyte: lactic, count: 1 }],
  ions: [],
  hazard:
    'The concentrated acid irritates the skin and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Sodium lactate, CH3CH(OH)COONa. */
export const sodiumLactate = /*#__PURE__*/ defineReagent({
  id: 'sodiumLactate',
  name: 'sodium lactate',
  formula: 'CH3CH(OH)COONa',
  protolytes: [{ protolyte: lactic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Benzoic acid, C6H5COOH. A primary standard for bases. */
export const benzoicAcid = /*#__PURE__*/ defineReagent({
  id: 'benzoicAcid',
  name: 'benzoic acid',
  formula: 'C6H5COOH',
  protolytes: [{ protolyte: benzoic, count: 1 }],
  ions: [],
  hazard:
    'Irritates the skin and can damage the eyes badly; the dust harms the lungs if breathed in again and again. For solutions, see the safety data sheet.',
});

/** Sodium benzoate, C6H5COONa. */
export const sodiumBenzoate = /*#__PURE__*/ defineReagent({
  id: 'sodiumBenzoate',
  name: 'sodium benzoate',
  formula: 'C6H5COONa',
  protolytes: [{ protolyte: benzoic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
  hazard: 'Irritates the eyes. For solutions, see the safety data sheet.',
});

/** Ascorbic acid, C6H8O6. Vitamin C; oxidises in air, the faster the higher the pH. */
export const ascorbicAcid = /*#__PURE__*/ defineReagent({
  id: 'ascorbicAcid',
  name: 'ascorbic acid',
  formula: 'C6H8O6',
  protolytes: [{ protolyte: ascorbic, count: 1 }],
  ions: [],
});

/** Sodium ascorbate, NaC6H7O6. */
export const sodiumAscorbate = /*#__PURE__*/ defineReagent({
  id: 'sodiumAscorbate',
  name: 'sodium ascorbate',
  formula: 'NaC6H7O6',
  protolytes: [{ protolyte: ascorbic, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});
