import { fourDigits, toDigits } from '../print-number.js';
import type { SessionPlan, SessionReagent } from './session-plan.js';

/** Drops that are whole but for rounding are whole. */
const rounding = 1e-9;

/** The list for the preparation room. @internal */
export function sessionText({
  solutions,
  reagents,
  indicators,
  waste,
  cautions,
}: Omit<SessionPlan, 'text'>): string {
  const neutral = waste.neutralise
    ? `, neutral with about ${toDigits(waste.neutralise.mmol, 2)} mmol of ${waste.neutralise.name}`
    : '';
  return [
    'Make:',
    ...solutions.map(({ what, mL }) => `  ${fourDigits(mL)} mL of ${what}`),
    ...(reagents.length > 0 ? ['For that, in all, pure:'] : []),
    ...reagents.map((reagent) => `  ${reagent.name}: ${amountOf(reagent)}`),
    ...(indicators.length > 0 ? ['Indicators:'] : []),
    ...indicators.map(
      ({ name, drops, mL }) => `  ${name}: ${fourDigits(mL)} mL (${Math.ceil(drops - rounding)} drops)`,
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
  return `${pure}, as ${fourDigits(bottle.grams)} g or about ${toDigits(bottle.mL, 3)} mL of ${bottle.massPercent} %`;
}
