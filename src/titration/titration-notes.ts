import { notesOnCapacity } from '../equilibrium/activity/notes-on-strength.js';
import type { EquilibriumAndSolids } from '../equilibrium/equilibrate.js';
import { noteOnSolid, type Precipitate } from '../equilibrium/precipitates.js';
import type { System } from '../equilibrium/system.js';
import { fixed } from '../print-number.js';
import type { Solution } from '../solution/solution.js';
import { printFormula } from '../substance/print-formula.js';
import type { CurveJump, CurveModel } from './model/curve-model.js';
import type { EquivalencePoint } from './points/equivalence-points.js';
import { whyNoPoint } from './points/why-no-point.js';
import type { CurvePoint } from './sampling/curve.js';
import { usualLastVolume } from './sampling/usual-last-volume.js';

/** The notes of a titration, from its start, its points and its usual end. @internal */
export function titrationNotes(
  { system, curveModel, analyte }: { system: System; curveModel: CurveModel; analyte: Solution },
  points: {
    readonly equivalence: readonly EquivalencePoint[];
    readonly halfEquivalence: readonly CurvePoint[];
  },
  stateAt: (mL: number) => EquilibriumAndSolids,
): string[] {
  const { equivalence, halfEquivalence } = points;
  const volumes = [0, ...equivalence.map(({ mL }) => mL), usualLastVolume(equivalence, analyte)];
  const states = volumes.map((mL) => ({ mL, ...stateAt(mL) }));
  const strongest = states.reduce((most, state) =>
    state.equilibrium.ionicStrength > most.equilibrium.ionicStrength ? state : most,
  );
  const buffered = [...states.slice(0, 1), ...halfEquivalence.map(({ mL }) => stateAt(mL))];
  return [
    ...new Set([
      ...(equivalence.length === 0 ? [whyNoPoint(curveModel, system.inUse.pKw / 2)] : []),
      ...strongest.notes,
      ...notesOnCapacity(...buffered.map(({ equilibrium }) => equilibrium.bufferCapacity)),
      ...notesOnSolids(states),
      ...notesOnGas(system),
      ...curveModel.jumps().map(noteOnJump),
    ]),
  ];
}

/** For every solid that may precipitate at one of the volumes, a note on where it is most in excess. */
function notesOnSolids(
  states: readonly { readonly mL: number; readonly solids: readonly Precipitate[] }[],
): string[] {
  const worst = new Map<string, { found: Precipitate; mL: number }>();
  for (const { mL, solids } of states)
    for (const found of solids) {
      const before = worst.get(found.solid.name);
      if (!before || found.excess > before.found.excess) worst.set(found.solid.name, { found, mL });
    }
  return [...worst.values()].map(({ found, mL }) => noteOnSolid(found, ` (here at ${fixed(mL, 2)} mL)`));
}

/** Far beyond its range a law may leave no ionic strength that agrees with itself near the one before. */
const noteOnJump = ({ mL, before, after }: CurveJump): string =>
  `The curve jumps at ${mL.toPrecision(6)} mL from pH ${before.toFixed(2)} to ${after.toFixed(2)}, and no volume has a pH between: the law of activity is far beyond its range there.`;

/** What the exchange of carbon dioxide means for the points of the curve. */
function notesOnGas({ gas, escape: leaving }: System): string[] {
  const [, ion] = (gas?.protolyte.species ?? []).map(({ formula }) => printFormula(formula));
  if (ion) return [`Open to carbon dioxide at a fixed pressure: points that rest on ${ion} do not exist.`];
  return leaving && leaving.share > 0
    ? ['Equivalence points count the carbon dioxide that has escaped as if it were still there.']
    : [];
}
