import { withView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import { shownInNotebook } from '../plot/picture.js';
import { htmlOfPart, markdownOfPart } from './part.js';
import { partsShown } from './parts-shown.js';

/** What is shown of a result, as text for a page and for a notebook: plain data that survives JSON. */
export interface Display {
  /** Pictures are images in it and carry their data along, so that a notebook that is not trusted shows them too. */
  readonly html: string;
  /** The same without its pictures, of which it has the descriptions. */
  readonly markdown: string;
}

/**
 * A result as a reader wants to see it: of a titration its curve and a table of its points, of a fit and of a budget their
 * pictures and tables, of a ranking, a recipe, a solution, an equilibrium or a diagnosis what it says, in tables and lists,
 * of a curve or of rows a table.
 *
 * A notebook that asks a value what to show, such as that of Deno, shows it where a cell ends with it. Elsewhere hand `html`
 * to whatever shows HTML; a console prints the Markdown.
 *
 * @param result - a picture, a titration, or any other result; one that was stored as JSON will do
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { displayOf } from 'protolysis/plot';
 *
 * const soda = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
 * console.log(displayOf(soda).markdown);
 * ```
 *
 * ```text
 * 50 mL of solution
 *
 * | substance | concentration, mol/L | amount, mmol |
 * | :--- | ---: | ---: |
 * | sodium carbonate | 0.05000 | 2.500 |
 * ```
 */
export function displayOf(result: object): Display {
  const faults = new Faults('displayOf');
  const parts = partsShown(result, faults);
  const html = `<div>\n${parts.map(htmlOfPart).join('\n')}\n</div>`;
  const markdown = parts.map(markdownOfPart).join('\n\n');
  const view = () => markdown;
  const shown = Object.defineProperty({ html, markdown }, shownInNotebook, {
    value: () => ({ 'text/plain': markdown, 'text/html': html }),
  });
  return Object.freeze(withView(shown, view));
}
