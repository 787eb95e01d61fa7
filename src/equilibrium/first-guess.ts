import { numberAt } from '../solver/number-at.js';
import type { Balance, Column } from './charge-balance.js';
import type { Family } from './family.js';
import type { StepAt } from './steps-in-order.js';

/**
 * A first estimate of h, from the order in which the protons leave.
 *
 * All ionisation steps are taken in order of pKa; state k has the first k done. The net charge S_k of the states falls
 * with k, and the root lies by the state whose S is nearest to zero. Only the two steps next to it are taken as
 * incomplete:
 *
 *   S_k + V·(h − Kw/h) + (n_k − s⁻)·h/K_k − (n_(k+1) − s⁺)·K_(k+1)/h = 0,   s⁺ = max(S_k, 0), s⁻ = max(−S_k, 0)
 *
 * a quadratic in h. It is the ampholyte formula where S_k = 0, the log-ratio formula where one step is half done, and
 * exact for strong acids and bases. Derived here.
 *
 * @returns an h strictly between `low` and `high`
 * @internal
 */
export function firstGuess(balance: Balance, column: Column, low: number, high: number): number {
  const { kw, families, order } = balance;
  const { volume, charge, amounts } = column;
  let state = charge;
  for (let i = 0; i < families.length; i += 1)
    state += numberAt(amounts, i) * (families[i] as Family).topCharge;

  let k = 0;
  for (; k < order.length; k += 1) {
    const amount = numberAt(amounts, (order[k] as StepAt).family);
    if (state - amount / 2 <= 0) break; // this step is less than half done
    state -= amount;
  }
  const done = order[k - 1];
  const next = order[k];
  let rise = volume;
  let fall = volume * kw;
  if (done) rise += (numberAt(amounts, done.family) + Math.min(state, 0)) / constantOf(families, done);
  if (next) fall += (numberAt(amounts, next.family) - Math.max(state, 0)) * constantOf(families, next);

  const root = Math.sqrt(state * state + 4 * rise * fall);
  const guess = state > 0 ? (2 * fall) / (state + root) : (root - state) / (2 * rise);
  return guess > low && guess < high ? guess : Math.sqrt(low) * Math.sqrt(high);
}

const constantOf = (families: readonly Family[], { family, step }: StepAt): number =>
  (families[family] as Family).constants[step] as number;
