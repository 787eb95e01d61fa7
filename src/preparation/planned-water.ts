import { partOf } from '../solution/aliquot.js';
import { merged } from '../solution/merged.js';
import { volumeShift } from '../titration/compare-water.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Titration } from '../titration/titration.js';
import type { ReadSample } from './read-sample.js';
import type { PlannedWater } from './sample-plan.js';

/**
 * What the water of the beaker does to a titration: the volume at the pH of each equivalence point, with that
 * water and with as much water that has nothing in it.
 *
 * @param titration - with water that has nothing in it
 * @internal
 */
export function plannedWater(titration: Titration, { water, mL, inUse }: ReadSample): PlannedWater {
  const { analyte, titrant } = titration.setup;
  const contents = merged([...analyte.contents, ...partOf(water, mL).contents]);
  const given = makeTitration({ analyte: { ...analyte, contents }, titrant, inUse, boilOut: null });
  return {
    name: water.name ?? 'the water given',
    mL,
    endpoints: titration.equivalencePoints.map(({ mL: volume }) => {
      const pH = titration.pHAt(volume);
      return { pH, ...volumeShift(titration.volumeAt(pH), given.volumeAt(pH)) };
    }),
  };
}
