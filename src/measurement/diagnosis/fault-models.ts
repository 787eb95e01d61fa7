import type { FreeParameter } from '../fit/free-parameter.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';

/** A fault as a model with one size: the parameter of its name is set free. @internal */
export interface FaultModel {
  readonly kind: BenchFaultKind & FreeParameter;
  /** Where searches for the parameter start, `expected` as the set-up has it. */
  readonly startsFrom: (expected: number) => readonly number[];
  /** Of its size. */
  readonly unit: string;
  /** The size of the fault, as `BenchFault` gives it, from the value of the parameter. */
  readonly sizeOf: (value: number, expected: number) => number;
}

/** Amounts to either side of what was expected. */
const about = (expected: number) => [0.9 * expected, expected, 1.1 * expected];
const fromThere = (expected: number) => [expected];
const same = (value: number) => value;
const ratio = (value: number, expected: number) => value / expected;

/** The faults that are one free parameter each; the amount of sample is free within its tolerance beside them. @internal */
export const faultModels: readonly FaultModel[] = [
  { kind: 'sampleAmount', startsFrom: about, unit: '', sizeOf: ratio },
  { kind: 'titrantConcentration', startsFrom: about, unit: '', sizeOf: ratio },
  { kind: 'carbonDioxideInFlask', startsFrom: fromThere, unit: 'mol/L', sizeOf: same },
  { kind: 'carbonDioxideInTitrant', startsFrom: fromThere, unit: 'mol/L', sizeOf: same },
  {
    kind: 'readTooSoon',
    startsFrom: () => [0.3],
    unit: 'time constants',
    sizeOf: (share) => -Math.log(share),
  },
  { kind: 'probeSlope', startsFrom: fromThere, unit: '%', sizeOf: same },
  { kind: 'probeOffset', startsFrom: fromThere, unit: 'pH', sizeOf: same },
  { kind: 'probeDrift', startsFrom: fromThere, unit: 'pH', sizeOf: same },
  { kind: 'initialReading', startsFrom: () => [0.5, 2, 5], unit: 'mL', sizeOf: same },
];
