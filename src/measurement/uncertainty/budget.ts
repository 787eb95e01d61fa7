import { studentTQuantile } from '../../solver/students-t.js';
import type { Estimate } from '../estimate.js';
import type { InputQuantity } from './input-quantity.js';

/** What one input adds to the uncertainty of a result. A row for `tabulate`. */
export interface Contribution {
  readonly input: string;
  readonly value: number;
  /** In the unit of the input. */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number | null;
  /** ∂result/∂input, in the unit of the result over that of the input. */
  readonly sensitivity: number;
  /** |sensitivity|·standardUncertainty, in the unit of the result. */
  readonly contribution: number;
  /** Of the variance of the result, %; they add up to 100. */
  readonly percent: number;
}

/** A result with its uncertainty, and where that comes from. Itself an estimate, so that it can be an input in turn. */
export interface UncertaintyBudget extends Estimate {
  /** The share of a distribution of values that value ± expandedUncertainty is meant to hold. */
  readonly level: number;
  /** k, by which the standard uncertainty is multiplied: Student's t for the degrees of freedom and the level. */
  readonly coverageFactor: number;
  /** k·standardUncertainty, in the unit of the value. */
  readonly expandedUncertainty: number;
  /** In the order of the inputs. */
  readonly contributions: readonly Contribution[];
}

/** A result as a function of its inputs by name. @internal */
export type Model = (values: Readonly<Record<string, number>>) => number;

/** What a budget takes where nothing is said. @internal */
export const budgetDefaults = { level: 0.95 } as const;

/** Of the share that an interval is meant to cover. @internal */
export const levelLimits = { from: 0.5, to: 0.9999 };

/**
 * The budget of a model of independent inputs, JCGM 100:2008 (GUM):
 *
 *   u² = Σ (cᵢ·uᵢ)²,   cᵢ = ∂f/∂xᵢ                                                                   (eq. 10)
 *   ν = u⁴/Σ ((cᵢ·uᵢ)⁴/νᵢ)                                                             (Welch–Satterthwaite, G.2b)
 *   U = k·u,   k = t(½(1 + level), ν)                                                                     (G.1d)
 *
 * @param sensitivities - cᵢ; by central differences where left out
 * @internal
 */
export function budgetOf(
  inputs: Readonly<Record<string, InputQuantity>>,
  model: Model,
  level: number,
  sensitivities?: Readonly<Record<string, number>>,
): UncertaintyBudget {
  const values = valuesOf(inputs);
  const terms = Object.entries(inputs).map(([input, { value, standardUncertainty, degreesOfFreedom }]) => {
    const sensitivity = sensitivities?.[input] ?? slopeAlong(model, values, input, standardUncertainty);
    const contribution = Math.abs(sensitivity) * standardUncertainty;
    return { input, value, standardUncertainty, degreesOfFreedom, sensitivity, contribution };
  });
  const standardUncertainty = Math.hypot(...terms.map(({ contribution }) => contribution));
  const degreesOfFreedom = effectiveFreedom(terms, standardUncertainty);
  const coverageFactor = studentTQuantile((1 + level) / 2, degreesOfFreedom);
  return {
    value: model(values),
    standardUncertainty,
    degreesOfFreedom,
    level,
    coverageFactor,
    expandedUncertainty: coverageFactor * standardUncertainty,
    contributions: terms.map((term) => ({
      ...term,
      percent: standardUncertainty > 0 ? 100 * (term.contribution / standardUncertainty) ** 2 : 0,
    })),
  };
}

/** The estimates of the inputs by name. @internal */
export const valuesOf = (inputs: Readonly<Record<string, InputQuantity>>): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, value]));

/**
 * ∂f/∂x by a central difference. The step is ∛ε of x, which balances rounding and curvature, and at least a thousandth of
 * the uncertainty, for inputs about zero: about 1e-9 of the slope is lost.
 */
function slopeAlong(
  model: Model,
  values: Readonly<Record<string, number>>,
  input: string,
  uncertainty: number,
): number {
  const x = values[input] as number;
  const cubeRoot = Math.cbrt(Number.EPSILON);
  const step = Math.max(cubeRoot * Math.abs(x), uncertainty / 1000) || cubeRoot;
  const [low, high] = [x - step, x + step];
  return (model({ ...values, [input]: high }) - model({ ...values, [input]: low })) / (high - low);
}

function effectiveFreedom(
  terms: readonly { readonly contribution: number; readonly degreesOfFreedom: number | null }[],
  total: number,
): number | null {
  if (total === 0) return null;
  const share = terms.reduce(
    (sum, { contribution, degreesOfFreedom }) =>
      degreesOfFreedom === null ? sum : sum + (contribution / total) ** 4 / degreesOfFreedom,
    0,
  );
  const freedom = 1 / share;
  return Number.isFinite(freedom) ? Math.max(1, freedom) : null;
}
