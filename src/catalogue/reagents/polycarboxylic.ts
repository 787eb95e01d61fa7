import { frozen } from '../../frozen.js';
import type { Reagent } from '../../substance/reagent.js';
import { citric, malic, oxalic, phthalic, succinic, tartaric } from '../acids/polycarboxylic.js';
import { cataloguedReagent } from '../catalogued.js';
import { potassium, sodium } from '../ions.js';
import { standardsPractice } from '../standards-practice.js';

/** Oxalic acid, H2C2O4. */
export const oxalicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'oxalicAcid',
  name: 'oxalic acid',
  formula: 'H2C2O4',
  molarMass: 90.034,
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are, and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Oxalic acid dihydrate, H2C2O4·2H2O. A primary standard for bases. */
export const oxalicAcidDihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'oxalicAcidDihydrate',
  name: 'oxalic acid dihydrate',
  formula: 'H2C2O4·2H2O',
  molarMass: 126.064,
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are, and can damage the eyes badly. For solutions, see the safety data sheet.',
  primaryStandard: { standardises: 'bases', treatment: 'taken as it is, air-dry', source: standardsPractice },
});

/** Sodium oxalate, Na2C2O4. A primary standard. */
export const sodiumOxalate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumOxalate',
  name: 'sodium oxalate',
  formula: 'Na2C2O4',
  molarMass: 133.9975,
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are; it harms the kidneys. For solutions, see the safety data sheet.',
});

/** Dipotassium oxalate monohydrate, K2C2O4·H2O. */
export const dipotassiumOxalateMonohydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'dipotassiumOxalateMonohydrate',
  name: 'dipotassium oxalate monohydrate',
  formula: 'K2C2O4·H2O',
  molarMass: 184.2296,
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are; it harms the kidneys. For solutions, see the safety data sheet.',
});

/** Potassium tetroxalate dihydrate, KH3(C2O4)2·2H2O. A primary standard for bases, and a pH standard. */
export const potassiumTetroxalateDihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumTetroxalateDihydrate',
  name: 'potassium tetroxalate dihydrate',
  formula: 'KH3(C2O4)2·2H2O',
  molarMass: 254.1883,
  protolytes: [{ protolyte: oxalic, count: 2 }],
  ions: [{ ion: potassium, count: 1 }],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are, and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Succinic acid, H2C4H4O4. */
export const succinicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'succinicAcid',
  name: 'succinic acid',
  formula: 'H2C4H4O4',
  molarMass: 118.088,
  protolytes: [{ protolyte: succinic, count: 1 }],
  ions: [],
  hazard: 'Can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Disodium succinate, Na2C4H4O4. */
export const disodiumSuccinate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumSuccinate',
  name: 'disodium succinate',
  formula: 'Na2C4H4O4',
  molarMass: 162.0515,
  protolytes: [{ protolyte: succinic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium succinate hexahydrate, Na2C4H4O4·6H2O. */
export const disodiumSuccinateHexahydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumSuccinateHexahydrate',
  name: 'disodium succinate hexahydrate',
  formula: 'Na2C4H4O4·6H2O',
  molarMass: 270.1415,
  protolytes: [{ protolyte: succinic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Malic acid, H2C4H4O5. */
export const malicAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'malicAcid',
  name: 'malic acid',
  formula: 'H2C4H4O5',
  molarMass: 134.087,
  protolytes: [{ protolyte: malic, count: 1 }],
  ions: [],
  hazard: 'Irritates the eyes. For solutions, see the safety data sheet.',
});

/** Disodium malate, Na2C4H4O5. */
export const disodiumMalate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumMalate',
  name: 'disodium malate',
  formula: 'Na2C4H4O5',
  molarMass: 178.0505,
  protolytes: [{ protolyte: malic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Tartaric acid, H2C4H4O6. */
export const tartaricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'tartaricAcid',
  name: 'tartaric acid',
  formula: 'H2C4H4O6',
  molarMass: 150.086,
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [],
  hazard: 'Can damage the eyes badly. For solutions, see the safety data sheet.',
});

/**
 * Potassium hydrogen tartrate, KHC4H4O6. Cream of tartar; a primary standard for bases, and a pH standard as its
 * saturated solution.
 */
export const potassiumHydrogenTartrate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumHydrogenTartrate',
  name: 'potassium hydrogen tartrate',
  formula: 'KHC4H4O6',
  molarMass: 188.1763,
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Disodium tartrate dihydrate, Na2C4H4O6·2H2O. */
export const disodiumTartrateDihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumTartrateDihydrate',
  name: 'disodium tartrate dihydrate',
  formula: 'Na2C4H4O6·2H2O',
  molarMass: 230.0795,
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Potassium sodium tartrate tetrahydrate, KNaC4H4O6·4H2O. Rochelle salt. */
export const potassiumSodiumTartrateTetrahydrate: Reagent & {
  readonly id: 'potassiumSodiumTartrateTetrahydrate';
} = /*#__PURE__*/ frozen({
  id: 'potassiumSodiumTartrateTetrahydrate',
  name: 'potassium sodium tartrate tetrahydrate',
  formula: 'KNaC4H4O6·4H2O',
  molarMass: 282.2181,
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [
    { ion: potassium, count: 1 },
    { ion: sodium, count: 1 },
  ],
});

/** Potassium hydrogen phthalate, KHC8H4O4. KHP; the usual primary standard for bases, and a pH standard. */
export const potassiumHydrogenPhthalate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumHydrogenPhthalate',
  name: 'potassium hydrogen phthalate',
  formula: 'KHC8H4O4',
  molarMass: 204.2223,
  protolytes: [{ protolyte: phthalic, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
  primaryStandard: {
    standardises: 'bases',
    treatment: 'dried at 110 to 120 °C for two hours, and cooled in a desiccator',
    source: standardsPractice,
  },
});

/** Citric acid, H3C6H5O7. */
export const citricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'citricAcid',
  name: 'citric acid',
  formula: 'H3C6H5O7',
  molarMass: 192.123,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [],
  hazard: 'Irritates the eyes and, as dust, the airways. For solutions, see the safety data sheet.',
});

/** Citric acid monohydrate, H3C6H5O7·H2O. */
export const citricAcidMonohydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'citricAcidMonohydrate',
  name: 'citric acid monohydrate',
  formula: 'H3C6H5O7·H2O',
  molarMass: 210.138,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [],
  hazard: 'Irritates the eyes and, as dust, the airways. For solutions, see the safety data sheet.',
});

/** Sodium dihydrogen citrate, NaH2C6H5O7. */
export const sodiumDihydrogenCitrate = /*#__PURE__*/ cataloguedReagent({
  id: 'sodiumDihydrogenCitrate',
  name: 'sodium dihydrogen citrate',
  formula: 'NaH2C6H5O7',
  molarMass: 214.1048,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Disodium hydrogen citrate sesquihydrate, Na2HC6H5O7·1.5H2O. */
export const disodiumHydrogenCitrateSesquihydrate: Reagent & {
  readonly id: 'disodiumHydrogenCitrateSesquihydrate';
} = /*#__PURE__*/ frozen({
  id: 'disodiumHydrogenCitrateSesquihydrate',
  name: 'disodium hydrogen citrate sesquihydrate',
  formula: 'Na2HC6H5O7·1.5H2O',
  molarMass: 263.109,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Trisodium citrate, Na3C6H5O7. */
export const trisodiumCitrate = /*#__PURE__*/ cataloguedReagent({
  id: 'trisodiumCitrate',
  name: 'trisodium citrate',
  formula: 'Na3C6H5O7',
  molarMass: 258.0683,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
});

/** Trisodium citrate dihydrate, Na3C6H5O7·2H2O. */
export const trisodiumCitrateDihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'trisodiumCitrateDihydrate',
  name: 'trisodium citrate dihydrate',
  formula: 'Na3C6H5O7·2H2O',
  molarMass: 294.0983,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
});

/** Potassium dihydrogen citrate, KH2C6H5O7. */
export const potassiumDihydrogenCitrate = /*#__PURE__*/ cataloguedReagent({
  id: 'potassiumDihydrogenCitrate',
  name: 'potassium dihydrogen citrate',
  formula: 'KH2C6H5O7',
  molarMass: 230.2133,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Tripotassium citrate monohydrate, K3C6H5O7·H2O. */
export const tripotassiumCitrateMonohydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'tripotassiumCitrateMonohydrate',
  name: 'tripotassium citrate monohydrate',
  formula: 'K3C6H5O7·H2O',
  molarMass: 324.4089,
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: potassium, count: 3 }],
});
