import type { Titration } from '../titration/titration.js';
import { printPH, printVolume } from './print-quantity.js';
import { type PlotWords, say } from './words.js';

/** A titration curve in sentences, for those who do not see it. @internal */
export function describeTitration(titration: Titration, upTo: number, words: PlotWords): string[] {
  const at = ({ mL, pH }: { readonly mL: number; readonly pH: number }) => ({
    mL: printVolume(mL, upTo),
    pH: printPH(pH),
  });
  const isShown = ({ mL }: { readonly mL: number }) => mL <= upTo;
  return [
    say(words.describeCurve, {
      start: printPH(titration.pHAt(0)),
      end: printPH(titration.pHAt(upTo)),
      mL: printVolume(upTo, upTo),
    }),
    ...titration.equivalencePoints
      .filter(isShown)
      .map((point) => say(words.describeEquivalence, { ...at(point), reaction: point.reaction })),
    ...titration.halfEquivalencePoints
      .filter(isShown)
      .map((point) => say(words.describeHalfEquivalence, at(point))),
  ];
}
