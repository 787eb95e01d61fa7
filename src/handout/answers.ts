import { type BufferResponse, bufferResponse } from '../buffer/buffer-response.js';
import type { IndicatorSet } from '../indicator/ranking.js';
import type { Faults } from '../input/faults.js';
import { type AdditionPlan, planOf } from '../preparation/plan-additions.js';
import type { Titration } from '../titration/titration.js';
import type { ReadHandout } from './handout-options.js';

/**
 * What only the instructor's page may show. The student's is made without it: what a section does not have, it cannot
 * give away.
 */
export interface Answers {
  readonly titration: Titration;
  readonly plan: AdditionPlan;
  readonly chosen: IndicatorSet;
  readonly response: BufferResponse | null;
}

/** @internal */
export function answersOf(
  titration: Titration,
  chosen: IndicatorSet,
  read: ReadHandout,
  faults: Faults,
): Answers {
  const { buffer } = read;
  return {
    titration,
    chosen,
    plan: planOf(titration, read.how, faults),
    response: buffer
      ? bufferResponse(buffer.solution, {
          add: buffer.add,
          drops: buffer.drops,
          dropSize: buffer.dropSize,
          conditions: titration.setup.conditions ?? {},
        })
      : null,
  };
}
