import type { Protolyte } from '../substance/protolyte.js';
import type { Ion } from '../substance/reagent.js';
import type { BalanceOf, ColumnOf } from './charge-balance.js';
import type { ReadConditions } from './conditions.js';
import { exactly } from './exactly.js';
import { type Ratio, ratios } from './ratio.js';
import type { ReadSolution } from './solution.js';

/** Solutions over one set of protolytes, to the last digit. @internal */
export interface System {
  readonly pKw: Ratio;
  readonly protolytes: readonly Protolyte[];
  /** One per solution, in mmol and mL. */
  readonly columns: readonly ColumnOf<Ratio>[];
  /** One list per solution. */
  readonly ions: readonly (readonly { readonly ion: Ion; readonly mmol: Ratio }[])[];
}

/** @internal */
export function systemOf(solutions: readonly ReadSolution[], { pKw }: ReadConditions): System {
  const protolytes = new Map<string, Protolyte>();
  for (const { contents } of solutions)
    for (const { reagent } of contents)
      for (const { protolyte } of reagent.protolytes)
        if (!protolytes.has(protolyte.id)) protolytes.set(protolyte.id, protolyte);

  const ions = solutions.map(ionsIn);
  return {
    pKw,
    protolytes: [...protolytes.values()],
    columns: solutions.map((solution, index) => ({
      volume: solution.mL,
      charge: total((ions[index] ?? []).map(({ ion, mmol }) => ratios.times(ratios.of(ion.charge), mmol))),
      amounts: Array.from(protolytes.keys(), (id) => amountOf(id, solution)),
    })),
    ions,
  };
}

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

/** What turns fractions and powers of ten into one kind of number. @internal */
export interface Rendering<N> {
  ofRatio(ratio: Ratio): N;
  powerOfTen(exponent: Ratio): N;
}

/** The constants of a system in one kind of number. @internal */
export function balanceIn<N>({ powerOfTen }: Rendering<N>, { pKw, protolytes }: System): BalanceOf<N> {
  const constant = (pK: Ratio) => powerOfTen(ratios.minus(ratios.of(0), pK));
  return {
    kw: constant(pKw),
    families: protolytes.map(({ species, steps }) => ({
      topCharge: species[0]?.charge ?? 0,
      constants: steps.map(({ pKa }) => constant(exactly(pKa))),
    })),
  };
}

/** A column in one kind of number. @internal */
export const columnIn = <N>(
  { ofRatio }: Rendering<N>,
  { volume, charge, amounts }: ColumnOf<Ratio>,
): ColumnOf<N> => ({ volume: ofRatio(volume), charge: ofRatio(charge), amounts: amounts.map(ofRatio) });

/** What is in the beaker after so many mL of the second solution have gone into the first. @internal */
export function mixtureAt([analyte, titrant]: readonly ColumnOf<Ratio>[], mL: Ratio): ColumnOf<Ratio> {
  const [one, other] = [analyte, titrant] as [ColumnOf<Ratio>, ColumnOf<Ratio>];
  const share = ratios.over(mL, other.volume);
  const poured = (a: Ratio, b: Ratio) => ratios.plus(a, ratios.times(b, share));
  return {
    volume: ratios.plus(one.volume, mL),
    charge: poured(one.charge, other.charge),
    amounts: one.amounts.map((amount, i) => poured(amount, other.amounts[i] as Ratio)),
  };
}
