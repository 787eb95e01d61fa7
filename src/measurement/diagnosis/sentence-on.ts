import { fixed, toDigits } from '../../print-number.js';
import { numberAt } from '../../solver/number-at.js';
import type { Explanation } from './explanations.js';
import type { Case, FittedModel } from './fitted-model.js';

/** What explains the readings, in a sentence. @internal */
export function sentenceOn(likely: readonly Explanation[]): string {
  const [best, ...others] = likely;
  if (!best) return 'The readings look sound.';
  if (others.length === 0) return `This explains the readings best: ${best.words}.`;
  return `These readings cannot tell which of these it is: ${likely.map(({ words }) => words).join('; ')}.`;
}

/** That nothing explains the readings, what comes nearest, and what to look at first. @internal */
export function sentenceUnexplained(
  { readings, uncertainty }: Case,
  { scatter, found }: FittedModel,
  likely: readonly Explanation[],
): string {
  const nearest = likely[0] ? `, even with what comes nearest, ${likely[0].words}` : '';
  const squares = Array.from(found.residuals, (distance) => distance ** 2);
  const most = Math.max(...squares);
  const k = squares.indexOf(most);
  const alone =
    most > found.sum / 2
      ? ` Most of that is reading ${k + 1}, pH ${fixed(numberAt(readings.pH, k), 2)}: look whether it was written down wrongly.`
      : '';
  return (
    `No single fault explains these readings: they scatter ${toDigits(scatter, 2)} times as much as their uncertainty lets expect` +
    `${nearest}.${alone} Check that sample, titrant and model of activity are those of this bench and that the readings are as ` +
    `certain as ${uncertainty.pH} in pH and ${uncertainty.mL} mL, and mend one fault after the other.`
  );
}
