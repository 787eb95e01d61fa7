import { drawTitration, plotLimits } from 'protolysis/plot';
import { elementOf } from './elements.mjs';

/** px: wider, and the curve would leave the screen of a laptop. */
const widest = 760;

/**
 * Draws the curve as wide as there is room, so that its type keeps its size on a phone.
 *
 * @param {import('./ask.mjs').Asked} asked
 */
export function showPicture({ titration, indicator }) {
  const place = elementOf('picture');
  const width = Math.max(Math.min(place.clientWidth, widest), plotLimits.width.from);
  place.innerHTML = drawTitration(titration, { width, indicators: indicator ? [indicator] : [] }).svg;
}

/**
 * Calls back when there is another width for the picture.
 *
 * @param {() => void} redraw
 */
export function watchWidth(redraw) {
  const place = elementOf('picture');
  let width = place.clientWidth;
  new ResizeObserver(() => {
    if (place.clientWidth === width) return;
    width = place.clientWidth;
    redraw();
  }).observe(place);
}
