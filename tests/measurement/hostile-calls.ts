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
  fitTitration: [
    [readings, { titration, free: ['analyteAmount', 'probeOffset'], uncertainty: { pH: 0.01, mL: 0.02 } }],
    [
      readings,
      { titration, free: [{ pKa: 'acetic', step: 1 }, { amountOf: 'aceticAcid' }], scatter: 'known' },
    ],
    [readings, { titration, free: ['carbonDioxide', 'initialVolume', 'probeSlope'] }],
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
        others: [{ method: 'fit', mL: { value: 5, standardUncertainty: 0.01, degreesOfFreedom: 9 } }],
      },
    ],
  ],
  gradeAnswer: [
    [
      { expected: key.expected, uncorrected: key.uncorrected },
      { endpoints: [4.8], mmol: { aceticAcid: 0.4 }, faults: ['airBubble', 'drift'] },
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
        faults: [{ kind: 'overshoot', mL: 0.5 }, { kind: 'drift', pH: 0.1 }, { kind: 'incrementsAsTotals' }],
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
};

/** Thrown, not called. */
const classes = ['InputError'];

export const exported = Object.entries(measurement)
  .filter((entry): entry is [string, Call & never] => typeof entry[1] === 'function')
  .filter(([name]) => !classes.includes(name)) as [string, Call][];

/** The same as a list. */
export const measurementCalls: readonly PublicCall[] = exported.map(([name, call]) => ({
  name: `measurement ${name}`,
  call,
  examples: good[name] ?? [],
}));
