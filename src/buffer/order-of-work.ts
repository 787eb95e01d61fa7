import type { Solution } from '../solution/solution.js';
import type { BufferPart } from './recipe.js';

/**
 * Parts in the order in which they go in: solids into water, then the stocks, the most dilute first, so that a concentrated
 * acid or base always goes into what is more dilute than it is.
 *
 * Where the stocks leave less than a third of the volume to water, the most dilute of them comes before the solids, which
 * would else not have enough to dissolve in.
 *
 * @internal
 */
export function inOrder(parts: readonly BufferPart[], mL: number, waterToMakeUp: number): BufferPart[] {
  const solids = parts.filter(({ kind }) => kind === 'weighed');
  const stocks = parts
    .flatMap((part) => (part.kind === 'poured' ? [part] : []))
    .sort((one, other) => molarOf(one.stock) - molarOf(other.stock));
  const begun = waterToMakeUp < mL / 3 ? stocks.slice(0, 1) : [];
  return [...begun, ...solids, ...stocks.slice(begun.length)];
}

/** All that is in it, mol/L. */
const molarOf = ({ mL, contents }: Solution): number =>
  contents.reduce((sum, { mmol }) => sum + mmol, 0) / mL;

/**
 * The steps at the bench, for parts in their order. Two thirds of the water at first, and the last of it to the mark at room
 * temperature, are common practice. Four digits are what a balance and a burette give.
 *
 * @param check - the last step
 * @internal
 */
export function orderOfWork(
  parts: readonly BufferPart[],
  mL: number,
  waterToMakeUp: number,
  check: string,
): string[] {
  const water = show((waterToMakeUp * 2) / 3, 2);
  const beginning =
    waterToMakeUp > 0 ? [`Put about ${water} mL of water into a beaker, with a stirrer.`] : [];
  const middle = parts.map((part, k) => {
    if (part.kind === 'poured') {
      const first = k === 0 && waterToMakeUp === 0;
      const how = first ? 'put it into a beaker, with a stirrer' : 'pour it in slowly, stirring';
      return `Measure ${show(part.mL, 4)} mL of ${part.name} and ${how}.`;
    }
    if (part.grams === null)
      return `Add ${show(part.mmol, 4)} mmol of ${part.name}, stirring until it has dissolved.`;
    return `Weigh ${show(part.grams, 4)} g of ${part.name} and add it in portions, stirring until it has dissolved.`;
  });
  const end =
    waterToMakeUp > 0
      ? [
          'Let it come to room temperature.',
          `Transfer it to a volumetric flask, rinse the beaker into it, make up to ${Number(mL.toPrecision(12))} mL with water and mix.`,
        ]
      : ['Mix, and let it come to room temperature.'];
  return [...beginning, ...middle, ...end, check];
}

/** With the zeros that show the digits, but never as a power of ten. */
function show(value: number, digits: number): string {
  const text = value.toPrecision(digits);
  return text.includes('e') ? String(Number(text)) : text;
}
