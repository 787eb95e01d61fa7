import { capitalised } from '../../capitalised.js';
import { pHOf } from '../../equilibrium/ph-of.js';
import { fixed } from '../../print-number.js';
import { mayBeIncrements, totalsOfIncrements } from '../increments.js';
import { benchEffects } from '../practice/bench-effects.js';
import type { BenchFaultKind } from '../practice/bench-fault.js';
import { valueInLine } from '../uncertainty/value-in-line.js';
import { adviceOn } from './advice.js';
import { bubbleModel } from './bubble-model.js';
import { bicOf } from './evidence.js';
import { type FaultModel, faultModels } from './fault-models.js';
import { type Case, type FittedModel, fittedModel } from './fitted-model.js';

/** How large a fault is. */
export interface FaultSize {
  /** As `BenchFault` gives it. */
  readonly value: number;
  /** Null where these readings do not determine it. */
  readonly standardUncertainty: number | null;
  readonly unit: string;
  /** Of an air bubble: mL read when it left, to give `fitTitration` as `airBubbleAfter`. */
  readonly after?: number;
}

/** A fault that may explain the readings, and how well it does. */
export interface Explanation {
  readonly kind: BenchFaultKind;
  /** What it is called in a sentence. */
  readonly words: string;
  /** Over a sound bench, by the Bayesian information criterion: 6 is strong, 10 very strong. */
  readonly evidence: number;
  /** How far the readings lie from it, in their standard uncertainties: about 1 where it explains them fully. */
  readonly scatter: number;
  /** Null where the fault has none. */
  readonly size: FaultSize | null;
  /** What it is, with its size and one standard uncertainty. */
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

/** Fits everything that may explain the readings; a fault whose search ends at its limit is left out. @internal */
export function explanationsOf(about: Case): Fitted {
  const { readings } = about;
  const sound = fittedModel(about, null);
  const known = sound.found.parameters.length; // what a sound bench leaves free
  const bic = ({ sum }: FittedModel, free: number) => bicOf(sum, readings.mL.length, known + free);
  const basic = hasBasicTitrant(about);
  const judged = (kind: BenchFaultKind, model: FittedModel, free: number, size: FaultSize | null) => {
    const { words } = benchEffects[kind];
    const explanation: Explanation = {
      kind,
      words,
      evidence: bic(sound, 0) - bic(model, free),
      scatter: model.scatter,
      size,
      sentence: sentenceOf(words, size),
      ...adviceOn(kind, basic),
    };
    return { explanation, model };
  };
  const totals = { ...about, readings: { ...readings, mL: totalsOfIncrements(readings.mL) } };
  const ranked = [
    ...(mayBeIncrements(readings.mL)
      ? [judged('incrementsAsTotals', fittedModel(totals, null), 0, null)]
      : []),
    ...faultModels
      .filter((model) => isPossible(model, about))
      .map((model) => {
        const fitted = fittedModel(about, { ...model, free: model.kind });
        return judged(model.kind, fitted, 1, sizeOf(model, fitted));
      }),
    ...bubbleModel(about).map(({ kind, model, after }) => {
      const size = { value: model.value, standardUncertainty: model.deviation, unit: 'mL' };
      return judged(kind, model, 2, kind === 'airBubble' ? { ...size, after } : size);
    }),
  ];
  return {
    sound,
    ranked: ranked
      .filter(({ model }) => !model.isAtLimit)
      .sort((a, b) => b.explanation.evidence - a.explanation.evidence),
  };
}

const hasBasicTitrant = ({ setup: { titrant, inUse } }: Case): boolean => pHOf(titrant, inUse.given) > 7;

/**
 * Whether a fault can be there: a burette that was read as zero has nothing to subtract (but see `bubbleModel`), free carbon
 * dioxide has no place where the air gives it.
 */
function isPossible({ kind }: FaultModel, { readings, setup }: Case): boolean {
  const isOpen = setup.inUse.carbonDioxide !== null;
  if (kind === 'initialReading') return !readings.mL.includes(0);
  if (kind === 'carbonDioxideInFlask' || kind === 'carbonDioxideInTitrant') return !isOpen;
  if (kind === 'titrantConcentration') return setup.titrant.contents.some(({ mmol }) => mmol > 0);
  return kind !== 'sampleAmount' || setup.analyte.contents.some(({ mmol }) => mmol > 0);
}

/** Null where the parameter stands for no size: nothing left to come is a wait without end. */
function sizeOf({ sizeOf: size, unit }: FaultModel, fitted: FittedModel): FaultSize | null {
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

function sentenceOf(words: string, size: FaultSize | null): string {
  if (!size) return `${capitalised(words)}.`;
  const { value, standardUncertainty: u, unit, after } = size;
  const left = after === undefined ? '' : ` after ${fixed(after, 2)} mL`;
  return `${capitalised(words)}: ${valueInLine(value, u ?? 0, unit)}${left}.`;
}
