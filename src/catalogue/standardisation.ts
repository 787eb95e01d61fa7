import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** Whether a solution of a reagent has the concentration that was weighed, or is to be standardised. */
export type Standardisation =
  | { readonly kind: 'primary'; readonly treatment: string; readonly source: Source }
  | {
      readonly kind: 'needed';
      /** Stands after `since`. */
      readonly reason: string;
      /** Ids of primary standards. */
      readonly against: readonly string[];
      readonly source: Source;
    };

const practice: Source = {
  kind: 'commonPractice',
  note: 'primary standards and drying of the analytical laboratory',
};

const forAcids = ['sodiumCarbonate', 'tris', 'borax'];
const forBases = ['potassiumHydrogenPhthalate', 'oxalicAcidDihydrate', 'sulfamicAcid'];

/** By the id of the reagent; what is not here is weighed without a word on it. */
export const standardisation: Readonly<Record<string, Standardisation>> = /*#__PURE__*/ frozen({
  sodiumCarbonate: {
    kind: 'primary',
    treatment: 'dried at 250 to 270 °C for two hours, and cooled in a desiccator',
    source: practice,
  },
  potassiumHydrogenPhthalate: {
    kind: 'primary',
    treatment: 'dried at 110 to 120 °C for two hours, and cooled in a desiccator',
    source: practice,
  },
  tris: {
    kind: 'primary',
    treatment: 'dried at 100 to 105 °C, and cooled in a desiccator',
    source: practice,
  },
  borax: {
    kind: 'primary',
    treatment: 'kept over a saturated solution of sodium chloride and sucrose, so that it keeps its water',
    source: practice,
  },
  oxalicAcidDihydrate: { kind: 'primary', treatment: 'taken as it is, air-dry', source: practice },
  sulfamicAcid: { kind: 'primary', treatment: 'dried in a desiccator', source: practice },
  benzoicAcid: { kind: 'primary', treatment: 'dried in a desiccator', source: practice },
  hydrochloricAcid: {
    kind: 'needed',
    reason: 'the strength of its bottle is known to a few percent and it is volatile',
    against: forAcids,
    source: practice,
  },
  sulfuricAcid: {
    kind: 'needed',
    reason: 'the strength of its bottle is known to a percent',
    against: forAcids,
    source: practice,
  },
  nitricAcid: {
    kind: 'needed',
    reason: 'the strength of its bottle is known to a few percent',
    against: forAcids,
    source: practice,
  },
  perchloricAcid: {
    kind: 'needed',
    reason: 'the strength of its bottle is known to a percent',
    against: forAcids,
    source: practice,
  },
  sodiumHydroxide: {
    kind: 'needed',
    reason: 'it takes up water and carbon dioxide from the air',
    against: forBases,
    source: practice,
  },
  potassiumHydroxide: {
    kind: 'needed',
    reason: 'it takes up water and carbon dioxide from the air',
    against: forBases,
    source: practice,
  },
  ammonia: { kind: 'needed', reason: 'it is volatile', against: ['hydrochloricAcid'], source: practice },
  aceticAcid: {
    kind: 'needed',
    reason: 'the strength of its bottle is known to a percent',
    against: ['sodiumHydroxide'],
    source: practice,
  },
});
