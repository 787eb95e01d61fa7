/**
 * Pictures of titrations, buffers and species, as the text of SVG documents.
 *
 * @packageDocumentation
 */
// biome-ignore-all assist/source/organizeImports: grouped by the question that each group answers

// What will the titration look like?
export { drawTitration, type TitrationPicture } from './plot/draw-titration.js';
export type { DrawnAdditions } from './plot/drawn-additions.js';
export { type CurvesPicture, drawCurves, type NamedTitration } from './plot/draw-curves.js';

// How near was the prediction?
export { drawReadings, type ReadingsPicture } from './plot/draw-readings.js';
export { drawFit } from './plot/draw-fit.js';
export type { Envelope } from './plot/read-envelope.js';

// Where does the uncertainty come from?
export { drawBudget } from './plot/draw-budget.js';

// Which species are there?
export { drawSpecies, type SpeciesPicture } from './plot/draw-species.js';
export { drawSpeciesAlong, type SpeciesAlongPicture } from './plot/draw-species-along.js';

// How does a buffer behave?
export { type BufferPicture, drawBuffer } from './plot/draw-buffer.js';
export { drawCapacity } from './plot/draw-capacity.js';

// How is a result shown in a notebook or on a page?
export { type Display, displayOf } from './display/display-of.js';

// What is every picture, and what may it be told?
export type { Picture } from './plot/picture.js';
export { type PlotOptions, plotDefaults, plotLimits } from './plot/plot-options.js';
export { type PlotWords, plotWords } from './plot/words.js';

// What was wrong with what I gave?
export { InputError, type Issue, type IssueCode } from './input/input-error.js';
