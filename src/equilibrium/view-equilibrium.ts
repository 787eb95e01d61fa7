import { fixed, fourDigits } from '../print-number.js';
import { printFormula } from '../substance/print-formula.js';
import type { Equilibrium } from './equilibrium.js';

/** Species that a view shows at most. */
const most = 8;

/** pH, capacity, the prevailing species and the notes, a line each. @internal */
export function viewEquilibrium({ pH, ionicStrength, bufferCapacity, species, notes }: Equilibrium): string {
  const shown = [...species].sort((a, b) => b.molar - a.molar).slice(0, most);
  return [
    `pH ${fixed(pH, 3)}, ionic strength ${fourDigits(ionicStrength)} mol/L, buffer capacity ${fourDigits(bufferCapacity)} mol/L per pH`,
    ...shown.map(({ formula, molar }) => `  ${printFormula(formula)} ${fourDigits(molar)} mol/L`),
    ...(species.length > most ? [`  and ${species.length - most} more in species`] : []),
    ...notes.map((note) => `  note: ${note}`),
  ].join('\n');
}
