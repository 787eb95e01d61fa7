import { imidazolium } from '../acids/amines.js';
import * as aminoAcids from '../acids/amino-acids.js';
import * as buffers from '../acids/buffers.js';
import { edta } from '../acids/other-organic.js';
import { chloride, sodium } from '../ions.js';
import { defineReagent } from '../reagent.js';

// Biological buffers, as the free acid or base that is sold.

/** Tris, (HOCH2)3CNH2. THAM, trometamol; a primary standard for acids. */
export const tris = /*#__PURE__*/ defineReagent({
  id: 'tris',
  name: 'Tris',
  formula: '(HOCH2)3CNH2',
  protolytes: [{ protolyte: buffers.tris, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Tris hydrochloride, (HOCH2)3CNH2·HCl. */
export const trisHydrochloride = /*#__PURE__*/ defineReagent({
  id: 'trisHydrochloride',
  name: 'Tris hydrochloride',
  formula: '(HOCH2)3CNH2·HCl',
  protolytes: [{ protolyte: buffers.tris, count: 1 }],
  ions: [{ ion: chloride, count: 1 }],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Imidazole, C3H4N2. */
export const imidazole = /*#__PURE__*/ defineReagent({
  id: 'imidazole',
  name: 'imidazole',
  formula: 'C3H4N2',
  protolytes: [{ protolyte: imidazolium, count: 1 }],
  ions: [],
  hazard:
    'Corrosive, harmful if swallowed, and may harm the unborn child. For solutions, see the safety data sheet.',
});

/** Glycine, H2NCH2COOH. */
export const glycine = /*#__PURE__*/ defineReagent({
  id: 'glycine',
  name: 'glycine',
  formula: 'H2NCH2COOH',
  protolytes: [{ protolyte: aminoAcids.glycine, count: 1 }],
  ions: [],
});

/** Glycine hydrochloride, H2NCH2COOH·HCl. */
export const glycineHydrochloride = /*#__PURE__*/ defineReagent({
  id: 'glycineHydrochloride',
  name: 'glycine hydrochloride',
  formula: 'H2NCH2COOH·HCl',
  protolytes: [{ protolyte: aminoAcids.glycine, count: 1 }],
  ions: [{ ion: chloride, count: 1 }],
  hazard: 'Acid: irritates the eyes. For solutions, see the safety data sheet.',
});

/** Bis-Tris, (HOCH2)3CN(CH2CH2OH)2. */
export const bisTris = /*#__PURE__*/ defineReagent({
  id: 'bisTris',
  name: 'Bis-Tris',
  formula: '(HOCH2)3CN(CH2CH2OH)2',
  protolytes: [{ protolyte: buffers.bisTris, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MES, C6H13NO4S. */
export const mes = /*#__PURE__*/ defineReagent({
  id: 'mes',
  name: 'MES',
  formula: 'C6H13NO4S',
  protolytes: [{ protolyte: buffers.mes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MES monohydrate, C6H13NO4S·H2O. */
export const mesMonohydrate = /*#__PURE__*/ defineReagent({
  id: 'mesMonohydrate',
  name: 'MES monohydrate',
  formula: 'C6H13NO4S·H2O',
  protolytes: [{ protolyte: buffers.mes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** ADA, C6H10N2O5. */
export const ada = /*#__PURE__*/ defineReagent({
  id: 'ada',
  name: 'ADA',
  formula: 'C6H10N2O5',
  protolytes: [{ protolyte: buffers.ada, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** ACES, C4H10N2O4S. */
export const aces = /*#__PURE__*/ defineReagent({
  id: 'aces',
  name: 'ACES',
  formula: 'C4H10N2O4S',
  protolytes: [{ protolyte: buffers.aces, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** PIPES, C8H18N2O6S2. */
export const pipes = /*#__PURE__*/ defineReagent({
  id: 'pipes',
  name: 'PIPES',
  formula: 'C8H18N2O6S2',
  protolytes: [{ protolyte: buffers.pipes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MOPSO, C7H15NO5S. */
export const mopso = /*#__PURE__*/ defineReagent({
  id: 'mopso',
  name: 'MOPSO',
  formula: 'C7H15NO5S',
  protolytes: [{ protolyte: buffers.mopso, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** BES, C6H15NO5S. */
export const bes = /*#__PURE__*/ defineReagent({
  id: 'bes',
  name: 'BES',
  formula: 'C6H15NO5S',
  protolytes: [{ protolyte: buffers.bes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MOPS, C7H15NO4S. */
export const mops = /*#__PURE__*/ defineReagent({
  id: 'mops',
  name: 'MOPS',
  formula: 'C7H15NO4S',
  protolytes: [{ protolyte: buffers.mops, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** TES, C6H15NO6S. */
export const tes = /*#__PURE__*/ defineReagent({
  id: 'tes',
  name: 'TES',
  formula: 'C6H15NO6S',
  protolytes: [{ protolyte: buffers.tes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** HEPES, C8H18N2O4S. */
export const hepes = /*#__PURE__*/ defineReagent({
  id: 'hepes',
  name: 'HEPES',
  formula: 'C8H18N2O4S',
  protolytes: [{ protolyte: buffers.hepes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** EPPS, C9H20N2O4S. */
export const epps = /*#__PURE__*/ defineReagent({
  id: 'epps',
  name: 'EPPS',
  formula: 'C9H20N2O4S',
  protolytes: [{ protolyte: buffers.epps, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Tricine, C6H13NO5. */
export const tricine = /*#__PURE__*/ defineReagent({
  id: 'tricine',
  name: 'Tricine',
  formula: 'C6H13NO5',
  protolytes: [{ protolyte: buffers.tricine, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Bicine, C6H13NO4. */
export const bicine = /*#__PURE__*/ defineReagent({
  id: 'bicine',
  name: 'Bicine',
  formula: 'C6H13NO4',
  protolytes: [{ protolyte: buffers.bicine, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** TAPS, C7H17NO6S. */
export const taps = /*#__PURE__*/ defineReagent({
  id: 'taps',
  name: 'TAPS',
  formula: 'C7H17NO6S',
  protolytes: [{ protolyte: buffers.taps, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** CHES, C8H17NO3S. */
export const ches = /*#__PURE__*/ defineReagent({
  id: 'ches',
  name: 'CHES',
  formula: 'C8H17NO3S',
  protolytes: [{ protolyte: buffers.ches, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** CAPS, C9H19NO3S. */
export const caps = /*#__PURE__*/ defineReagent({
  id: 'caps',
  name: 'CAPS',
  formula: 'C9H19NO3S',
  protolytes: [{ protolyte: buffers.caps, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Disodium EDTA dihydrate, Na2C10H14N2O8·2H2O. */
export const disodiumEdtaDihydrate = /*#__PURE__*/ defineReagent({
  id: 'disodiumEdtaDihydrate',
  name: 'disodium EDTA dihydrate',
  formula: 'Na2C10H14N2O8·2H2O',
  protolytes: [{ protolyte: edta, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard: 'Harmful if breathed in as dust. For solutions, see the safety data sheet.',
});
