import type { Titration } from '../../titration/titration.js';
import type { Readings } from '../readings.js';
import { randomFrom } from '../statistics/random.js';
import type { BenchFault } from './bench-fault.js';
import { deliveredWith, errorsOf, type ReadingNoise } from './reading-errors.js';
import { pouredWith, recordedWith, shownWith } from './with-faults.js';

/** A run that is to be simulated. */
interface Run {
  /** With what is really in the vessels. */
  readonly truth: Titration;
  readonly faults: readonly BenchFault[];
  /** mL, the totals that are meant. */
  readonly planned: readonly number[];
  /** mL, the last end point. */
  readonly endpoint: number;
}

/** What is written down of a run: volumes, and each pH to 0.001, as a meter displays it. @internal */
export function readingsOf(
  { truth, faults, planned, endpoint }: Run,
  noise: ReadingNoise,
  seed: number,
): Pick<Readings, 'mL' | 'pH'> {
  const mL = pouredWith(faults, planned, endpoint);
  const errors = errorsOf(mL.length, noise, randomFrom(seed));
  const settled = Array.from(truth.pHs(deliveredWith(errors.mL, mL)));
  const pH = shownWith(faults, settled).map((shown, k) => displayed(shown + (errors.pH[k] as number)));
  return { mL: recordedWith(faults, mL), pH };
}

const displayed = (pH: number): number => Math.round(pH * 1000) / 1000;

const quiet = { pH: 0, mL: 0 };

/**
 * The faults without which the readings would be the same, errors apart: a bubble after the last volume, carbon dioxide in
 * a flask that keeps that of the air. Nobody can find these.
 *
 * @param without - the titration with all faults but one; null where there is none, as with more than a titrant may hold
 * @internal
 */
export function traceless(
  run: Run,
  without: (others: readonly BenchFault[]) => Titration | null,
): readonly BenchFault[] {
  const seen = JSON.stringify(readingsOf(run, quiet, 0));
  return run.faults.filter((fault) => {
    const faults = run.faults.filter((other) => other !== fault);
    const truth = without(faults);
    return truth && JSON.stringify(readingsOf({ ...run, truth, faults }, quiet, 0)) === seen;
  });
}
