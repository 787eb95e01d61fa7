import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** What the solution of a reagent asks for when it is made and kept. */
export interface Keeping {
  /** Whether its water is to be free of carbon dioxide. */
  readonly boiledWater: boolean;
  /** How it is kept, as a sentence. */
  readonly bottle?: string;
  readonly source: Source;
}

const practice: Source = {
  kind: 'commonPractice',
  note: 'water and bottles for volumetric solutions in the analytical laboratory',
};

const alkali: Keeping = {
  boiledWater: true,
  bottle:
    'Keep it in a plastic bottle with a tight cap: it takes up carbon dioxide, attacks glass and seizes glass stoppers.',
  source: practice,
};
const boiled: Keeping = { boiledWater: true, source: practice };

/** By the id of the reagent; of what is not here nothing is said. @internal */
export const keeping: Readonly<Record<string, Keeping>> = /*#__PURE__*/ frozen({
  sodiumHydroxide: alkali,
  potassiumHydroxide: alkali,
  lithiumHydroxide: alkali,
  lithiumHydroxideMonohydrate: alkali,
  calciumHydroxide: alkali,
  bariumHydroxide: alkali,
  bariumHydroxideOctahydrate: alkali,
  borax: boiled,
  sodiumCarbonate: boiled,
  potassiumHydrogenPhthalate: boiled,
  ammonia: {
    boiledWater: false,
    bottle: 'Keep it cool in a tightly closed bottle: it loses ammonia.',
    source: practice,
  },
  nitricAcid: { boiledWater: false, bottle: 'Keep it in the dark.', source: practice },
});
