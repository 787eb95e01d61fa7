import { davies } from '../equilibrium/activity/laws.js';
import { type Conditions, conditionDefaults } from '../equilibrium/conditions.js';
import { pHOf } from '../equilibrium/ph-of.js';
import type { PH } from '../equilibrium/quantities.js';
import { fixed } from '../print-number.js';
import type { Solution } from '../solution/solution.js';

/**
 * The check at the bench: the reading of a probe in the finished buffer, where it differs from the calculated pH.
 *
 * A probe reads activities, so for an ideal calculation the pH by Davies stands beside it; and a buffer that is worked
 * out in equilibrium with the air is still closed to it when just made.
 *
 * @internal
 */
export function checkByProbe(solution: Solution, pH: PH, conditions: Conditions): string {
  const { celsius = conditionDefaults.celsius, activity = conditionDefaults.activity } = conditions;
  const isIdeal = activity === conditionDefaults.activity;
  const { carbonDioxide, ...closed } = conditions;
  const reading = pHOf(solution, { ...closed, activity: isIdeal ? davies : activity });
  const why = [
    ...(isIdeal ? ['with the activity of its ions (Davies)'] : []),
    ...(carbonDioxide ? ['freshly made, with no carbon dioxide gone or taken up,'] : []),
  ].join(' and ');
  const probe = `Check with a calibrated probe at ${celsius} °C: pH ${fixed(pH, 2)}`;
  if (Math.abs(reading - pH) < worthSaying) return `${probe} is expected.`;
  return `${probe} is calculated; ${why} about ${fixed(reading, 2)} is expected.`;
}

/** Below the second decimal that a probe shows. */
const worthSaying = 0.005;
