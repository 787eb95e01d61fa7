import type { Titration } from 'protolysis';
import { pathsOf, valueAt } from './hostile.js';

/** A number in an answer that no answer may hold. */
export function badNumberIn(answer: unknown): unknown {
  if (typeof answer === 'number') return Number.isFinite(answer) ? undefined : answer;
  if (typeof answer !== 'object' || answer === null) return undefined;
  return pathsOf(answer)
    .map((path) => valueAt(answer, path))
    .find((value) => typeof value === 'number' && !Number.isFinite(value));
}

/** All that a titration can be asked for. */
export function everythingOf(titration: Titration): unknown[] {
  return [
    titration.setup,
    titration.equivalencePoints,
    titration.halfEquivalencePoints,
    titration.inflectionPoints,
    ...[0, 1e-9, 20, 1e9].flatMap((mL) => [
      titration.pHAt(mL),
      titration.slopeAt(mL),
      titration.equilibriumAt(mL),
      titration.volumesAt(titration.pHAt(mL)),
    ]),
    titration.jumpAt(20),
    titration.pHs([0, 20, 1e9]),
    titration.curve({ maxStep: 1, upTo: 40 }),
  ];
}
