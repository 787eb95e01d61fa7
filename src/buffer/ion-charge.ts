import type { Reagent } from '../substance/reagent.js';

/** The charge of a reagent's ions per formula unit: 0 for a salt of strong ions, below 0 for a strong acid. */
const ionCharge = ({ ions }: Reagent): number =>
  ions.reduce((sum, { ion, count }) => sum + ion.charge * count, 0);

/** Whether it consists of strong ions alone, whose charges cancel but for rounding. @internal */
export const isNeutralSalt = (reagent: Reagent): boolean =>
  reagent.protolytes.length === 0 && Math.abs(ionCharge(reagent)) <= 1e-12;
