import type { ActivityLaw } from '../../equilibrium/activity/activity-law.js';
import { isOfMedium } from '../../equilibrium/activity/at-zero-strength.js';
import type { RealSystem } from '../../equilibrium/activity/real-system.js';
import { henryFit } from '../../equilibrium/carbon-dioxide.js';
import { log10KAt } from '../../equilibrium/temperature/log10-k-at.js';
import { movedPKa } from '../../equilibrium/temperature/pka-at.js';
import { ionProductIn } from '../../equilibrium/temperature/pkw-at.js';
import { waterAt25 } from '../../equilibrium/temperature/water-at-25.js';
import type { Protolyte, Step } from '../../substance/protolyte.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import { exactly } from '../numbers/exactly.js';
import { type Ratio, ratios } from '../numbers/ratio.js';
import { type Charged, lawIn } from './exact-activity.js';
import { type BalanceOf, type Constants, conditional } from './exact-charge-balance.js';
import { isReference, type ReadExactConditions } from './exact-conditions.js';

/** What the constants of a system depend on. @internal */
export interface OfConstants {
  readonly conditions: ReadExactConditions;
  /** Of fixed total: without a gas at fixed pressure. */
  readonly protolytes: readonly Protolyte[];
  /** The gas at fixed pressure, if there is one. */
  readonly gas: Protolyte | null;
  /** The system with coefficients of activity; null where γ = 1 throughout. */
  readonly real: RealSystem | null;
}

/**
 * The thermodynamic constants of a system in one kind of number; where γ = 1 throughout, the constants as they were
 * measured.
 */
function balanceIn<N>(
  arithmetic: ExactArithmetic<N>,
  { conditions, protolytes, gas, real }: OfConstants,
): BalanceOf<N> {
  const { of, plus, minus, times, decimal, ofRatio, powerOfTen, tenTo } = arithmetic;
  const atReference = isReference(conditions);
  const celsius = ofRatio(conditions.celsius);
  const constant = (pK: N) => tenTo(minus(of(0), pK));
  const known = (pK: Ratio) => powerOfTen(ratios.minus(ratios.of(0), pK));
  const moved = (step: Step) =>
    atReference ? known(exactly(step.pKa)) : constant(movedPKa(arithmetic, step, celsius));
  const inMedium = real ? mediumFactors(arithmetic, conditions.law, real.coefficients.ceiling) : null;
  const stepConstant = (protolyte: Protolyte) => (step: Step, k: number) =>
    inMedium && isOfMedium(step) ? times(moved(step), inMedium(protolyte, k)) : moved(step);
  const movedPKw = () => {
    const change = minus(ionProductIn(arithmetic, celsius), ionProductIn(arithmetic, of(25)));
    return plus(decimal(waterAt25.pKw), change);
  };

  const levels = (atm: Ratio, pKH: Ratio | undefined, protolyte: Protolyte): N[] => {
    const henry = pKH ? known(pKH) : tenTo(log10KAt(arithmetic, henryFit, celsius));
    let level = times(ofRatio(atm), henry);
    return [
      level,
      ...protolyte.steps.map(stepConstant(protolyte)).map((own) => {
        level = times(level, own);
        return level;
      }),
    ];
  };
  return {
    hydrogen: of(1),
    kw: conditions.pKw ? known(conditions.pKw) : constant(movedPKw()),
    families: protolytes.map((protolyte) => ({
      topCharge: protolyte.species[0]?.charge ?? 0,
      constants: protolyte.steps.map(stepConstant(protolyte)),
    })),
    gas: gas && conditions.gas ? levels(conditions.gas.atm, conditions.gas.pKH, gas) : [],
  };
}

/** K° over the constant of a step that was measured in a medium: at-zero-strength.ts, (1) and (2). */
function mediumFactors<N>(arithmetic: ExactArithmetic<N>, law: ActivityLaw, ceiling: number) {
  const { of, times, decimal } = arithmetic;
  const activityAt = lawIn(arithmetic, law, of(25), true, decimal(ceiling));
  return ({ species, steps }: Protolyte, k: number): N => {
    const { ionicStrength = 0, convention = 'concentration' } = steps[k] as Step;
    const activity = activityAt(decimal(ionicStrength));
    const [acid, base] = species.slice(k, k + 2) as [Charged, Charged];
    const forms = activity.ratio(base, acid);
    return convention === 'mixed' ? forms : times(forms, activity.of({ charge: 1, formula: 'H+' }).gamma);
  };
}

/** The constants of a system in one kind of number, as a function of the ionic strength. @internal */
export function exactConstantsOf<N>(
  arithmetic: ExactArithmetic<N>,
  system: OfConstants,
): (ionicStrength: N) => Constants<N> {
  const { conditions, real } = system;
  const { decimal, ofRatio } = arithmetic;
  const thermodynamic = balanceIn(arithmetic, system);
  if (!real) return () => ({ balance: thermodynamic, gammas: null });
  const ceiling = decimal(real.coefficients.ceiling);
  const { law, celsius } = conditions;
  const activityAt = lawIn(arithmetic, law, ofRatio(celsius), isReference(conditions), ceiling);
  return (ionicStrength) => conditional(arithmetic, thermodynamic, activityAt(ionicStrength), system);
}
