import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import {
  budgetDefaults,
  budgetOf,
  levelLimits,
  type Model,
  type UncertaintyBudget,
  valuesOf,
} from './budget.js';
import { type InputQuantity, type Measured, readMeasured } from './input-quantity.js';

/** How a budget is reckoned. */
export interface BudgetOptions<Name extends string = string> {
  /** The share that the expanded uncertainty is meant to cover, 0.5 to 0.9999; 0.95 if left out. */
  readonly level?: number;
  /** The partial derivatives of the model at the estimates; by central differences if left out. */
  readonly sensitivities?: Readonly<Record<Name, number>>;
}

/**
 * The uncertainty budget of a result that is computed from inputs, by the law of propagation of uncertainty
 * (JCGM 100:2008, GUM, 5.1 and annex G).
 *
 *   u² = Σ (cᵢ·uᵢ)²,   U = k·u
 *
 * The inputs count as independent and the model as a straight line over their uncertainties; `propagateDistributions`
 * tells whether it is. Degrees of freedom are those of Welch and Satterthwaite, k Student's t for them.
 *
 * @param inputs - each an estimate, the result of another budget, or a number that counts as exact
 * @param model - the result from the values of the inputs
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { tabulate } from 'protolysis';
 * import { estimateWithin, glasswareVolume, uncertaintyBudget } from 'protolysis/measurement';
 *
 * const molar = uncertaintyBudget(
 *   {
 *     grams: estimateWithin(1.325, { limit: 0.0004, distribution: 'rectangular' }),
 *     purity: estimateWithin(0.9995, { limit: 0.0005, distribution: 'rectangular' }),
 *     flask: glasswareVolume({ kind: 'flask', size: 250 }),
 *   },
 *   ({ grams, purity, flask }) => (1000 * grams * purity) / (105.988 * flask),
 * );
 * molar.value; // => 0.04998
 * molar.expandedUncertainty; // => 0.0000408
 * console.log(tabulate(molar.contributions, { input: 'text', value: 4, standardUncertainty: 5, percent: 1 }));
 * ```
 *
 * ```text
 * input      value  standardUncertainty  percent
 * grams     1.3250              0.00023     17.5
 * purity    0.9995              0.00029     48.0
 * flask   250.0000              0.06124     34.5
 * ```
 */
export function uncertaintyBudget<Name extends string>(
  inputs: Readonly<Record<Name, Measured>>,
  model: (values: Readonly<Record<Name, number>>) => number,
  options: BudgetOptions<Name> = {},
): UncertaintyBudget {
  const faults = new Faults('uncertaintyBudget');
  const read = readInputs(inputs, faults);
  const safe = readModel(model, read, faults);
  const unread = faults.object(options, 'options', 'options', ['level', 'sensitivities']);
  const { level = budgetDefaults.level } = unread;
  const share = faults.number(level, 'options.level', 'a share', levelLimits);
  const sensitivities = readSensitivities(unread.sensitivities, Object.keys(read), faults);
  faults.done();
  const budget = budgetOf(read, safe, share, sensitivities);
  if (
    ![
      budget.value,
      budget.expandedUncertainty,
      ...budget.contributions.map(({ sensitivity }) => sensitivity),
    ].every(Number.isFinite)
  )
    faults.add('conflict', 'model', `${finite} about the estimates`, model);
  faults.done();
  return frozen(budget);
}

const finite = 'a function of the inputs that gives a finite number';

/** Reads the inputs of a model from a caller's value, noting every fault. @internal */
export function readInputs(value: unknown, faults: Faults): Readonly<Record<string, InputQuantity>> {
  const unread = faults.object(value, 'inputs', 'the inputs by name, { name: estimate }');
  const names = Object.keys(unread);
  if (!faults.any && (names.length === 0 || names.length > 1000))
    faults.add('out-of-range', 'inputs', 'one to 1000 inputs', value);
  if (faults.any) return {};
  return Object.fromEntries(
    names.map((name) => [name, readMeasured(unread[name], `inputs.${name}`, 'a value', faults)]),
  );
}

/** Reads a model and tries it at the estimates; what it throws later counts as NaN. @internal */
export function readModel(
  value: unknown,
  inputs: Readonly<Record<string, InputQuantity>>,
  faults: Faults,
): Model {
  if (typeof value !== 'function') {
    faults.add(value === undefined ? 'missing' : 'wrong-type', 'model', finite, value);
    return () => 0;
  }
  const model: Model = (values) => {
    try {
      const result = value(values);
      return typeof result === 'number' ? result : Number.NaN;
    } catch {
      return Number.NaN;
    }
  };
  if (!faults.any && !Number.isFinite(model(valuesOf(inputs)))) {
    faults.add('conflict', 'model', `${finite} at the estimates`, value);
  }
  return model;
}

function readSensitivities(
  value: unknown,
  names: readonly string[],
  faults: Faults,
): Readonly<Record<string, number>> | undefined {
  if (value === undefined) return undefined;
  const unread = faults.object(value, 'options.sensitivities', 'a derivative for each input', names);
  return Object.fromEntries(
    names.map((name) => [
      name,
      faults.number(unread[name], `options.sensitivities.${name}`, 'a derivative', {
        from: -1e100,
        to: 1e100,
      }),
    ]),
  );
}
