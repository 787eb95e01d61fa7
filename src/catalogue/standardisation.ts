import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import { standardsPractice } from './primary-standards.js';

/** Why and against what a solution of a reagent is to be standardised. */
export interface StandardisationNeeded {
  /** Stands after `since`. */
  readonly reason: string;
  /** Ids of primary standards, or of a solution standardised against one. */
  readonly against: readonly string[];
  readonly source: Source;
}

const forAcids = ['sodiumCarbonate', 'tris', 'borax'];
const forBases = ['potassiumHydrogenPhthalate', 'oxalicAcidDihydrate', 'sulfamicAcid'];

/** By the id of the reagent; what is neither here nor a primary standard is weighed without a word on it. */
export const standardisation: Readonly<Record<string, StandardisationNeeded>> = /*#__PURE__*/ frozen({
  hydrochloricAcid: {
    reason: 'the strength of its bottle is known to a few percent and it is volatile',
    against: forAcids,
    source: standardsPractice,
  },
  sulfuricAcid: {
    reason: 'the strength of its bottle is known to a percent',
    against: forAcids,
    source: standardsPractice,
  },
  nitricAcid: {
    reason: 'the strength of its bottle is known to a few percent',
    against: forAcids,
    source: standardsPractice,
  },
  perchloricAcid: {
    reason: 'the strength of its bottle is known to a percent',
    against: forAcids,
    source: standardsPractice,
  },
  sodiumHydroxide: {
    reason: 'it takes up water and carbon dioxide from the air',
    against: forBases,
    source: standardsPractice,
  },
  potassiumHydroxide: {
    reason: 'it takes up water and carbon dioxide from the air',
    against: forBases,
    source: standardsPractice,
  },
  ammonia: { reason: 'it is volatile', against: ['hydrochloricAcid'], source: standardsPractice },
  aceticAcid: {
    reason: 'the strength of its bottle is known to a percent',
    against: ['sodiumHydroxide'],
    source: standardsPractice,
  },
});
