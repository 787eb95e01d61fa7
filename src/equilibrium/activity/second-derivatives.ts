import { numberAt } from '../../solver/number-at.js';
import { type Family, fractionsOf } from '../family.js';
import type { Direction } from './compensating-change.js';
import type { IonColumn, RealSystem } from './real-system.js';

/** The logarithm of a concentration along a direction: first and second derivative. */
interface Rate {
  readonly first: number;
  readonly second: number;
}

/** The derivatives of ln n of a species that lost `lost` protons, without the term that its whole family shares. */
function rateOf({ coefficients }: RealSystem, kind: number, lost: number, to: Direction): Rate {
  const { slope, bend } = coefficients;
  return {
    first: -lost * to.activity - Math.LN10 * numberAt(slope, kind) * to.strength,
    second: -Math.LN10 * numberAt(bend, kind) * to.strength ** 2,
  };
}

/**
 * The second derivatives of net charge and ionic strength along a straight line of (ln a, I), amounts held.
 *
 *   free species  n″ = n·(e² + q)
 *   families      n″ = n·((e − ⟨e⟩)² − var e + q − ⟨q⟩)        e, q: first and second derivative of ln of its weight
 *
 * The coefficients and their bends must have been taken at the state. Derived here.
 *
 * @internal
 */
export function secondDerivativesAlong(
  real: RealSystem,
  column: IonColumn,
  h: number,
  to: Direction,
): { net: number; strength: number } {
  const { conditional, kinds, gasKinds, hydrogen, hydroxide } = real;
  const { volume, amounts } = column;
  let net = 0;
  let squares = 0;
  const add = (charge: number, second: number) => {
    net += charge * second;
    squares += charge * charge * second;
  };
  const free = (charge: number, amount: number, { first, second }: Rate) =>
    add(charge, amount * (first * first + second));

  free(1, volume * h, rateOf(real, hydrogen, -1, to));
  free(-1, (volume * conditional.kw) / h, rateOf(real, hydroxide, 1, to));
  for (const [j, level] of (conditional.gas ?? []).entries())
    free(-(j + 1), (volume * level) / h ** (j + 1), rateOf(real, numberAt(gasKinds, j + 1), j + 1, to));

  for (const [i, family] of conditional.families.entries()) {
    const fractions = fractionsOf(family, h);
    const rates = fractions.map((_, lost) => rateOf(real, kinds[i]?.[lost] as number, lost, to));
    const mean = average(fractions, (lost) => (rates[lost] as Rate).first);
    const away = (lost: number) => (rates[lost] as Rate).first - mean;
    const second = (lost: number) => away(lost) ** 2 + (rates[lost] as Rate).second;
    const shared = average(fractions, second);
    for (const [lost, fraction] of fractions.entries())
      add(chargeOf(family, lost), numberAt(amounts, i) * fraction * (second(lost) - shared));
  }
  return { net, strength: squares / 2 };
}

const chargeOf = ({ topCharge }: Family, lost: number) => topCharge - lost;
const average = (weights: readonly number[], value: (index: number) => number) =>
  weights.reduce((total, weight, index) => total + weight * value(index), 0);

/**
 * The concentration of a gas at fixed pressure, its ions included, mol/L, and its derivatives along a path of (ln a,
 * I).
 *
 * @param to - the direction of the path, `bend` its second derivatives
 * @internal
 */
export function gasDerivativesAlong(
  real: RealSystem,
  dissolved: number,
  h: number,
  to: Direction,
  bend: Direction,
): { molar: number; first: number; second: number } {
  const { conditional, coefficients, gasKinds } = real;
  let molar = 0;
  let first = 0;
  let second = 0;
  for (const [lost, kind] of gasKinds.entries()) {
    const level =
      lost === 0 ? dissolved / numberAt(coefficients.gamma, kind) : (conditional.gas?.[lost - 1] ?? 0);
    const concentration = level / h ** lost;
    const rate = rateOf(real, kind, lost, to);
    const further = rateOf(real, kind, lost, bend).first;
    molar += concentration;
    first += concentration * rate.first;
    second += concentration * (rate.first ** 2 + rate.second + further);
  }
  return { molar, first, second };
}
