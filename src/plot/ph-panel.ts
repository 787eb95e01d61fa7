import type { Curve } from '../titration/sampling/curve.js';
import type { Titration } from '../titration/titration.js';
import { roundAxis } from './axis.js';
import { pointsOf } from './drawn-curve.js';
import type { Mark, Panel } from './figure.js';
import { inkOf } from './inks.js';
import { plainPanel } from './plain-panel.js';
import { printPH, printVolume } from './print-quantity.js';
import { type PlotWords, say } from './words.js';

/** The panel of a titration curve with its points; `more` is what else stands in it. @internal */
export function pHPanel(
  titration: Titration,
  curve: Curve,
  words: PlotWords,
  more: Partial<Pick<Panel, 'areas' | 'dots'>> & { readonly name?: string } = {},
): Panel {
  const { areas = [], dots = [], name = '' } = more;
  const values = [
    ...curve.pH,
    ...areas.flatMap(({ lower, upper }) => [...lower, ...upper]),
    ...dots.flatMap(({ points }) => points.map(({ y }) => y)),
  ];
  return plainPanel(roundAxis(words.pH, values), {
    areas,
    lines: [{ points: pointsOf(curve.mL, curve.pH), stroke: inkOf(0), name }],
    dots,
    marks: marksOf(titration, curve.mL.at(-1) as number, words),
  });
}

/** Equivalence points first: where there is no room for all, theirs are the labels that stay. */
function marksOf(titration: Titration, upTo: number, words: PlotWords): Mark[] {
  const printed = ({ mL, pH }: { mL: number; pH: number }) => ({
    mL: printVolume(mL, upTo),
    pH: printPH(pH),
  });
  const textOf = (point: { mL: number; pH: number }) => say(words.point, printed(point));
  const shortOf = (point: { mL: number; pH: number }) => [
    say(words.volume, printed(point)),
    say(words.atPH, printed(point)),
  ];
  const isShown = ({ mL }: { readonly mL: number }) => mL <= upTo;
  return [
    ...titration.equivalencePoints.filter(isShown).map(
      (point): Mark => ({
        at: { x: point.mL, y: point.pH },
        lines: [point.inflection ? words.equivalence : words.equivalenceWithoutStep, textOf(point)],
        short: shortOf(point),
        key: point.inflection ? words.keyToEquivalence : words.keyToNoStep,
        shape: point.inflection ? 'diamond' : 'hollow diamond',
        hasRule: true,
      }),
    ),
    ...titration.halfEquivalencePoints.filter(isShown).map(
      (point): Mark => ({
        at: { x: point.mL, y: point.pH },
        lines: [words.halfEquivalence, textOf(point)],
        short: shortOf(point),
        key: words.keyToHalfEquivalence,
        shape: 'ring',
        hasRule: false,
      }),
    ),
  ];
}
