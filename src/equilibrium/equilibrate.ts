import { Faults } from '../errors.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { Totals } from '../solution/totals.js';
import { sum } from '../solver/sum.js';
import { type Column, chargeAt, emptyCharge } from './charge-balance.js';
import { type Conditions, readConditions } from './conditions.js';
import { type Family, fractionsOf } from './family.js';
import { emptyRoot, hydrogenIon } from './hydrogen-ion.js';
import type { PcH, PH } from './quantities.js';
import { settingOf } from './setting.js';

/** One species at equilibrium. */
export interface SpeciesAt {
  readonly formula: string;
  readonly charge: number;
  /** The protolyte it is a form of; null for H+, OH- and the strong ions. */
  readonly protolyteId: string | null;
  /** Concentration, mol/L. */
  readonly molar: number;
  /** Activity, mol/L. */
  readonly activity: number;
  /** Its share of its protolyte; null where there is none. */
  readonly fraction: number | null;
}

/** A solution at equilibrium: plain data. */
export interface Equilibrium {
  readonly solution: Solution;
  readonly conditions: Conditions;
  /** −log10 of the hydrogen-ion activity. */
  readonly pH: PH;
  /** −log10 of the hydrogen-ion concentration in mol/L. */
  readonly pcH: PcH;
  /** ½ Σ c·z² over every ion, mol/L. */
  readonly ionicStrength: number;
  /** β = dC_base/dpH, mol/L per unit of pH, water's own share included. */
  readonly bufferCapacity: number;
  readonly species: readonly SpeciesAt[];
  /** What is left of Σ z·c, mol/L: rounding. */
  readonly chargeImbalance: number;
  readonly notes: readonly string[];
}

/**
 * The equilibrium of a solution: pH and every species.
 *
 *   [H+] − Kw/[H+] + Σ z·c(strong ions) + Σᵢ Cᵢ·z̄ᵢ([H+]) = 0
 *
 * Assumes an ideal solution at 25 °C, closed to the air; see {@link Conditions}.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids, equilibrate, makeSolution, molarOf, reagents } from 'protolysis';
 *
 * const sample = makeSolution({ contents: [{ reagent: reagents.sodiumHydrogenCarbonate, molar: 0.1 }] });
 * const equilibrium = equilibrate(sample);
 * equilibrium.pH; // => 8.340
 * molarOf(equilibrium, acids.carbonic, 'CO3(2-)'); // => 0.00100
 * ```
 */
export function equilibrate(solution: Solution, conditions?: Conditions): Equilibrium {
  const faults = new Faults('equilibrate');
  const read = readSolution(solution, 'solution', faults);
  const settled = readConditions(conditions, 'conditions', faults);
  faults.done();
  return equilibriumOf(read, settled);
}

/** The equilibrium of a solution that has been read. @internal */
export function equilibriumOf(solution: Solution, settled: Required<Conditions>): Equilibrium {
  const { balance, protolytes, totals, columns } = settingOf([solution], settled);
  const column = columns[0] as Column;
  const { ions } = totals[0] as Totals;
  const { h } = hydrogenIon(balance, column, 0, emptyRoot());
  const { slope } = chargeAt(balance, column, h, emptyCharge());

  const species: SpeciesAt[] = [ion('H+', 1, h), ion('OH-', -1, balance.kw / h)];
  for (const [index, protolyte] of protolytes.entries()) {
    const total = (column.amounts[index] as number) / column.volume;
    for (const [lost, fraction] of fractionsOf(balance.families[index] as Family, h).entries()) {
      const { formula, charge } = protolyte.species[lost] as (typeof protolyte.species)[number];
      const molar = total * fraction;
      species.push({ formula, charge, protolyteId: protolyte.id, molar, activity: molar, fraction });
    }
  }
  for (const { ion: own, mmol } of ions) species.push(ion(own.formula, own.charge, mmol / column.volume));

  const pH = -Math.log10(h);
  return {
    solution,
    conditions: settled,
    pH,
    pcH: pH,
    ionicStrength: sum(species.map(({ charge, molar }) => charge * charge * molar)) / 2,
    bufferCapacity: (Math.LN10 * slope) / column.volume,
    species,
    chargeImbalance: sum(species.map(({ charge, molar }) => charge * molar)),
    notes: protolytes.flatMap(({ notes = [] }) => notes),
  };
}

const ion = (formula: string, charge: number, molar: number): SpeciesAt => ({
  formula,
  charge,
  protolyteId: null,
  molar,
  activity: molar,
  fraction: null,
});
