import { frozen } from '../../frozen.js';
import type { Reagent } from '../../substance/reagent.js';
import { phosphoric } from '../acids/inorganic.js';
import { cataloguedReagent } from '../catalogued.js';
import { potassium, sodium } from '../ions.js';
import { concentrationLimits } from './concentration-limits.js';

/** Phosphoric acid, H3PO4. */
export const phosphoricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'phosphoricAcid',
  name: 'phosphoric acid',
  formula: 'H3PO4',
  molarMass: 97.9938,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [],
  hazard: {
    limits: [
      { percent: 25, effect: 'corrosive' },
      { percent: 10, effect: 'irritating to skin and eyes' },
    ],
    words: 'Pour acid into water, never water into acid.',
    source: concentrationLimits,
  },
});

/** Sodium dihydrogen phosphate, NaH2PO4. */
export const sodiumDihydrogenPhosphate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumDihydrogenPhosphate',
  name: 'sodium dihydrogen phosphate',
  formula: 'NaH2PO4',
  molarMass: 119.9755,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Sodium dihydrogen phosphate monohydrate, NaH2PO4·H2O. */
export const sodiumDihydrogenPhosphateMonohydrate: Reagent & {
  readonly id: 'sodiumDihydrogenPhosphateMonohydrate';
} = /*#__PURE__*/ frozen({
  id: 'sodiumDihydrogenPhosphateMonohydrate',
  name: 'sodium dihydrogen phosphate monohydrate',
  formula: 'NaH2PO4·H2O',
  molarMass: 137.9905,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Sodium dihydrogen phosphate dihydrate, NaH2PO4·2H2O. */
export const sodiumDihydrogenPhosphateDihydrate: Reagent & {
  readonly id: 'sodiumDihydrogenPhosphateDihydrate';
} = /*#__PURE__*/ frozen({
  id: 'sodiumDihydrogenPhosphateDihydrate',
  name: 'sodium dihydrogen phosphate dihydrate',
  formula: 'NaH2PO4·2H2O',
  molarMass: 156.0055,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Disodium hydrogen phosphate, Na2HPO4. */
export const disodiumHydrogenPhosphate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumHydrogenPhosphate',
  name: 'disodium hydrogen phosphate',
  formula: 'Na2HPO4',
  molarMass: 141.9573,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium hydrogen phosphate dihydrate, Na2HPO4·2H2O. */
export const disodiumHydrogenPhosphateDihydrate: Reagent & {
  readonly id: 'disodiumHydrogenPhosphateDihydrate';
} = /*#__PURE__*/ frozen({
  id: 'disodiumHydrogenPhosphateDihydrate',
  name: 'disodium hydrogen phosphate dihydrate',
  formula: 'Na2HPO4·2H2O',
  molarMass: 177.9873,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium hydrogen phosphate heptahydrate, Na2HPO4·7H2O. */
export const disodiumHydrogenPhosphateHeptahydrate: Reagent & {
  readonly id: 'disodiumHydrogenPhosphateHeptahydrate';
} = /*#__PURE__*/ frozen({
  id: 'disodiumHydrogenPhosphateHeptahydrate',
  name: 'disodium hydrogen phosphate heptahydrate',
  formula: 'Na2HPO4·7H2O',
  molarMass: 268.0623,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium hydrogen phosphate dodecahydrate, Na2HPO4·12H2O. */
export const disodiumHydrogenPhosphateDodecahydrate: Reagent & {
  readonly id: 'disodiumHydrogenPhosphateDodecahydrate';
} = /*#__PURE__*/ frozen({
  id: 'disodiumHydrogenPhosphateDodecahydrate',
  name: 'disodium hydrogen phosphate dodecahydrate',
  formula: 'Na2HPO4·12H2O',
  molarMass: 358.1373,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Trisodium phosphate, Na3PO4. */
export const trisodiumPhosphate = /*#__PURE__*/ cataloguedReagent({
  id: 'trisodiumPhosphate',
  name: 'trisodium phosphate',
  formula: 'Na3PO4',
  molarMass: 163.9391,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
  hazard:
    'Strongly alkaline: irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Trisodium phosphate dodecahydrate, Na3PO4·12H2O. */
export const trisodiumPhosphateDodecahydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'trisodiumPhosphateDodecahydrate',
  name: 'trisodium phosphate dodecahydrate',
  formula: 'Na3PO4·12H2O',
  molarMass: 380.1191,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
  hazard:
    'Strongly alkaline: irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Potassium dihydrogen phosphate, KH2PO4. */
export const potassiumDihydrogenPhosphate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumDihydrogenPhosphate',
  name: 'potassium dihydrogen phosphate',
  formula: 'KH2PO4',
  molarMass: 136.0841,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Dipotassium hydrogen phosphate, K2HPO4. */
export const dipotassiumHydrogenPhosphate = /*#__PURE__*/ cataloguedReagent({
  id: 'dipotassiumHydrogenPhosphate',
  name: 'dipotassium hydrogen phosphate',
  formula: 'K2HPO4',
  molarMass: 174.1744,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
});

/** Dipotassium hydrogen phosphate trihydrate, K2HPO4·3H2O. */
export const dipotassiumHydrogenPhosphateTrihydrate: Reagent & {
  readonly id: 'dipotassiumHydrogenPhosphateTrihydrate';
} = /*#__PURE__*/ frozen({
  id: 'dipotassiumHydrogenPhosphateTrihydrate',
  name: 'dipotassium hydrogen phosphate trihydrate',
  formula: 'K2HPO4·3H2O',
  molarMass: 228.2194,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
});

/** Tripotassium phosphate, K3PO4. */
export const tripotassiumPhosphate = /*#__PURE__*/ cataloguedReagent({
  id: 'tripotassiumPhosphate',
  name: 'tripotassium phosphate',
  formula: 'K3PO4',
  molarMass: 212.2647,
  protolytes: [{ protolyte: phosphoric, count: 1 }],
  ions: [{ ion: potassium, count: 3 }],
  hazard:
    'Strongly alkaline: irritates skin and airways and can damage the eyes badly. For solutions, see the safety data sheet.',
});
