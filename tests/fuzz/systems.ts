import { davies, equilibrate, InputError, makeSolution, pHOf, titrate } from 'protolysis';
import { randomFrom } from '../../src/measurement/statistics/random.js';
import { strongIon } from '../make.js';
import { badNumberIn } from '../property/answers.js';
import { toleranceOf } from '../property/compositions.js';
import type { Order, Report } from './order.js';
import { type RandomSystem, randomSystem } from './random-system.js';
import type { Timed } from './timed.js';

const base = makeSolution({ contents: [{ reagent: strongIon('B+', 1), molar: 0.1 }] });

/** Bytes that may stay behind: far below one for each system, far above what the engine's own tables grow by. */
const allowedGrowth = 8e6;

/**
 * Random systems: a pH for each, with its charge balance closed to rounding; every tenth with activity coefficients, every
 * hundredth titrated. The memory in use after the first tenth and at the end must be the same.
 */
export function fuzzSystems({ systems, seed }: Order, timed: Timed, tell: (report: Report) => void): void {
  const random = randomFrom(seed);
  const counts = { solved: 0, real: 0, titrated: 0, refused: 0 };
  let early = 0;
  tell({ kind: 'at', name: 'random systems' });
  for (let k = 0; k < systems; k += 1) {
    if (k === Math.ceil(systems / 10)) early = heapInUse();
    const system = randomSystem(random);
    try {
      const fault = timed.call(`system ${k}`, () => faultOf(system, k, counts));
      if (fault !== undefined) tell({ kind: 'fault', words: `system ${k}: ${fault}; ${shown(system)}` });
    } catch (error) {
      if (error instanceof InputError) counts.refused += 1;
      else tell({ kind: 'fault', words: `system ${k}: ${error}; ${shown(system)}` });
    }
  }
  const grown = early === 0 ? 0 : heapInUse() - early;
  const { solved, real, titrated, refused } = counts;
  if (grown > allowedGrowth) tell({ kind: 'fault', words: `memory has grown by ${grown} bytes` });
  const kinds = `${solved} solved, ${real} with activity, ${titrated} titrated, ${refused} refused`;
  const memory = `memory grown by ${(grown / 1e6).toFixed(1)} MB`;
  tell({ kind: 'count', words: `${systems} systems: ${kinds}; ${timed}; ${memory}` });
}

interface Counts {
  solved: number;
  real: number;
  titrated: number;
}

function faultOf({ contents, pKw }: RandomSystem, k: number, counts: Counts): string | undefined {
  const solution = makeSolution({ mL: 20, contents });
  const at = equilibrate(solution, { pKw });
  const bad = badNumberIn(at);
  if (bad !== undefined) return `${bad} in the equilibrium`;
  if (pHOf(solution, { pKw }) !== at.pH) return 'two answers';
  const charges = at.species.reduce((sum, { charge, molar }) => sum + Math.abs(charge) * molar, 0);
  const rounding = at.bufferCapacity * toleranceOf(at) + 64 * 2 ** -53 * charges; // as tests/property/equilibrium.test.ts
  if (!(Math.abs(at.chargeImbalance) <= rounding)) return `an imbalance of ${at.chargeImbalance} mol/L`;
  counts.solved += 1;
  if (k % 10 === 0) {
    const real = badNumberIn(equilibrate(solution, { pKw, activity: davies }));
    if (real !== undefined) return `${real} in the real equilibrium`;
    counts.real += 1;
  }
  if (k % 100 !== 0) return undefined;
  const titration = titrate({ analyte: solution, titrant: base, conditions: { pKw } });
  const points = [
    titration.equivalencePoints,
    titration.inflectionPoints,
    titration.curve({ every: 2, upTo: 40 }),
  ];
  counts.titrated += 1;
  return points.every((point) => badNumberIn(point) === undefined)
    ? undefined
    : 'a bad number in its titration';
}

function heapInUse(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
}

/** A system as numbers. */
export const shown = ({ contents, pKw }: RandomSystem): string =>
  JSON.stringify({
    pKw,
    contents: contents.map(({ reagent, molar }) => ({
      molar,
      acids: reagent.protolytes.map(({ protolyte }) => ({
        topCharge: protolyte.species[0]?.charge,
        pKa: protolyte.steps.map((step) => step.pKa),
      })),
      ions: reagent.ions.map(({ ion }) => ion.charge),
    })),
  });
