import type { BufferPart } from './recipe.js';

/**
 * The steps at the bench. Solids first, then what is poured, into most of the water; acids and bases that heat up have
 * then water around them. Two thirds of the water at first, and the last of it to the mark at room temperature, are
 * common practice.
 *
 * @internal
 */
export function orderOfWork(
  parts: readonly BufferPart[],
  mL: number,
  waterToMakeUp: number,
  pH: number,
): string[] {
  const beginning =
    waterToMakeUp > 0
      ? [`Put about ${show((waterToMakeUp * 2) / 3, 2)} mL of water into a beaker, with a stirrer.`]
      : [];
  const middle = parts.map((part) => {
    if (part.kind === 'poured')
      return `Measure ${show(part.mL)} mL of ${part.name} and pour it in slowly, stirring.`;
    if (part.grams === null)
      return `Add ${show(part.mmol)} mmol of ${part.name}, stirring until it has dissolved.`;
    return `Weigh ${show(part.grams)} g of ${part.name} and add it in portions, stirring until it has dissolved.`;
  });
  const end =
    waterToMakeUp > 0
      ? [
          'Let it come to room temperature.',
          `Rinse it into a volumetric flask, make up to ${show(mL)} mL with water and mix.`,
        ]
      : ['Mix.'];
  return [...beginning, ...middle, ...end, `Check with a calibrated probe: pH ${pH.toFixed(2)} is expected.`];
}

const show = (value: number, digits = 5) => String(Number(value.toPrecision(digits)));
