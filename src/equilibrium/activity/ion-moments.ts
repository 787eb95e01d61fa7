import { type Family, prevailing } from '../family.js';
import type { IonColumn, RealSystem } from './real-system.js';

/**
 * Net charge and ionic strength of a solution, and how both change with pH and with the coefficients; in the column's
 * unit of amount.
 *
 * With n the amounts, z the charges and ℓ′ = d log10 γ/dI of all species, H+ and OH- included, and ⟨x, y⟩ = Σ n·x·y for
 * free species, Σ C·cov(x, y) within each family (its total stays):
 *
 *   ∂net/∂ln a = ⟨z, z⟩,         ∂net/∂I = −ln10·⟨z, ℓ′⟩           a: activity of H+                      (1)
 *   ∂strength/∂ln a = ½⟨z², z⟩,  ∂strength/∂I = −½·ln10·⟨z², ℓ′⟩                                         (2)
 */
export interface IonMoments {
  net: number;
  /** ½ Σ z²·n. */
  strength: number;
  zz: number;
  zs: number;
  zl: number;
  sl: number;
}

/** Room for moments. @internal */
export const emptyIonMoments = (): IonMoments => ({ net: 0, strength: 0, zz: 0, zs: 0, zl: 0, sl: 0 });

/**
 * Moments at a hydrogen-ion concentration h, with the constants and coefficients that the system has taken.
 *
 * As in charge-balance.ts, whole charges are added first and moments are taken about the prevailing species. Derived
 * here.
 *
 * @internal
 */
export function ionMomentsAt(real: RealSystem, column: IonColumn, h: number, out: IonMoments): IonMoments {
  const { conditional, coefficients, kinds, gasKinds, hydrogen, hydroxide } = real;
  const { slope } = coefficients;
  const { volume, amounts } = column;
  const acid = volume * h;
  const base = volume * (conditional.kw / h);
  const acidSlope = slope[hydrogen] as number;
  const baseSlope = slope[hydroxide] as number;
  let whole = column.charge;
  let net = volume * (h - conditional.kw / h);
  let squares = column.squares + acid + base;
  let zz = acid + base;
  let zs = acid - base;
  let zl = acid * acidSlope - base * baseSlope;
  let sl = acid * acidSlope + base * baseSlope;

  for (let i = 0; i < kinds.length; i += 1) {
    const amount = amounts[i] as number;
    if (amount === 0) continue;
    const family = conditional.families[i] as Family;
    const { constants, reciprocals } = family;
    const kind = kinds[i] as Int32Array;
    const start = prevailing(family, h);
    const top = family.topCharge - start; // charge of the prevailing species
    const own = slope[kind[start] as number] as number;
    let all = 1;
    let d = 0; //  sums of term × δ, δ = z − top
    let y = 0; //  y = z² − top²
    let l = 0; //  l = ℓ′ − own
    let dd = 0;
    let dy = 0;
    let dl = 0;
    let yl = 0;
    for (let side = -1; side <= 1; side += 2) {
      const count = side < 0 ? start : constants.length - start;
      for (let k = 1, term = 1; k <= count; k += 1) {
        term *= side < 0 ? h * (reciprocals[start - k] as number) : (constants[start + k - 1] as number) / h;
        const delta = -side * k;
        const square = delta * (delta + 2 * top);
        const lag = (slope[kind[start + side * k] as number] as number) - own;
        all += term;
        d += delta * term;
        y += square * term;
        l += lag * term;
        dd += delta * delta * term;
        dy += delta * square * term;
        dl += delta * lag * term;
        yl += square * lag * term;
      }
    }
    const share = amount / all;
    d /= all;
    y /= all;
    whole += amount * top;
    net += amount * d;
    squares += amount * (top * top + y);
    zz += share * dd - amount * d * d;
    zs += share * dy - amount * d * y;
    zl += share * (dl - d * l);
    sl += share * (yl - y * l);
  }

  const { gas } = conditional;
  if (gas)
    for (let j = 1, power = volume; j <= gas.length; j += 1) {
      power /= h;
      const own = power * (gas[j - 1] as number);
      const lag = slope[gasKinds[j] as number] as number;
      net -= j * own;
      squares += j * j * own;
      zz += j * j * own;
      zs -= j * j * j * own;
      zl -= j * own * lag;
      sl += j * j * own * lag;
    }
  out.net = whole + net;
  out.strength = squares / 2;
  out.zz = zz;
  out.zs = zs;
  out.zl = zl;
  out.sl = sl;
  return out;
}
