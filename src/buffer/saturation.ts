import { type Solubility, solubilities } from '../catalogue/solubilities.js';
import type { Conditions } from '../equilibrium/conditions.js';
import { type Equilibrium, equilibrate } from '../equilibrium/equilibrate.js';
import type { Reagent } from '../substance/reagent.js';
import { ionCharge } from './ion-charge.js';

/**
 * The solid of known solubility with which a solution is more than saturated, if there is one.
 *
 * Its ions' activities, multiplied as they stand in its formula, are held against the same product in its saturated solution in
 * pure water: the solubility product as the same model gives it. A solid with a protolyte is in the form that its ions
 * leave; one without, in that of its hydroxide.
 *
 * @internal
 */
export function saturatedWith(equilibrium: Equilibrium, conditions: Conditions): Solubility | undefined {
  return solubilities.find(({ reagent, molar }) => {
    const saturated = equilibrate({ mL: 1, contents: [{ reagent, mmol: molar }] }, conditions);
    return activityProduct(equilibrium, reagent) > activityProduct(saturated, reagent) * (1 + rounding);
  });
}

/** log10 would do as well; 0 where one of the ions is not there. */
function activityProduct({ species }: Equilibrium, reagent: Reagent): number {
  const { protolytes, ions } = reagent;
  const charge = ionCharge(reagent);
  const counts = protolytes.reduce((total, { count }) => total + count, 0);
  const activityOf = (formula: string, count: number) =>
    (species.find((one) => one.formula === formula)?.activity ?? 0) ** count;

  const ofIons = ions.map(({ ion, count }) => activityOf(ion.formula, count));
  const ofForms = protolytes.map(({ protolyte, count }) => {
    const form = protolyte.species.find((one) => one.charge === -charge / counts);
    return activityOf(form?.formula ?? '', count);
  });
  const ofHydroxide = protolytes.length === 0 ? activityOf('OH-', charge) : 1;
  return [...ofIons, ...ofForms, ofHydroxide].reduce((product, factor) => product * factor, 1);
}

/** A solution made with exactly what dissolves is saturated, not more. */
const rounding = 1e-6;
