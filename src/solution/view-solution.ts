import { frozenWithView } from '../frozen-with-view.js';
import { fourDigits } from '../print-number.js';
import { type Content, isStock, type Solution } from './solution.js';

/** A solution as it is handed out: frozen, and printed by a console as its volume and contents. @internal */
export const handOut = <S extends Solution>(solution: S): S => frozenWithView(solution, viewSolution);

/** The volume and what it holds, a line each. */
function viewSolution(solution: Solution): string {
  const { mL, contents, name = contents.length > 0 ? 'solution' : 'water' } = solution;
  if (isStock(solution))
    return [`${name} of no stated volume`, ...contents.map((content) => `  ${contentIn(mL, content)}`)].join(
      '\n',
    );
  return [
    `${fourDigits(mL)} mL of ${name}`,
    ...contents.map((content) => `  ${contentIn(mL, content)} (${fourDigits(content.mmol)} mmol)`),
  ].join('\n');
}

/** What a solution holds, in one line: `hydrochloric acid 0.1 mol/L`. @internal */
export const contentsInLine = ({ name = 'water', mL, contents }: Solution): string =>
  contents.length === 0 ? name : contents.map((content) => contentIn(mL, content)).join(', ');

const contentIn = (mL: number, { reagent, mmol }: Content): string =>
  `${reagent.name} ${fourDigits(mmol / mL)} mol/L`;
