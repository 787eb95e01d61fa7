import { type Conditions, readConditions, readGas } from '../equilibrium/conditions.js';
import { frozen } from '../frozen.js';
import { at, Faults } from '../input/faults.js';
import { fourDigits } from '../print-number.js';
import { type Given, readConflicts } from '../solution/conflicting-constants.js';
import { readGiven } from '../solution/read-solution.js';
import type { Reagent } from '../substance/reagent.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Titration } from '../titration/titration.js';

/** What is to be titrated, with what, and what is free. */
export interface SampleRequest {
  /** What is weighed; `purity` is its mass fraction, 1 if left out. Without `grams` the mass is planned. */
  readonly sample: { readonly reagent: Reagent; readonly purity?: number; readonly grams?: number };
  /** Without `molar`, mol/L, the concentration is planned. */
  readonly titrant: { readonly reagent: Reagent; readonly molar?: number };
  /** Volume of water in the beaker, mL, wash water included; 50 if left out. */
  readonly mL?: number;
  /** Volume of the burette, mL; 50 if left out. */
  readonly burette?: number;
  /** The wanted part of the burette, as shares of its volume; 0.6 to 0.9 if left out. */
  readonly part?: { readonly from: number; readonly to: number };
  /** Which equivalence point lands there, from 1; the last one that is sharp if left out. */
  readonly point?: number;
  /** Standard uncertainty of a mass, mg; 0.2 if left out. */
  readonly weighing?: number;
  /** Standard uncertainty of a reading of the burette, mL; 0.02 if left out. */
  readonly reading?: number;
  readonly conditions?: Conditions;
}

/** An equivalence point of the planned titration. */
export interface PlannedPoint {
  readonly mL: number;
  readonly reaction: string;
  /** The change of pH from a drop before the point to a drop after it. */
  readonly jump: number;
}

/** Amounts with which the wanted point lands in the wanted part of the burette. */
export interface SamplePlan {
  readonly status: 'planned';
  /** As weighed, g. */
  readonly grams: number;
  /** Of the titrant, mol/L. */
  readonly molar: number;
  /** What the free one may be: grams, or mol/L of the titrant. */
  readonly range: { readonly free: 'grams' | 'molar'; readonly from: number; readonly to: number };
  readonly points: readonly PlannedPoint[];
  /** The point that lands in the wanted part, from 1. */
  readonly point: number;
  /** Standard uncertainty of the result from the weighing, from both readings of the burette, and from both together, percent. */
  readonly percent: { readonly weighing: number; readonly reading: number; readonly together: number };
  readonly notes: readonly string[];
}

/** Why there is no plan. */
export interface NoSamplePlan {
  readonly status: 'impossible';
  readonly because: 'no-point' | 'not-sharp' | 'no-such-point';
  readonly reason: string;
}

/**
 * What `planSample` takes by default. Common practice: a titration ends between 60 and 90 % of the burette; a mass is good to
 * 0.2 mg and a reading to 0.02 mL. A point counts as sharp where a drop to either side changes the pH by 0.1 in all.
 */
export const sampleDefaults = /*#__PURE__*/ frozen({
  mL: 50,
  burette: 50,
  part: { from: 0.6, to: 0.9 },
  weighing: 0.2,
  reading: 0.02,
  sharp: 0.1,
} as const);

/**
 * The mass of a sample, or the concentration of the titrant, with which an equivalence point lands in the wanted part of the burette.
 *
 *   V = k·n/c                                                                                         (1)
 *
 * n is the amount of the sample, c the concentration of the titrant and k a ratio of whole numbers for each point. (1) does not
 * hold the volume of water: wash water moves no equivalence volume. Its dissolved carbon dioxide does disturb the titration of a
 * carbonate or of a weak acid; see `compareWater`.
 *
 * @throws InputError that lists every fault: also where both or neither of `grams` and `molar` are given
 * @example
 * ```ts
 * import { planSample, reagents } from 'protolysis';
 *
 * const plan = planSample({
 *   sample: { reagent: reagents.sodiumCarbonate, purity: 0.95 },
 *   titrant: { reagent: reagents.hydrochloricAcid, molar: 0.1 },
 * });
 * plan.status === 'planned' && plan.grams; // => 0.2092
 * ```
 */
export function planSample(request: SampleRequest): SamplePlan | NoSamplePlan {
  const faults = new Faults('planSample');
  const read = readRequest(request, faults);
  faults.done();
  const { sample, titrant, burette, part } = read;

  // one mmol in the beaker and 0.1 mol/L in the burette give k of (1) for every point
  const perUnit = titrationOf(read, 1, 0.1).equivalencePoints.map(({ mL }) => mL * 0.1);
  if (perUnit.length === 0)
    return frozen({
      status: 'impossible',
      because: 'no-point',
      reason: `${sample.reagent.name} with ${titrant.reagent.name} has no equivalence point`,
    });

  const middle = ((part.from + part.to) / 2) * burette;
  const mmolOf = (grams: number) => (1000 * grams * sample.purity) / sample.molarMass;
  const gramsOf = (mmol: number) => (mmol * sample.molarMass) / 1000 / sample.purity;
  const planFor = (k: number) => {
    const ratio = perUnit[k - 1] ?? Number.NaN;
    const molar = titrant.molar ?? (ratio * mmolOf(sample.grams ?? Number.NaN)) / middle;
    const mmol = sample.grams === null ? (middle * molar) / ratio : mmolOf(sample.grams);
    return { k, molar, mmol, points: pointsOf(titrationOf(read, mmol, molar)) };
  };
  const plans = perUnit.map((_, index) => planFor(index + 1));
  const isSharp = ({ k, points }: (typeof plans)[number]) =>
    (points[k - 1]?.jump ?? 0) >= sampleDefaults.sharp;
  const chosen = read.point === null ? plans.findLast(isSharp) : plans[read.point - 1];
  if (read.point !== null && !chosen)
    return frozen({
      status: 'impossible',
      because: 'no-such-point',
      reason: `there is no point ${read.point}: ${sample.reagent.name} with ${titrant.reagent.name} has ${plans.length}`,
    });
  if (!chosen || !isSharp(chosen)) return frozen(notSharp(chosen ?? plans.at(-1), read));

  const { k, molar, mmol, points } = chosen;
  const grams = sample.grams ?? gramsOf(mmol);
  const volume = points[k - 1]?.mL ?? Number.NaN;
  const free = sample.grams === null ? 'grams' : 'molar';
  const scale = (share: number) =>
    free === 'grams' ? (grams * share * burette) / volume : (molar * volume) / (share * burette);
  const ends = [scale(part.from), scale(part.to)];
  const weighing = (100 * Math.SQRT2 * read.weighing) / (1000 * grams);
  const reading = (100 * Math.SQRT2 * read.reading) / volume;
  return frozen({
    status: 'planned',
    grams,
    molar,
    range: { free, from: Math.min(...ends), to: Math.max(...ends) },
    points,
    point: k,
    percent: { weighing, reading, together: Math.hypot(weighing, reading) },
    notes: notesOn(points, k, grams, burette, read.weighing),
  });
}

type Read = ReturnType<typeof readRequest>;

function readRequest(value: unknown, faults: Faults) {
  const keys = ['sample', 'titrant', 'mL', 'burette', 'part', 'point', 'weighing', 'reading', 'conditions'];
  const unread = faults.object(value, 'request', 'a request { sample, titrant }', keys);
  const optional = (key: 'mL' | 'burette' | 'weighing' | 'reading', what: string, limits: object): number =>
    unread[key] === undefined ? sampleDefaults[key] : faults.number(unread[key], key, what, limits);
  const given: Given[] = [];
  const sample = faults.object(unread.sample, 'sample', 'a sample { reagent, purity, grams }', [
    'reagent',
    'purity',
    'grams',
  ]);
  const titrant = faults.object(unread.titrant, 'titrant', 'a titrant { reagent, molar }', [
    'reagent',
    'molar',
  ]);
  const weighed = readGiven(sample.reagent, 'sample.reagent', given, faults);
  const inBurette = readGiven(titrant.reagent, 'titrant.reagent', given, faults);
  readConflicts(given, faults);
  if (!faults.any && weighed.molarMass === undefined)
    faults.add('missing', 'sample.reagent.molarMass', 'a reagent with a molar mass or a formula', undefined);
  const number = (holder: string, key: string, from: unknown, what: string, limits: object) =>
    from === undefined ? null : faults.number(from, at(holder, key), what, limits);
  const grams = number('sample', 'grams', sample.grams, 'a mass in g', { from: 1e-6, to: 1e6 });
  const molar = number('titrant', 'molar', titrant.molar, 'a concentration in mol/L', { from: 1e-6, to: 20 });
  if ((grams === null) === (molar === null))
    faults.add(
      grams === null ? 'missing' : 'conflict',
      'request',
      'one of sample.grams and titrant.molar: the other is planned',
      undefined,
      grams === null ? 'without grams and without molar' : 'given both grams and molar',
    );
  const inUse = readConditions(unread.conditions, 'conditions', faults);
  const water = optional('mL', 'a volume in mL', { from: 0.1, to: 1e6 });
  readGas([{ contents: given }], inUse, 'conditions', faults);
  return {
    sample: {
      reagent: weighed,
      molarMass: weighed.molarMass ?? 1,
      grams,
      purity: number('sample', 'purity', sample.purity, 'a mass fraction', { from: 0.01, to: 1 }) ?? 1,
    },
    titrant: { reagent: inBurette, molar },
    mL: water,
    burette: optional('burette', 'a volume in mL', { from: 0.1, to: 1e4 }),
    part: readPart(unread.part, faults),
    point:
      unread.point === undefined
        ? null
        : faults.number(unread.point, 'point', 'the number of a point', { from: 1, to: 100, integer: true }),
    weighing: optional('weighing', 'an uncertainty in mg', { from: 0, to: 1e5 }),
    reading: optional('reading', 'an uncertainty in mL', { from: 0, to: 1e3 }),
    inUse,
  };
}

function readPart(value: unknown, faults: Faults): { from: number; to: number } {
  if (value === undefined) return sampleDefaults.part;
  const unread = faults.object(value, 'part', 'a part { from, to }', ['from', 'to']);
  const from = faults.number(unread.from, 'part.from', 'a share of the burette', { from: 0.01, to: 1 });
  const to = faults.number(unread.to, 'part.to', 'a share of the burette', { from: 0.01, to: 1 });
  if (!faults.any && !(to >= from)) faults.add('conflict', 'part.to', 'a share not below `from`', to);
  return { from, to };
}

const titrationOf = ({ sample, titrant, mL, inUse }: Read, mmol: number, molar: number): Titration =>
  makeTitration({
    analyte: { mL, contents: [{ reagent: sample.reagent, mmol }] },
    titrant: { mL: 1000, contents: [{ reagent: titrant.reagent, mmol: 1000 * molar }] },
    inUse,
    boilOut: null,
  });

const pointsOf = (titration: Titration): PlannedPoint[] =>
  titration.equivalencePoints.map(({ mL, reaction }) => ({
    mL,
    reaction,
    jump: mL > drop ? Math.abs(titration.jumpAt(mL, { within: drop })) : 0,
  }));

/** mL, common practice. */
const drop = 0.05;

function notSharp(
  plan: { k: number; points: readonly PlannedPoint[] } | undefined,
  { sample }: Read,
): NoSamplePlan {
  const point = plan?.points[plan.k - 1];
  return {
    status: 'impossible',
    because: 'not-sharp',
    reason: `no point of ${sample.reagent.name} is sharp: at ${fourDigits(point?.mL ?? 0)} mL a drop to either side changes the pH by ${fourDigits(point?.jump ?? 0)} in all, less than ${sampleDefaults.sharp}`,
  };
}

function notesOn(
  points: readonly PlannedPoint[],
  k: number,
  grams: number,
  burette: number,
  weighing: number,
): string[] {
  const beyond = points.filter(({ mL }) => mL > burette);
  const early = points.slice(0, k - 1).filter(({ jump }) => jump < sampleDefaults.sharp);
  return [
    ...(beyond.length > 0
      ? [
          `${beyond.length} later point${beyond.length > 1 ? 's lie' : ' lies'} beyond the burette of ${burette} mL.`,
        ]
      : []),
    ...(early.length > 0
      ? [`Not sharp: ${early.map(({ mL }) => `the point at ${mL.toFixed(2)} mL`).join(', ')}.`]
      : []),
    ...(1000 * grams < 200 * weighing * Math.SQRT2
      ? [
          'The mass is small beside the uncertainty of the weighing: weigh more, dissolve it to a mark and take an aliquot.',
        ]
      : []),
    'Wash water moves no equivalence volume, but the carbon dioxide in it disturbs a carbonate or a weak acid.',
  ];
}
