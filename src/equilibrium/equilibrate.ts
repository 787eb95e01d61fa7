import { frozen } from '../frozen.js';
import type { Solution } from '../solution/solution.js';
import type { Totals } from '../solution/totals.js';
import { sum } from '../solver/sum.js';
import { notesOnCapacity, notesOnStrength } from './activity/notes-on-strength.js';
import type { IonColumn } from './activity/real-system.js';
import type { Conditions } from './conditions.js';
import { type ConstantInUse, constantsInUse } from './constants-in-use.js';
import { noteOnSolid, precipitatesOf } from './precipitates.js';
import type { PcH, PH } from './quantities.js';
import { readProblem } from './read-problem.js';
import { solveSolution } from './solve-solution.js';
import { type SpeciesAt, speciesOf } from './species-of.js';
import type { System } from './system.js';

/** A solution at equilibrium: plain data, but for a model of activity that was given. */
export interface Equilibrium {
  readonly solution: Solution;
  /** What was given, and the temperature and pKw in use. */
  readonly conditions: Conditions;
  /** −log10 of the hydrogen-ion activity. */
  readonly pH: PH;
  /** −log10 of the hydrogen-ion concentration in mol/L. */
  readonly pcH: PcH;
  /** ½ Σ c·z² over every ion, mol/L. */
  readonly ionicStrength: number;
  /**
   * β = dC_base/dpH, mol/L per unit of pH, water's own share included, and what the base's cation (of charge +1) does to γ.
   * A gas stays at its pressure; what has escaped has escaped.
   */
  readonly bufferCapacity: number;
  readonly species: readonly SpeciesAt[];
  /** What is left of Σ z·c, mol/L: rounding. */
  readonly chargeImbalance: number;
  /** What it rests on beside the solution's substances; `sourcesOf` finds the sources of all. */
  readonly constants: readonly ConstantInUse[];
  readonly notes: readonly string[];
}

/**
 * The equilibrium of a solution: pH and every species.
 *
 *   [H+] − Kw/[H+] + Σ z·c(strong ions) + Σᵢ Cᵢ·z̄ᵢ([H+]) = 0
 *
 * By default an ideal solution at 25 °C, closed to the air; see {@link Conditions}. With a model of activity the constants
 * between concentrations depend on the ionic strength, which is found together with the pH.
 *
 * Everything counts as dissolved: the notes name the solids known to be less soluble than that.
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
  return frozen(equilibriumOf(system, column, system.totals[0] as Totals, read));
}

/**
 * The equilibrium of a column of a system, with the protolytes and ions that its totals name.
 *
 * @param column - what is in the solution now, after any escape of CO2
 * @internal
 */
export function equilibriumOf(
  system: System,
  column: IonColumn,
  totals: Totals,
  solution: Solution,
): Equilibrium {
  const solved = solveSolution(system, column);
  const { h, real } = solved;
  const species = speciesOf(system, column, totals, solved);
  const ionicStrength = sum(species.map(({ charge, molar }) => charge * charge * molar)) / 2;
  return {
    solution,
    conditions: { ...system.inUse.given, pKw: system.inUse.pKw },
    pH: -Math.log10(solved.activity),
    pcH: -Math.log10(h),
    ionicStrength,
    bufferCapacity: solved.capacity,
    species,
    chargeImbalance: sum(species.map(({ charge, molar }) => charge * molar)),
    constants: constantsInUse(system),
    notes: [
      ...system.notes,
      ...notesOnStrength(system.inUse, ionicStrength, real?.coefficients.ceiling),
      ...notesOnCapacity(solved.capacity),
      ...precipitatesOf({ solution, conditions: system.inUse.given, species }).map((one) => noteOnSolid(one)),
      ...(solved.isSolved
        ? []
        : ['The search for this pH did not end at a root: do not use it, and report the input.']),
    ],
  };
}
