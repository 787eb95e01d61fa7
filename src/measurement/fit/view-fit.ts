import { toDigits } from '../../print-number.js';
import type { Estimate } from '../estimate.js';
import { valueInLine } from '../uncertainty/value-in-line.js';
import type { TitrationFit } from './titration-fit.js';

/** What was fitted, the points and the notes, a line each. @internal */
export function viewFit(fit: TitrationFit): string {
  const { status, parameters, equivalencePoints, degreesOfFreedom, scatter, notes } = fit;
  return [
    `fit of ${fit.fitted.mL.length} readings, ${status === 'converged' ? '' : 'not '}converged: scatter ${toDigits(scatter, 3)} of what was expected, ${degreesOfFreedom} degrees of freedom`,
    ...parameters.map(
      ({ name, unit, value, estimate, expected }) =>
        `  ${valueInLine(value, spreadOf(estimate), unit)}  ${name} (expected ${toDigits(expected, 5)})`,
    ),
    ...equivalencePoints.map(
      ({ reaction, mL, estimate }) =>
        `  ${valueInLine(mL, spreadOf(estimate), 'mL')}  equivalence, ${reaction}`,
    ),
    ...notes.map((note) => `  note: ${note}`),
  ].join('\n');
}

const spreadOf = (estimate: Estimate | null): number => estimate?.standardUncertainty ?? 0;
