import { frozen } from '../../frozen.js';
import { at, Faults } from '../../input/faults.js';
import { waterSources } from '../temperature/water-sources.js';
import { type ActivityLaw, debyeHuckelExtendedLaw, sizeOtherwise } from './activity-law.js';
import type { ActivityModel } from './activity-model.js';
import { ideal, lawOf, remembered } from './laws.js';

/** Sizes of ions, Å, by formula; `otherwise` is that of every ion not listed. */
export interface IonSizes {
  readonly sizes: Readonly<Record<string, number>>;
  readonly otherwise?: number;
}

/**
 * The extended law of Debye and Hückel with sizes of your own, log10 γ = −A·z²·√I/(1 + B·a·√I).
 *
 * @param given - `sizes`: Å by formula, as the species and ions of the solution write it; `otherwise`: of all others,
 * 4.5 Å if left out
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { debyeHuckelExtendedOf, kiellandSizes } from 'protolysis';
 *
 * const model = debyeHuckelExtendedOf({ sizes: { ...kiellandSizes, 'H2C6H5O7-': 3.5 } });
 * 10 ** model.log10Gamma(1, 0.1, 25, 'H+'); // => 0.825
 * ```
 */
export function debyeHuckelExtendedOf(given: IonSizes): ActivityModel {
  const faults = new Faults('debyeHuckelExtendedOf');
  const unread = faults.object(given, '', 'sizes { sizes, otherwise }', ['sizes', 'otherwise']);
  const limits = { from: 0.1, to: 100 };
  const sizes = faults.object(unread.sizes, 'sizes', 'sizes in Å by formula');
  const read = Object.keys(sizes).map((key): [string, number] => [
    key,
    faults.number(sizes[key], at('sizes', key), 'a size in Å', limits),
  ]);
  const otherwise =
    unread.otherwise === undefined
      ? sizeOtherwise
      : faults.number(unread.otherwise, 'otherwise', 'a size in Å', limits);
  faults.done();
  return extendedOf({ ...debyeHuckelExtendedLaw, sizes: Object.fromEntries(read), otherwise });
}

function extendedOf(law: ActivityLaw): ActivityModel {
  const { name, sizes = {}, otherwise = sizeOtherwise, upTo, source } = law;
  const sizeByFormula = new Map<string | undefined, number>(Object.entries(sizes));
  const parametersAt = remembered();
  const sizeOf = (formula: string | undefined) => sizeByFormula.get(formula) ?? otherwise;
  return frozen({
    name,
    log10Gamma(charge, ionicStrength, celsius, formula) {
      const { A, B } = parametersAt(celsius);
      const root = Math.sqrt(ionicStrength);
      return (-charge * charge * A * root) / (1 + B * sizeOf(formula) * root) || 0;
    },
    dLog10Gamma(charge, ionicStrength, celsius, formula) {
      if (charge === 0) return 0;
      const { A, B } = parametersAt(celsius);
      const root = Math.sqrt(ionicStrength);
      return (-charge * charge * A) / (2 * root * (1 + B * sizeOf(formula) * root) ** 2);
    },
    d2Log10Gamma(charge, ionicStrength, celsius, formula) {
      if (charge === 0) return 0;
      const { A, B } = parametersAt(celsius);
      const root = Math.sqrt(ionicStrength);
      const grown = B * sizeOf(formula) * root;
      return (charge * charge * A * (1 + 3 * grown)) / (4 * root ** 3 * (1 + grown) ** 3);
    },
    ...(upTo === undefined ? {} : { upTo }),
    source,
    law,
    restsOn: [waterSources.density, waterSources.permittivity],
  });
}

/**
 * The extended law of Debye and Hückel with Kielland's sizes of ions, log10 γ = −A·z²·√I/(1 + B·a·√I). For I up to 0.1
 * mol/L.
 *
 * Ions that Kielland does not list, or that are spelled otherwise than in `kiellandSizes`, are taken as 4.5 Å.
 *
 * @example
 * ```ts
 * import { debyeHuckelExtended } from 'protolysis';
 *
 * 10 ** debyeHuckelExtended.log10Gamma(1, 0.1, 25, 'H+'); // => 0.825
 * 10 ** debyeHuckelExtended.log10Gamma(-1, 0.1, 25, 'Cl-'); // => 0.753
 * ```
 */
export const debyeHuckelExtended: ActivityModel = /*#__PURE__*/ extendedOf(debyeHuckelExtendedLaw);

/** A law in doubles. @internal */
export function modelOf(law: ActivityLaw): ActivityModel {
  if (law.A25 === 0) return ideal;
  return law.sizes ? extendedOf(law) : lawOf(law);
}
