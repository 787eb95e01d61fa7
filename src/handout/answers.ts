import { type BufferResponse, bufferResponse } from '../buffer/buffer-response.js';
import { checkByProbe } from '../buffer/check-by-probe.js';
import type { Conditions } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import type { IndicatorSet } from '../indicator/ranking.js';
import type { AdditionPlan } from '../preparation/addition-schedule.js';
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
  /** What a probe should read in the buffer. */
  readonly check: string | null;
}

/** The answers of a handout, from what was read and computed for it. @internal */
export function answersOf(
  titration: Titration,
  chosen: IndicatorSet,
  plan: AdditionPlan,
  read: ReadHandout,
): Answers {
  const conditions = titration.setup.conditions ?? {};
  const response = read.buffer ? responseOf(read.buffer, conditions) : null;
  return {
    titration,
    chosen,
    plan,
    response,
    check:
      read.buffer && response ? checkByProbe(read.buffer.solution, response.pH[0] as PH, conditions) : null,
  };
}

const responseOf = (
  { solution, add, drops, dropSize }: NonNullable<ReadHandout['buffer']>,
  conditions: Conditions,
): BufferResponse => bufferResponse(solution, { add, drops, dropSize, conditions });
