import { numberAt } from '../solver/number-at.js';

/** One ionisation step: of which family, and which of its steps, both from 0. */
export interface StepAt {
  readonly family: number;
  readonly step: number;
}

/**
 * All ionisation steps of several families, in the order in which the protons leave as pH rises.
 *
 * Those of one family always come in their own sequence; among families the greater next constant goes first.
 *
 * @param constants - per family its stepwise acidity constants, most protonated first
 * @internal
 */
export function stepsInOrder(constants: readonly ArrayLike<number>[]): StepAt[] {
  const next = constants.map(() => 0);
  const order: StepAt[] = [];
  for (;;) {
    let family = -1;
    let greatest = 0;
    for (const [index, own] of constants.entries()) {
      const constant = own[numberAt(next, index)] ?? 0;
      if (constant > greatest) {
        greatest = constant;
        family = index;
      }
    }
    if (family < 0) return order;
    order.push({ family, step: numberAt(next, family) });
    next[family] = numberAt(next, family) + 1;
  }
}
