import { carbonDioxide } from '../../catalogue/reagents/carbonates.js';
import type { Limits } from '../../input/limits.js';
import { merged } from '../../solution/merged.js';
import type { Solution } from '../../solution/solution.js';
import { numberAt } from '../../solver/number-at.js';
import type { BenchFault, BenchFaultKind, FaultOf } from './bench-fault.js';

type Column = readonly number[];

/** What is really in flask and burette. @internal */
export interface Filled {
  readonly analyte: Solution;
  readonly titrant: Solution;
}

/**
 * What a fault of one kind does, as functions from data to data, and what may be given as its size.
 *
 * A run goes from what is in the vessels (`filled`) by the volumes that are poured (`poured`, mL of titrant in the
 * flask) to what the probe shows there (`shown`) and the volumes that are written down (`recorded`).
 *
 * @internal
 */
export interface Effect<Fault extends BenchFault> {
  /** What it is called in a sentence. */
  readonly words: string;
  readonly sizes: Readonly<
    Record<Exclude<keyof Fault, 'kind'>, { readonly what: string; readonly limits: Limits }>
  >;
  readonly filled?: (fault: Fault, filled: Filled) => Filled;
  /** @param endpoint - mL, the last end point of the run */
  readonly poured?: (fault: Fault, mL: Column, endpoint: number) => Column;
  readonly shown?: (fault: Fault, pH: Column) => Column;
  readonly recorded?: (fault: Fault, mL: Column) => Column;
}

/** `ratio` times as much of everything, in the same volume. */
const strengthened = ({ mL, contents }: Solution, ratio: number): Solution => ({
  mL,
  contents: contents.map(({ reagent, mmol }) => ({ reagent, mmol: ratio * mmol })),
});

const withCarbonDioxide = ({ mL, contents }: Solution, molar: number): Solution => ({
  mL,
  contents: merged([...contents, { reagent: carbonDioxide, mmol: molar * mL }]),
});

const ratio = { what: 'the true value over the stated one', limits: { from: 0.01, to: 100 } };
const molar = { what: 'carbon dioxide in mol/L', limits: { from: 0, to: 1 } };
const change = { what: 'a change in pH', limits: { from: -5, to: 5 } };
const volume = { what: 'a volume in mL', limits: { from: 0, to: 1000 } };

/**
 * Every fault at the bench by its name, in the order in which they act when there are several.
 *
 *   a probe of first order    shown = pH + (shown before − pH)·exp(−wait)                                  (1)
 *   its slope                 shown = 7 + (pH − 7)·percent/100                                             (2)
 *
 * (1) with `wait` in time constants, as in `settlingError`; the first reading has settled. The drift comes after the lag:
 * what lags is the potential of the glass, what drifts is mostly that of the reference electrode, in series with it, so
 * that a meter shows each step of the drift at once. The fit takes both in the same way (fit/distortion.ts).
 *
 * @internal
 */
export const benchEffects: { readonly [Kind in BenchFaultKind]: Effect<FaultOf<Kind>> } = {
  sampleAmount: {
    words: 'wrong amount of sample',
    sizes: { ratio },
    filled: (fault, { analyte, titrant }) => ({ analyte: strengthened(analyte, fault.ratio), titrant }),
  },
  titrantConcentration: {
    words: 'wrong concentration of the titrant',
    sizes: { ratio },
    filled: (fault, { analyte, titrant }) => ({ analyte, titrant: strengthened(titrant, fault.ratio) }),
  },
  carbonDioxideInFlask: {
    words: 'carbon dioxide in the flask',
    sizes: { molar },
    filled: (fault, { analyte, titrant }) => ({ analyte: withCarbonDioxide(analyte, fault.molar), titrant }),
  },
  carbonDioxideInTitrant: {
    words: 'carbon dioxide in the titrant',
    sizes: { molar },
    filled: (fault, { analyte, titrant }) => ({ analyte, titrant: withCarbonDioxide(titrant, fault.molar) }),
  },
  overshoot: {
    words: 'end point overshot',
    sizes: { mL: volume },
    poured: ({ mL: beyond }, mL, endpoint) => [
      ...mL.filter((each) => each < endpoint),
      asWritten(endpoint + beyond),
      ...mL.filter((each) => each > asWritten(endpoint + beyond)),
    ],
  },
  readTooSoon: {
    words: 'readings taken before the probe had settled',
    sizes: { wait: { what: 'a wait in time constants of the probe', limits: { from: 0.01, to: 20 } } },
    shown: ({ wait }, pH) => {
      let before = numberAt(pH, 0);
      return pH.map((settled) => {
        before = settled + (before - settled) * Math.exp(-wait);
        return before;
      });
    },
  },
  probeSlope: {
    words: 'slope of the probe that is not ideal',
    sizes: { percent: { what: 'a slope in % of the ideal one', limits: { from: 10, to: 200 } } },
    shown: ({ percent }, pH) => pH.map((each) => 7 + ((each - 7) * percent) / 100),
  },
  probeOffset: {
    words: 'offset of the probe',
    sizes: { pH: change },
    shown: ({ pH: offset }, pH) => pH.map((each) => each + offset),
  },
  probeDrift: {
    words: 'drift of the probe',
    sizes: { pH: change },
    shown: ({ pH: drift }, pH) => pH.map((each, k) => each + (drift * k) / Math.max(1, pH.length - 1)),
  },
  airBubble: {
    words: 'air bubble in the burette tip',
    sizes: { mL: volume, after: volume },
    recorded: ({ mL: bubble, after }, mL) => mL.map((each) => (each > after ? each + bubble : each)),
  },
  initialReading: {
    words: 'initial reading of the burette not subtracted',
    sizes: { mL: volume },
    recorded: ({ mL: initial }, mL) => mL.map((each) => each + initial),
  },
  incrementsAsTotals: {
    words: 'increments written down as totals',
    sizes: {},
    recorded: (_, mL) => mL.map((each, k) => each - (mL[k - 1] ?? 0)),
  },
};

/** The names of all faults at the bench, in the order in which they act. @internal */
export const benchFaultKinds = Object.keys(benchEffects) as readonly BenchFaultKind[];

/** A volume as one would write it down: 0.3, not 0.30000000000000004. @internal */
export const asWritten = (mL: number): number => Number(mL.toFixed(6));
