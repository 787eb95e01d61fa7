import { phosphoric } from '../acids/inorganic.js';
import { potassium, sodium } from '../ions.js';
import { defineReagent } from '../reagent.js';
import { concentrationLimits } from './concentration-limits.js';

/** Phosphoric acid, H3PO4. */
export const phosphoricAcid = /*#__PURE__*/ defineReagent({
  id: 'phosphoricAcid',
  name: 'phosphoric acid',
  formula: 'H3PO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [],
  hazard:
    'Corrosive from 25 % by mass, irritating to skin and eyes from 10 %. Pour acid into water, never water into acid.',
  source: concentrationLimits,
});

/** Sodium dihydrogen phosphate, NaH2PO4. */
export const sodiumDihydrogenPhosphate = /*#__PURE__*/ defineReagent({
  id: 'sodiumDihydrogenPhosphate',
  name: 'sodium dihydrogen phosphate',
  formula: 'NaH2PO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Sodium dihydrogen phosphate monohydrate, NaH2PO4·H2O. */
export const sodiumDihydrogenPhosphateMonohydrate = /*#__PURE__*/ defineReagent({
  id: 'sodiumDihydrogenPhosphateMonohydrate',
  name: 'sodium dihydrogen phosphate monohydrate',
  formula: 'NaH2PO4·H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Sodium dihydrogen phosphate dihydrate, NaH2PO4·2H2O. */
export const sodiumDihydrogenPhosphateDihydrate = /*#__PURE__*/ defineReagent({
  id: 'sodiumDihydrogenPhosphateDihydrate',
  name: 'sodium dihydrogen phosphate dihydrate',
  formula: 'NaH2PO4·2H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Disodium hydrogen phosphate, Na2HPO4. */
export const disodiumHydrogenPhosphate = /*#__PURE__*/ defineReagent({
  id: 'disodiumHydrogenPhosphate',
  name: 'disodium hydrogen phosphate',
  formula: 'Na2HPO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium hydrogen phosphate dihydrate, Na2HPO4·2H2O. */
export const disodiumHydrogenPhosphateDihydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumHydrogenPhosphateDihydrate',
  name: 'disodium hydrogen phosphate dihydrate',
  formula: 'Na2HPO4·2H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium hydrogen phosphate heptahydrate, Na2HPO4·7H2O. */
export const disodiumHydrogenPhosphateHeptahydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumHydrogenPhosphateHeptahydrate',
  name: 'disodium hydrogen phosphate heptahydrate',
  formula: 'Na2HPO4·7H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium hydrogen phosphate dodecahydrate, Na2HPO4·12H2O. */
export const disodiumHydrogenPhosphateDodecahydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumHydrogenPhosphateDodecahydrate',
  name: 'disodium hydrogen phosphate dodecahydrate',
  formula: 'Na2HPO4·12H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Trisodium phosphate, Na3PO4. */
export const trisodiumPhosphate = /*#__PURE__*/ defineReagent({
  id: 'trisodiumPhosphate',
  name: 'trisodium phosphate',
  formula: 'Na3PO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
  hazard:
    'Strongly alkaline: irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Trisodium phosphate dodecahydrate, Na3PO4·12H2O. */
export const trisodiumPhosphateDodecahydrate = /*#__PURE__*/ defineReagent({
  id: 'trisodiumPhosphateDodecahydrate',
  name: 'trisodium phosphate dodecahydrate',
  formula: 'Na3PO4·12H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
  hazard:
    'Strongly alkaline: irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Potassium dihydrogen phosphate, KH2PO4. */
export const potassiumDihydrogenPhosphate = /*#__PURE__*/ defineReagent({
  id: 'potassiumDihydrogenPhosphate',
  name: 'potassium dihydrogen phosphate',
  formula: 'KH2PO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Dipotassium hydrogen phosphate, K2HPO4. */
export const dipotassiumHydrogenPhosphate = /*#__PURE__*/ defineReagent({
  id: 'dipotassiumHydrogenPhosphate',
  name: 'dipotassium hydrogen phosphate',
  formula: 'K2HPO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
});

/** Dipotassium hydrogen phosphate trihydrate, K2HPO4·3H2O. */
export const dipotassiumHydrogenPhosphateTrihydrate = /*#__PURE__*/ defineReagent({
  id: 'dipotassiumHydrogenPhosphateTrihydrate',
  name: 'dipotassium hydrogen phosphate trihydrate',
  formula: 'K2HPO4·3H2O',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
});

/** Tripotassium phosphate, K3PO4. */
export const tripotassiumPhosphate = /*#__PURE__*/ defineReagent({
  id: 'tripotassiumPhosphate',
  name: 'tripotassium phosphate',
  formula: 'K3PO4',
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 3 }],
  hazard:
    'Strongly alkaline: irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});
