import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import type { Estimate } from '../estimate.js';
import { inSlices, type LongWork, readLongWork } from '../long-work.js';
import { randomFrom, seedLimits } from '../statistics/random.js';
import { summaryOfDraws } from '../statistics/summary-of-draws.js';
import { levelLimits, type Model } from './budget.js';
import { drawOf } from './draw.js';
import type { InputQuantity, Measured } from './input-quantity.js';
import { readInputs, readModel } from './uncertainty-budget.js';

/** How often to draw, from which seed, and who is told. */
export interface SimulationOptions extends LongWork {
  /** 1000 to 1e7; 200 000 if left out. */
  readonly draws?: number;
  /** A whole number; 1 if left out. The same seed gives the same result to the last bit, on every machine. */
  readonly seed?: number;
  /** Of the coverage interval; 0.95 if left out. */
  readonly level?: number;
}

/** The distribution of a result, from draws of its inputs. Plain data: it survives JSON. */
export interface PropagatedDistribution extends Estimate {
  /** Mean of the draws. */
  readonly value: number;
  /** Standard deviation of the draws. */
  readonly standardUncertainty: number;
  /** It leaves out as many draws below as above (JCGM 101, 7.7). */
  readonly interval: { readonly from: number; readonly to: number; readonly level: number };
  readonly draws: number;
  readonly seed: number;
  readonly notes: readonly string[];
}

/**
 * What `propagateDistributions` takes by default. 200 000 draws are 1e4/(1 − level), as JCGM 101:2008, 7.2.1, advises.
 */
export const simulationDefaults = /*#__PURE__*/ frozen({ draws: 200_000, seed: 1, level: 0.95 } as const);

/**
 * The distribution of a result by a Monte Carlo method: the model is reckoned for values drawn from the distributions of
 * its inputs (JCGM 101:2008, GUM supplement 1). It assumes no straight line, and so checks an uncertainty budget.
 *
 * Runs in slices of about 20 ms, so that a page stays alive.
 *
 * @param inputs - each an estimate, the result of a budget, or a number that counts as exact
 * @param model - the result from the values of the inputs
 * @throws InputError that lists every fault, at once; the promise is rejected with one where a draw gives no finite number
 * @example
 * ```ts
 * import { estimateWithin, propagateDistributions } from 'protolysis/measurement';
 *
 * const mL = estimateWithin(25, { limit: 0.03, distribution: 'triangular' });
 * const grams = estimateWithin(0.1325, { limit: 0.0002, distribution: 'rectangular' });
 * const model = ({ mL, grams }: { mL: number; grams: number }) => (2000 * grams) / (105.988 * mL);
 * const { interval } = await propagateDistributions({ mL, grams }, model, { draws: 20000, seed: 7 });
 * interval.from; // => 0.0998
 * interval.to; // => 0.1002
 * ```
 */
export function propagateDistributions<Name extends string>(
  inputs: Readonly<Record<Name, Measured>>,
  model: (values: Readonly<Record<Name, number>>) => number,
  options: SimulationOptions = {},
): Promise<PropagatedDistribution> {
  const faults = new Faults('propagateDistributions');
  const read = readInputs(inputs, faults);
  const safe = readModel(model, read, faults);
  const settings = readOptions(options, faults);
  faults.done();
  return simulated(read, safe, settings);
}

type Settings = ReturnType<typeof readOptions>;

function readOptions(value: unknown, faults: Faults) {
  const keys = ['draws', 'seed', 'level', 'onProgress', 'signal'];
  const { draws, seed, level, onProgress, signal } = {
    ...simulationDefaults,
    ...faults.object(value, 'options', 'options', keys),
  } as Readonly<Record<string, unknown>>;
  return {
    draws: faults.number(draws, 'options.draws', 'a number of draws', { from: 1000, to: 1e7, integer: true }),
    seed: faults.number(seed, 'options.seed', 'a seed', seedLimits),
    level: faults.number(level, 'options.level', 'a share', levelLimits),
    work: readLongWork({ onProgress, signal }, 'options', faults),
  };
}

async function simulated(
  inputs: Readonly<Record<string, InputQuantity>>,
  model: Model,
  { draws, seed, level, work }: Settings,
): Promise<PropagatedDistribution> {
  const random = randomFrom(seed);
  const drawn = Object.entries(inputs).map(([name, input]) => ({ name, draw: drawOf(input, random) }));
  const results = new Float64Array(draws);
  await inSlices(draws, work, (k) => {
    const values = Object.fromEntries(drawn.map(({ name, draw }) => [name, draw()]));
    const result = model(values);
    if (!Number.isFinite(result)) refuse(values, model);
    results[k] = result;
  });
  const { mean, s, interval } = summaryOfDraws(results.sort(), level);
  return frozen({
    value: mean,
    standardUncertainty: s,
    degreesOfFreedom: null,
    interval: { ...interval, level },
    draws,
    seed,
    notes: notesOn(inputs),
  });
}

function refuse(values: Readonly<Record<string, number>>, model: Model): void {
  const faults = new Faults('propagateDistributions');
  const drawn = Object.entries(values)
    .slice(0, 5)
    .map(([name, value]) => `${name} = ${value}`);
  faults.add('conflict', 'model', `a function that gives a finite number for ${drawn.join(', ')} too`, model);
  faults.done();
}

const notesOn = (inputs: Readonly<Record<string, InputQuantity>>): readonly string[] =>
  Object.entries(inputs)
    .filter(
      ([, { degreesOfFreedom: freedom, distribution = 'normal', standardUncertainty: u }]) =>
        distribution === 'normal' && freedom !== null && freedom < 3 && u > 0,
    )
    .map(
      ([name, { degreesOfFreedom }]) =>
        `${name} has ${degreesOfFreedom} degrees of freedom: Student's t has no finite standard deviation below 3, so use the interval, and repeat more often.`,
    );
