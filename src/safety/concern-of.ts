import type { Source } from '../source.js';

/** That a substance is on the candidate list. @internal */
export const concernOf = ({
  name,
  veryHighConcern,
}: {
  readonly name: string;
  readonly veryHighConcern?: Source;
}): readonly string[] =>
  veryHighConcern
    ? [
        `${name}: On the candidate list of substances of very high concern (REACH): take another where one serves. See the safety data sheet.`,
      ]
    : [];

/** Percent by mass from which a mixture has to name such a substance (REACH, articles 31 and 33; from memory). @internal */
export const concernPercent = 0.1;
