import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { molarMassOf } from '../../substance/molar-mass.js';
import { budgetOf, type UncertaintyBudget } from '../uncertainty/budget.js';
import { type Measured, readMeasured } from '../uncertainty/input-quantity.js';
import {
  acidOf,
  type BasePart,
  type Formula,
  mmolBy,
  partsOf,
  readEndpoints,
  type TwoEndpoints,
} from './two-endpoints.js';

/** One line of an alkalinity report, for `tabulate`. */
export interface AlkalinityRow {
  readonly of: string;
  /** Milliequivalents per L: mmol/L of acid that it takes. */
  readonly meq: UncertaintyBudget;
  /** mmol/L of the species; null for a sum of several. */
  readonly mmol: number | null;
  /** As calcium carbonate, mg/L. */
  readonly mgCaCO3: number;
}

/**
 * The alkalinity of a water: P to the first end point, T in all, and what they are made of, as rows in meq/L, mmol/L and mg/L
 * of calcium carbonate.
 *
 *   P = 1000·c·V₁/V,   T = 1000·c·V₂/V,   1 meq/L = 50.04 mg/L CaCO₃
 *
 * @param titration.mL - of the sample
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { tabulate } from 'protolysis';
 * import { alkalinityFromEndpoints } from 'protolysis/measurement';
 *
 * const rows = alkalinityFromEndpoints({ first: 2.1, second: 7.3, molar: 0.02, mL: 100 });
 * console.log(tabulate(rows, { of: 'text', 'meq.value': 3, mmol: 3, mgCaCO3: 1 }));
 * ```
 *
 * ```text
 * of                 meq.value   mmol  mgCaCO3
 * P                      0.420      –     21.0
 * T                      1.460      –     73.1
 * carbonate              0.840  0.420     42.0
 * hydrogencarbonate      0.620  0.620     31.0
 * ```
 */
export function alkalinityFromEndpoints(
  titration: TwoEndpoints & { readonly mL: Measured },
): readonly AlkalinityRow[] {
  const faults = new Faults('alkalinityFromEndpoints');
  const { inputs, level, unread } = readEndpoints(titration, faults, ['mL']);
  const sample = readMeasured(unread.mL, 'mL', 'a volume in mL', faults, { from: 1e-3, to: 1e6 });
  faults.done();
  const row = (of: string, formula: Formula, acid: number | null): AlkalinityRow => {
    const mmol = mmolBy(formula, 1);
    const meq = budgetOf({ ...inputs, sample }, (x) => (1000 * mmol(x)) / (x.sample as number), level);
    return { of, meq, mmol: acid && meq.value / acid, mgCaCO3: (meq.value * molarMassOf('CaCO3')) / 2 };
  };
  return frozen([
    row('P', (first) => first, null),
    row('T', (_, second) => second, null),
    ...Object.entries(partsOf(inputs)).map(([part, formula]) => row(part, formula, acidOf[part as BasePart])),
  ]);
}
