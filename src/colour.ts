export { colourDifference, type SeenDifference, type Vision, visions } from './indicator/colour-vision.js';
export {
  rankBySight,
  type SightOptions,
  type SightRanking,
  type SightScore,
  sightDefaults,
} from './indicator/rank-by-sight.js';
export { type VisibleChange, visibleChange } from './indicator/visible-change.js';
