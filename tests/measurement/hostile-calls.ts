import { makeSolution, pHStandards, reagents, titrate } from 'protolysis';
import * as measurement from 'protolysis/measurement';
import type { PublicCall } from '../property/hostile-calls.js';

type Call = (...values: never[]) => unknown;

const readings = {
  mL: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
  pH: [2, 2.1, 2.3, 2.6, 3, 7, 11, 11.3, 11.5, 11.6],
  seconds: [0, 15, 30, 45, 60, 75, 90, 105, 120, 135],
  notes: [],
};

const titration = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol: 0.5 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
});

const line = {
  slope: { value: 99, standardUncertainty: 0.1, degreesOfFreedom: 1 },
  offset: { value: 0.02, standardUncertainty: 0.01, degreesOfFreedom: 1 },
};
const { phthalate, borax } = pHStandards;

const { setup } = titration;
const { key } = measurement.simulateReadings(titration, {
  seed: 1,
  faults: [{ kind: 'airBubble', mL: 0.5, after: 3 }],
});
const molar = {
  value: 0.1,
  standardUncertainty: 0.001,
  degreesOfFreedom: 5,
  distribution: 'normal',
} as const;
const budget = measurement.uncertaintyBudget({ molar, mL: 25 }, ({ molar, mL }) => molar * mL);
const inputs = { molar, mL: { ...molar, degreesOfFreedom: null, distribution: 'triangular' } };
const product = ({ molar, mL }: { molar: number; mL: number }) => molar * mL;

/** Of each function of the entry, arguments that it answers to. A new export finds no line here and fails. */
export const good: Record<string, readonly (readonly unknown[])[]> = {
  calibrateProbe: [
    [
      [
        { standard: phthalate, celsius: 25, pH: 4.1 },
        { standard: borax, celsius: 24, pH: 9.2 },
      ],
      { sample: { celsius: 22 } },
    ],
    [
      [
        { standard: phthalate, celsius: 25, mV: 170 },
        { standard: borax, celsius: 24, mV: -120 },
      ],
    ],
  ],
  correctReadings: [
    [readings, { before: line, after: line }],
    [readings, { before: line }],
  ],
  probeDrift: [[line, line, { tolerance: 0.02 }]],
  pHFromPotential: [[line, 100, { celsius: 25 }]],
  settlingError: [[{ change: 2, timeConstant: 3 }, { seconds: 10 }]],
  settlingWait: [[{ change: 2, timeConstant: 3 }, { error: 0.01 }]],
  // few readings, and of increments: every explanation is tried on them
  diagnose: [
    [
      { ...readings, mL: [0, 0.5, 0.5, 0.5, 0.5, 0.5, 0.1, 0.1, 0.5, 0.5] },
      titration,
      { uncertainty: { pH: 0.02, mL: 0.02 }, sampleTolerance: 0.01, endpoint: 4.1 },
    ],
  ],
  fitTitration: [
    [readings, { titration, free: ['sampleAmount', 'probeOffset'], uncertainty: { pH: 0.01, mL: 0.02 } }],
    [
      readings,
      { titration, free: [{ pKa: 'acetic', step: 1 }, { amountOf: 'aceticAcid' }], scatter: 'known' },
    ],
    [readings, { titration, free: ['carbonDioxideInFlask', 'initialReading', 'probeSlope'] }],
  ],
  findEndpoints: [
    [
      readings,
      { method: 'zeroSecondDerivative', count: 2, smoothing: 5, uncertainty: { pH: 0.01, mL: 0.02 } },
    ],
    [readings, { method: 'granExcess', flask: 25, window: { from: 5, to: 10 } }],
    [readings, { method: 'granCarbonate', flask: 25 }],
  ],
  compareEndpoints: [
    [
      readings,
      {
        methods: ['steepestSlope', 'granStrong'],
        flask: 25,
        count: 1,
        smoothing: 5,
        uncertainty: { pH: 0.01, mL: 0.02 },
        others: [{ method: 'fit', estimate: { value: 5, standardUncertainty: 0.01, degreesOfFreedom: 9 } }],
      },
    ],
  ],
  gradeAnswer: [
    [
      {
        expected: key.expected,
        uncorrected: key.uncorrected,
        flask: { contents: [{ reagent: { id: 'aceticAcid', name: 'acetic acid' } }] },
      },
      { endpoints: [4.8], mmol: { aceticAcid: 0.4 }, faults: ['airBubble', 'probeDrift'] },
      { tolerance: { mL: 0.05, percent: 1 }, points: { endpoints: 1, mmol: 2, faults: 3 } },
    ],
  ],
  simulateReadings: [
    [
      { setup },
      {
        seed: 1,
        volumes: [0, 2, 4, 4.9, 5.1, 6],
        noise: { pH: 0.01, mL: 0.01 },
        faults: [
          { kind: 'overshoot', mL: 0.5 },
          { kind: 'probeDrift', pH: 0.1 },
          { kind: 'incrementsAsTotals' },
        ],
      },
    ],
    [{ setup }, { seed: 2 }],
  ],
  readReadings: [
    [
      { mL: [0.05, '1,05', 2.05], pH: [3, 3.1, '3.2'], seconds: [0, 20, 40] },
      { volumes: 'burette', initial: 0.05 },
    ],
    ['V/mL;pH;x\n0;3;a\n1;3,1;b', { columns: ['mL', 'pH', 'skip'], repair: true }],
  ],
  standardPH: [[pHStandards.borax, 22]],
  estimateWithin: [[25, { limit: 0.03, distribution: 'triangular' }]],
  glasswareVolume: [[{ kind: 'burette', size: 50, glass: 'B', mL: 24 }], [{ kind: 'pipette', size: 25 }]],
  uncertaintyBudget: [
    [inputs, product, { level: 0.9, sensitivities: { molar: 0.1, mL: 0.1 } }],
    [{ molar: budget, mL: 25 }, product],
  ],
  simulateFits: [
    [readings, { titration, free: ['sampleAmount'] }, { runs: 100, seed: 3, signal: { aborted: false } }],
  ],
  // onProgress is the caller's own: what it throws is passed on, and tests/measurement/uncertainty meets it
  propagateDistributions: [
    [inputs, product, { draws: 1000, seed: 3, level: 0.9, signal: { aborted: false } }],
  ],
  validateBudget: [
    [budget, { draws: 1000, interval: { from: 2.4, to: 2.6, level: 0.95 } }],
    [
      { ...budget, standardUncertainty: 0, expandedUncertainty: 0 },
      { draws: 1000, interval: { from: 2, to: 3, level: 0.95 } },
    ],
  ],
  printEstimate: [[molar, 'mol/L']],
  printResult: [[budget, 'mmol']],
  standardiseTitrant: [
    [
      {
        standard: { molarMass: 106, purity: { ...molar, value: 0.99 }, ratio: 2 },
        runs: [
          { grams: 0.13, mL: 25 },
          { grams: 0.131, mL: 25.1 },
        ],
        blank: 0.05,
        weighingError: { ...molar, value: 0, standardUncertainty: 0.0002 },
        buretteError: 0,
        endpointError: 0.02,
        level: 0.9,
      },
    ],
  ],
  assay: [
    [
      {
        runs: [{ grams: 1.29, mL: 23 }],
        molar,
        molarMass: 106,
        ratio: 2,
        flask: 250,
        aliquot: { value: 25, standardUncertainty: 0.01, degreesOfFreedom: null },
        blank: 0.05,
      },
    ],
  ],
  titratedAmount: [[{ mL: 24, molar, blank: 0.1, ratio: 2, level: 0.99 }]],
  backTitratedAmount: [
    [{ mL: 24, molar, excess: { mL: 50, molar }, ratio: 2, level: 0.99 }],
    [{ mL: 24, molar, blank: 50 }],
  ],
  compositionFromEndpoints: [[{ first: 12, second: { ...molar, value: 20 }, molar, level: 0.9 }]],
  alkalinityFromEndpoints: [[{ first: 4, second: 20, molar, mL: 100 }]],
  summariseReplicates: [[[24.31, 24.28, 24.33, 24.62], { level: 0.9, outlierLevel: 0.99 }]],
};

/** Thrown, not called. */
const classes = ['InputError'];

export const exported = Object.entries(measurement)
  .filter((entry): entry is [string, Call & never] => typeof entry[1] === 'function')
  .filter(([name]) => !classes.includes(name)) as [string, Call][];

/** Those that promise: a simulation takes its time. The least that each may be asked for. */
const least: Readonly<Record<string, object>> = {
  propagateDistributions: { draws: 1000 },
  simulateFits: { runs: 100 },
};

/** The same as a list; a simulation is a short one wherever its length has not been spoiled. */
export const measurementCalls: readonly PublicCall[] = exported.map(([name, call]) => ({
  name: `measurement ${name}`,
  call: shortened(call, least[name]),
  examples: good[name] ?? [],
}));

function shortened(call: Call, length: object | undefined): Call {
  if (!length) return call;
  return (first: never, second: never, options: never, ...more: never[]) =>
    call(first, second, withLength(options, length) as never, ...more);
}

/** Options with this length if they are an object that gives none; whatever else they are, they stay. */
function withLength(options: unknown, length: object): unknown {
  try {
    if (options !== undefined && Object.getPrototypeOf(options) !== Object.prototype) return options;
    return Object.defineProperties({ ...length }, Object.getOwnPropertyDescriptors(options ?? {}));
  } catch {
    return options; // a proxy that breaks whoever looks
  }
}
