import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { type ActivityModel, largestLog10Gamma } from './activity-model.js';

/** Activity coefficients of every kind of ion in a system, at one ionic strength and temperature. */
export interface Coefficients {
  readonly model: ActivityModel;
  readonly celsius: number;
  readonly kinds: readonly Kind[];
  /** Above this ionic strength, mol/L, coefficients no longer change. */
  readonly ceiling: number;
  /** Where they were taken last, mol/L. */
  ionicStrength: number;
  readonly gamma: Float64Array;
  readonly log10: Float64Array;
  /** d log10 γ/dI and d² log10 γ/dI². */
  readonly slope: Float64Array;
  readonly bend: Float64Array;
}

/** The properties by which a model distinguishes ions. */
export interface Kind {
  readonly charge: number;
  readonly formula: string;
}

/**
 * How far coefficients are carried: up to an ionic strength of 100 mol/L, which no solution reaches, and for H+ and OH-
 * while |log10 γ| is at most 5, since beyond that the ion product of water would have no meaning.
 */
export const activityLimits = /*#__PURE__*/ frozen({ ionicStrength: 100, log10GammaOfWater: 5 } as const);

/**
 * Coefficients of these kinds, with a ceiling: an ionic strength of 100 mol/L, lowered by tenths as often as needed, at
 * which every |log10 γ| is at most 90 and that of H+ and OH- at most 5. Beyond any model's range by far, it keeps γ in
 * the range of doubles and, since γ no longer changes, ensures that a self-consistent ionic strength exists.
 *
 * @param spectators - ions whose coefficients no constant depends on; the ceiling fits them too
 * @internal
 */
export function coefficientsOf(
  model: ActivityModel,
  celsius: number,
  kinds: readonly Kind[],
  spectators: readonly Kind[],
): Coefficients {
  let ceiling: number = activityLimits.ionicStrength;
  const below = (most: number, { charge, formula }: Kind) =>
    !(Math.abs(model.log10Gamma(charge, ceiling, celsius, formula)) > most);
  const fits = () =>
    water.every((kind) => below(activityLimits.log10GammaOfWater, kind)) &&
    [...kinds, ...spectators].every((kind) => below(largestLog10Gamma, kind));
  for (let lowered = 0; lowered < 400 && !fits(); lowered += 1) ceiling *= 0.9;
  const zeros = () => new Float64Array(kinds.length);
  return {
    model,
    celsius,
    kinds,
    ceiling,
    ionicStrength: 0,
    gamma: zeros().fill(1),
    log10: zeros(),
    slope: zeros(),
    bend: zeros(),
  };
}

const water: readonly Kind[] = [
  { charge: 1, formula: 'H+' },
  { charge: -1, formula: 'OH-' },
];

/** Takes the coefficients and their slopes at an ionic strength. @internal */
export function takeCoefficients(out: Coefficients, ionicStrength: number): void {
  const { model, celsius, kinds, ceiling } = out;
  const held = !(ionicStrength < ceiling);
  const at = held ? ceiling : ionicStrength;
  out.ionicStrength = ionicStrength;
  if (model.squareLaw) {
    takeSquares(out, at, held);
    return;
  }
  for (let k = 0; k < kinds.length; k += 1) {
    const { charge, formula } = kinds[k] as Kind;
    const log10 = at === 0 ? 0 : model.log10Gamma(charge, at, celsius, formula);
    if (!(Math.abs(log10) <= largestLog10Gamma)) refuse(out, charge, at, log10);
    out.log10[k] = log10;
    out.gamma[k] = 10 ** log10;
    out.slope[k] = held || at === 0 ? 0 : slopeAt(model, charge, at, celsius, formula);
  }
}

/** With log10 γ = z²·f(I), f is evaluated once for all kinds. */
function takeSquares(out: Coefficients, at: number, held: boolean): void {
  const { model, celsius, kinds } = out;
  const log10 = at === 0 ? 0 : model.log10Gamma(1, at, celsius, 'H+');
  const slope = held || at === 0 ? 0 : slopeAt(model, 1, at, celsius, 'H+');
  if (!(Math.abs(log10) <= largestLog10Gamma)) refuse(out, 1, at, log10);
  const single = 10 ** log10;
  for (let k = 0; k < kinds.length; k += 1) {
    const { charge } = kinds[k] as Kind;
    const square = charge * charge;
    out.log10[k] = square * log10;
    out.gamma[k] = power(power(single, charge), charge);
    out.slope[k] = square * slope;
  }
}

/**
 * x^|n| by multiplication, which for small whole powers is several times as fast as `**`, and good to |n| roundings.
 */
function power(x: number, n: number): number {
  let result = 1;
  for (let left = Math.abs(n); left > 0; left -= 1) result *= x;
  return result;
}

/** Takes the second derivatives where the coefficients were taken last. @internal */
export function takeBends(out: Coefficients): void {
  const { model, celsius, kinds, ceiling, ionicStrength } = out;
  for (let k = 0; k < kinds.length; k += 1) {
    const { charge, formula } = kinds[k] as Kind;
    out.bend[k] = ionicStrength < ceiling ? bendAt(model, charge, ionicStrength, celsius, formula) : 0;
  }
}

/** Central differences of fourth order, where a model brings no derivative: good to 1e-11 of a smooth law. */
function slopeAt(model: ActivityModel, charge: number, at: number, celsius: number, formula: string): number {
  if (model.dLog10Gamma) return model.dLog10Gamma(charge, at, celsius, formula);
  return difference((x) => model.log10Gamma(charge, x, celsius, formula), at, at * 1e-3);
}

function bendAt(model: ActivityModel, charge: number, at: number, celsius: number, formula: string): number {
  if (model.d2Log10Gamma) return model.d2Log10Gamma(charge, at, celsius, formula);
  return difference((x) => slopeAt(model, charge, x, celsius, formula), at, at * 1e-2);
}

function difference(f: (x: number) => number, x: number, step: number): number {
  const near = f(x + step) - f(x - step);
  const far = f(x + 2 * step) - f(x - 2 * step);
  return (8 * near - far) / (12 * step);
}

function refuse({ model }: Coefficients, charge: number, ionicStrength: number, log10: number): never {
  const faults = new Faults(`activity model '${model.name}'`);
  const path = `log10Gamma(${charge}, ${ionicStrength})`;
  faults.number(log10, path, 'a log10 γ', { from: -largestLog10Gamma, to: largestLog10Gamma });
  faults.done();
  throw new Error('unreachable');
}
