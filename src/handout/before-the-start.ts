import { namesOf } from '../plot/titration-title.js';
import { say } from '../plot/words.js';
import { toDigits } from '../print-number.js';
import { cautionsOf, cautionsWithoutAmounts, lastCaution } from '../safety/cautions-of.js';
import type { Solution } from '../solution/solution.js';
import type { TitrationSetup } from '../titration/titration.js';
import type { Answers } from './answers.js';
import type { ReadHandout } from './handout-options.js';
import { list, type Markup, paragraph, section } from './markup.js';
import type { HandoutWords } from './words.js';

/** Cautions for all that is handled, with amounts for the instructor alone; and whose word comes before them. @internal */
export function cautionsSection(setup: TitrationSetup, read: ReadHandout, answers: Answers | null): Markup {
  const { sample, dyes, buffer, words } = read;
  const handled = [
    ...(sample ? setup.analyte.contents.map(({ reagent }) => reagent) : []),
    { analyte: setup.analyte, titrant: setup.titrant },
    ...dyes.map(({ indicator }) => indicator),
    ...(buffer ? [{ analyte: buffer.solution, titrant: buffer.add }] : []),
  ];
  const cautions = answers
    ? cautionsOf(handled).filter((caution) => caution !== lastCaution)
    : cautionsWithoutAmounts(handled, ({ name, advice }) => say(words.gasEscapes, { gas: name, advice }));
  return section(words.cautionsHeading, [list(cautions), paragraph(words.safetyFirst, 'strong')], 'cautions');
}

/** What goes into flask and burette; how much it holds is an answer. @internal */
export function fillSection(setup: TitrationSetup, read: ReadHandout, answers: Answers | null): Markup {
  const { sample, words } = read;
  const { analyte, titrant } = namesOf(setup);
  const mL = toDigits(setup.analyte.mL, 3);
  return section(words.fillHeading, [
    list(read.steps, 'ol'),
    list([
      ...(sample
        ? [
            say(words.weigh, { grams: toDigits(sample.grams, 2), sample: sample.name }),
            say(words.dissolve, { mL }),
          ]
        : [say(words.pour, { mL, analyte })]),
      say(words.burette, { titrant }),
    ]),
    ...(answers ? [paragraph(expected(setup, words), 'answer')] : []),
  ]);
}

const expected = ({ analyte, titrant }: TitrationSetup, words: HandoutWords): string =>
  [
    say(words.expectedSample, {
      contents: contentsOf(analyte, ({ mmol, name }) =>
        say(words.content, { mmol: toDigits(mmol, 4), reagent: name }),
      ),
    }),
    say(words.expectedTitrant, {
      contents: contentsOf(titrant, ({ mmol, name }) =>
        say(words.concentration, { molar: toDigits(mmol / titrant.mL, 4), reagent: name }),
      ),
    }),
  ].join(' ');

const contentsOf = (
  { contents }: Solution,
  print: (content: { readonly mmol: number; readonly name: string }) => string,
): string => contents.map(({ mmol, reagent }) => print({ mmol, name: reagent.name })).join(', ') || '–';

/** @internal */
export const checksSection = ({ words }: ReadHandout): Markup =>
  section(words.checksHeading, [list(words.checks, 'ul', 'checks')]);
