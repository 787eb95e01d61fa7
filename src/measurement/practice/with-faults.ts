import { asWritten, benchEffects, type Effect, type Filled } from './bench-effects.js';
import type { BenchFault } from './bench-fault.js';

type Column = readonly number[];

// a fault and the effect of its kind belong together, which the compiler does not see
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
