import type { Reagent } from '../substance/reagent.js';

/** The ionic strength of a salt of ions alone, mol/L per mol/L of it. @internal */
export const ionicStrengthOf = ({ ions }: Reagent): number =>
  ions.reduce((sum, { ion, count }) => sum + (count * ion.charge ** 2) / 2, 0);
