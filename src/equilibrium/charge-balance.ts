import { type Family, prevailing } from './family.js';

/**
 * Amounts that enter a charge balance, in any one unit of amount and its volume: mol and L, or mmol and mL.
 * The amounts stand in the order of the families they belong to.
 */
export interface Column {
  readonly volume: number;
  /** Net charge of the strong ions. */
  readonly charge: number;
  readonly amounts: ArrayLike<number>;
}

/** Constants of a charge balance. */
export interface Balance {
  /** Ion product of water, mol²/L². */
  readonly kw: number;
  readonly families: readonly Family[];
  /**
   * Of a gas held at a fixed pressure: c₀·β_j for its forms that lost 1, 2, … protons, c₀ the concentration of the dissolved
   * gas and β_j = K₁…K_j. Left out where there is none.
   */
  readonly gas?: Float64Array;
}

/** Net charge and its first two derivatives with respect to ln h, in the column's unit of amount. */
export interface Charge {
  net: number;
  slope: number;
  bend: number;
}

/**
 * The net charge of a solution at a given hydrogen-ion concentration h.
 *
 *   F(h) = V·(h − Kw/h) + Q + Σ nᵢ·z̄ᵢ(h) − V·Σ j·c₀β_j/h^j                                        (1)
 *   z̄ = z_top − λ,  λ the mean number of protons lost                                              (2)
 *   dλ/d ln h = −var,  d var/d ln h = −third central moment of the number lost                     (3)
 *
 * Cancellation  Q and the whole charges of the prevailing species cancel in any salt. They are added first, apart from
 *               the small terms: what is left of an exactly neutral make-up is exactly zero. The moments are taken about
 *               the prevailing species, so the terms to either side of it are small and never cancel.
 * Monotone      (3) is a variance, both water terms rise and so does each of the gas (the last term, for one held at a fixed
 *               pressure): F rises strictly with h, so it has one root.
 *
 * @param out - overwritten with the result, so that a curve of a million points allocates nothing
 * @internal
 */
export function chargeAt(
  { kw, families, gas }: Balance,
  { volume, charge, amounts }: Column,
  h: number,
  out: Charge,
): Charge {
  let whole = charge;
  let net = volume * (h - kw / h);
  let slope = volume * (h + kw / h);
  let bend = net;
  for (let i = 0; i < families.length; i += 1) {
    const family = families[i] as Family;
    const { constants, reciprocals } = family;
    const amount = amounts[i] as number;
    const start = prevailing(family, h);
    let all = 1;
    let first = 0;
    let second = 0;
    let third = 0;
    for (let k = 1, term = 1; k <= start; k += 1) {
      term *= h * (reciprocals[start - k] as number);
      all += term;
      first -= k * term;
      second += k * k * term;
      third -= k * k * k * term;
    }
    for (let k = 1, term = 1; k <= constants.length - start; k += 1) {
      term *= (constants[start + k - 1] as number) / h;
      all += term;
      first += k * term;
      second += k * k * term;
      third += k * k * k * term;
    }
    const mean = first / all;
    const square = second / all;
    whole += amount * (family.topCharge - start);
    net -= amount * mean;
    slope += amount * (square - mean * mean);
    bend -= amount * (third / all - mean * (3 * square - 2 * mean * mean));
  }
  if (gas !== undefined)
    for (let j = 1, power = volume; j <= gas.length; j += 1) {
      power /= h;
      const charges = j * power * (gas[j - 1] as number);
      net -= charges;
      slope += j * charges;
      bend -= j * j * charges;
    }
  out.net = whole + net;
  out.slope = slope;
  out.bend = bend;
  return out;
}

/** @internal */
export const emptyCharge = (): Charge => ({ net: 0, slope: 0, bend: 0 });
