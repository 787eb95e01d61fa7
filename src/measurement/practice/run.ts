import type { Random } from '../statistics/random.js';
import { asWritten, benchEffects, type Effect, type Filled } from './bench-effects.js';
import type { BenchFault } from './bench-fault.js';

type Column = readonly number[];

const effectOf = (fault: BenchFault) => benchEffects[fault.kind] as unknown as Effect<BenchFault>;

/** What is really in flask and burette. @internal */
export const filledWith = (faults: readonly BenchFault[], filled: Filled): Filled =>
  faults.reduce((before, fault) => effectOf(fault).filled?.(fault, before) ?? before, filled);

/** mL, what is really poured. @internal */
export const pouredWith = (faults: readonly BenchFault[], mL: Column, endpoint: number): Column =>
  faults.reduce((before, fault) => effectOf(fault).poured?.(fault, before, endpoint) ?? before, mL);

/** pH, what the probe shows. @internal */
export const shownWith = (faults: readonly BenchFault[], pH: Column): Column =>
  faults.reduce((before, fault) => effectOf(fault).shown?.(fault, before) ?? before, pH);

/** mL, what is written down of what was poured. @internal */
export const recordedWith = (faults: readonly BenchFault[], mL: Column): Column =>
  faults.reduce((before, fault) => effectOf(fault).recorded?.(fault, before) ?? before, mL).map(asWritten);

/** Standard deviations of one pH and of one volume, mL. */
export interface ReadingNoise {
  readonly pH: number;
  readonly mL: number;
}

/** Errors of each reading: one of the volume, one of the pH. */
interface Errors {
  readonly mL: Column;
  readonly pH: Column;
}

/** Errors in the order in which they are drawn: mL and pH of the first reading, of the second, and so on. @internal */
export function errorsOf(count: number, noise: ReadingNoise, random: Random): Errors {
  const drawn = Array.from(
    { length: count },
    () => [noise.mL * random.normal(), noise.pH * random.normal()] as const,
  );
  return { mL: drawn.map(([mL]) => mL), pH: drawn.map(([, pH]) => pH) };
}

/**
 * What runs into the flask when so much is read, mL. A burette that shows 0 has let out nothing; none runs backwards, so
 * the volumes are put in order, and one below zero is taken to the other side.
 *
 * @internal
 */
export const deliveredWith = (errors: Column, mL: Column): Column =>
  mL.map((each, k) => (each === 0 ? 0 : Math.abs(each + (errors[k] as number)))).sort((a, b) => a - b);
