import type { Faults } from '../../input/faults.js';
import type { Model } from '../uncertainty/budget.js';
import { type InputQuantity, type Measured, readMeasured } from '../uncertainty/input-quantity.js';
import { readLevel, readMolar, volumeLimits } from './read-series.js';

/** A titration by strong acid to two end points, both counted from the start. */
export interface TwoEndpoints {
  /** mL to the first end point, pH 8.3 (phenolphthalein). */
  readonly first: Measured;
  /** mL in all to the second, about pH 4.5 (methyl orange, or after boiling). */
  readonly second: Measured;
  /** Of the acid, mol of hydrogen ions per L. */
  readonly molar: Measured;
  /** The share that the expanded uncertainties are meant to cover; 0.95 if left out. */
  readonly level?: number;
}

/** What takes the acid. @internal */
export type BasePart = 'hydroxide' | 'carbonate' | 'hydrogencarbonate';

/** mL of acid by the two volumes. @internal */
export type Formula = (first: number, second: number) => number;

/**
 * mL of acid that each part takes in all, by the two volumes. Hydroxide and hydrogencarbonate turn each other into
 * carbonate, so two parts at most are there: which, the sign of 2·first − second tells (Standard Methods for the Examination of
 * Water and Wastewater, 2320 B, table; from memory).
 */
const withHydroxide: Partial<Record<BasePart, Formula>> = {
  hydroxide: (first, second) => 2 * first - second,
  carbonate: (first, second) => 2 * (second - first),
};
const withoutHydroxide: Partial<Record<BasePart, Formula>> = {
  carbonate: (first) => 2 * first,
  hydrogencarbonate: (first, second) => second - 2 * first,
};

/** mol of acid that one mol takes to the second end point. @internal */
export const acidOf: Readonly<Record<BasePart, number>> = {
  hydroxide: 1,
  carbonate: 2,
  hydrogencarbonate: 1,
};

/** mmol by the mL of acid that a part takes. @internal */
export const mmolBy =
  (formula: Formula, acid: number): Model =>
  (x) =>
    ((x.molar as number) * formula(x.first as number, x.second as number)) / acid;

/** The volumes and the concentration, each with its uncertainty. @internal */
export type EndpointInputs = Readonly<Record<'first' | 'second' | 'molar', InputQuantity>>;

/** The parts that are there: of a part that comes out as zero there is nothing to say. @internal */
export function partsOf({ first, second }: EndpointInputs): Partial<Record<BasePart, Formula>> {
  const parts = 2 * first.value > second.value ? withHydroxide : withoutHydroxide;
  return Object.fromEntries(
    Object.entries(parts).filter(([, formula]) => formula(first.value, second.value) > 0),
  );
}

/** Reads a titration to two end points, noting every fault; `more` are keys that the caller reads. @internal */
export function readEndpoints(value: unknown, faults: Faults, more: readonly string[] = []) {
  const keys = ['first', 'second', 'molar', 'level', ...more];
  const unread = faults.object(value, 'titration', 'a titration { first, second, molar }', keys);
  const inputs: EndpointInputs = {
    first: readMeasured(unread.first, 'first', 'a volume in mL', faults, volumeLimits),
    second: readMeasured(unread.second, 'second', 'a volume in mL', faults, {
      from: 1e-6,
      to: volumeLimits.to,
    }),
    molar: readMolar(unread.molar, 'molar', faults),
  };
  if (!faults.any && inputs.first.value > inputs.second.value)
    faults.add(
      'conflict',
      'second',
      'the mL in all, no less than those to the first end point',
      inputs.second.value,
    );
  return { inputs, level: readLevel(unread.level, faults), unread };
}
