import type { Decimal } from 'decimal.js';
import { emptyState, selfConsistent } from '../../equilibrium/activity/self-consistent.js';
import { frozen } from '../../frozen.js';
import { columnAt as mixtureInDoubles, mixtureModelOf } from '../../titration/model/mixture-model.js';
import { realModel } from '../../titration/model/real-model.js';
import { titrationLimits } from '../../titration/titration-limits.js';
import { decimalsToKeep, withMoreDigits } from '../numbers/certain-digits.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import { numberOf } from '../numbers/exactly.js';
import type { Interval } from '../numbers/interval-operations.js';
import { type Ratio, ratios } from '../numbers/ratio.js';
import { prevailingAt } from './charge-root.js';
import { type ColumnOf, formsAt, netOf, strengthOf } from './exact-charge-balance.js';
import { columnIn } from './exact-column.js';
import { type ExactMoments, exactMomentsOf } from './exact-moments.js';
import type { ExactSystem, WithConstants } from './exact-system.js';
import { signOfInterval } from './ph-bracket.js';

/** A volume with its proof: the volume of the pH wanted lies between `lower` and `upper`, all in mL. */
export interface ExactVolume {
  readonly mL: Decimal;
  readonly lower: Decimal;
  readonly upper: Decimal;
  /** That no other volume has this pH (`only`: where γ = 1), or that one between the two has it (`some`). */
  readonly proven: 'only' | 'some';
}

/**
 * The volume of titrant at which the mixture has a pH.
 *
 *   V = −A/T,   A and T the net charge of the analyte and of one mL of titrant at this pH                      (1)
 *
 * With coefficients of activity A and T depend on the ionic strength, and E(I) = 0 remains to be solved (2):
 *
 *   E(I) = S_A + V·S_T − I·(V₀ + V),   S: ionic strengths of the species of both, times volume                  (2)
 *
 * Found by Newton's method from the first volume in doubles. Proven by the signs of E at both ends of a bracket in I,
 * and by (1) over the whole bracket.
 *
 * @internal
 */
export function exactVolumeAt(system: ExactSystem, pH: Ratio, digits: number): ExactVolume | null {
  const start = system.real && strengthAtFirst(system, numberOf(pH));
  if (start === undefined) return null;
  // If |T| cannot be distinguished from zero with the most digits, the pH is the titrant's own, which no volume
  // reaches.
  const volume = withMoreDigits(digits + 40, 4 * digits + 400, (working): Interval | 'none' | undefined => {
    const onIntervals = system.onIntervals(working);
    const { arithmetic } = onIntervals;
    const evaluate = evaluatorOf(onIntervals, system, pH);
    const strength = start === null ? arithmetic.of(0) : strengthOver(system, pH, start, digits, working);
    if (strength === undefined) return undefined;
    const mL = evaluate(strength).mL();
    if (!mL.low.isFinite()) return undefined;
    if (mL.high.lt(0) || mL.low.gt(titrationLimits.mL)) return 'none';
    return mL.high.minus(mL.low).lt(`1e-${digits + 3}`) ? mL : undefined;
  });
  if (volume === undefined || volume === 'none') return null;
  const Own = decimalsToKeep(digits + 10); // 1e9 mL and the digits after the point
  const [low, high] = [new Own(volume.low), new Own(volume.high)];
  return frozen({
    mL: low.plus(high).times(0.5).toDecimalPlaces(digits),
    lower: low.toDecimalPlaces(digits + 3, Own.ROUND_FLOOR),
    upper: high.toDecimalPlaces(digits + 3, Own.ROUND_CEIL),
    proven: system.real ? 'some' : 'only',
  });
}

/** The ionic strength at the first volume with a pH, in doubles. */
function strengthAtFirst({ inDoubles, real }: ExactSystem, pH: number): number | undefined {
  const mixture = mixtureModelOf(inDoubles);
  const [mL] = realModel(mixture).volumesAt(pH);
  if (mL === undefined || !real) return undefined;
  return selfConsistent(real, mixtureInDoubles(mixture, mL), emptyState()).ionicStrength;
}

/** A bracket in I at whose ends E is proven to have opposite signs; undefined where it is not. */
function strengthOver(
  system: ExactSystem,
  pH: Ratio,
  start: number,
  digits: number,
  working: number,
): Interval | undefined {
  const onDecimals = system.onDecimals(working);
  const { arithmetic: rough } = onDecimals;
  const evaluate = evaluatorOf(onDecimals, system, pH);
  let I = rough.of(start);
  for (let pass = 0; pass < 50; pass += 1) {
    const { excess, slope } = evaluate(I);
    const step = rough.over(excess(), slope());
    I = I.minus(step);
    if (!I.isPositive()) return undefined;
    if (step.abs().lt(I.times(`1e-${Math.ceil(working / 2)}`))) break;
  }
  const added = working - digits - 40; // digits that this attempt has beyond the first one
  const width = I.times(`1e-${digits + 12 + Math.floor(added / 2)}`);
  const [low, high] = [I.minus(width), I.plus(width)];
  const onIntervals = evaluatorOf(system.onIntervals(working), system, pH);
  const sign = (end: Decimal) => signOfInterval(onIntervals({ low: end, high: end }).excess());
  return sign(low) * sign(high) === -1 ? { low, high } : undefined;
}

interface AtStrength<N> {
  mL(): N;
  excess(): N;
  slope(): N;
}

/** (1), (2) and its derivative at one pH as functions of I. */
function evaluatorOf<N>(
  { arithmetic, constantsAt }: WithConstants<ExactArithmetic<N>, N>,
  system: ExactSystem,
  pH: Ratio,
): (ionicStrength: N) => AtStrength<N> {
  const { of, plus, minus, times, over, ln10 } = arithmetic;
  const [analyte, titrant] = system.columns.map((column) => columnIn(arithmetic, column)) as [
    ColumnOf<N>,
    ColumnOf<N>,
  ];
  const a = arithmetic.powerOfTen(ratios.minus(ratios.of(0), pH));
  const most = prevailingAt(system, 10 ** -numberOf(pH));
  const minusOne = of(-1);
  return (ionicStrength) => {
    const { balance, gammas } = constantsAt(ionicStrength);
    const [one, other] = [analyte, titrant].map((column) => {
      const forms = formsAt(arithmetic, balance, column, a, most);
      return {
        net: netOf(arithmetic, column, forms),
        strength: strengthOf(arithmetic, column, forms),
        moments: () => exactMomentsOf(arithmetic, forms, gammas),
      };
    }) as [Side<N>, Side<N>];
    // the titrant as it stands in its own volume, of which so many are poured
    const poured = over(one.net, times(minusOne, other.net));
    return {
      mL: () => times(poured, titrant.volume),
      excess: () =>
        minus(
          plus(one.strength, times(poured, other.strength)),
          times(ionicStrength, plus(analyte.volume, times(poured, titrant.volume))),
        ),
      slope: () => {
        const [own, others] = [one.moments(), other.moments()];
        const alongI = (moment: 'zl' | 'sl') =>
          times(times(minusOne, ln10), plus(own[moment], times(poured, others[moment])));
        const pouredAlongI = over(alongI('zl'), times(minusOne, other.net));
        const perPour = minus(other.strength, times(ionicStrength, titrant.volume));
        return minus(
          plus(over(alongI('sl'), of(2)), times(pouredAlongI, perPour)),
          plus(analyte.volume, times(poured, titrant.volume)),
        );
      },
    };
  };
}

interface Side<N> {
  readonly net: N;
  readonly strength: N;
  moments(): ExactMoments<N>;
}
