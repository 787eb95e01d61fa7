import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { fourDigits } from '../print-number.js';
import { cautionsOf } from '../safety/cautions-of.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Titration } from '../titration/titration.js';
import { amountLimits } from './amounts-of.js';
import { plannedWater } from './planned-water.js';
import { type ReadSample, readSample, strongestTitrant } from './read-sample.js';
import { sampleNotes } from './sample-notes.js';
import { samplePercent } from './sample-percent.js';
import {
  type NoSamplePlan,
  type PlannedPoint,
  type SamplePlan,
  type SampleRequest,
  sampleDefaults,
} from './sample-plan.js';

/**
 * The mass of a sample, or the concentration of the titrant, with which an equivalence point lands in the wanted part
 * of the burette.
 *
 *   V = k·n/c                                                                                         (1)
 *
 * n is the amount of the sample, c the concentration of the titrant and k a ratio of whole numbers for each point. The
 * volume of water is not in (1): wash water moves no equivalence volume. What is dissolved in it moves end points, and
 * `water` says by how much: both curves are computed as `compareWater` does. The water of the default holds carbonic
 * acid, so a sample with constants of its own for that takes `waters.freshDeionised`.
 *
 * The uncertainties add as squares. Limits of error are those of ISO 385, ISO 648 and ISO 1042. They count as
 * triangular, a/√6 (EURACHEM/CITAC CG 4; from memory).
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
  const read = readSample(request, faults);
  faults.done();
  const { sample, titrant, burette, part } = read;

  const pair = `${sample.reagent.name} with ${titrant.reagent.name}`;
  // one mmol in the beaker and 0.1 mol/L in the burette give k of (1) for every point
  const perUnit = titrationOf(read, 1, 0.1).equivalencePoints.map(({ mL }) => mL * 0.1);
  if (perUnit.length === 0) return impossible('no-point', `${pair} has no equivalence point`);
  if (read.point !== null && read.point > perUnit.length)
    return impossible('no-such-point', `there is no point ${read.point}: ${pair} has ${perUnit.length}`);

  const middle = ((part.from + part.to) / 2) * burette;
  const plans = perUnit.map((ratio, index) => candidateOf(read, ratio, middle, index + 1));
  const unreal = unrealOf(read, plans[(read.point ?? plans.length) - 1]);
  if (unreal) return impossible('too-strong', unreal);
  const chosen = read.point === null ? plans.findLast(isSharp) : plans[read.point - 1];
  if (!chosen || !isSharp(chosen)) return impossible('not-sharp', notSharp(chosen ?? plans.at(-1), read));

  const { k, molar, grams, points, titration } = chosen;
  const volume = points[k - 1]?.mL ?? Number.NaN;
  const free = sample.grams === null ? 'grams' : 'molar';
  const scale = (share: number) =>
    free === 'grams' ? (grams * share * burette) / volume : (molar * volume) / (share * burette);
  const ends = [scale(part.from), scale(part.to)];
  const water = plannedWater(titration, read);
  return frozen({
    status: 'planned',
    grams,
    molar,
    range: { free, from: Math.min(...ends), to: Math.max(...ends) },
    points,
    point: k,
    water,
    percent: samplePercent(read, grams, volume),
    cautions: cautionsOf(titration),
    notes: sampleNotes(read, { grams, points, point: k, water }),
  });
}

const impossible = (because: NoSamplePlan['because'], reason: string): NoSamplePlan =>
  frozen({ status: 'impossible', because, reason });

/** Amounts that land one of the points in the middle of the wanted part. */
interface Candidate {
  /** Which point, from 1. */
  readonly k: number;
  readonly molar: number;
  readonly grams: number;
  readonly titration: Titration;
  readonly points: readonly PlannedPoint[];
}

function candidateOf(read: ReadSample, ratio: number, middle: number, k: number): Candidate {
  const { molarMass, purity, aliquot, grams } = read.sample;
  const share = aliquot ? aliquot.pipette.mL / aliquot.flask.mL : 1;
  const mmolPerGram = (1000 * purity * share) / molarMass;
  const molar = read.titrant.molar ?? (ratio * mmolPerGram * (grams ?? Number.NaN)) / middle;
  const mmol = grams === null ? (middle * molar) / ratio : mmolPerGram * grams;
  const titration = titrationOf(read, mmol, molar);
  return { k, molar, grams: grams ?? mmol / mmolPerGram, titration, points: pointsOf(titration) };
}

const isSharp = ({ k, points }: Candidate): boolean => (points[k - 1]?.jump ?? 0) >= sampleDefaults.sharp;

const titrationOf = ({ sample, titrant, mL, inUse }: ReadSample, mmol: number, molar: number): Titration =>
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

/** What speaks against amounts that no beaker and no burette holds. */
function unrealOf({ sample, mL }: ReadSample, plan: Candidate | undefined): string | null {
  if (!plan) return null;
  if (plan.molar > strongestTitrant)
    return `${fourDigits(plan.grams)} g would take a titrant of ${fourDigits(plan.molar)} mol/L, and none is stronger than ${strongestTitrant} mol/L: weigh less, or take an aliquot`;
  const volume = sample.aliquot ? sample.aliquot.flask.mL : mL;
  if (plan.grams / volume > amountLimits.gramsPerML)
    return `it would take ${fourDigits(plan.grams)} g in ${fourDigits(volume)} mL, more than dissolve: take a more dilute titrant, a smaller burette or more water`;
  return null;
}

function notSharp(plan: Candidate | undefined, { sample, point: asked }: ReadSample): string {
  const point = plan?.points[plan.k - 1];
  const which = asked === null ? 'no point' : `point ${asked}`;
  return `${which} of ${sample.reagent.name} is ${asked === null ? '' : 'not '}sharp: at ${fourDigits(point?.mL ?? 0)} mL a drop to either side changes the pH by ${fourDigits(point?.jump ?? 0)} in all, less than ${sampleDefaults.sharp}`;
}
