import type { IonColumn, RealSystem } from '../../equilibrium/activity/real-system.js';
import { gasDerivativesAlong } from '../../equilibrium/activity/second-derivatives.js';
import { type RealState, selfConsistent } from '../../equilibrium/activity/self-consistent.js';
import { withFamily, withoutFamily } from '../../equilibrium/carbon-dioxide-escape.js';
import type { System } from '../../equilibrium/system.js';
import { numberAt } from '../../solver/number-at.js';
import { firstDerivatives, type MovingColumn, secondDerivatives } from './real-derivatives.js';

/**
 * The column that is left once CO2 has escaped.
 *
 *   n = (1 − e)·n₀ + e·V·S                                                                           (1)
 *
 * n₀ is the amount before, e the share that escapes of what must, S the concentration in the open system. Where n₀ is
 * less than V·S, nothing escapes.
 *
 * @param linear - the column before the escape
 * @param open - the open system; its coefficients are overwritten
 * @param state - of the open system; overwritten
 * @param order - how many derivatives with respect to the volume are wanted
 * @internal
 */
export function escapingColumn(
  { escape: leaving }: System,
  linear: MovingColumn,
  open: RealSystem,
  state: RealState,
  order: 1 | 2,
): MovingColumn {
  if (!leaving) return linear;
  const { family, share } = leaving;
  const column = withoutFamily(linear.column, family);
  const first = withoutFamily(linear.first, family);
  selfConsistent(open, column, state);
  const slope = firstDerivatives(open, state, column, first);
  const bend =
    order === 2
      ? secondDerivatives(open, state, { column, first, second: null }, slope)
      : { activity: 0, strength: 0 };
  const gas = gasDerivativesAlong(open, leaving.open.gas?.dissolved ?? 0, state.h, slope, bend);

  const stays = column.volume * gas.molar;
  const before = numberAt(linear.column.amounts, family);
  if (!(before > stays)) return linear;
  const added = numberAt(linear.first.amounts, family);
  const staysFirst = first.volume * gas.molar + column.volume * gas.first;
  const staysSecond = 2 * first.volume * gas.first + column.volume * gas.second;
  return {
    column: withFamily(linear.column, family, before - share * (before - stays)),
    first: withFamily(linear.first, family, added - share * (added - staysFirst)),
    second: withFamily(emptyLike(linear.first), family, share * staysSecond),
  };
}

const emptyLike = ({ amounts }: IonColumn): IonColumn => ({
  volume: 0,
  charge: 0,
  squares: 0,
  amounts: Array.from(amounts, () => 0),
});
