import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';

/** A probe on its way to a new pH. */
export interface Settling {
  /** In pH, how far it has to go. */
  readonly change: number;
  /** s, in which it goes all but 1/e (37 %) of the way. */
  readonly timeConstant: number;
}

/**
 * How long to wait by common practice, s, where nothing is known of the probe: the lower of the usual 10 to 15 s suits
 * a stirred, buffered solution, the upper the readings about an end point.
 */
export const usualWait = /*#__PURE__*/ frozen({ from: 10, to: 15 } as const);

/**
 * In pH, what is still missing after a wait: change·exp(−t/τ), the response of first order of a probe.
 *
 * @param options.seconds - s since the change
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { settlingError } from 'protolysis/measurement';
 *
 * settlingError({ change: 2, timeConstant: 3 }, { seconds: 15 }); // => 0.0135
 * ```
 */
export function settlingError(settling: Settling, options: { readonly seconds: number }): number {
  const faults = new Faults('settlingError');
  const { change, timeConstant } = readSettling(settling, faults);
  const { seconds } = faults.object(options, 'options', 'options { seconds }', ['seconds']);
  const t = faults.number(seconds, 'options.seconds', 'a time in s', { from: 0, to: 1e6 });
  faults.done();
  return change * Math.exp(-t / timeConstant);
}

/**
 * The wait, s, after which no more than an error is missing: τ·ln(|change|/error), and none where the change is no
 * more.
 *
 * @param options.error - in pH, what may be missing
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { settlingWait } from 'protolysis/measurement';
 *
 * settlingWait({ change: 2, timeConstant: 3 }, { error: 0.01 }); // => 15.9
 * ```
 */
export function settlingWait(settling: Settling, options: { readonly error: number }): number {
  const faults = new Faults('settlingWait');
  const { change, timeConstant } = readSettling(settling, faults);
  const { error } = faults.object(options, 'options', 'options { error }', ['error']);
  const least = faults.number(error, 'options.error', 'an error in pH', { from: 1e-9, to: 14 });
  faults.done();
  return Math.abs(change) <= least ? 0 : timeConstant * Math.log(Math.abs(change) / least);
}

function readSettling(value: unknown, faults: Faults): Settling {
  const keys = ['change', 'timeConstant'];
  const unread = faults.object(value, 'settling', 'a settling { change, timeConstant }', keys);
  return {
    change: faults.number(unread.change, 'settling.change', 'a change in pH', { from: -16, to: 16 }),
    timeConstant: faults.number(unread.timeConstant, 'settling.timeConstant', 'a time in s', {
      from: 0.01,
      to: 1e4,
    }),
  };
}
