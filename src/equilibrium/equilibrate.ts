import { frozenWithView } from '../frozen-with-view.js';
import type { Solution } from '../solution/solution.js';
import type { Totals } from '../solution/totals.js';
import { sum } from '../solver/sum.js';
import { notesOnCapacity, notesOnStrength } from './activity/notes-on-strength.js';
import type { IonColumn } from './activity/real-system.js';
import type { Conditions } from './conditions.js';
import { constantsInUse } from './constants-in-use.js';
import type { Equilibrium } from './equilibrium.js';
import { noteOnSolid, type Precipitate, precipitatesOf } from './precipitates.js';
import { readProblem } from './read-problem.js';
import { solveSolution } from './solve-solution.js';
import { speciesOf } from './species-of.js';
import type { System } from './system.js';
import { viewEquilibrium } from './view-equilibrium.js';

/**
 * The equilibrium of a solution: pH and every species.
 *
 *   [H+] − Kw/[H+] + Σ z·c(strong ions) + Σᵢ Cᵢ·z̄ᵢ([H+]) = 0
 *
 * By default an ideal solution at 25 °C, closed to the air; see {@link Conditions}. With a model of activity the
 * constants between concentrations depend on the ionic strength, which is found together with the pH.
 *
 * Everything counts as dissolved. The notes name the solids with which the solution is more than saturated.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids, davies, equilibrate, makeSolution, molarOf, reagents } from 'protolysis';
 *
 * const sample = makeSolution({ contents: [{ reagent: reagents.sodiumHydrogenCarbonate, molar: 0.1 }] });
 * const equilibrium = equilibrate(sample);
 * equilibrium.pH; // => 8.340
 * molarOf(equilibrium, acids.carbonic, 'CO3(2-)'); // => 0.00100
 *
 * equilibrate(sample, { activity: davies }).pH; // => 8.125
 * ```
 */
export function equilibrate(solution: Solution, conditions?: Conditions): Equilibrium {
  const { read, system, column } = readProblem('equilibrate', solution, conditions);
  return equilibriumOf(system, column, system.totals[0] as Totals, read);
}

/** The equilibrium of a column of a system as it is handed out. @internal */
export function equilibriumOf(
  system: System,
  column: IonColumn,
  totals: Totals,
  solution: Solution,
): Equilibrium {
  const { equilibrium, notes, solids } = equilibriumAndSolids(system, column, totals, solution);
  const all = [...notes, ...solids.map((solid) => noteOnSolid(solid))];
  return frozenWithView({ ...equilibrium, notes: all }, viewEquilibrium);
}

/** An equilibrium, the notes on it, and the solids that may precipitate. */
export interface EquilibriumAndSolids {
  readonly equilibrium: Omit<Equilibrium, 'notes'>;
  /** Without those on solids. */
  readonly notes: readonly string[];
  readonly solids: readonly Precipitate[];
}

/**
 * The equilibrium of a column of a system, with the protolytes and ions that its totals name.
 *
 * @param column - what is in the solution now, after any escape of CO2
 * @internal
 */
export function equilibriumAndSolids(
  system: System,
  column: IonColumn,
  totals: Totals,
  solution: Solution,
): EquilibriumAndSolids {
  const solved = solveSolution(system, column);
  const { h, real } = solved;
  const species = speciesOf(system, column, totals, solved);
  const ionicStrength = sum(species.map(({ charge, molar }) => charge * charge * molar)) / 2;
  return {
    equilibrium: {
      solution,
      conditions: { ...system.inUse.given, pKw: system.inUse.pKw },
      pH: -Math.log10(solved.activity),
      pcH: -Math.log10(h),
      ionicStrength,
      bufferCapacity: solved.capacity,
      species,
      chargeImbalance: sum(species.map(({ charge, molar }) => charge * molar)),
      constants: constantsInUse(system),
    },
    notes: [
      ...system.notes,
      ...notesOnStrength(system.inUse, ionicStrength, real?.coefficients.ceiling),
      ...notesOnCapacity(solved.capacity),
      ...(solved.isSolved
        ? []
        : ['The search for this pH did not end at a root: do not use it, and report the input.']),
    ],
    solids: precipitatesOf({ solution, conditions: system.inUse.given, species }),
  };
}
