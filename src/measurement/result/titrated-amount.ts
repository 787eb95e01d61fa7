import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { budgetOf, type UncertaintyBudget } from '../uncertainty/budget.js';
import { type Measured, readMeasured } from '../uncertainty/input-quantity.js';
import { readLevel, readMolar, readRatio, volumeLimits } from './read-series.js';

/** A direct titration. */
export interface DirectTitration {
  /** Of titrant. */
  readonly mL: Measured;
  /** Of the titrant, mol/L. */
  readonly molar: Measured;
  /** mL that the same work takes without the sample; exactly 0 if left out. */
  readonly blank?: Measured;
  /** mol of titrant that react with one mol of what is looked for; 1 if left out. */
  readonly ratio?: number;
  /** The share that the expanded uncertainty is meant to cover; 0.95 if left out. */
  readonly level?: number;
}

/** A reagent in excess, of which the rest is titrated. */
export interface BackTitration extends Omit<DirectTitration, 'blank'> {
  /** The reagent in excess; it reacts with the titrant one to one. */
  readonly excess?: { readonly mL: Measured; readonly molar: Measured };
  /** mL of titrant that the same excess takes without the sample; it stands in the place of `excess`. */
  readonly blank?: Measured;
}

const keys = ['mL', 'molar', 'blank', 'ratio', 'level'];

/**
 * The amount that was titrated, mmol, less the blank: n = c·(V − V_blank)/ratio.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { titratedAmount } from 'protolysis/measurement';
 *
 * titratedAmount({ mL: 24.3, molar: 0.1, blank: 0.05 }).value; // => 2.425
 * ```
 */
export function titratedAmount(titration: DirectTitration): UncertaintyBudget {
  const faults = new Faults('titratedAmount');
  const { mL, molar, ratio, level, unread } = readTitration(titration, keys, faults);
  const blank = readMeasured(unread.blank ?? 0, 'blank', 'a volume in mL', faults, volumeLimits);
  if (!faults.any && blank.value > mL.value)
    faults.add('conflict', 'blank', 'no more mL than the titration took', blank.value);
  faults.done();
  return frozen(
    budgetOf(
      { mL, molar, blank },
      (x) => ((x.molar as number) * ((x.mL as number) - (x.blank as number))) / ratio,
      level,
    ),
  );
}

/**
 * The amount that used up some of an excess, mmol: the excess less what was titrated of it.
 *
 *   n = (c_excess·V_excess − c·V)/ratio,   or with a blank   n = c·(V_blank − V)/ratio
 *
 * The blank is the better way: then neither the concentration of the excess nor its carbonate matters.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { backTitratedAmount } from 'protolysis/measurement';
 *
 * // 50.00 mL of 0.1 mol/L acid are added, and 12.40 mL of base find the rest
 * const excess = { mL: 50, molar: 0.1 };
 * backTitratedAmount({ excess, mL: 12.4, molar: 0.1, ratio: 2 }).value; // => 1.88
 * backTitratedAmount({ blank: 49.9, mL: 12.4, molar: 0.1, ratio: 2 }).value; // => 1.875
 * ```
 */
export function backTitratedAmount(titration: BackTitration): UncertaintyBudget {
  const faults = new Faults('backTitratedAmount');
  const { mL, molar, ratio, level, unread } = readTitration(titration, [...keys, 'excess'], faults);
  if ((unread.excess === undefined) === (unread.blank === undefined))
    faults.add('conflict', 'excess', 'an excess { mL, molar } or a blank, one of the two', unread.excess);
  faults.done();
  const budget =
    unread.excess === undefined
      ? budgetOf(
          { mL, molar, blank: readMeasured(unread.blank, 'blank', 'a volume in mL', faults, volumeLimits) },
          (x) => ((x.molar as number) * ((x.blank as number) - (x.mL as number))) / ratio,
          level,
        )
      : budgetOf(
          { mL, molar, ...readExcess(unread.excess, faults) },
          (x) =>
            ((x.excessMolar as number) * (x.excess as number) - (x.molar as number) * (x.mL as number)) /
            ratio,
          level,
        );
  if (!faults.any && !(budget.value >= 0))
    faults.add('conflict', 'mL', 'no more mL than the excess takes without the sample', mL.value);
  faults.done();
  return frozen(budget);
}

function readTitration(value: unknown, known: readonly string[], faults: Faults) {
  const unread = faults.object(value, 'titration', 'a titration { mL, molar }', known);
  return {
    unread,
    mL: readMeasured(unread.mL, 'mL', 'a volume in mL', faults, volumeLimits),
    molar: readMolar(unread.molar, 'molar', faults),
    ratio: readRatio(unread.ratio ?? 1, 'ratio', faults),
    level: readLevel(unread.level, faults),
  };
}

function readExcess(value: unknown, faults: Faults) {
  const { mL, molar } = faults.object(value, 'excess', 'an excess { mL, molar }', ['mL', 'molar']);
  return {
    excess: readMeasured(mL, 'excess.mL', 'a volume in mL', faults, volumeLimits),
    excessMolar: readMolar(molar, 'excess.molar', faults),
  };
}
