import { Faults } from '../input/faults.js';
import { namesOf } from '../plot/names-of.js';
import { say } from '../plot/words.js';
import { toDigits } from '../print-number.js';
import { cautionsFor, cautionsWithoutAmounts } from '../safety/cautions-of.js';
import { type Handled, type HandledParts, joined, readHandled } from '../safety/read-handled.js';
import type { Solution } from '../solution/solution.js';
import type { TitrationSetup } from '../titration/titration.js';
import type { Answers } from './answers.js';
import type { ReadHandout } from './handout-options.js';
import { list, type Markup, paragraph, section } from './markup.js';
import { recipeSteps } from './recipe-steps.js';
import { sampleShare } from './sample-share.js';

/** Cautions for all that is handled, with amounts for the instructor alone; and whose word comes before them. @internal */
export function cautionsSection(setup: TitrationSetup, read: ReadHandout, answers: Answers | null): Markup {
  const { words } = read;
  const handled = handledIn(setup, read);
  const cautions = answers
    ? cautionsFor(handled)
    : cautionsWithoutAmounts(handled, ({ name, advice }) => say(words.gasEscapes, { gas: name, advice }));
  return section(
    words.cautionsHeading,
    [list(cautions), paragraph(words.waste), paragraph(words.safetyFirst, 'strong')],
    'cautions',
  );
}

/** Bottles, liquids and mixtures; of a buffer with a recipe, which has used up what is in it, gases alone. */
function handledIn(
  { analyte, titrant }: TitrationSetup,
  { sample, recipes, dyes, buffer }: ReadHandout,
): HandledParts {
  const faults = new Faults('makeHandout');
  const partsOf = (one: Handled) => readHandled(one, '', faults);
  const ofBuffer = buffer ? [partsOf({ analyte: buffer.solution, titrant: buffer.add })] : [];
  return joined([
    ...(sample ? analyte.contents.map(({ reagent }) => partsOf(reagent)) : []),
    ...recipes.map(({ handled }) => handled),
    partsOf({ analyte, titrant }),
    ...dyes.map(({ indicator }) => partsOf(indicator)),
    ...(buffer?.recipe
      ? [buffer.recipe.handled, ...ofBuffer.map((parts) => ({ ...parts, liquids: [buffer.add] }))]
      : ofBuffer),
  ]);
}

/** What goes into flask and burette; how much it holds is an answer. @internal */
export function fillSection(setup: TitrationSetup, read: ReadHandout, answers: Answers | null): Markup {
  const { sample, words } = read;
  const { analyte, titrant } = namesOf(setup);
  const mL = toDigits(setup.analyte.mL, 3);
  return section(words.fillHeading, [
    ...read.recipes.flatMap((recipe) => recipeSteps(recipe, recipe.steps, words)),
    list([
      ...(sample
        ? [
            say(words.weigh, { grams: toDigits(sample.grams, 2), sample: sample.name }),
            say(words.dissolve, { mL }),
          ]
        : [say(words.pour, { mL, analyte })]),
      say(words.burette, { titrant }),
    ]),
    ...(answers ? [paragraph(expected(setup, read), 'answer')] : []),
  ]);
}

function expected({ analyte, titrant }: TitrationSetup, { sample, words }: ReadHandout): string {
  const share = sample && sampleShare(analyte, sample);
  return [
    say(words.expectedSample, {
      contents: contentsOf(analyte, ({ mmol, name }) =>
        say(words.content, { mmol: toDigits(mmol, 4), reagent: name }),
      ),
    }),
    ...(share === null ? [] : [say(words.share, { percent: toDigits(100 * share, 3) })]),
    say(words.expectedTitrant, {
      contents: contentsOf(titrant, ({ mmol, name }) =>
        say(words.concentration, { molar: toDigits(mmol / titrant.mL, 4), reagent: name }),
      ),
    }),
  ].join(' ');
}

const contentsOf = (
  { contents }: Solution,
  print: (content: { readonly mmol: number; readonly name: string }) => string,
): string => contents.map(({ mmol, reagent }) => print({ mmol, name: reagent.name })).join(', ') || '–';

/** What to look at before the first reading. @internal */
export const checksSection = ({ words }: ReadHandout): Markup =>
  section(words.checksHeading, [list(words.checks, 'ul', 'checks')]);
