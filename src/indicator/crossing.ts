import type { PH } from '../equilibrium/quantities.js';
import type { Asked } from './read-titration.js';

/**
 * The volume at which an observer who looks for the point at `mL` calls a pH; null where the curve does not reach it.
 *
 * Of several crossings only those in the direction of the curve at the point count. A boil-out divides the titration in
 * two. For a point after it, or just at it, the last crossing counts, because a colour that comes back has to be
 * titrated away again. For a point before it the last crossing before the boil-out counts, because that volume was read
 * before the boiling; only if there is none, the first one after it. Where a curve turns by itself, the last crossing
 * counts: the colour stays only then.
 *
 * @internal
 */
export function crossingOf(titration: Asked, mL: number): (pH: PH) => number | null {
  const direction = Math.sign(titration.slopeAt(mL));
  const interruption = titration.setup?.boilOut?.mL ?? 0;
  const isBefore = mL < interruption;
  return (pH) => {
    const all = titration.volumesAt(pH).filter((volume) => volume > 0);
    if (all.length < 2) return all[0] ?? null;
    const along = all.filter((volume) => titration.slopeAt(volume) * direction >= 0);
    if (!isBefore) return along.at(-1) ?? null;
    return along.filter((volume) => volume <= interruption).at(-1) ?? along[0] ?? null;
  };
}
