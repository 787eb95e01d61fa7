import type { FreeParameter } from '../fit/free-parameter.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';

/** A fault as a model with one size: the parameter of its name is set free. @internal */
export interface FaultModel {
  readonly kind: BenchFaultKind & FreeParameter;
  /** Where searches for the parameter start, `expected` as the set-up has it. */
  readonly startsFrom: (expected: number) => readonly number[];
  /** Beyond these nobody would ask what is wrong. A search that ends at one of them explains nothing. */
  readonly limits: (expected: number) => { readonly from: number; readonly to: number };
  /** Of its size. */
  readonly unit: string;
  /** The size of the fault, as `BenchFault` gives it, from the value of the parameter. */
  readonly sizeOf: (value: number, expected: number) => number;
}

/** Amounts to either side of what was expected. */
const around = (expected: number) => [0.9 * expected, expected, 1.1 * expected];
const tenfold = (expected: number) => ({ from: expected / 10, to: 10 * expected });
const between = (from: number, to: number) => () => ({ from, to });
const fromThere = (expected: number) => [expected];
const same = (value: number) => value;
const ratio = (value: number, expected: number) => value / expected;
const stated = 'times what was stated';

/** Time constants; a reading taken sooner would show no curve at all, and a longer lag follows any row of numbers. */
const shortestWait = 0.3;

/** The faults that are one free parameter each. @internal */
export const faultModels: readonly FaultModel[] = [
  { kind: 'sampleAmount', startsFrom: around, limits: tenfold, unit: stated, sizeOf: ratio },
  { kind: 'titrantConcentration', startsFrom: around, limits: tenfold, unit: stated, sizeOf: ratio },
  {
    kind: 'carbonDioxideInFlask',
    startsFrom: fromThere,
    limits: between(0, 1),
    unit: 'mol/L',
    sizeOf: same,
  },
  {
    kind: 'carbonDioxideInTitrant',
    startsFrom: fromThere,
    limits: between(0, 1),
    unit: 'mol/L',
    sizeOf: same,
  },
  {
    kind: 'readTooSoon',
    startsFrom: () => [0.3],
    limits: between(0, Math.exp(-shortestWait)),
    unit: 'time constants',
    sizeOf: (share) => -Math.log(share),
  },
  { kind: 'probeSlope', startsFrom: fromThere, limits: between(50, 150), unit: '%', sizeOf: same },
  { kind: 'probeOffset', startsFrom: fromThere, limits: between(-2, 2), unit: 'pH', sizeOf: same },
  { kind: 'probeDrift', startsFrom: fromThere, limits: between(-2, 2), unit: 'pH', sizeOf: same },
  {
    kind: 'initialReading',
    startsFrom: () => [0.5, 2, 5],
    limits: between(0, 100),
    unit: 'mL',
    sizeOf: same,
  },
];
