import { makeSolution, planAdditions, type Reagent, reagents, titrate } from 'protolysis';
import { type BenchFault, type BenchFaultKind, diagnose, simulateReadings } from 'protolysis/measurement';
import { randomFrom } from '../../../src/measurement/statistics/random.js';

const titrationOf = (analyte: Reagent, mmol: number, titrant: Reagent) =>
  titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: analyte, mmol }] }),
    titrant: makeSolution({ contents: [{ reagent: titrant, molar: 0.1 }] }),
  });

/** The titrations that faults are tried on. */
const titrations = {
  carbonate: titrationOf(reagents.sodiumCarbonate, 1.25, reagents.hydrochloricAcid),
  acetic: titrationOf(reagents.aceticAcid, 2.5, reagents.sodiumHydroxide),
  phosphoric: titrationOf(reagents.phosphoricAcid, 1.25, reagents.sodiumHydroxide),
  strong: titrationOf(reagents.hydrochloricAcid, 2.5, reagents.sodiumHydroxide),
  ammonia: titrationOf(reagents.ammonia, 2.5, reagents.hydrochloricAcid),
} as const;

type System = keyof typeof titrations;

/** A fault of ordinary size; `at` and `sign` are drawn, `mL` is how far the run goes and `mmol` what the flask holds. */
type Draw = (
  at: number,
  sign: 1 | -1,
  run: { readonly mL: number; readonly mmol: number; readonly where: number },
) => BenchFault;

const between = (from: number, to: number, at: number) => from + (to - from) * at;

/** Ordinary sizes. A bubble leaves before the last end point, at 1/1.5 of the run: after it, it changes no result. */
const draws: Readonly<Partial<Record<BenchFaultKind, Draw>>> = {
  initialReading: (at) => ({ kind: 'initialReading', mL: between(0.5, 5, at) }),
  airBubble: (at, _, { mL, where }) => ({
    kind: 'airBubble',
    mL: between(0.2, 1, at),
    after: (where * mL) / 1.5,
  }),
  probeOffset: (at, sign) => ({ kind: 'probeOffset', pH: sign * between(0.1, 0.4, at) }),
  probeSlope: (at) => ({ kind: 'probeSlope', percent: between(85, 94, at) }),
  probeDrift: (at, sign) => ({ kind: 'probeDrift', pH: sign * between(0.1, 0.3, at) }),
  readTooSoon: (at) => ({ kind: 'readTooSoon', wait: between(0.5, 1, at) }),
  carbonDioxideInFlask: (at, _, { mmol }) => ({
    kind: 'carbonDioxideInFlask',
    molar: (between(0.05, 0.2, at) * mmol) / 25,
  }),
  carbonDioxideInTitrant: (at) => ({ kind: 'carbonDioxideInTitrant', molar: between(0.05, 0.2, at) * 0.1 }),
  titrantConcentration: (at, sign) => ({
    kind: 'titrantConcentration',
    ratio: 1 + sign * between(0.03, 0.1, at),
  }),
  sampleAmount: (at, sign) => ({ kind: 'sampleAmount', ratio: 1 + sign * between(0.03, 0.1, at) }),
  incrementsAsTotals: () => ({ kind: 'incrementsAsTotals' }),
};

/** One seeded run and what was made of it. */
export interface Tried {
  readonly system: System;
  /** `sound` where nothing was wrong. */
  readonly fault: BenchFaultKind | 'sound';
  /** From 0, the smallest of its range, to 1. */
  readonly size: number;
  readonly likely: readonly (BenchFaultKind | 'sound' | 'unexplained')[];
  readonly ms: number;
}

/** So many runs of each fault, over the titrations in turn; the sample is off by up to 2 % as well, where it is not the fault. */
export function confusion(runs: number, faults: readonly (BenchFaultKind | 'sound')[] = all): Tried[] {
  return faults.flatMap((fault) => {
    const number = all.indexOf(fault);
    const random = randomFrom(number + 1);
    return Array.from({ length: runs }, (_, seed) => {
      const system = systems[seed % systems.length] as System;
      const titration = titrations[system];
      const volumes = plans[system];
      const size = random.uniform();
      const sign = random.uniform() < 0.5 ? 1 : -1;
      const mmol = titration.setup.analyte.contents[0]?.mmol ?? 0;
      const where = random.uniform();
      const drawn =
        fault === 'sound' ? undefined : draws[fault]?.(size, sign, { mL: volumes.at(-1) ?? 0, mmol, where });
      const ratio = 1 + 0.02 * (2 * random.uniform() - 1);
      const list: BenchFault[] = [
        ...(fault === 'sampleAmount' ? [] : [{ kind: 'sampleAmount', ratio } as const]),
        ...(drawn ? [drawn] : []),
      ];
      const { readings } = simulateReadings(titration, { seed: 1000 * number + seed, volumes, faults: list });
      const before = performance.now();
      const { verdict, likely } = diagnose(readings, titration);
      const ms = performance.now() - before;
      return {
        system,
        fault,
        size,
        likely: verdict === 'fault' ? likely.map(({ kind }) => kind) : [verdict],
        ms,
      };
    });
  });
}

const kinds = Object.keys(draws) as readonly BenchFaultKind[];
const all: readonly (BenchFaultKind | 'sound')[] = [...kinds, 'sound'];
const systems = Object.keys(titrations) as readonly System[];
const plans = Object.fromEntries(
  systems.map((system) => [system, planAdditions(titrations[system]).mL]),
) as Readonly<Record<System, readonly number[]>>;
