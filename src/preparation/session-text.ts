import { fourDigits } from '../print-number.js';
import type { SessionPlan, SessionReagent } from './session-plan.js';

/** The list for the preparation room. @internal */
export function sessionText({
  solutions,
  reagents,
  indicators,
  waste,
  cautions,
}: Omit<SessionPlan, 'text'>): string {
  const neutral = waste.neutralise
    ? `, neutral with about ${fourDigits(waste.neutralise.mmol)} mmol of ${waste.neutralise.name}`
    : '';
  return [
    'Make:',
    ...solutions.map(({ what, mL }) => `  ${fourDigits(mL)} mL of ${what}`),
    'For that, in all, pure:',
    ...reagents.map((reagent) => `  ${reagent.name}: ${amountOf(reagent)}`),
    ...(indicators.length > 0 ? ['Indicators:'] : []),
    ...indicators.map(
      ({ name, drops, mL }) => `  ${name}: ${fourDigits(mL)} mL (${fourDigits(drops)} drops)`,
    ),
    `Waste: ${fourDigits(waste.mL)} mL, about pH ${waste.pH.toFixed(1)}${neutral}. Collect it as the local rules say.`,
    'Before anyone pours:',
    ...cautions.map((caution) => `  ${caution}`),
  ].join('\n');
}

function amountOf({ grams, mmol, bottle }: SessionReagent): string {
  if (grams === null) return `${fourDigits(mmol)} mmol`;
  const pure = `${fourDigits(grams)} g (${fourDigits(mmol)} mmol)`;
  if (bottle === null) return pure;
  return `${pure}, as ${fourDigits(bottle.grams)} g or about ${fourDigits(bottle.mL)} mL of ${bottle.massPercent} %`;
}
