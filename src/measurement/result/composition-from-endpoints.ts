import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { budgetOf, type UncertaintyBudget } from '../uncertainty/budget.js';
import {
  acidOf,
  type BasePart,
  type EndpointInputs,
  mmolBy,
  partsOf,
  readEndpoints,
  type TwoEndpoints,
} from './two-endpoints.js';

/** What a base is made of, mmol each; null where there is none. */
export interface BaseComposition {
  readonly hydroxide: UncertaintyBudget | null;
  readonly carbonate: UncertaintyBudget | null;
  readonly hydrogencarbonate: UncertaintyBudget | null;
  readonly notes: readonly string[];
}

/**
 * Hydroxide, carbonate and hydrogencarbonate in a sample, mmol, from two end points with strong acid.
 *
 *   2·V₁ > V₂   hydroxide c·(2V₁ − V₂),   carbonate c·(V₂ − V₁)
 *   2·V₁ ≤ V₂   carbonate c·V₁,           hydrogencarbonate c·(V₂ − 2V₁)
 *
 * Where 2·V₁ − V₂ is within its expanded uncertainty, `notes` say that carbonate alone would do. Other bases, such as
 * phosphate or borate, are counted among these.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { compositionFromEndpoints } from 'protolysis/measurement';
 *
 * const { carbonate, hydroxide } = compositionFromEndpoints({ first: 28.85, second: 52.7, molar: 0.5 });
 * hydroxide?.value; // => 2.5
 * carbonate?.value; // => 11.925
 * ```
 */
export function compositionFromEndpoints(titration: TwoEndpoints): BaseComposition {
  const faults = new Faults('compositionFromEndpoints');
  const { inputs, level } = readEndpoints(titration, faults);
  faults.done();
  const parts = partsOf(inputs);
  const amount = (part: BasePart): UncertaintyBudget | null => {
    const formula = parts[part];
    return formula ? budgetOf(inputs, mmolBy(formula, acidOf[part]), level) : null;
  };
  return frozen({
    hydroxide: amount('hydroxide'),
    carbonate: amount('carbonate'),
    hydrogencarbonate: amount('hydrogencarbonate'),
    notes: notesOn(inputs, level),
  });
}

function notesOn(inputs: EndpointInputs, level: number): readonly string[] {
  const difference = budgetOf(inputs, (x) => 2 * (x.first as number) - (x.second as number), level);
  return difference.value !== 0 && Math.abs(difference.value) <= difference.expandedUncertainty
    ? ['The first end point is at half of the second within the uncertainty: carbonate alone would do.']
    : [];
}
