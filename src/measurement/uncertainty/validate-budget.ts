import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { studentTQuantile } from '../../solver/students-t.js';
import { levelLimits, type UncertaintyBudget } from './budget.js';
import type { PropagatedDistribution } from './propagate-distributions.js';

/** Whether a simulation bears a budget out. */
export interface BudgetValidation {
  /** In the unit of the result, how far the ends of the two intervals may differ. */
  readonly tolerance: number;
  /** Standard error of each end of the simulation's interval, from the number of its draws. */
  readonly simulationError: number;
  /** Of the lower ends, the budget's less the simulation's. */
  readonly low: number;
  /** Of the upper ends, the budget's less the simulation's. */
  readonly high: number;
  /** Whether both are within the tolerance, with twice the error of the simulation added. */
  readonly agrees: boolean;
  readonly reason: string;
}

/**
 * Compares the interval of a budget, value ± expandedUncertainty, with that of a simulation (JCGM 101:2008, 8.1). The
 * tolerance is half a unit of the second digit of the standard uncertainty (7.9.2).
 *
 * The ends of the simulation are uncertain too, by √(q(1 − q)/draws)/φ(z) standard uncertainties with q the share left out
 * beyond each end, and z and φ of the normal distribution.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { propagateDistributions, uncertaintyBudget, validateBudget } from 'protolysis/measurement';
 *
 * const mL = { value: 25, standardUncertainty: 0.02, degreesOfFreedom: null };
 * const molar = { value: 0.1, standardUncertainty: 0.0001, degreesOfFreedom: null };
 * const model = ({ mL, molar }: { mL: number; molar: number }) => mL * molar;
 * const budget = uncertaintyBudget({ mL, molar }, model);
 * const simulated = await propagateDistributions({ mL, molar }, model, { draws: 50000 });
 * validateBudget(budget, simulated).agrees; // => true
 * ```
 */
export function validateBudget(
  budget: UncertaintyBudget,
  simulation: PropagatedDistribution,
): BudgetValidation {
  const faults = new Faults('validateBudget');
  const given = faults.object(budget, 'budget', 'a result of uncertaintyBudget');
  const [value, expanded, standard] = (['value', 'expandedUncertainty', 'standardUncertainty'] as const).map(
    (key) =>
      faults.number(given[key], `budget.${key}`, 'a number', { from: key === 'value' ? -most : 0, to: most }),
  ) as [number, number, number];
  const level = faults.number(given.level, 'budget.level', 'a share', levelLimits);
  const simulated = faults.object(simulation, 'simulation', 'a result of propagateDistributions');
  const draws = faults.number(simulated.draws, 'simulation.draws', 'a number of draws', { from: 1 });
  const read = faults.object(simulated.interval, 'simulation.interval', 'an interval { from, to, level }');
  const [from, to] = (['from', 'to'] as const).map((key) =>
    faults.number(read[key], `simulation.interval.${key}`, 'a number', { from: -most, to: most }),
  ) as [number, number];
  const simulatedLevel = faults.number(read.level, 'simulation.interval.level', 'a share', {
    from: 0,
    to: 1,
  });
  if (!faults.any && simulatedLevel !== level)
    faults.add('conflict', 'simulation.interval.level', `the level of the budget, ${level}`, simulatedLevel);
  faults.done();
  const tolerance = standard > 0 ? 0.5 * 10 ** (Number(standard.toExponential(1).split('e')[1]) - 1) : 0;
  const [low, high] = [value - expanded - from, value + expanded - to];
  const simulationError = standard * errorOfQuantile((1 - level) / 2, draws);
  const agrees = Math.max(Math.abs(low), Math.abs(high)) <= tolerance + 2 * simulationError;
  return frozen({
    tolerance,
    simulationError,
    low,
    high,
    agrees,
    reason: agrees
      ? 'Both ends of the interval agree to two digits of the standard uncertainty: the budget may stand.'
      : 'The ends of the interval differ by more than two digits of the standard uncertainty allow: give the interval of the simulation, and look for an input that bends the model or has few degrees of freedom.',
  });
}

const most = 1e100;

/** Of the quantile q of a normal distribution, in its standard deviations. */
function errorOfQuantile(q: number, draws: number): number {
  const z = studentTQuantile(q, null);
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return Math.sqrt((q * (1 - q)) / draws) / density;
}
