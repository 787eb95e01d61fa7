import { frozen } from '../frozen.js';
import type { Source } from '../source.js';
import type { SparinglySoluble } from './sparingly-soluble.js';

/** One form of a protolyte. */
export interface Species<Formula extends string = string> {
  /** A label in plain notation, such as `HCO3-` or `CO2(aq)`. */
  readonly formula: Formula;
  readonly charge: number;
}

/** The loss of one proton. */
export interface Step {
  /**
   * −log10 of the thermodynamic acidity constant at 25 °C and zero ionic strength (unless `ionicStrength` says
   * otherwise).
   */
  readonly pKa: number;
  /** Standard reaction enthalpy at 25 °C, kJ/mol. */
  readonly dH?: number;
  /** Standard reaction heat capacity at 25 °C, J/(mol·K). */
  readonly dCp?: number;
  /** Of the pKa. */
  readonly standardUncertainty?: number;
  /** The constant fitted over a range of temperatures. Where it is there, it is used instead of dH and dCp. */
  readonly log10K?: TemperatureFit;
  /**
   * Ionic strength of the salt medium in which the constant was measured, mol/L; left out or 0: a thermodynamic
   * constant.
   */
  readonly ionicStrength?: number;
  /**
   * Of a constant in a medium: between concentrations throughout (`concentration`, the default), or with the activity
   * of H+, as a glass electrode gives it, and concentrations of the two forms (`mixed`).
   */
  readonly convention?: 'concentration' | 'mixed';
  readonly source: Source;
  /** Of dH and dCp, where it differs from `source`. */
  readonly thermalSource?: Source;
}

/** A fitted constant: log10 K = a + b·T + c/T + d·log10 T + e/T², T in K. */
export interface TemperatureFit {
  readonly coefficients: readonly [a: number, b: number, c: number, d: number, e: number];
  /** From which to which temperature it holds, °C. */
  readonly celsius: readonly [from: number, to: number];
  readonly source: Source;
}

/** Another evaluation of a step, kept beside the one in use. */
export interface Alternative {
  /** Which step, from 1. */
  readonly step: number;
  readonly pKa: number;
  readonly source: Source;
  readonly note?: string;
}

/** One acid with all its conjugate bases. */
export interface Protolyte<Formula extends string = string> {
  /** Known by this in every calculation. */
  readonly id: string;
  readonly name: string;
  /** From most to least protonated; charges fall by one. */
  readonly species: readonly Species<Formula>[];
  /** One fewer than the species. */
  readonly steps: readonly Step[];
  readonly alternatives?: readonly Alternative[];
  /** Solids of limited solubility that it forms. A note says where a solution is more than saturated. */
  readonly solids?: readonly SparinglySoluble[];
  /** The usual caution, in plain words (from memory, no substitute for the safety data sheet). */
  readonly hazard?: string;
  /** Of its place on the candidate list of substances of very high concern (REACH); left out where it is not on it. */
  readonly veryHighConcern?: Source;
  /** Why it is no buffer for a teaching lab. `chooseBuffer` leaves it out unless `include` names its id. */
  readonly notForBuffers?: { readonly reason: string; readonly source: Source };
  readonly notes?: readonly string[];
}

/** Limits of what a protolyte can be; the solver's scaling rests on them (equilibrium/family.ts). */
export const protolyteLimits = /*#__PURE__*/ frozen({ pKa: [-10, 20], steps: 16, charge: 20 } as const);
