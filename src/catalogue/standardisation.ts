import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import { standardsPractice } from './standards-practice.js';

/** Why and against what a solution of a reagent is to be standardised. */
export interface StandardisationNeeded {
  /** Stands after `since`. */
  readonly reason: string;
  /** Ids of primary standards, or of a solution standardised against one. */
  readonly against: readonly string[];
  readonly source: Source;
}

/** Borax would serve too, but is of very high concern. */
const forAcids = ['sodiumCarbonate', 'tris'];
const forBases = ['potassiumHydrogenPhthalate', 'oxalicAcidDihydrate', 'sulfamicAcid'];

const ofPercent = 'the strength of its bottle is known to a percent';
const ofAir = 'it takes up carbon dioxide from the air';
/** Oxalate and sulfate of these metals settle, so that an acid serves that gives soluble salts. */
const settling: StandardisationNeeded = {
  reason: ofAir,
  against: ['hydrochloricAcid'],
  source: standardsPractice,
};
const lithium: StandardisationNeeded = { reason: ofAir, against: forBases, source: standardsPractice };

/** By the id of the reagent; what is neither here nor a primary standard is weighed without a word on it. */
export const standardisation: Readonly<Record<string, StandardisationNeeded>> = /*#__PURE__*/ frozen({
  hydrochloricAcid: {
    reason: 'the strength of its bottle is known to a few percent and it is volatile',
    against: forAcids,
    source: standardsPractice,
  },
  sulfuricAcid: {
    reason: ofPercent,
    against: forAcids,
    source: standardsPractice,
  },
  nitricAcid: {
    reason: 'the strength of its bottle is known to a few percent',
    against: forAcids,
    source: standardsPractice,
  },
  perchloricAcid: {
    reason: ofPercent,
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
  lithiumHydroxide: lithium,
  lithiumHydroxideMonohydrate: lithium,
  calciumHydroxide: settling,
  bariumHydroxide: settling,
  bariumHydroxideOctahydrate: settling,
  hydrobromicAcid: { reason: ofPercent, against: forAcids, source: standardsPractice },
  phosphoricAcid: { reason: ofPercent, against: ['sodiumHydroxide'], source: standardsPractice },
  sodiumCarbonateDecahydrate: {
    reason: 'it loses water in dry air',
    against: ['hydrochloricAcid'],
    source: standardsPractice,
  },
  ammonia: { reason: 'it is volatile', against: ['hydrochloricAcid'], source: standardsPractice },
  aceticAcid: {
    reason: ofPercent,
    against: ['sodiumHydroxide'],
    source: standardsPractice,
  },
});
