import type { FreeParameter } from '../fit/free-parameter.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';

/** What may have gone wrong, as a model with one size. @internal */
export interface Story {
  readonly kind: BenchFaultKind;
  /** What is set free for it, beside the amount of sample within its tolerance. */
  readonly free: FreeParameter;
  /** Where searches for its size start, as shares of the expected value where there is one, else in its unit. */
  readonly starts: readonly number[];
  /** Whether a parameter found would be this fault at all: a slope above the ideal one is not a low slope. */
  readonly unit: string;
  /** The size of the fault from the value of the parameter, `expected` as the set-up has it. */
  readonly sizeOf: (value: number, expected: number, flask: number) => number;
}

const same = (value: number) => value;
const ratio = (value: number, expected: number) => value / expected;

/**
 * The stories that are one free parameter each. Sizes are those of `BenchFault`.
 *
 * @internal
 */
export const stories: readonly Story[] = [
  { kind: 'sampleAmount', free: 'analyteAmount', starts: [0.9, 1, 1.1], unit: '', sizeOf: ratio },
  { kind: 'titrantStrength', free: 'titrantConcentration', starts: [0.9, 1, 1.1], unit: '', sizeOf: ratio },
  {
    kind: 'carbonDioxideInFlask',
    free: 'carbonDioxide',
    starts: [0],
    unit: 'mol/L',
    sizeOf: (mmol, _, flask) => mmol / flask,
  },
  { kind: 'carbonDioxideInTitrant', free: 'titrantCarbonDioxide', starts: [0], unit: 'mol/L', sizeOf: same },
  {
    kind: 'readTooSoon',
    free: 'unsettledShare',
    starts: [0.3],
    unit: 'time constants',
    sizeOf: (share) => -Math.log(share),
  },
  { kind: 'probeSlope', free: 'probeSlope', starts: [1], unit: '%', sizeOf: (slope) => 100 * slope },
  { kind: 'probeOffset', free: 'probeOffset', starts: [0], unit: 'pH', sizeOf: same },
  { kind: 'drift', free: 'probeDrift', starts: [0], unit: 'pH', sizeOf: same },
  { kind: 'initialReading', free: 'initialVolume', starts: [-0.5, -2, -5], unit: 'mL', sizeOf: (mL) => -mL },
];
