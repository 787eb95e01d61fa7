import type { Decimal } from 'decimal.js';
import { isIdeal, realSystemOf, type System, systemOf } from '../../equilibrium/system.js';
import type { Solution } from '../../solution/solution.js';
import type { Ion } from '../../substance/reagent.js';
import { decimals } from '../numbers/decimals.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import { exactly, numberOf } from '../numbers/exactly.js';
import type { Interval } from '../numbers/interval-operations.js';
import { type Intervals, intervals } from '../numbers/intervals.js';
import { type Ratio, ratios } from '../numbers/ratio.js';
import type { ColumnOf, Constants } from './exact-charge-balance.js';
import type { ReadExactConditions } from './exact-conditions.js';
import { exactConstantsOf, type OfConstants } from './exact-constants.js';
import type { ReadSolution } from './exact-solution.js';

/** Solutions over one set of protolytes, to the last digit. @internal */
export interface ExactSystem extends OfConstants {
  /** One per solution, in mmol and mL. */
  readonly columns: readonly ColumnOf<Ratio>[];
  /** One list per solution. */
  readonly ions: readonly (readonly { readonly ion: Ion; readonly mmol: Ratio }[])[];
  /** The same in doubles: where a search starts from. */
  readonly inDoubles: System;
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

/** Solutions under one set of conditions, as a system. @internal */
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
