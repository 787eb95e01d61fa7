import { concernOf } from './concern-of.js';
import { printHazard } from './print-hazard.js';
import type { Bottle } from './read-handled.js';

/**
 * The cautions of what stands in a bottle. A reagent's own words know its form, so they go before those of its
 * protolytes.
 *
 * @internal
 */
export function cautionsOfBottle(bottle: Bottle): readonly string[] {
  const { name, hazard } = bottle;
  const concern = concernOf(bottle);
  if (hazard !== undefined) return [`${name}: ${printHazard(hazard)}`, ...concern];
  const ofParts = 'protolytes' in bottle ? bottle.protolytes : [];
  return [...ofParts.flatMap(({ protolyte }) => cautionsOfBottle(protolyte)), ...concern];
}
