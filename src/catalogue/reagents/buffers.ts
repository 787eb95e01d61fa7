import { imidazolium } from '../acids/amines.js';
import * as aminoAcids from '../acids/amino-acids.js';
import * as buffers from '../acids/buffers.js';
import { edta } from '../acids/other-organic.js';
import { cataloguedReagent } from '../catalogued.js';
import { chloride, sodium } from '../ions.js';
import { standardsPractice } from '../standards-practice.js';

// Biological buffers, as the free acid or base that is sold.

/** Tris, (HOCH2)3CNH2. THAM, trometamol; a primary standard for acids. */
export const tris = /*#__PURE__*/ cataloguedReagent({
  id: 'tris',
  name: 'Tris',
  formula: '(HOCH2)3CNH2',
  molarMass: 121.136,
  protolytes: [{ protolyte: buffers.tris, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
  primaryStandard: {
    standardises: 'acids',
    treatment: 'dried at 100 to 105 °C, and cooled in a desiccator',
    source: standardsPractice,
  },
});

/** Tris hydrochloride, (HOCH2)3CNH2·HCl. */
export const trisHydrochloride = /*#__PURE__*/ cataloguedReagent({
  id: 'trisHydrochloride',
  name: 'Tris hydrochloride',
  formula: '(HOCH2)3CNH2·HCl',
  molarMass: 157.594,
  protolytes: [{ protolyte: buffers.tris, count: 1 }],
  ions: [{ ion: chloride, count: 1 }],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Imidazole, C3H4N2. */
export const imidazole = /*#__PURE__*/ cataloguedReagent({
  id: 'imidazole',
  name: 'imidazole',
  formula: 'C3H4N2',
  molarMass: 68.079,
  protolytes: [{ protolyte: imidazolium, count: 1 }],
  ions: [],
  hazard:
    'Corrosive, harmful if swallowed, and may harm the unborn child. For solutions, see the safety data sheet.',
});

/** Glycine, H2NCH2COOH. */
export const glycine = /*#__PURE__*/ cataloguedReagent({
  id: 'glycine',
  name: 'glycine',
  formula: 'H2NCH2COOH',
  molarMass: 75.067,
  protolytes: [{ protolyte: aminoAcids.glycine, count: 1 }],
  ions: [],
});

/** Glycine hydrochloride, H2NCH2COOH·HCl. */
export const glycineHydrochloride = /*#__PURE__*/ cataloguedReagent({
  id: 'glycineHydrochloride',
  name: 'glycine hydrochloride',
  formula: 'H2NCH2COOH·HCl',
  molarMass: 111.525,
  protolytes: [{ protolyte: aminoAcids.glycine, count: 1 }],
  ions: [{ ion: chloride, count: 1 }],
  hazard: 'Acid: irritates the eyes. For solutions, see the safety data sheet.',
});

/** Bis-Tris, (HOCH2)3CN(CH2CH2OH)2. */
export const bisTris = /*#__PURE__*/ cataloguedReagent({
  id: 'bisTris',
  name: 'Bis-Tris',
  formula: '(HOCH2)3CN(CH2CH2OH)2',
  molarMass: 209.242,
  protolytes: [{ protolyte: buffers.bisTris, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MES, C6H13NO4S. */
export const mes = /*#__PURE__*/ cataloguedReagent({
  id: 'mes',
  name: 'MES',
  formula: 'C6H13NO4S',
  molarMass: 195.233,
  protolytes: [{ protolyte: buffers.mes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MES monohydrate, C6H13NO4S·H2O. */
export const mesMonohydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'mesMonohydrate',
  name: 'MES monohydrate',
  formula: 'C6H13NO4S·H2O',
  molarMass: 213.248,
  protolytes: [{ protolyte: buffers.mes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** ADA, C6H10N2O5. */
export const ada = /*#__PURE__*/ cataloguedReagent({
  id: 'ada',
  name: 'ADA',
  formula: 'C6H10N2O5',
  molarMass: 190.155,
  protolytes: [{ protolyte: buffers.ada, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** ACES, C4H10N2O4S. */
export const aces = /*#__PURE__*/ cataloguedReagent({
  id: 'aces',
  name: 'ACES',
  formula: 'C4H10N2O4S',
  molarMass: 182.194,
  protolytes: [{ protolyte: buffers.aces, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** PIPES, C8H18N2O6S2. */
export const pipes = /*#__PURE__*/ cataloguedReagent({
  id: 'pipes',
  name: 'PIPES',
  formula: 'C8H18N2O6S2',
  molarMass: 302.36,
  protolytes: [{ protolyte: buffers.pipes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MOPSO, C7H15NO5S. */
export const mopso = /*#__PURE__*/ cataloguedReagent({
  id: 'mopso',
  name: 'MOPSO',
  formula: 'C7H15NO5S',
  molarMass: 225.259,
  protolytes: [{ protolyte: buffers.mopso, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** BES, C6H15NO5S. */
export const bes = /*#__PURE__*/ cataloguedReagent({
  id: 'bes',
  name: 'BES',
  formula: 'C6H15NO5S',
  molarMass: 213.248,
  protolytes: [{ protolyte: buffers.bes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** MOPS, C7H15NO4S. */
export const mops = /*#__PURE__*/ cataloguedReagent({
  id: 'mops',
  name: 'MOPS',
  formula: 'C7H15NO4S',
  molarMass: 209.26,
  protolytes: [{ protolyte: buffers.mops, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** TES, C6H15NO6S. */
export const tes = /*#__PURE__*/ cataloguedReagent({
  id: 'tes',
  name: 'TES',
  formula: 'C6H15NO6S',
  molarMass: 229.247,
  protolytes: [{ protolyte: buffers.tes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** HEPES, C8H18N2O4S. */
export const hepes = /*#__PURE__*/ cataloguedReagent({
  id: 'hepes',
  name: 'HEPES',
  formula: 'C8H18N2O4S',
  molarMass: 238.302,
  protolytes: [{ protolyte: buffers.hepes, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** EPPS, C9H20N2O4S. */
export const epps = /*#__PURE__*/ cataloguedReagent({
  id: 'epps',
  name: 'EPPS',
  formula: 'C9H20N2O4S',
  molarMass: 252.329,
  protolytes: [{ protolyte: buffers.epps, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Tricine, C6H13NO5. */
export const tricine = /*#__PURE__*/ cataloguedReagent({
  id: 'tricine',
  name: 'Tricine',
  formula: 'C6H13NO5',
  molarMass: 179.172,
  protolytes: [{ protolyte: buffers.tricine, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Bicine, C6H13NO4. */
export const bicine = /*#__PURE__*/ cataloguedReagent({
  id: 'bicine',
  name: 'Bicine',
  formula: 'C6H13NO4',
  molarMass: 163.173,
  protolytes: [{ protolyte: buffers.bicine, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** TAPS, C7H17NO6S. */
export const taps = /*#__PURE__*/ cataloguedReagent({
  id: 'taps',
  name: 'TAPS',
  formula: 'C7H17NO6S',
  molarMass: 243.274,
  protolytes: [{ protolyte: buffers.taps, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** CHES, C8H17NO3S. */
export const ches = /*#__PURE__*/ cataloguedReagent({
  id: 'ches',
  name: 'CHES',
  formula: 'C8H17NO3S',
  molarMass: 207.288,
  protolytes: [{ protolyte: buffers.ches, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** CAPS, C9H19NO3S. */
export const caps = /*#__PURE__*/ cataloguedReagent({
  id: 'caps',
  name: 'CAPS',
  formula: 'C9H19NO3S',
  molarMass: 221.315,
  protolytes: [{ protolyte: buffers.caps, count: 1 }],
  ions: [],
  hazard: 'May irritate eyes and skin. For solutions, see the safety data sheet.',
});

/** Disodium EDTA dihydrate, Na2C10H14N2O8·2H2O. */
export const disodiumEdtaDihydrate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumEdtaDihydrate',
  name: 'disodium EDTA dihydrate',
  formula: 'Na2C10H14N2O8·2H2O',
  molarMass: 372.2375,
  protolytes: [{ protolyte: edta, count: 1 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard: 'Harmful if breathed in as dust. For solutions, see the safety data sheet.',
});
