import { iodic, sulfamic, sulfuric } from '../acids/inorganic.js';
import { cataloguedReagent } from '../catalogued.js';
import { bromide, chloride, nitrate, perchlorate, potassium, sodium } from '../ions.js';
import { standardsPractice } from '../standards-practice.js';
import { concentrationLimits } from './concentration-limits.js';

// Strong acids, as their anions alone: the protons follow from the charge balance. They count as fully ionised in
// water (P. Flowers et al., Chemistry 2e, OpenStax, sections 14.1 and 14.3).

/** Hydrochloric acid, HCl. */
export const hydrochloricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'hydrochloricAcid',
  name: 'hydrochloric acid',
  formula: 'HCl',
  molarMass: 36.458,
  protolytes: [],
  ions: [{ ion: chloride, count: 1 }],
  hazard: {
    limits: [
      { percent: 25, effect: 'corrosive' },
      { percent: 10, effect: 'irritating to skin, eyes and airways' },
    ],
    words:
      'The concentrated acid fumes: open it in a fume cupboard. Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Hydrobromic acid, HBr. */
export const hydrobromicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'hydrobromicAcid',
  name: 'hydrobromic acid',
  formula: 'HBr',
  molarMass: 80.912,
  protolytes: [],
  ions: [{ ion: bromide, count: 1 }],
  hazard: {
    limits: [
      { percent: 40, effect: 'corrosive' },
      { percent: 10, effect: 'irritating to skin, eyes and airways' },
    ],
    words:
      'The concentrated acid fumes: open it in a fume cupboard. Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Nitric acid, HNO3. */
export const nitricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'nitricAcid',
  name: 'nitric acid',
  formula: 'HNO3',
  molarMass: 63.012,
  protolytes: [],
  ions: [{ ion: nitrate, count: 1 }],
  hazard: {
    limits: [
      { percent: 65, effect: 'severely corrosive and a strong oxidiser' },
      { percent: 20, effect: 'severely corrosive' },
      { percent: 5, effect: 'corrosive' },
      { percent: 3, effect: 'irritating to skin and a danger to the eyes' },
      { percent: 1, effect: 'irritating to skin and eyes' },
    ],
    words:
      'Gives toxic brown gases with metals and organic matter: keep it from both, and open the concentrated acid in a fume cupboard. Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Perchloric acid, HClO4. */
export const perchloricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'perchloricAcid',
  name: 'perchloric acid',
  formula: 'HClO4',
  molarMass: 100.454,
  protolytes: [],
  ions: [{ ion: perchlorate, count: 1 }],
  hazard: {
    limits: [
      { percent: 50, effect: 'severely corrosive and a strong oxidiser' },
      { percent: 10, effect: 'corrosive' },
      { percent: 1, effect: 'irritating' },
    ],
    words:
      'The concentrated acid can explode with organic matter or when heated: keep it cold and dilute. Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Sulfuric acid, H2SO4. Its first proton is always lost; the second is that of `acids.sulfuric`. */
export const sulfuricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'sulfuricAcid',
  name: 'sulfuric acid',
  formula: 'H2SO4',
  molarMass: 98.072,
  protolytes: [{ protolyte: sulfuric, count: 1 }],
  ions: [],
  hazard: {
    limits: [
      { percent: 15, effect: 'severely corrosive' },
      { percent: 5, effect: 'irritating to skin and eyes' },
    ],
    words:
      'The concentrated acid heats up violently with water: pour it slowly into cold water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Sodium hydrogen sulfate, NaHSO4. */
export const sodiumHydrogenSulfate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumHydrogenSulfate',
  name: 'sodium hydrogen sulfate',
  formula: 'NaHSO4',
  molarMass: 120.0538,
  protolytes: [{ protolyte: sulfuric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
  hazard: 'Strongly acid: can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Potassium hydrogen diiodate, KH(IO3)2. A primary standard for bases. */
export const potassiumHydrogenDiiodate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumHydrogenDiiodate',
  name: 'potassium hydrogen diiodate',
  formula: 'KH(IO3)2',
  molarMass: 389.9092,
  protolytes: [{ protolyte: iodic, count: 2 }],
  ions: [{ ion: potassium, count: 1 }],
  hazard:
    'An oxidiser, and acid: harms skin and eyes. Keep it from anything that burns; see the safety data sheet.',
  primaryStandard: {
    standardises: 'bases',
    treatment: 'dried at 110 °C for an hour, and cooled in a desiccator',
    source: standardsPractice,
  },
});

/** Sulfamic acid, H3NSO3. A primary standard for bases. */
export const sulfamicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'sulfamicAcid',
  name: 'sulfamic acid',
  formula: 'H3NSO3',
  molarMass: 97.088,
  protolytes: [{ protolyte: sulfamic, count: 1 }],
  ions: [],
  hazard: 'Irritates skin and eyes, and harms life in water. See the safety data sheet.',
  primaryStandard: { standardises: 'bases', treatment: 'dried in a desiccator', source: standardsPractice },
});
