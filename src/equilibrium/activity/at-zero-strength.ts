import type { Protolyte, Step } from '../../substance/protolyte.js';
import { referenceCelsius } from '../temperature/pka-at.js';
import type { ActivityModel } from './activity-model.js';

/**
 * A protolyte whose constants hold at zero ionic strength, by a law of activity at 25 °C.
 *
 * A step HA → H + A that was measured in a salt medium has a constant between concentrations, or a mixed one with the
 * activity of H+. With γ at the ionic strength of the medium,
 *
 *   pK° = pK′ − log10 γ(A) + log10 γ(HA) − log10 γ(H)      concentration constant                       (1)
 *   pK° = pK′ − log10 γ(A) + log10 γ(HA)                   mixed constant                               (2)
 *
 * (1) follows from a = γ·c in each place of K. The law is the one that the calculation goes on with, so that the pH at
 * the strength of the medium comes out as it was measured there, whatever the law.
 *
 * @internal
 */
export function atZeroStrength(protolyte: Protolyte, law: ActivityModel): Protolyte {
  if (!protolyte.steps.some(isOfMedium)) return protolyte;
  const steps = protolyte.steps.map((step, k) =>
    isOfMedium(step) ? { ...step, pKa: step.pKa - shiftOf(protolyte, k, law) } : step,
  );
  return { ...protolyte, steps };
}

/** Whether a constant holds in a salt medium. @internal */
export const isOfMedium = ({ ionicStrength = 0 }: Step): boolean => ionicStrength > 0;

/** pK′ − pK°, by (1) or (2). */
function shiftOf({ species, steps }: Protolyte, k: number, law: ActivityModel): number {
  const { ionicStrength = 0, convention = 'concentration' } = steps[k] ?? {};
  const log10Gamma = (charge: number, formula: string) =>
    law.log10Gamma(charge, ionicStrength, referenceCelsius, formula);
  const [acid, base] = [species[k], species[k + 1]].map((form) =>
    form ? log10Gamma(form.charge, form.formula) : 0,
  ) as [number, number];
  return base - acid + (convention === 'concentration' ? log10Gamma(1, 'H+') : 0);
}

/** What was done to the constants of these protolytes, and how far the law holds there. @internal */
export function notesOnMedium(protolytes: readonly Protolyte[], law: ActivityModel): string[] {
  return protolytes.flatMap(({ name, steps }) =>
    [...new Set(steps.filter(isOfMedium).map(({ ionicStrength = 0 }) => ionicStrength))].map((strength) => {
      const numbers = steps.flatMap(({ ionicStrength }, k) => (ionicStrength === strength ? [k + 1] : []));
      const which =
        numbers.length === 1
          ? `the constant of step ${numbers[0]} was`
          : `the constants of steps ${listed(numbers)} were`;
      const beyond =
        strength > (law.upTo ?? Number.POSITIVE_INFINITY) ? ', beyond the range of that law' : '';
      return (
        `${name}: ${which} measured at ionic strength ${strength} mol/L and ` +
        `brought to zero ionic strength by ${law.name}${beyond}.`
      );
    }),
  );
}

/** `2, 3 and 4`. */
const listed = (numbers: readonly number[]): string =>
  `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
