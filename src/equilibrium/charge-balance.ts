import { type Family, prevailing } from './family.js';
import { type StepAt, stepsInOrder } from './steps-in-order.js';

/**
 * The amounts of a charge balance, in one unit of amount and the unit of volume that goes with it: mol and L, or mmol
 * and mL. The amounts stand in the order of the families they belong to.
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
   * Of a gas held at a fixed pressure: c₀·β_j for its forms that lost 1, 2, … protons, c₀ the concentration of the
   * dissolved gas and β_j = K₁…K_j. Left out where there is none.
   */
  readonly gas?: Float64Array;
  /** The steps of all families in the order in which the protons leave: where a first guess starts from. */
  readonly order: readonly StepAt[];
}

/** Constants as a charge balance, with the order of its steps. @internal */
export const balanceOf = (kw: number, families: readonly Family[], gas?: Float64Array): Balance => ({
  kw,
  families,
  ...(gas ? { gas } : {}),
  order: stepsInOrder(families.map(({ constants }) => constants)),
});

/** Net charge and its first three derivatives with respect to ln h, in the column's unit of amount. */
export interface Charge {
  net: number;
  slope: number;
  bend: number;
  twist: number;
  /** Working space, see `momentsAt`. It grows when a balance needs more. */
  moments: Float64Array;
}

/** Room for a net charge and its derivatives. @internal */
export const emptyCharge = (): Charge => ({
  net: 0,
  slope: 0,
  bend: 0,
  twist: 0,
  moments: new Float64Array(0),
});

/**
 * The net charge of a solution at a given hydrogen-ion concentration h.
 *
 *   F(h) = V·(h − Kw/h) + Q + Σ nᵢ·z̄ᵢ(h) − V·Σ j·c₀β_j/h^j                                        (1)
 *   z̄ = z_top − λ,  λ the mean number of protons lost                                              (2)
 *   dλ/d ln h = −κ₂,  dκ₂/d ln h = −κ₃,  dκ₃/d ln h = −κ₄,  κ the cumulants of the number lost     (3)
 *
 * Two halves    what depends on h (`momentsAt`: this is what an evaluation costs) and what depends on the amounts
 *               (`chargeOf`: linear, nearly free). So one evaluation at h serves every solution of the same protolytes.
 * Cancellation  Q and the whole charges of the prevailing species cancel in any salt. They are added first, apart from
 *               the small terms: what is left of an exactly neutral make-up is exactly zero. The moments are taken
 *               about the prevailing species, so the terms to either side of it are small and never cancel.
 * Monotone      κ₂ is a variance, both water terms rise and so does each of the gas (the last term, for one held at a
 *               fixed pressure): F rises strictly with h, so it has one root.
 *
 * @param out - overwritten with the result
 * @internal
 */
export function chargeAt(balance: Balance, column: Column, h: number, out: Charge): Charge {
  const length = momentsIn(balance);
  if (out.moments.length < length) out.moments = new Float64Array(length);
  out.moments[0] = h;
  momentsAt(balance, out.moments);
  return chargeOf(out.moments, column, out);
}

/** (1) to (3) for one column of amounts, with the moments at one h. @internal */
export function chargeOf(moments: Float64Array, { volume, charge, amounts }: Column, out: Charge): Charge {
  let whole = charge;
  let net = volume * (moments[1] as number);
  let slope = volume * (moments[2] as number);
  let bend = volume * (moments[3] as number);
  let twist = volume * (moments[4] as number);
  for (let i = 0, at = 5; i < amounts.length; i += 1, at += 5) {
    const amount = amounts[i] as number;
    whole += amount * (moments[at] as number);
    net -= amount * (moments[at + 1] as number);
    slope += amount * (moments[at + 2] as number);
    bend -= amount * (moments[at + 3] as number);
    twist += amount * (moments[at + 4] as number);
  }
  out.net = whole + net;
  out.slope = slope;
  out.bend = bend;
  out.twist = twist;
  return out;
}

/** How many numbers the moments of a balance are. @internal */
export const momentsIn = ({ families }: Balance): number => 5 + 5 * families.length;

/**
 * Everything in (1) that depends on h alone: one evaluation of the charge balance. In a typed array, since a number
 * that is passed to a function or kept in an object may cost an allocation. Five numbers each:
 *
 * - the water with its gas: h, to be set before the call; net charge of a litre and its three derivatives;
 * - a family: the charge of its prevailing species; the first four cumulants of the number of protons lost beyond that.
 *
 * @internal
 */
export function momentsAt({ kw, families, gas }: Balance, moments: Float64Array): void {
  const h = moments[0] as number;
  const hydroxide = kw / h;
  moments[1] = h - hydroxide;
  moments[2] = h + hydroxide;
  moments[3] = h - hydroxide;
  moments[4] = h + hydroxide;
  if (gas !== undefined) addGas(gas, moments);
  for (let i = 0, at = 5; i < families.length; i += 1, at += 5)
    writeFamily(families[i] as Family, moments, at);
}

function addGas(gas: Float64Array, moments: Float64Array): void {
  const h = moments[0] as number;
  for (let j = 1, power = 1; j <= gas.length; j += 1) {
    power /= h;
    const charges = j * power * (gas[j - 1] as number);
    for (let derivative = 0, term = -charges; derivative < 4; derivative += 1, term *= -j)
      moments[derivative + 1] = (moments[derivative + 1] as number) + term;
  }
}

function writeFamily(family: Family, moments: Float64Array, at: number): void {
  const h = moments[0] as number;
  const { topCharge, constants, reciprocals } = family;
  const start = prevailing(family, h);
  let all = 1;
  let first = 0;
  let second = 0;
  let third = 0;
  let fourth = 0;
  for (let k = 1, term = 1; k <= start; k += 1) {
    term *= h * (reciprocals[start - k] as number);
    const once = k * term;
    const twice = k * once;
    const thrice = k * twice;
    all += term;
    first -= once;
    second += twice;
    third -= thrice;
    fourth += k * thrice;
  }
  const perH = 1 / h;
  for (let k = 1, term = 1, step = start; step < constants.length; k += 1, step += 1) {
    term *= (constants[step] as number) * perH;
    const once = k * term;
    const twice = k * once;
    const thrice = k * twice;
    all += term;
    first += once;
    second += twice;
    third += thrice;
    fourth += k * thrice;
  }
  const share = 1 / all;
  const mean = first * share;
  const square = second * share;
  const variance = square - mean * mean;
  const skew = third * share - mean * (3 * square - 2 * mean * mean);
  moments[at] = topCharge - start;
  moments[at + 1] = mean;
  moments[at + 2] = variance;
  moments[at + 3] = skew;
  moments[at + 4] =
    fourth * share - mean * (4 * skew + mean * (6 * variance + mean * mean)) - 3 * variance * variance;
}
