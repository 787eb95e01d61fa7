import { Faults } from '../input/faults.js';
import type { Protolyte } from '../substance/protolyte.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import type { Equilibrium } from './equilibrium.js';
import type { SpeciesAt } from './species-of.js';

/**
 * The concentration of one species, mol/L. The compiler checks the formula against the protolyte.
 *
 * @throws InputError where the equilibrium has no such protolyte, or the protolyte no such species
 * @example
 * ```ts
 * import { acids, equilibrate, makeSolution, molarOf, reagents } from 'protolysis';
 *
 * const vinegar = equilibrate(makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }));
 * molarOf(vinegar, acids.acetic, 'CH3COO-'); // => 0.00132
 * ```
 */
export function molarOf<const Formula extends string>(
  equilibrium: Equilibrium,
  protolyte: Protolyte<Formula>,
  formula: NoInfer<Formula>,
): number {
  const faults = new Faults('molarOf');
  const unread = faults.object(equilibrium, 'equilibrium', 'an equilibrium as equilibrate returns it');
  const species = faults
    .list(unread.species, 'equilibrium.species', 'a list of species')
    .map((one, index) => readSpeciesAt(one, `equilibrium.species[${index}]`, faults));
  const { id } = readProtolyte(protolyte, 'protolyte', faults);
  faults.text(formula, 'formula', 'the formula of a species');
  faults.done();

  const forms = species.filter(({ protolyteId }) => protolyteId === id);
  const found = forms.find((form) => form.formula === formula);
  if (forms.length === 0)
    faults.add('unknown-substance', 'protolyte', 'a protolyte that the solution holds', id);
  else if (!found)
    faults.add(
      'unknown-substance',
      'formula',
      `one of ${forms.map((form) => form.formula).join(', ')}`,
      formula,
    );
  faults.done();
  return (found as (typeof forms)[number]).molar;
}

function readSpeciesAt(
  value: unknown,
  path: string,
  faults: Faults,
): Pick<SpeciesAt, 'formula' | 'protolyteId' | 'molar'> {
  const { formula, protolyteId, molar } = faults.object(value, path, 'a species');
  return {
    formula: faults.text(formula, `${path}.formula`, 'a formula'),
    protolyteId:
      protolyteId === null ? null : faults.text(protolyteId, `${path}.protolyteId`, 'an id, or null'),
    molar: faults.number(molar, `${path}.molar`, 'a concentration in mol/L', { from: 0 }),
  };
}
