import { citric, malic, oxalic, phthalic, succinic, tartaric } from '../acids/polycarboxylic.js';
import { potassium, sodium } from '../ions.js';
import { defineReagent } from '../reagent.js';

/** Oxalic acid, H2C2O4. */
export const oxalicAcid = /*#__PURE__*/ defineReagent({
  id: 'oxalicAcid',
  name: 'oxalic acid',
  formula: 'H2C2O4',
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are, and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Oxalic acid dihydrate, H2C2O4·2H2O. A primary standard for bases. */
export const oxalicAcidDihydrate = /*#__PURE__*/ defineReagent({
  id: 'oxalicAcidDihydrate',
  name: 'oxalic acid dihydrate',
  formula: 'H2C2O4·2H2O',
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are, and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Sodium oxalate, Na2C2O4. A primary standard. */
export const sodiumOxalate = /*#__PURE__*/ defineReagent({
  id: 'sodiumOxalate',
  name: 'sodium oxalate',
  formula: 'Na2C2O4',
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are; it harms the kidneys. For solutions, see the safety data sheet.',
});

/** Dipotassium oxalate monohydrate, K2C2O4·H2O. */
export const dipotassiumOxalateMonohydrate = /*#__PURE__*/ defineReagent({
  id: 'dipotassiumOxalateMonohydrate',
  name: 'dipotassium oxalate monohydrate',
  formula: 'K2C2O4·H2O',
  protolytes: [{ protolyte: oxalic, count: 1 }],
  ions: [{ ion: potassium, count: 2 }],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are; it harms the kidneys. For solutions, see the safety data sheet.',
});

/** Potassium tetroxalate dihydrate, KH3(C2O4)2·2H2O. A primary standard for bases, and a pH standard. */
export const potassiumTetroxalateDihydrate = /*#__PURE__*/ defineReagent({
  id: 'potassiumTetroxalateDihydrate',
  name: 'potassium tetroxalate dihydrate',
  formula: 'KH3(C2O4)2·2H2O',
  protolytes: [{ protolyte: oxalic, count: 2 }],
  ions: [{ ion: potassium, count: 1 }],
  hazard:
    'Harmful if swallowed or through the skin, as oxalates are, and can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Succinic acid, H2C4H4O4. */
export const succinicAcid = /*#__PURE__*/ defineReagent({
  id: 'succinicAcid',
  name: 'succinic acid',
  formula: 'H2C4H4O4',
  protolytes: [{ protolyte: succinic, count: 1 }],
  ions: [],
  hazard: 'Can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Disodium succinate, Na2C4H4O4. */
export const disodiumSuccinate = /*#__PURE__*/ defineReagent({
  id: 'disodiumSuccinate',
  name: 'disodium succinate',
  formula: 'Na2C4H4O4',
  protolytes: [{ protolyte: succinic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Disodium succinate hexahydrate, Na2C4H4O4·6H2O. */
export const disodiumSuccinateHexahydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumSuccinateHexahydrate',
  name: 'disodium succinate hexahydrate',
  formula: 'Na2C4H4O4·6H2O',
  protolytes: [{ protolyte: succinic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Malic acid, H2C4H4O5. */
export const malicAcid = /*#__PURE__*/ defineReagent({
  id: 'malicAcid',
  name: 'malic acid',
  formula: 'H2C4H4O5',
  protolytes: [{ protolyte: malic, count: 1 }],
  ions: [],
  hazard: 'Irritates the eyes. For solutions, see the safety data sheet.',
});

/** Disodium malate, Na2C4H4O5. */
export const disodiumMalate = /*#__PURE__*/ defineReagent({
  id: 'disodiumMalate',
  name: 'disodium malate',
  formula: 'Na2C4H4O5',
  protolytes: [{ protolyte: malic, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Tartaric acid, H2C4H4O6. */
export const tartaricAcid = /*#__PURE__*/ defineReagent({
  id: 'tartaricAcid',
  name: 'tartaric acid',
  formula: 'H2C4H4O6',
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [],
  hazard: 'Can damage the eyes badly. For solutions, see the safety data sheet.',
});

/** Potassium hydrogen tartrate, KHC4H4O6. Cream of tartar; a primary standard for bases, and a pH standard as its saturated solution. */
export const potassiumHydrogenTartrate = /*#__PURE__*/ defineReagent({
  id: 'potassiumHydrogenTartrate',
  name: 'potassium hydrogen tartrate',
  formula: 'KHC4H4O6',
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Disodium tartrate dihydrate, Na2C4H4O6·2H2O. */
export const disodiumTartrateDihydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumTartrateDihydrate',
  name: 'disodium tartrate dihydrate',
  formula: 'Na2C4H4O6·2H2O',
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Potassium sodium tartrate tetrahydrate, KNaC4H4O6·4H2O. Rochelle salt. */
export const potassiumSodiumTartrateTetrahydrate = /*#__PURE__*/ defineReagent({
  id: 'potassiumSodiumTartrateTetrahydrate',
  name: 'potassium sodium tartrate tetrahydrate',
  formula: 'KNaC4H4O6·4H2O',
  protolytes: [{ protolyte: tartaric, count: 1 }],
  ions: [
    { ion: potassium, count: 1 },
    { ion: sodium, count: 1 },
  ],
});

/** Potassium hydrogen phthalate, KHC8H4O4. KHP; the usual primary standard for bases, and a pH standard. */
export const potassiumHydrogenPhthalate = /*#__PURE__*/ defineReagent({
  id: 'potassiumHydrogenPhthalate',
  name: 'potassium hydrogen phthalate',
  formula: 'KHC8H4O4',
  protolytes: [{ protolyte: phthalic, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Citric acid, H3C6H5O7. */
export const citricAcid = /*#__PURE__*/ defineReagent({
  id: 'citricAcid',
  name: 'citric acid',
  formula: 'H3C6H5O7',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [],
  hazard: 'Irritates the eyes and, as dust, the airways. For solutions, see the safety data sheet.',
});

/** Citric acid monohydrate, H3C6H5O7·H2O. */
export const citricAcidMonohydrate = /*#__PURE__*/ defineReagent({
  id: 'citricAcidMonohydrate',
  name: 'citric acid monohydrate',
  formula: 'H3C6H5O7·H2O',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [],
  hazard: 'Irritates the eyes and, as dust, the airways. For solutions, see the safety data sheet.',
});

/** Sodium dihydrogen citrate, NaH2C6H5O7. */
export const sodiumDihydrogenCitrate = /*#__PURE__*/ defineReagent({
  id: 'sodiumDihydrogenCitrate',
  name: 'sodium dihydrogen citrate',
  formula: 'NaH2C6H5O7',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 1 }],
});

/** Disodium hydrogen citrate sesquihydrate, Na2HC6H5O7·1.5H2O. */
export const disodiumHydrogenCitrateSesquihydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumHydrogenCitrateSesquihydrate',
  name: 'disodium hydrogen citrate sesquihydrate',
  formula: 'Na2HC6H5O7·1.5H2O',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
});

/** Trisodium citrate, Na3C6H5O7. */
export const trisodiumCitrate = /*#__PURE__*/ defineReagent({
  id: 'trisodiumCitrate',
  name: 'trisodium citrate',
  formula: 'Na3C6H5O7',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
});

/** Trisodium citrate dihydrate, Na3C6H5O7·2H2O. */
export const trisodiumCitrateDihydrate = /*#__PURE__*/ defineReagent({
  id: 'trisodiumCitrateDihydrate',
  name: 'trisodium citrate dihydrate',
  formula: 'Na3C6H5O7·2H2O',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: sodium, count: 3 }],
});

/** Potassium dihydrogen citrate, KH2C6H5O7. */
export const potassiumDihydrogenCitrate = /*#__PURE__*/ defineReagent({
  id: 'potassiumDihydrogenCitrate',
  name: 'potassium dihydrogen citrate',
  formula: 'KH2C6H5O7',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: potassium, count: 1 }],
});

/** Tripotassium citrate monohydrate, K3C6H5O7·H2O. */
export const tripotassiumCitrateMonohydrate = /*#__PURE__*/ defineReagent({
  id: 'tripotassiumCitrateMonohydrate',
  name: 'tripotassium citrate monohydrate',
  formula: 'K3C6H5O7·H2O',
  protolytes: [{ protolyte: citric, count: 1 }],
  ions: [{ ion: potassium, count: 3 }],
});
