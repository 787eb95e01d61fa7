import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { numberAt } from '../../solver/number-at.js';
import { inSlices, type LongWork, readLongWork } from '../long-work.js';
import { readReadingColumns } from '../read-reading-columns.js';
import type { Readings } from '../readings.js';
import { type Random, randomFrom, seedLimits } from '../statistics/random.js';
import { summaryOfDraws } from '../statistics/summary-of-draws.js';
import { chemistryOf } from './chemistry.js';
import { findFit } from './find-fit.js';
import { type FitOptions, readFitOptions } from './fit-options.js';
import { type FoundFit, mostPasses, scatterOf, searchFit } from './search-fit.js';

/** How often to draw, from which seed, and who is told. */
export interface SimulateFitsOptions extends LongWork {
  /** 100 to 1e6; 1000 if left out. */
  readonly runs?: number;
  /** A whole number; 1 if left out. */
  readonly seed?: number;
}

/** A parameter over the simulated fits. */
export interface SimulatedParameter {
  readonly name: string;
  readonly unit: string;
  /** As the readings gave it: the truth of the simulation. */
  readonly value: number;
  readonly mean: number;
  /** Standard deviation of the fits: the standard uncertainty, whatever the bends of the curve. */
  readonly standardDeviation: number;
  /** Holds 95 of 100 fits, as many beyond it to either side. */
  readonly interval: { readonly from: number; readonly to: number };
}

/** How a fit scatters. Plain data: it survives JSON. */
export interface SimulatedFits {
  readonly parameters: readonly SimulatedParameter[];
  readonly runs: number;
  readonly seed: number;
  /** How many fits ended before they converged; they are counted in. */
  readonly unconverged: number;
}

/**
 * A check of a fit's standard uncertainties by simulation: readings are drawn about the fitted curve with the
 * uncertainties of the fit, scaled by its scatter where that is estimated, and fitted anew.
 *
 * Runs in slices of about 20 ms, so that a page stays alive; ten thousand fits of sixty readings are about half a
 * minute of one core, and a minute or more with activity (`npm run bench:fit`).
 *
 * Source: B. Efron, R. J. Tibshirani, An Introduction to the Bootstrap (1993), on the parametric bootstrap: the chapter
 * is quoted from memory.
 *
 * @throws InputError that lists every fault, at once
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { simulateFits } from 'protolysis/measurement';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const mL = [2, 5, 10, 15, 20, 22, 23, 24, 25, 26, 28];
 * const pH = [3.74, 4.19, 4.61, 4.97, 5.45, 5.79, 6.06, 6.65, 11.02, 11.44, 11.81];
 * const fit = { titration, free: ['sampleAmount'] } as const;
 * const { parameters } = await simulateFits({ mL, pH, notes: [] }, fit, { runs: 200 });
 * parameters[0]?.mean; // => 2.43
 * ```
 */
export function simulateFits(
  readings: Readings,
  options: FitOptions,
  simulation: SimulateFitsOptions = {},
): Promise<SimulatedFits> {
  const faults = new Faults('simulateFits');
  const given = readReadingColumns(readings, 'readings', faults, { least: 2, rising: false });
  const how = readFitOptions(options, 'options', faults);
  const what = 'a simulation { runs, seed }';
  const unread = faults.object(simulation, 'simulation', what, ['runs', 'seed', 'onProgress', 'signal']);
  const { runs = 1000, seed = 1 } = unread;
  const count = faults.number(runs, 'simulation.runs', 'a number of runs', {
    from: 100,
    to: 1e6,
    integer: true,
  });
  const from = faults.number(seed, 'simulation.seed', 'a seed', seedLimits);
  const work = readLongWork(unread, 'simulation', faults);
  if (!faults.any && given.mL.length <= how.free.length)
    faults.add('out-of-range', 'readings.mL', `more than ${how.free.length} readings`, given.mL);
  faults.done();

  const chemistry = chemistryOf(how.setup, how.parameters);
  const best = findFit(given, chemistry, how.uncertainty);
  const search = { start: [...best.parameters], limits: how.parameters, mostPasses };
  const freedom = given.mL.length - how.free.length;
  const scatter = how.scatter === 'known' ? 1 : scatterOf(best, freedom);
  const errors = { pH: how.uncertainty.pH * scatter, mL: how.uncertainty.mL * scatter };
  const random = randomFrom(from);
  const columns = how.parameters.map(() => new Float64Array(count));
  let unconverged = 0;
  return inSlices(count, work, (k) => {
    const found = searchFit(drawnAbout(best, errors, random), chemistry, how.uncertainty, search);
    if (found.status !== 'converged') unconverged += 1;
    for (const [j, column] of columns.entries()) column[k] = numberAt(found.parameters, j);
  }).then(() =>
    frozen({
      parameters: how.parameters.map(({ name, unit }, j) => ({
        name,
        unit,
        value: numberAt(best.parameters, j),
        ...spreadOf(columns[j] as Float64Array),
      })),
      runs: count,
      seed: from,
      unconverged,
    }),
  );
}

/** Readings about a fitted curve. A total of zero stays, since it is sure. */
function drawnAbout(
  { totals, onCurve }: FoundFit,
  errors: { readonly pH: number; readonly mL: number },
  random: Random,
): Readings {
  return {
    mL: totals.map((mL) => (mL === 0 ? 0 : mL + errors.mL * random.normal())),
    pH: onCurve.map((pH) => pH + errors.pH * random.normal()),
    notes: [],
  };
}

function spreadOf(column: Float64Array): Pick<SimulatedParameter, 'mean' | 'standardDeviation' | 'interval'> {
  const { mean, s, interval } = summaryOfDraws(column.sort(), 0.95);
  return { mean, standardDeviation: s, interval };
}
