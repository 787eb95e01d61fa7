import type { Balance } from '../../equilibrium/charge-balance.js';
import { emptyRoot, hydrogenIon } from '../../equilibrium/hydrogen-ion.js';
import { leastBetween } from '../../solver/least-between.js';
import { numberAt } from '../../solver/number-at.js';
import { rootBetween } from '../../solver/root-between.js';
import {
  type Charges,
  chargesAt,
  emptyCharges,
  hydrogenIonAt,
  type MixtureModel,
  slopeOfMixture,
  volumeOfCharges,
  volumeOfMixture,
} from '../model/mixture-model.js';
import type { CurvePoint } from '../sampling/curve.js';
import { isReached } from '../titration-limits.js';

/** A point where the curvature changes its sign. */
export interface InflectionPoint extends CurvePoint {
  /** Whether |dpH/dV| is greatest or least there. */
  readonly kind: 'steepest' | 'flattest';
}

/**
 * Every inflection of a titration curve at V > 0, in order of volume.
 *
 * With M = A + V·T the charge of the mixture (mixture-model.ts) and primes for d/d ln h, V′ = −M′/T and dpH/dV =
 * T/(ln10·M′), so
 *
 *   d²pH/dV² = 0   ⟺   R(pH) = M″/M′ − 2·T′/T = 0,   V = −A/T                                          (1)
 *
 * Every root    R varies on the scale of one pH unit whatever the concentrations, since each term is a moment of proton
 *               numbers; a grid of 0.01 pH separates its roots. A pair closer than that shows as a turn of R
 *               towards zero between neighbours, and is searched for there.
 * Start         the pH of the analyte: V = 0, where A = 0. V grows from there, so roots come in its order.
 * End           short of the pH of the titrant, V = ∞, by ln h = ln3/n, n the most protons that one protolyte can lose.
 *               |T″| ≤ n·T′ (a third central moment is at most n times the variance), so at a distance d from the root
 *               of T |T| ≤ T′·(e^(nd) − 1)/n. Nearer than ln3/n that makes 2T′/|T| > n, and |M″/M′| ≤ n: R is not zero.
 * Derived here  from F(h, V) = 0 twice by V.
 *
 * @internal
 */
export function inflectionsOf(mixture: MixtureModel): InflectionPoint[] {
  const { balance } = mixture.system;
  const from = -Math.log10(hydrogenIonAt(mixture, 0));
  const to = -Math.log10(hydrogenIon(balance, mixture.titrant, 0, emptyRoot()).h);
  const end = to - Math.sign(to - from) * (Math.log10(3) / mostProtons(balance));

  const charges = emptyCharges();
  const turn = (pH: number) => turnAt(mixture, pH, charges);
  const grid = gridBetween(from, end);
  const values = grid.map(turn);
  return bracketsOf(grid, values, turn)
    .flatMap(([low, high]) => {
      const root = rootBetween(turn, low, high);
      return root.status === 'found' ? [pointAt(mixture, root.x, turn(low) < turn(high), to > from)] : [];
    })
    .filter(({ mL }) => isReached(mL));
}

const mostProtons = ({ families, gas }: Balance): number =>
  Math.max(1, gas?.length ?? 0, ...families.map(({ constants }) => constants.length));

/** Both ends and what is between in equal steps of at most 0.01. */
function gridBetween(from: number, to: number): number[] {
  const count = Math.max(2, Math.ceil(Math.abs(to - from) * 100));
  return Array.from({ length: count + 1 }, (_, k) => from + (to - from) * (k / count));
}

/** R of (1), at the volume that has this pH. */
function turnAt(mixture: MixtureModel, pH: number, room: Charges): number {
  const charges = chargesAt(mixture, 10 ** -pH, room);
  const { analyte, titrant } = charges;
  const volume = volumeOfCharges(charges);
  const slope = analyte.slope + volume * titrant.slope;
  const bend = analyte.bend + volume * titrant.bend;
  return bend / slope - (2 * titrant.slope) / titrant.net;
}

/** Pairs of pH between which R changes sign, or may: where it turns short of zero, both sides of its turn are among them. */
function bracketsOf(grid: readonly number[], values: readonly number[], turn: (pH: number) => number) {
  const found: [number, number][] = [];
  for (let k = 1; k < grid.length; k += 1) {
    const [low, high, end] = [numberAt(grid, k - 1), numberAt(grid, k), numberAt(grid, k + 1)];
    const [atLow, atHigh, atEnd] = [numberAt(values, k - 1), numberAt(values, k), numberAt(values, k + 1)];
    const sign = atLow < 0 ? -1 : 1;
    if (atLow < 0 !== atHigh < 0) found.push([low, high]);
    else if (sign * atHigh < sign * atLow && sign * atHigh <= sign * atEnd) {
      const extreme = leastBetween((pH) => sign * turn(pH), low, end);
      if (extreme.status === 'found') found.push([low, extreme.x], [extreme.x, end]);
    }
  }
  return found;
}

/**
 * |dV/dpH| = M′·ln10/|T| is least where the curve is steepest. d ln|V′|/d pH = −ln10·(M″ + V′T′)/M′ + ln10·T′/T
 * = −ln10·R, so it is least where R falls through zero as pH rises.
 */
function pointAt(mixture: MixtureModel, pH: number, rises: boolean, upwards: boolean): InflectionPoint {
  const h = 10 ** -pH;
  const mL = volumeOfMixture(mixture, h);
  const kind = rises === upwards ? 'flattest' : 'steepest';
  return { mL, pH, slope: slopeOfMixture(mixture, mL, h), kind };
}
