import { Faults } from '../input/faults.js';
import { type Reagent, readReagent } from '../substance/reagent.js';
import { type StockSolution, solutionDefaults, solutionLimits } from './solution.js';
import { handOut } from './view-solution.js';

/**
 * A concentrated acid or base as a `StockSolution`, from the mass percent and density on its bottle.
 *
 *   c = 10 · ρ · w / M,   ρ in g/mL, w in g per 100 g of solution
 *
 * Diluting such a stock is hot and splashes. Wear eye protection and gloves, and pour the concentrated acid into the
 * water, never the other way round. The safety data sheet, the local rules and a qualified supervisor come first.
 *
 * @param stock - `massPercent` above 0 to 100; `density` g/mL, from 0.5 to 3
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeStock, reagents } from 'protolysis';
 *
 * const concentrated = makeStock({ reagent: reagents.hydrochloricAcid, massPercent: 37, density: 1.18 });
 * concentrated.contents[0]?.mmol; // => 11975.4
 * ```
 */
export function makeStock(stock: {
  readonly reagent: Reagent;
  readonly massPercent: number;
  readonly density: number;
}): StockSolution {
  const faults = new Faults('makeStock');
  const unread = faults.object(stock, '', 'a stock { reagent, massPercent, density }', [
    'reagent',
    'massPercent',
    'density',
  ]);
  const reagent = readReagent(unread.reagent, 'reagent', faults);
  if (!faults.any && reagent.molarMass === undefined)
    faults.add('missing', 'reagent.molarMass', 'a molar mass or a formula', undefined);
  const massPercent = faults.number(unread.massPercent, 'massPercent', 'a mass percent', {
    above: 0,
    to: 100,
  });
  const density = faults.number(unread.density, 'density', 'a density in g/mL', { from: 0.5, to: 3 });
  const { mL } = solutionDefaults;
  const mmol = (1000 * mL * density * (massPercent / 100)) / (reagent.molarMass ?? 1);
  if (!faults.any && mmol > mL * solutionLimits.molar)
    faults.add(
      'out-of-range',
      'massPercent',
      `a stock of no more than ${solutionLimits.molar} mol/L`,
      massPercent,
    );
  faults.done();
  return handOut({ mL, contents: [{ reagent, mmol }], volume: 'assumed' });
}
