import { boric } from '../acids/inorganic.js';
import { candidateList } from '../candidate-list.js';
import { cataloguedReagent } from '../catalogued.js';
import { sodium } from '../ions.js';
import { standardsPractice } from '../standards-practice.js';
import { boronLimit } from './concentration-limits.js';

/** Boric acid, H3BO3. */
export const boricAcid = /*#__PURE__*/ cataloguedReagent({
  id: 'boricAcid',
  name: 'boric acid',
  formula: 'H3BO3',
  molarMass: 61.831,
  protolytes: [{ protolyte: boric, count: 1 }],
  ions: [],
  hazard: {
    limits: [{ percent: 0.3, effect: 'may damage fertility and the unborn child' }],
    words: 'Do not raise dust; who is or may be pregnant should not handle it.',
    source: boronLimit,
  },
  veryHighConcern: candidateList,
});

/**
 * Borax (disodium tetraborate decahydrate), Na2B4O7·10H2O. A primary standard for acids, and a pH standard; it gives
 * equal amounts of boric acid and borate.
 */
export const borax = /*#__PURE__*/ cataloguedReagent({
  id: 'borax',
  name: 'borax (disodium tetraborate decahydrate)',
  formula: 'Na2B4O7·10H2O',
  molarMass: 381.3625,
  protolytes: [{ protolyte: boric, count: 4 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard: {
    limits: [{ percent: 0.3, effect: 'may damage fertility and the unborn child' }],
    words: 'Irritates the eyes. Do not raise dust; who is or may be pregnant should not handle it.',
    source: boronLimit,
  },
  primaryStandard: {
    standardises: 'acids',
    treatment: 'kept over a saturated solution of sodium chloride and sucrose, so that it keeps its water',
    source: standardsPractice,
  },
  veryHighConcern: candidateList,
});

/** Disodium tetraborate, Na2B4O7. Anhydrous borax. */
export const disodiumTetraborate = /*#__PURE__*/ cataloguedReagent({
  id: 'disodiumTetraborate',
  name: 'disodium tetraborate',
  formula: 'Na2B4O7',
  molarMass: 201.2125,
  protolytes: [{ protolyte: boric, count: 4 }],
  ions: [{ ion: sodium, count: 2 }],
  hazard: {
    limits: [{ percent: 0.3, effect: 'may damage fertility and the unborn child' }],
    words: 'Irritates the eyes. Do not raise dust; who is or may be pregnant should not handle it.',
    source: boronLimit,
  },
  veryHighConcern: candidateList,
});
