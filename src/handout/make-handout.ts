import { conditionDefaults } from '../equilibrium/conditions.js';
import { chooseIndicators } from '../indicator/rank-indicators.js';
import type { IndicatorSet } from '../indicator/ranking.js';
import { Faults } from '../input/faults.js';
import { asMarkup } from '../output/as-markup.js';
import { namesOf } from '../plot/names-of.js';
import { say } from '../plot/words.js';
import { planOf } from '../preparation/plan-additions.js';
import { printFormula } from '../substance/print-formula.js';
import { makeTitration } from '../titration/make-titration.js';
import { readSetupOf } from '../titration/read-setup.js';
import type { Titration, TitrationSetup } from '../titration/titration.js';
import { additionsSection } from './additions-section.js';
import { type Answers, answersOf } from './answers.js';
import { cautionsSection, checksSection, fillSection } from './before-the-start.js';
import { bufferSection } from './buffer-section.js';
import { curveSection, pointsSection } from './curve-section.js';
import { type HandoutOptions, type ReadHandout, readHandoutOptions } from './handout-options.js';
import { indicatorsSection } from './indicators-section.js';
import { element, list, type Markup, own, paragraph, section, text } from './markup.js';
import { readingsSheet } from './readings-sheet.js';
import { checkSample } from './sample-share.js';
import { styleFor } from './style.js';

/**
 * A page to print for the bench, as the text of one HTML document that needs no network and runs no script.
 *
 * It says what for, what to beware of, what to weigh and fill, what to check, how to add and when to stop, and has
 * tables to fill in. The instructor's has the answers in the same places: curve, points, costs of a drop too many, every
 * planned reading. The student's is made without them, hidden or not. It has the names of the substances, which its cautions
 * need, and the colours to stop at; an indicator that is not for use is on the instructor's alone, with the reason.
 *
 * The cautions are a reminder: the safety data sheet, the local rules and a qualified supervisor come first.
 *
 * @param titration - as `titrate` returns it: what is expected
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, reagents, titrate } from 'protolysis';
 * import { makeHandout } from 'protolysis/handout';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const sample = { name: 'powder', grams: 0.2 };
 * const options = { sample, indicators: [indicators.methylOrange] };
 * const student = makeHandout(titration, options);
 * student.includes('Weigh about 0.20 g of powder'); // => true
 * student.includes('35.85'); // => false
 * makeHandout(titration, { ...options, audience: 'instructor' }).includes('35.85'); // => true
 * ```
 */
export function makeHandout(titration: Pick<Titration, 'setup'>, options?: HandoutOptions): string {
  const faults = new Faults('makeHandout');
  const setup = readSetupOf(titration, faults);
  const read = readHandoutOptions(options, faults);
  if (!faults.any && read.sample) checkSample(setup.analyte, read.sample, faults);
  faults.done();

  const expected = makeTitration(setup);
  const plan = planOf(expected, read.how, 'options.additions', faults); // refused for the student as well
  const chosen = chosenFrom(expected, read);
  const answers = read.audience === 'instructor' ? answersOf(expected, chosen, plan, read) : null;
  const names = namesOf(expected.setup);
  const title = read.title ?? say(read.words.title, names);
  return documentOf(title, read, [
    headerOf(title, read),
    element('main', [
      element(
        'div',
        [
          section(read.words.purposeHeading, [paragraph(read.purpose ?? say(read.words.purpose, names))]),
          cautionsSection(expected.setup, read, answers),
          fillSection(expected.setup, read, answers),
          checksSection(read),
          additionsSection(read, answers),
          indicatorsSection(expected, chosen, read, answers),
          curveSection(read, answers),
        ],
        ' class="columns"',
      ),
      readingsSheet(read, answers),
      pointsSection(read, answers),
      bufferSection(read, answers),
      ...(answers ? [basisSection(answers, expected.setup, read)] : []),
    ]),
  ]);
}

/** Ranked for the points that they serve; those that are not for use are left out. */
function chosenFrom(titration: Titration, { dyes }: ReadHandout): IndicatorSet {
  if (dyes.length === 0) return { points: [], leftOut: [], notes: [] };
  return chooseIndicators(
    titration,
    dyes.map(({ indicator }) => indicator),
  );
}

function headerOf(title: string, { audience, words }: ReadHandout): Markup {
  const fields = [words.name, words.partner, words.date].map((field) => element('span', [text(field)]));
  return element('header', [
    element('h1', [text(title)]),
    paragraph(audience === 'instructor' ? words.instructor : words.student, 'kind'),
    ...(audience === 'student' ? [element('div', fields, ' class="fields"')] : []),
  ]);
}

function basisSection(
  { titration }: Answers,
  { conditions }: TitrationSetup,
  { words }: ReadHandout,
): Markup {
  const model = say(words.model, {
    activity: conditions?.activity?.name ?? 'ideal',
    celsius: conditions?.celsius ?? conditionDefaults.celsius,
  });
  return section(words.notesHeading, [paragraph(model), list(titration.notes.map(typeset))], 'answer');
}

/** Formulas in a note as those of the page: of two elements at least, so that nothing else is taken for one. */
const typeset = (note: string): string => note.replace(/\b(?:[A-Z][a-z]?\d*){2,}/g, printFormula);

/** The policy allows styles and nothing from anywhere else, whatever a later edit brings in. */
const policy = "default-src 'none'; style-src 'unsafe-inline'";

const documentOf = (title: string, { words, paper }: ReadHandout, body: readonly Markup[]): string =>
  [
    '<!doctype html>',
    `<html lang="${asMarkup(words.language)}">`,
    element('head', [
      own('<meta charset="utf-8">'),
      own(`<meta http-equiv="Content-Security-Policy" content="${policy}">`),
      own('<meta name="viewport" content="width=device-width, initial-scale=1">'),
      element('title', [text(title)]),
      element('style', [own(styleFor(paper))]),
    ]).html,
    element('body', body).html,
    '</html>',
    '',
  ].join('\n');
