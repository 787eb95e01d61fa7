/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
// The page: what the fields say → titration and indicator → what is predicted → what is shown.
import { ask } from './ask.mjs';
import { fillChoices } from './choices.mjs';
import { elementOf, inputOf } from './elements.mjs';
import { predict } from './predict.mjs';
import { clearFaults, faultyFields, showFaults } from './show-faults.mjs';
import { showPicture, watchWidth } from './show-picture.mjs';
import { showPrediction } from './show-prediction.mjs';

const form = /** @type {HTMLFormElement} */ (elementOf('setup'));
const prediction = elementOf('prediction');

/** What is on show, to draw it anew where the width of the page changes. @type {import('./ask.mjs').Asked | null} */
let shown = null;

function answer() {
  elementOf('weighed').hidden = inputOf('measure').value !== 'grams';
  clearFaults(form);
  const { asked, faults } = ask(new FormData(form));
  shown = asked;
  prediction.hidden = asked === null;
  if (asked === null) return showFaults(form, faults);
  showPicture(asked);
  showPrediction(predict(asked));
}

/** Once for several changes that follow each other at once, as the arrow keys make them in a list. */
let waiting = 0;
function answerSoon() {
  clearTimeout(waiting);
  waiting = window.setTimeout(answer, 150);
}

function answerNow() {
  clearTimeout(waiting);
  answer();
  faultyFields(form)[0]?.focus();
}

fillChoices();
form.addEventListener('change', answerSoon);
form.addEventListener('submit', (event) => {
  event.preventDefault();
  answerNow();
});
answer();
watchWidth(() => shown && showPicture(shown));
