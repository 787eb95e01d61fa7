import { capitalised } from '../../capitalised.js';
import { toDigits } from '../../print-number.js';
import { isOfIncrements, totalsOfIncrements } from '../increments.js';
import { benchEffects } from '../practice/bench-effects.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';
import { advice } from './advice.js';
import { bubbleStory } from './bubble-story.js';
import { bicOf } from './evidence.js';
import { type Case, type FittedStory, fittedStory } from './fitted-story.js';
import { type Story, stories } from './stories.js';

/** A story beside the readings. */
export interface JudgedStory {
  readonly kind: BenchFaultKind;
  /** What it is called in a sentence. */
  readonly words: string;
  /** Over a sound bench, by the Bayesian information criterion: 6 is strong, 10 very strong. */
  readonly evidence: number;
  /** How large the fault would be, as `BenchFault` gives sizes; null where it has none. */
  readonly size: {
    readonly value: number;
    readonly standardUncertainty: number | null;
    readonly unit: string;
  } | null;
  /** What it is, with its size. */
  readonly sentence: string;
  /** A measurement that would tell it from others. */
  readonly check: string;
  /** What to do. */
  readonly remedy: string;
}

/** Every story that the readings may tell, the best first. @internal */
export function judgedStories(about: Case): readonly JudgedStory[] {
  const { readings, setup, sampleTolerance } = about;
  const count = readings.mL.length;
  const known = sampleTolerance > 0 ? 1 : 0; // what a sound bench leaves free
  const sound = bicOf(fittedStory(about, null).sum, count, known);
  const judged = (
    kind: BenchFaultKind,
    { sum: least }: FittedStory,
    free: number,
    size: JudgedStory['size'],
  ) => judgedStory(kind, sound - bicOf(least, count, known + free), size);
  if (isOfIncrements(readings.mL)) {
    const mL = totalsOfIncrements(readings.mL);
    const total = fittedStory({ ...about, readings: { ...readings, mL } }, null);
    return [judged('incrementsAsTotals', total, 0, null)];
  }
  const bubble = bubbleStory(about);
  return [
    ...stories
      .filter((story) => isPossible(story, about))
      .map((story) => {
        const fitted = fittedStory(about, story);
        return judged(story.kind, fitted, 1, sizeOf(story, fitted, setup.analyte.mL));
      }),
    judged('airBubble', bubble, 2, {
      value: bubble.value,
      standardUncertainty: bubble.deviation,
      unit: 'mL',
    }),
  ].sort((a, b) => b.evidence - a.evidence);
}

/** A burette that was read as zero has nothing to subtract; free carbon dioxide has no place where the air gives it. */
function isPossible({ kind }: Story, { readings, setup }: Case): boolean {
  if (kind === 'initialReading') return !readings.mL.includes(0);
  if (kind === 'carbonDioxideInFlask' || kind === 'carbonDioxideInTitrant') return !setup.inUse.carbonDioxide;
  const { contents } = kind === 'titrantStrength' ? setup.titrant : setup.analyte;
  return kind !== 'sampleAmount' && kind !== 'titrantStrength' ? true : contents.some(({ mmol }) => mmol > 0);
}

/** Null where the parameter stands for no size: nothing left to come is a wait without end. */
function sizeOf({ sizeOf: size, unit }: Story, fitted: FittedStory, flask: number): JudgedStory['size'] {
  const { value, expected, deviation } = fitted;
  const found = size(value, expected, flask);
  if (!Number.isFinite(found)) return null;
  const further = deviation === null ? Number.NaN : size(value + deviation, expected, flask);
  return {
    value: found,
    standardUncertainty: Number.isFinite(further) ? Math.abs(further - found) : null,
    unit,
  };
}

function judgedStory(kind: BenchFaultKind, evidence: number, size: JudgedStory['size']): JudgedStory {
  const { words } = benchEffects[kind];
  return { kind, words, evidence, size, sentence: sentenceOf(words, size), ...advice[kind] };
}

function sentenceOf(words: string, size: JudgedStory['size']): string {
  const name = capitalised(words);
  return size ? `${name}: ${toDigits(size.value, 3)} ${size.unit}`.trimEnd().concat('.') : `${name}.`;
}
