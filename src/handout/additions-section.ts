import { say } from '../plot/words.js';
import { additionDefaults } from '../preparation/addition-options.js';
import type { AdditionPlan } from '../preparation/addition-schedule.js';
import type { Answers } from './answers.js';
import type { ReadHandout } from './handout-options.js';
import { list, type Markup, paragraph, section } from './markup.js';
import type { HandoutWords } from './words.js';

/** How to add: the rule for the student, since a plan in volumes would tell where the curve is steep. @internal */
export function additionsSection({ how, words }: ReadHandout, answers: Answers | null): Markup {
  const { coarse, fine, maxStep, settle } = how;
  const isUsual = settle === additionDefaults.settle; // the middle of what is common practice
  const stirring = isUsual ? words.settleUsual : say(words.settle, { settle });
  return section(words.additionsHeading, [
    paragraph(say(words.additions, { coarse, fine, maxStep })),
    paragraph(`${stirring} ${words.writeDown}`),
    ...(answers ? planned(answers.plan, words) : []),
  ]);
}

function planned({ readings, fillings, minutes, notes }: AdditionPlan, words: HandoutWords): Markup[] {
  const said = { readings, fillings, minutes: Math.round(minutes) };
  return [paragraph(say(words.plan, said), 'answer'), list(notes, 'ul', 'answer')];
}
