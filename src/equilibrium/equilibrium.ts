import type { Solution } from '../solution/solution.js';
import type { Conditions } from './conditions.js';
import type { ConstantInUse } from './constants-in-use.js';
import type { PcH, PH } from './quantities.js';
import type { SpeciesAt } from './species-of.js';

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
   * β = dC_base/dpH, mol/L per unit of pH, water's own share included, and what the base's cation (of charge +1) does
   * to γ. A gas stays at its pressure, and CO2 that has escaped does not come back.
   */
  readonly bufferCapacity: number;
  readonly species: readonly SpeciesAt[];
  /** Σ z·c, mol/L: zero but for rounding. */
  readonly chargeImbalance: number;
  /** The constants it rests on beside those of the substances. `sourcesOf` finds the sources of all. */
  readonly constants: readonly ConstantInUse[];
  readonly notes: readonly string[];
}
