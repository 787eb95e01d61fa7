import type { IonColumn, RealSystem } from '../../equilibrium/activity/real-system.js';
import { emptyState, type RealState, selfConsistent } from '../../equilibrium/activity/self-consistent.js';
import { realSystemOf } from '../../equilibrium/system.js';
import { numberAt } from '../../solver/number-at.js';
import type { CurvePoint } from '../sampling/curve.js';
import { escapingColumn } from './escaping-column.js';
import { columnAt, type MixtureModel } from './mixture-model.js';
import { firstDerivatives, type MovingColumn, secondDerivatives } from './real-derivatives.js';

/** A mixture with coefficients of activity, or from which CO2 escapes. */
export interface RealMixture {
  readonly mixture: MixtureModel;
  /** Its coefficients are those of the state that was solved last. */
  readonly real: RealSystem;
  /** The system from which CO2 has escaped as far as it can, likewise; null where none escapes. */
  readonly open: RealSystem | null;
}

/** A mixture with the systems that its states are solved in. @internal */
export const realMixtureOf = (mixture: MixtureModel): RealMixture => ({
  mixture,
  real: realSystemOf(mixture.system),
  open: mixture.system.escape && realSystemOf(mixture.system.escape.open),
});

/**
 * The states that a search solved last. The next point starts from them, so a search serves neighbouring points of one
 * curve.
 */
export interface Search {
  readonly mixture: RealState;
  readonly open: RealState;
}

/** A search without an earlier point. @internal */
export const newSearch = (): Search => ({ mixture: emptyState(), open: emptyState() });

/** A point of a curve, and its second derivative d²pH/dV², per mL². */
export interface BentPoint extends CurvePoint {
  readonly bend: number;
}

/** What is in the beaker after `mL` of titrant, once CO2 has escaped. @internal */
export const realColumnAt = (mixture: RealMixture, mL: number): IonColumn =>
  movingColumnAt(mixture, mL, newSearch(), 1).column;

/** pH after `mL` of titrant. @internal */
export function realPHAt(mixture: RealMixture, mL: number, search: Search): number {
  const { column } = movingColumnAt(mixture, mL, search, 1);
  return -Math.log10(selfConsistent(mixture.real, column, search.mixture, true).activity);
}

/** pH and slope after `mL` of titrant: dpH/dV = −x′₁/ln 10 by (1) of real-derivatives.ts. @internal */
export function realPointAt(mixture: RealMixture, mL: number, search: Search): CurvePoint {
  const { column, first } = movingColumnAt(mixture, mL, search, 1);
  const state = selfConsistent(mixture.real, column, search.mixture);
  const slope = firstDerivatives(mixture.real, state, column, first);
  return { mL, pH: -Math.log10(state.activity), slope: -slope.activity / Math.LN10 };
}

/** pH, slope and second derivative after `mL` of titrant, by (1) and (2) of real-derivatives.ts. @internal */
export function bentPointAt({ real, ...rest }: RealMixture, mL: number, search: Search): BentPoint {
  const moving = movingColumnAt({ real, ...rest }, mL, search, 2);
  const state = selfConsistent(real, moving.column, search.mixture);
  const slope = firstDerivatives(real, state, moving.column, moving.first);
  const bend = secondDerivatives(real, state, moving, slope);
  return {
    mL,
    pH: -Math.log10(state.activity),
    slope: -slope.activity / Math.LN10,
    bend: -bend.activity / Math.LN10,
  };
}

function movingColumnAt(
  { mixture, open }: RealMixture,
  mL: number,
  search: Search,
  order: 1 | 2,
): MovingColumn {
  const linear = { column: columnAt(mixture, mL), first: mixture.titrant, second: null };
  return open ? escapingColumn(mixture.system, linear, open, search.open, order) : linear;
}

/**
 * Solves at one volume after the other. Each search starts on the straight line through the two points before it.
 *
 * @param solve - called with each volume, its index and the search
 * @internal
 */
export function solveInTurn(
  volumes: ArrayLike<number>,
  solve: (mL: number, index: number, search: Search) => void,
): void {
  const search = newSearch();
  const state = search.mixture;
  let [secondLast, strength, activity] = [Number.NaN, Number.NaN, Number.NaN];
  for (let k = 0; k < volumes.length; k += 1) {
    const last = volumes[k - 1] ?? Number.NaN;
    const { ionicStrength: lastStrength, activity: lastActivity } = state;
    const ahead = (numberAt(volumes, k) - last) / (last - secondLast);
    if (Math.abs(ahead) < 2) {
      state.ionicStrength += ahead * (lastStrength - strength);
      state.activity *= (lastActivity / activity) ** ahead;
    }
    solve(numberAt(volumes, k), k, search);
    [secondLast, strength, activity] = [last, lastStrength, lastActivity];
  }
}
