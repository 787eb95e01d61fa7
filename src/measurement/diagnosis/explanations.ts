import { capitalised } from '../../capitalised.js';
import { toDigits } from '../../print-number.js';
import { isOfIncrements, totalsOfIncrements } from '../increments.js';
import { benchEffects } from '../practice/bench-effects.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';
import { advice } from './advice.js';
import { bubbleModel } from './bubble-model.js';
import { bicOf } from './evidence.js';
import { type FaultModel, faultModels } from './fault-models.js';
import { type Case, type FittedModel, fittedModel } from './fitted-model.js';

/** A fault that may explain the readings, and how well it does. */
export interface Explanation {
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

/** A sound bench and every fault, each fitted to the readings; the best explanation first. @internal */
export interface Fitted {
  readonly sound: FittedModel;
  readonly ranked: readonly { readonly explanation: Explanation; readonly model: FittedModel }[];
}

/** Fits everything that may explain the readings. @internal */
export function explanationsOf(about: Case): Fitted {
  const { readings, sampleTolerance } = about;
  const count = readings.mL.length;
  const known = sampleTolerance > 0 ? 1 : 0; // what a sound bench leaves free
  const sound = fittedModel(about, null);
  const bicOfSound = bicOf(sound.sum, count, known);
  const judged = (kind: BenchFaultKind, model: FittedModel, free: number, size: Explanation['size']) => ({
    explanation: explanationOf(kind, bicOfSound - bicOf(model.sum, count, known + free), size),
    model,
  });
  if (isOfIncrements(readings.mL)) {
    const mL = totalsOfIncrements(readings.mL);
    const total = fittedModel({ ...about, readings: { ...readings, mL } }, null);
    return { sound, ranked: [judged('incrementsAsTotals', total, 0, null)] };
  }
  const bubble = bubbleModel(about);
  const ranked = [
    ...faultModels
      .filter((model) => isPossible(model, about))
      .map((model) => {
        const { kind, startsFrom } = model;
        const fitted = fittedModel(about, { free: kind, startsFrom });
        return judged(kind, fitted, 1, sizeOf(model, fitted));
      }),
    judged('airBubble', bubble, 2, {
      value: bubble.value,
      standardUncertainty: bubble.deviation,
      unit: 'mL',
    }),
  ].sort((a, b) => b.explanation.evidence - a.explanation.evidence);
  return { sound, ranked };
}

/** A burette that was read as zero has nothing to subtract; free carbon dioxide has no place where the air gives it. */
function isPossible({ kind }: FaultModel, { readings, setup }: Case): boolean {
  if (kind === 'initialReading') return !readings.mL.includes(0);
  if (kind === 'carbonDioxideInFlask' || kind === 'carbonDioxideInTitrant') return !setup.inUse.carbonDioxide;
  const { contents } = kind === 'titrantConcentration' ? setup.titrant : setup.analyte;
  return kind !== 'sampleAmount' && kind !== 'titrantConcentration'
    ? true
    : contents.some(({ mmol }) => mmol > 0);
}

/** Null where the parameter stands for no size: nothing left to come is a wait without end. */
function sizeOf({ sizeOf: size, unit }: FaultModel, fitted: FittedModel): Explanation['size'] {
  const { value, expected, deviation } = fitted;
  const found = size(value, expected);
  if (!Number.isFinite(found)) return null;
  const further = deviation === null ? Number.NaN : size(value + deviation, expected);
  return {
    value: found,
    standardUncertainty: Number.isFinite(further) ? Math.abs(further - found) : null,
    unit,
  };
}

function explanationOf(kind: BenchFaultKind, evidence: number, size: Explanation['size']): Explanation {
  const { words } = benchEffects[kind];
  return { kind, words, evidence, size, sentence: sentenceOf(words, size), ...advice[kind] };
}

function sentenceOf(words: string, size: Explanation['size']): string {
  const name = capitalised(words);
  return size ? `${name}: ${toDigits(size.value, 3)} ${size.unit}`.trimEnd().concat('.') : `${name}.`;
}
