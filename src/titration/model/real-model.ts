import { takeBends } from '../../equilibrium/activity/coefficients.js';
import { compensatingChange, type Direction } from '../../equilibrium/activity/compensating-change.js';
import { emptyIonMoments, ionMomentsAt } from '../../equilibrium/activity/ion-moments.js';
import type { IonColumn, RealSystem } from '../../equilibrium/activity/real-system.js';
import {
  gasDerivativesAlong,
  secondDerivativesAlong,
} from '../../equilibrium/activity/second-derivatives.js';
import { emptyState, type RealState, selfConsistent } from '../../equilibrium/activity/self-consistent.js';
import { withFamily, withoutFamily } from '../../equilibrium/solve-solution.js';
import { realSystemOf, type System } from '../../equilibrium/system.js';
import { rootBetween } from '../../solver/root-between.js';
import { type Bent, realInflections } from '../points/real-inflections.js';
import type { CurvePoint } from '../sampling/curve.js';
import { titrationLimits } from '../titration-limits.js';
import type { CurveModel } from './curve-model.js';
import { columnAt, type MixtureModel } from './mixture-model.js';
import { type MonotonePieces, monotonePiecesOf } from './monotone-pieces.js';

/** What is in the beaker, and its first and second derivative with respect to the volume of titrant, mL. */
interface Path {
  readonly column: IonColumn;
  readonly first: IonColumn;
  readonly second: IonColumn | null;
}

/**
 * The curve with coefficients of activity, or with CO2 that escapes.
 *
 * With x = (ln a, I) and G = (net charge, strength − I·V) of the mixture, G(x, V) = 0 (self-consistent.ts). Let T be what
 * one more mL adds to G at fixed x, M = ∂G/∂x and M_T = ∂T/∂x:
 *
 *   x′ = −M⁻¹·T                                                                                      (1)
 *   x″ = −M⁻¹·(2·M_T·x′ + G_xx[x′, x′] + G_VV),   pH = −x₁/ln 10                                     (2)
 *
 * Where CO2 escapes, the amount left depends on an open equilibrium of its own (solve-solution.ts), whose derivatives follow in the same
 * way and enter T and G_VV.
 *
 * @internal
 */
export function realModel(mixture: MixtureModel): CurveModel {
  const { system } = mixture;
  const real = realSystemOf(system);
  const open = system.escape ? { real: realSystemOf(system.escape.open), state: emptyState() } : null;
  const state = emptyState();
  /** Forgets what was solved before, so that no answer depends on the questions that came first. */
  const afresh = () => {
    state.h = 0;
    if (open) open.state.h = 0;
  };
  const pathAt = (mL: number, bent = false): Path => {
    const linear = { column: columnAt(mixture, mL), first: mixture.titrant, second: null };
    return open ? escaping(system, linear, open.real, open.state, bent) : linear;
  };
  const pHAt = (mL: number) => {
    const { column } = pathAt(mL);
    return -Math.log10(selfConsistent(real, column, state, true).activity);
  };
  const pointAt = (mL: number) => {
    const { column, first } = pathAt(mL);
    selfConsistent(real, column, state);
    const to = directionOf(real, state, column, first);
    return { mL, pH: -Math.log10(state.activity), slope: -to.activity / Math.LN10 };
  };
  const bentAt = (mL: number): Bent => {
    const path = pathAt(mL, true);
    selfConsistent(real, path.column, state);
    const to = directionOf(real, state, path.column, path.first);
    const bend = bendOf(real, state, path, to);
    return {
      mL,
      pH: -Math.log10(state.activity),
      slope: -to.activity / Math.LN10,
      bend: -bend.activity / Math.LN10,
    };
  };

  /** Solves at one volume after the other, from the first afresh, each from where the two before it point. */
  const inTurn = (volumes: ArrayLike<number>, solve: (mL: number, k: number) => void) => {
    afresh();
    let [before, strength, activity] = [Number.NaN, Number.NaN, Number.NaN];
    for (let k = 0; k < volumes.length; k += 1) {
      const last = volumes[k - 1] ?? Number.NaN;
      const { ionicStrength: lastStrength, activity: lastActivity } = state;
      const ahead = ((volumes[k] as number) - last) / (last - before);
      if (Math.abs(ahead) < 2) {
        // a start on the straight line through the last two points, no more
        state.ionicStrength += ahead * (lastStrength - strength);
        state.activity *= (lastActivity / activity) ** ahead;
      }
      solve(volumes[k] as number, k);
      [before, strength, activity] = [last, lastStrength, lastActivity];
    }
  };

  let made: MonotonePieces | undefined;
  const pieces = () => {
    afresh();
    made ??= monotonePiecesOf(pointAt, mixture.analyte.volume);
    afresh();
    return made;
  };
  const curveModel: CurveModel = {
    pHAt(mL) {
      afresh();
      return pHAt(mL);
    },
    pHs(volumes, out) {
      inTurn(volumes, (mL, k) => {
        out[k] = pHAt(mL);
      });
    },
    curveAt(mL) {
      const points: CurvePoint[] = [];
      inTurn(mL, (volume) => void points.push(pointAt(volume)));
      return { mL, pH: points.map(({ pH }) => pH), slope: points.map(({ slope }) => slope) };
    },
    pointAt(mL) {
      afresh();
      return pointAt(mL);
    },
    volumesAt(pH) {
      const found = pieces()
        .bracketsOf(pH)
        .flatMap(([low, high]) => {
          if (low === high) return [low];
          const crossing = rootBetween((mL) => pHAt(mL) - pH, low, high);
          if (crossing.status === 'not-finite') return [];
          // pH at an end may round to the other side of the pH asked for: then that end is the crossing
          return [crossing.status === 'found' ? crossing.x : crossing.nearest];
        });
      return [...new Set(found)].filter(
        (mL) => mL <= titrationLimits.mL && Math.abs(pHAt(mL) - pH) < largestGap,
      );
    },
    inflections() {
      afresh();
      return realInflections(bentAt, mixture.analyte.volume);
    },
    curveUpTo: (upTo, maxStep) => curveModel.curveAt(pieces().volumesUpTo(upTo, maxStep)),
    columnAt(mL) {
      afresh();
      return pathAt(mL).column;
    },
  };
  return curveModel;
}

/**
 * How far off in pH a crossing may be where the steepest curve passes between neighbouring doubles. Where it is further, the curve
 * jumps past that pH: the least ionic strength that agrees has ceased to exist, far beyond the range of the model.
 */
const largestGap = 1e-3;

/** x′ of (1), at a state at which the system stands. */
function directionOf(real: RealSystem, state: RealState, { volume }: IonColumn, first: IonColumn): Direction {
  const { net, strength } = ionMomentsAt(real, first, state.h, emptyIonMoments());
  return compensatingChange(state.moments, volume, net, strength - state.ionicStrength * first.volume);
}

/** x″ of (2). */
function bendOf(
  real: RealSystem,
  state: RealState,
  { column, first, second }: Path,
  to: Direction,
): Direction {
  takeBends(real.coefficients);
  const more = ionMomentsAt(real, first, state.h, emptyIonMoments());
  const own = secondDerivativesAlong(real, column, state.h, to);
  const rest = second ? ionMomentsAt(real, second, state.h, emptyIonMoments()) : emptyIonMoments();
  const mixed = {
    net: more.zz * to.activity - Math.LN10 * more.zl * to.strength,
    strength: (more.zs / 2) * to.activity - ((Math.LN10 / 2) * more.sl + first.volume) * to.strength,
  };
  return compensatingChange(
    state.moments,
    column.volume,
    2 * mixed.net + own.net + rest.net,
    2 * mixed.strength + own.strength + rest.strength,
  );
}

/** The path on which CO2 escapes: the amount left, n = (1 − e)·n₀ + e·V·S with S the open system's concentration. */
function escaping(system: System, linear: Path, real: RealSystem, state: RealState, bent: boolean): Path {
  const { escape: leaving } = system;
  if (!leaving) return linear;
  const { family, share, open } = leaving;
  const column = withoutFamily(linear.column, family);
  const first = withoutFamily(linear.first, family);
  selfConsistent(real, column, state);
  const to = directionOf(real, state, column, first);
  const bend = bent ? bendOf(real, state, { column, first, second: null }, to) : { activity: 0, strength: 0 };
  const gas = gasDerivativesAlong(real, open.gas?.dissolved ?? 0, state.h, to, bend);

  const stays = column.volume * gas.molar;
  const before = linear.column.amounts[family] as number;
  if (!(before > stays)) return linear;
  const added = linear.first.amounts[family] as number;
  const staysFirst = first.volume * gas.molar + column.volume * gas.first;
  const staysSecond = 2 * first.volume * gas.first + column.volume * gas.second;
  return {
    column: withFamily(linear.column, family, before - share * (before - stays)),
    first: withFamily(linear.first, family, added - share * (added - staysFirst)),
    second: withFamily(nothing(linear.first), family, share * staysSecond),
  };
}

const nothing = ({ amounts }: IonColumn): IonColumn => ({
  volume: 0,
  charge: 0,
  squares: 0,
  amounts: Array.from(amounts, () => 0),
});
