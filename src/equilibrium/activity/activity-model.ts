import type { Source } from '../../source.js';
import type { ActivityLaw } from './activity-law.js';

/**
 * The activity coefficients of ions, a = γ·c.
 *
 * Bring your own as a plain object: `name`, `log10Gamma` and `source` are enough.
 *
 * @example
 * ```ts
 * import { type ActivityModel, davies, makeSolution, pHOf, reagents } from 'protolysis';
 *
 * const halfDavies: ActivityModel = {
 *   name: 'half of Davies',
 *   log10Gamma: (charge, ionicStrength, celsius) => davies.log10Gamma(charge, ionicStrength, celsius) / 2,
 *   source: { kind: 'commonPractice', note: 'an invented model, to show the shape' },
 * };
 * const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
 * pHOf(acid, { activity: halfDavies }); // => 1.0535
 * ```
 */
export interface ActivityModel {
  readonly name: string;
  /** log10 γ of an ion of this charge at an ionic strength, mol/L, and a temperature, °C. */
  log10Gamma(charge: number, ionicStrength: number, celsius: number, formula?: string): number;
  /** Its derivative with respect to the ionic strength, L/mol. Without it, the derivative is taken numerically. */
  dLog10Gamma?(charge: number, ionicStrength: number, celsius: number, formula?: string): number;
  /** The second derivative, L²/mol²; only inflection points need it. Left out, it is taken numerically. */
  d2Log10Gamma?(charge: number, ionicStrength: number, celsius: number, formula?: string): number;
  /**
   * Whether log10 γ = z²·f(I) with one f for all ions, whose slope shrinks as I grows from zero (or has turned upward).
   * Then one evaluation serves all ions, and uniqueness of the ionic strength can be proved on the way: curves come
   * faster.
   */
  readonly squareLaw?: boolean;
  /** The ionic strength, mol/L, up to which its authors recommend it; beyond, results carry a note. */
  readonly upTo?: number;
  readonly source: Source;
  /**
   * The law as plain data. JSON keeps it, and conditions that come from JSON are read by it. A model with functions of
   * your own leaves it out.
   */
  readonly law?: ActivityLaw;
  /** Sources of what it takes from elsewhere, such as the permittivity of water. */
  readonly restsOn?: readonly Source[];
}

/** Beyond it, products of coefficients leave the range of doubles. @internal */
export const largestLog10Gamma = 90;
