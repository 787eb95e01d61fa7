/**
 * Indicators as the eye sees them: how far apart two colours are, to whom, and which change is seen best.
 *
 * @packageDocumentation
 */
export { colourDifference, type SeenDifference, type Vision, visions } from './indicator/colour-vision.js';
export {
  rankBySight,
  type SightOptions,
  type SightRanking,
  type SightScore,
  sightDefaults,
} from './indicator/rank-by-sight.js';
export { type VisibleChange, visibleChange } from './indicator/visible-change.js';
