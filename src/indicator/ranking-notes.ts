import { fixed } from '../print-number.js';
import type { PointToFind } from './ranking.js';
import type { Asked } from './read-titration.js';
import { verdictScores } from './verdict.js';

/** What a ranking says beside its order. @internal */
export function notesFor(
  points: readonly PointToFind[],
  { titration, tolerance }: { readonly titration: Asked; readonly tolerance: number },
): string[] {
  if (points.length === 0)
    return [
      titration.whyNoPoint ??
        'No equivalence point: the titration has none, so that no indicator can show it.',
    ];
  return points
    .filter(({ best }) => best < verdictScores['well suited'])
    .map(
      ({ at, best }) =>
        `The curve is flat at ${fixed(at.mL, 2)} mL: with a tolerance of ${tolerance} mL even the sharpest call scores ${fixed(best, 2)} there.`,
    );
}
