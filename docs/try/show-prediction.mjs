import { htmlOf } from 'protolysis';
import { elementOf, listOf, make } from './elements.mjs';
import { newsOf } from './news.mjs';
import { partsOfStop } from './stop.mjs';

/**
 * Shows all but the picture. The news goes last, into the live region, when there is something to go to.
 *
 * @param {import('./predict.mjs').Prediction} prediction
 */
export function showPrediction(prediction) {
  const { points, stop, cautions, notes, citations } = prediction;
  elementOf('points').innerHTML =
    points.length === 0
      ? '<p>The curve has none: no step is completed.</p>'
      : htmlOf(
          points,
          { reaction: 'text', mL: 2, pH: 2 },
          { caption: 'Where acid and base have met in whole steps' },
        );
  elementOf('stop').replaceChildren(...(stop ? partsOfStop(stop) : [make('p', 'No indicator is chosen.')]));
  elementOf('cautions').replaceChildren(listOf(cautions));
  elementOf('basis').replaceChildren(
    ...(notes.length > 0 ? [make('h3', 'Notes'), listOf(notes)] : []),
    make('h3', 'Sources'),
    listOf(citations),
  );
  elementOf('news').textContent = newsOf(prediction);
}
