import type { IonColumn } from '../../equilibrium/activity/real-system.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';
import { numberOf } from '../numbers/exactly.js';
import { type Ratio, ratios } from '../numbers/ratio.js';
import type { ColumnOf } from './exact-charge-balance.js';

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
