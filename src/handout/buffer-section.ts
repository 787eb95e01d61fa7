import { say } from '../plot/words.js';
import { fixed, toDigits } from '../print-number.js';
import type { Solution } from '../solution/solution.js';
import type { Answers } from './answers.js';
import type { ReadHandout } from './handout-options.js';
import { grid, type Markup, own, paragraph, section } from './markup.js';
import { recipeSteps } from './recipe-steps.js';

/** What a buffer does beside water, drop by drop. @internal */
export function bufferSection({ buffer, words }: ReadHandout, answers: Answers | null): Markup {
  if (!buffer) return own('');
  const drops = Array.from({ length: buffer.drops + 1 }, (_, drop) => drop);
  const columns = [answers?.response?.pH, answers?.response?.water];
  const [counted = '', ...names] = words.bufferLines;
  const lines = columns.map((pHs, k) => [
    names[k] ?? '',
    ...drops.map((drop) => (pHs ? fixed(pHs[drop] ?? Number.NaN, 2) : '')),
  ]);
  return section(words.bufferHeading, [
    ...(buffer.recipe ? recipeSteps(buffer.recipe, buffer.recipe.stepsWithoutPH, words) : []),
    paragraph(
      say(words.buffer, {
        mL: toDigits(buffer.solution.mL, 3),
        add: namesIn(buffer.add),
        dropSize: buffer.dropSize,
      }),
    ),
    ...(answers?.check ? [paragraph(`${answers.check} ${words.bufferNote}`, 'answer')] : []),
    grid([counted, ...drops.map(String)], lines, answers ? 'drops answer' : 'drops'),
  ]);
}

const namesIn = ({ name, contents }: Solution): string =>
  contents.map(({ reagent }) => reagent.name).join(' + ') || (name ?? '–');
