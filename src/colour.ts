/**
 * Who can see the change: colour differences for normal vision and the three kinds of colour-vision deficiency.
 *
 * The package behind it, culori, is an ES module: from CommonJS this entry needs Node 20.19 or later.
 *
 * @packageDocumentation
 */
export { colourDifference, type SeenDifference, type Vision, visions } from './indicator/colour-vision.js';
export {
  rankBySight,
  type SightOptions,
  type SightScore,
  sightDefaults,
  type VisibleChange,
  visibleChange,
} from './indicator/visible-change.js';
