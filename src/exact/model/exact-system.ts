import type { Decimal } from 'decimal.js';
import type { ActivityLaw } from '../../equilibrium/activity/activity-law.js';
import { isOfMedium } from '../../equilibrium/activity/at-zero-strength.js';
import type { IonColumn, RealSystem } from '../../equilibrium/activity/real-system.js';
import { henryFit } from '../../equilibrium/carbon-dioxide.js';
import { isIdeal, realSystemOf, type System, systemOf } from '../../equilibrium/system.js';
import { log10KAt } from '../../equilibrium/temperature/log10-k-at.js';
import { movedPKa } from '../../equilibrium/temperature/pka-at.js';
import { ionProductIn } from '../../equilibrium/temperature/pkw-at.js';
import { waterAt25 } from '../../equilibrium/temperature/water-at-25.js';
import type { Solution } from '../../solution/solution.js';
import type { Protolyte, Step } from '../../substance/protolyte.js';
import type { Ion } from '../../substance/reagent.js';
import { decimals } from '../numbers/decimals.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import { exactly, numberOf } from '../numbers/exactly.js';
import type { Interval } from '../numbers/interval-operations.js';
import { type Intervals, intervals } from '../numbers/intervals.js';
import { type Ratio, ratios } from '../numbers/ratio.js';
import { type Charged, lawIn } from './exact-activity.js';
import { type BalanceOf, type ColumnOf, type Constants, conditional } from './exact-charge-balance.js';
import { isReference, type ReadExactConditions } from './exact-conditions.js';
import type { ReadSolution } from './exact-solution.js';

/** Solutions over one set of protolytes, to the last digit. @internal */
export interface ExactSystem {
  readonly conditions: ReadExactConditions;
  /** Of fixed total: without a gas at fixed pressure. */
  readonly protolytes: readonly Protolyte[];
  /** The gas at fixed pressure, if there is one. */
  readonly gas: Protolyte | null;
  /** One per solution, in mmol and mL. */
  readonly columns: readonly ColumnOf<Ratio>[];
  /** One list per solution. */
  readonly ions: readonly (readonly { readonly ion: Ion; readonly mmol: Ratio }[])[];
  /** The same in doubles: where a search starts from. */
  readonly inDoubles: System;
  /** The system with coefficients of activity; null where γ = 1 throughout. */
  readonly real: RealSystem | null;
  /** Decimals of so many digits with the constants on them, kept: all of a curve is worked out on the same ones. */
  onDecimals(digits: number): WithConstants<ExactArithmetic<Decimal>, Decimal>;
  /** Intervals of so many digits likewise. */
  onIntervals(digits: number): WithConstants<Intervals, Interval>;
}

/** One kind of number, and the constants of a system in it as a function of the ionic strength. @internal */
export interface WithConstants<Arithmetic, N> {
  readonly arithmetic: Arithmetic;
  constantsAt(ionicStrength: N): Constants<N>;
}

/** @internal */
export function exactSystemOf(
  solutions: readonly ReadSolution[],
  conditions: ReadExactConditions,
): ExactSystem {
  const inDoubles = systemOf(solutions.map(solutionInDoubles), conditions.inUse);
  const ions = solutions.map(ionsIn);
  const system: ExactSystem = {
    conditions,
    protolytes: inDoubles.protolytes,
    gas: inDoubles.gas?.protolyte ?? null,
    columns: solutions.map((solution, index) => {
      const charges = (power: 1 | 2) =>
        total((ions[index] ?? []).map(({ ion, mmol }) => ratios.times(ratios.of(ion.charge ** power), mmol)));
      return {
        volume: solution.mL,
        charge: charges(1),
        squares: charges(2),
        amounts: inDoubles.protolytes.map(({ id }) => amountOf(id, solution)),
      };
    }),
    ions,
    inDoubles,
    real: isIdeal(inDoubles) ? null : realSystemOf(inDoubles),
    onDecimals: keptByDigits((digits) => withConstants(decimals(digits), system)),
    onIntervals: keptByDigits((digits) => withConstants(intervals(digits), system)),
  };
  return system;
}

const withConstants = <N, Arithmetic extends ExactArithmetic<N>>(
  arithmetic: Arithmetic & ExactArithmetic<N>,
  system: ExactSystem,
): WithConstants<Arithmetic, N> => ({ arithmetic, constantsAt: exactConstantsOf(arithmetic, system) });

function keptByDigits<T>(make: (digits: number) => T): (digits: number) => T {
  const kept = new Map<number, T>();
  return (digits) => {
    const made = kept.get(digits) ?? make(digits);
    kept.set(digits, made);
    return made;
  };
}

/** The nearest solution in doubles. @internal */
export const solutionInDoubles = ({ mL, contents }: ReadSolution): Solution => ({
  mL: numberOf(mL),
  contents: contents.map(({ reagent, mmol }) => ({ reagent, mmol: numberOf(mmol) })),
});

const total = (terms: readonly Ratio[]): Ratio => terms.reduce(ratios.plus, ratios.of(0));

const amountOf = (id: string, { contents }: ReadSolution): Ratio =>
  total(
    contents.flatMap(({ reagent, mmol }) =>
      reagent.protolytes
        .filter(({ protolyte }) => protolyte.id === id)
        .map(({ count }) => ratios.times(exactly(count), mmol)),
    ),
  );

function ionsIn({ contents }: ReadSolution): { ion: Ion; mmol: Ratio }[] {
  const ions = new Map<string, { ion: Ion; mmol: Ratio }>();
  for (const { reagent, mmol } of contents)
    for (const { ion, count } of reagent.ions) {
      const key = `${ion.formula} ${ion.charge}`;
      const before = ions.get(key)?.mmol ?? ratios.of(0);
      ions.set(key, { ion, mmol: ratios.plus(before, ratios.times(exactly(count), mmol)) });
    }
  return [...ions.values()];
}

/**
 * The thermodynamic constants of a system in one kind of number; where γ = 1 throughout, the constants as they were
 * measured.
 */
function balanceIn<N>(
  arithmetic: ExactArithmetic<N>,
  { conditions, protolytes, gas, real }: ExactSystem,
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
    const moved = minus(ionProductIn(arithmetic, celsius), ionProductIn(arithmetic, of(25)));
    return plus(decimal(waterAt25.pKw), moved);
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
  system: ExactSystem,
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

/** A column in one kind of number. @internal */
export const columnIn = <N>(
  { ofRatio }: Pick<ExactArithmetic<N>, 'ofRatio'>,
  { volume, charge, squares, amounts }: ColumnOf<Ratio>,
): ColumnOf<N> => ({
  volume: ofRatio(volume),
  charge: ofRatio(charge),
  squares: ofRatio(squares),
  amounts: amounts.map(ofRatio),
});

/** A column in doubles. @internal */
export const columnInDoubles = (column: ColumnOf<Ratio>): IonColumn =>
  columnIn({ ofRatio: numberOf }, column);

/** The contents of the beaker after these mL of the second solution have been added to the first. @internal */
export function exactMixtureAt([analyte, titrant]: readonly ColumnOf<Ratio>[], mL: Ratio): ColumnOf<Ratio> {
  const [one, other] = [analyte, titrant] as [ColumnOf<Ratio>, ColumnOf<Ratio>];
  const share = ratios.over(mL, other.volume);
  const poured = (a: Ratio, b: Ratio) => ratios.plus(a, ratios.times(b, share));
  return {
    volume: ratios.plus(one.volume, mL),
    charge: poured(one.charge, other.charge),
    squares: poured(one.squares, other.squares),
    amounts: one.amounts.map((amount, i) => poured(amount, other.amounts[i] as Ratio)),
  };
}
