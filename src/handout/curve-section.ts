import { drawTitration } from '../plot/draw-titration.js';
import { fixed } from '../print-number.js';
import { pointsInOrder } from '../titration/points/points-in-order.js';
import type { Answers } from './answers.js';
import { graphPaper } from './graph-paper.js';
import type { ReadHandout } from './handout-options.js';
import { grid, type Markup, own, paragraph, section } from './markup.js';

/** The width at which the picture is drawn, px: its type then prints at about 8 points. */
const width = 460;

/** The predicted curve, or paper to draw one's own on. @internal */
export function curveSection({ dyes, words }: ReadHandout, answers: Answers | null): Markup {
  if (!answers) return section(words.curveHeading, [own(graphPaper(words.picture))]);
  const { svg } = drawTitration(answers.titration, {
    width,
    title: words.expectedCurveHeading,
    words: words.picture,
    indicators: dyes.map(({ indicator }) => indicator),
    additions: { volumes: answers.plan.mL },
  });
  return section(words.expectedCurveHeading, [own(svg)], 'picture');
}

/** Lines for a student's own points: always as many, so that their number says nothing. */
const ownLines = 3;

/** The points found, or a table for them. @internal */
export function pointsSection({ words }: ReadHandout, answers: Answers | null): Markup {
  if (!answers) {
    const lines = Array.from({ length: ownLines }, () => words.pointColumns.map(() => ''));
    return section(words.pointsHeading, [paragraph(words.pointsHint), grid(words.pointColumns, lines)]);
  }
  if (answers.titration.equivalencePoints.length === 0)
    return section(words.pointsHeading, [paragraph(words.noPoints)]);
  const rows = pointsInOrder(answers.titration).map(({ reaction, mL, pH }) => [
    reaction ?? words.halfEquivalence,
    fixed(mL, 2),
    fixed(pH, 2),
  ]);
  return section(words.pointsHeading, [grid(words.pointColumns, rows, 'grid answer')]);
}
