import { frozenWithView } from '../frozen-with-view.js';
import { fourDigits } from '../print-number.js';
import type { Content, Solution } from './solution.js';

/** A solution as it is handed out: frozen, and printed by a console as its volume and contents. @internal */
export const handOut = (solution: Solution): Solution => frozenWithView(solution, viewSolution);

/** The volume and what it holds, a line each. */
const viewSolution = ({ name, mL, contents }: Solution): string =>
  [
    `${fourDigits(mL)} mL of ${name ?? (contents.length > 0 ? 'solution' : 'water')}`,
    ...contents.map((content) => `  ${contentIn(mL, content)} (${fourDigits(content.mmol)} mmol)`),
  ].join('\n');

/** What a solution holds, in one line: `hydrochloric acid 0.1 mol/L`. @internal */
export const contentsInLine = ({ name = 'water', mL, contents }: Solution): string =>
  contents.length === 0 ? name : contents.map((content) => contentIn(mL, content)).join(', ');

const contentIn = (mL: number, { reagent, mmol }: Content): string =>
  `${reagent.name} ${fourDigits(mmol / mL)} mol/L`;
