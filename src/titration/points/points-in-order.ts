import type { Titration } from '../titration.js';

/**
 * The equivalence and half-equivalence points of a titration by volume; the reaction of a half-equivalence point is null.
 *
 * @internal
 */
export const pointsInOrder = ({
  equivalencePoints,
  halfEquivalencePoints,
}: Pick<Titration, 'equivalencePoints' | 'halfEquivalencePoints'>) =>
  [
    ...equivalencePoints.map(({ mL, pH, reaction }) => ({ mL, pH, reaction })),
    ...halfEquivalencePoints.map(({ mL, pH }) => ({ mL, pH, reaction: null })),
  ].sort((a, b) => a.mL - b.mL);
