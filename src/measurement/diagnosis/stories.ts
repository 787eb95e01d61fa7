import type { FreeParameter } from '../fit/free-parameter.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';

/** What may have gone wrong, as a model with one size. @internal */
export interface Story {
  readonly kind: BenchFaultKind;
  /** What is set free for it, beside the amount of sample within its tolerance. */
  readonly free: FreeParameter;
  /** Where searches for the parameter start, `expected` as the set-up has it. */
  readonly startsFrom: (expected: number) => readonly number[];
  /** Of its size. */
  readonly unit: string;
  /** The size of the fault from the value of the parameter, `expected` as the set-up has it. */
  readonly sizeOf: (value: number, expected: number, flask: number) => number;
}

/** Amounts to either side of what was expected. */
const about = (expected: number) => [0.9 * expected, expected, 1.1 * expected];
const fromThere = (expected: number) => [expected];
const same = (value: number) => value;
const ratio = (value: number, expected: number) => value / expected;

/**
 * The stories that are one free parameter each. Sizes are those of `BenchFault`.
 *
 * @internal
 */
export const stories: readonly Story[] = [
  { kind: 'sampleAmount', free: 'analyteAmount', startsFrom: about, unit: '', sizeOf: ratio },
  { kind: 'titrantStrength', free: 'titrantConcentration', startsFrom: about, unit: '', sizeOf: ratio },
  {
    kind: 'carbonDioxideInFlask',
    free: 'carbonDioxide',
    startsFrom: fromThere,
    unit: 'mol/L',
    sizeOf: (mmol, _, flask) => mmol / flask,
  },
  {
    kind: 'carbonDioxideInTitrant',
    free: 'titrantCarbonDioxide',
    startsFrom: fromThere,
    unit: 'mol/L',
    sizeOf: same,
  },
  {
    kind: 'readTooSoon',
    free: 'unsettledShare',
    startsFrom: () => [0.3],
    unit: 'time constants',
    sizeOf: (share) => -Math.log(share),
  },
  {
    kind: 'probeSlope',
    free: 'probeSlope',
    startsFrom: fromThere,
    unit: '%',
    sizeOf: (slope) => 100 * slope,
  },
  { kind: 'probeOffset', free: 'probeOffset', startsFrom: fromThere, unit: 'pH', sizeOf: same },
  { kind: 'drift', free: 'probeDrift', startsFrom: fromThere, unit: 'pH', sizeOf: same },
  {
    kind: 'initialReading',
    free: 'initialVolume',
    startsFrom: () => [-0.5, -2, -5],
    unit: 'mL',
    sizeOf: (mL) => -mL,
  },
];
