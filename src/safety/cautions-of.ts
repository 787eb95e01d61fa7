import { at, Faults, isList } from '../errors.js';
import type { Indicator } from '../substance/indicator.js';
import { type Protolyte, readProtolyte } from '../substance/protolyte.js';
import { readIndicator } from '../substance/read-indicator.js';
import { type Reagent, readReagent } from '../substance/reagent.js';

/** What cautions are asked of: a reagent, a protolyte, an indicator, or anything that says what it holds, such as a solution. */
export type Handled =
  | Reagent
  | Protolyte
  | Indicator
  | { readonly contents: readonly { readonly reagent: Reagent }[] };

/** The last line of every list of cautions. */
export const lastCaution =
  "Wear eye protection. The safety data sheet of each bottle, the local rules and a qualified supervisor's word come before this list.";

/**
 * The usual cautions for what is handled: each reagent's, protolyte's and indicator's own, once (a reagent without one has those of its protolytes), and last the line that defers to the safety data sheet,
 * local rules and a qualified supervisor. What has no caution here is not thereby harmless.
 *
 * @param handled - a reagent, a protolyte, an indicator, a solution, or a list of them
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { cautionsOf, reagents } from 'protolysis';
 *
 * const cautions = cautionsOf([reagents.sodiumCarbonate, reagents.sodiumChloride]);
 * cautions.length; // => 2
 * cautions[0]; // => 'sodium carbonate: Irritates the eyes; do not raise dust. It foams with acid. For solutions, see the safety data sheet.'
 * ```
 */
export function cautionsOf(handled: Handled | readonly Handled[]): readonly string[] {
  const faults = new Faults('cautionsOf');
  const bottles: (Reagent | Protolyte | Indicator)[] = [];
  const read = (value: unknown, path: string): void => {
    const unread = faults.object(value, path, 'a reagent, an indicator or a solution');
    const { contents } = unread;
    if (contents === undefined) {
      const isIndicator = unread.transition !== undefined;
      const isProtolyte = unread.steps !== undefined;
      const readOne = isIndicator ? readIndicator : isProtolyte ? readProtolyte : readReagent;
      bottles.push(readOne(unread, path, faults));
      return;
    }
    const here = at(path, 'contents');
    for (const [index, item] of faults.list(contents, here, 'a list of { reagent }').entries()) {
      const { reagent } = faults.object(item, `${here}[${index}]`, 'a part { reagent }');
      bottles.push(readReagent(reagent, `${here}[${index}].reagent`, faults));
    }
  };

  if (isList(handled))
    for (const [index, one] of faults.list(handled, 'handled', 'a list').entries())
      read(one, `handled[${index}]`);
  else read(handled, '');
  faults.done();
  const cautions = bottles.flatMap(cautionsOfOne);
  return [...new Set(cautions), lastCaution];
}

/** A reagent's own words know its form, so they go before those of the protolytes in it. */
function cautionsOfOne(bottle: Reagent | Protolyte | Indicator): string[] {
  const { name, hazard } = bottle;
  if (hazard !== undefined) return [`${name}: ${hazard}`];
  return 'protolytes' in bottle ? bottle.protolytes.flatMap(({ protolyte }) => cautionsOfOne(protolyte)) : [];
}
