import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { type DebyeHuckelParameters, parametersAt } from '../temperature/debye-huckel-at.js';
import { waterSources } from '../temperature/water-sources.js';
import {
  type ActivityLaw,
  batesGuggenheimLaw,
  daviesLaw,
  debyeHuckelLimitingLaw,
  guntelbergLaw,
  idealLaw,
} from './activity-law.js';
import type { ActivityModel } from './activity-model.js';

/** A law with the same b for all ions, in doubles. @internal */
export function lawOf(law: ActivityLaw): ActivityModel {
  const { name, A25, b = 0, c = 0, upTo, source } = law;
  const A = A25 === undefined ? debyeHuckelA : (celsius: number) => A25 * (debyeHuckelA(celsius) / at25());
  return frozen({
    name,
    log10Gamma(charge, ionicStrength, celsius) {
      const root = Math.sqrt(ionicStrength);
      return -charge * charge * A(celsius) * (root / (1 + b * root) - c * ionicStrength) || 0;
    },
    dLog10Gamma(charge, ionicStrength, celsius) {
      const root = Math.sqrt(ionicStrength);
      return charge === 0 ? 0 : -charge * charge * A(celsius) * (1 / (2 * root * (1 + b * root) ** 2) - c);
    },
    d2Log10Gamma(charge, ionicStrength, celsius) {
      const root = Math.sqrt(ionicStrength);
      const inner = 1 + b * root;
      return charge === 0
        ? 0
        : (charge * charge * A(celsius) * (1 + 3 * b * root)) / (4 * root ** 3 * inner ** 3);
    },
    squareLaw: true,
    ...(upTo === undefined ? {} : { upTo }),
    source,
    law,
    restsOn: [waterSources.density, waterSources.permittivity],
  });
}

/** The parameters at the last temperature: a curve asks for the same temperature again and again. @internal */
export function remembered(): (celsius: number) => DebyeHuckelParameters {
  let at = 25;
  let parameters = parametersAt(at);
  return (celsius) => {
    if (celsius !== at) {
      parameters = parametersAt(celsius);
      at = celsius;
    }
    return parameters;
  };
}

const debyeHuckelA = /*#__PURE__*/ (() => {
  const at = remembered();
  return (celsius: number) => at(celsius).A;
})();

const at25 = /*#__PURE__*/ (() => {
  const { A } = parametersAt(25);
  return () => A;
})();

/** No interaction at all: γ = 1, activities are concentrations. What textbooks assume. */
export const ideal: ActivityModel = /*#__PURE__*/ frozen({
  name: idealLaw.name,
  log10Gamma: () => 0,
  dLog10Gamma: () => 0,
  d2Log10Gamma: () => 0,
  squareLaw: true,
  source: idealLaw.source,
  law: idealLaw,
});

/** Whether a law is the ideal one, whichever copy of the package it comes from. @internal */
export const isIdealLaw = ({ law }: ActivityModel): boolean => law?.A25 === 0;

/** The limiting law of Debye and Hückel, log10 γ = −A·z²·√I. For I below 0.005 mol/L. */
export const debyeHuckelLimiting: ActivityModel = /*#__PURE__*/ lawOf(debyeHuckelLimitingLaw);

/** Güntelberg's law, log10 γ = −A·z²·√I/(1 + √I): one ion size for all. For I below 0.1 mol/L. */
export const guntelberg: ActivityModel = /*#__PURE__*/ lawOf(guntelbergLaw);

/**
 * The convention of Bates and Guggenheim for chloride in pH standards, log10 γ = −A·z²·√I/(1 + 1.5·√I), put to use for
 * every ion. For I up to 0.1 mol/L.
 */
export const batesGuggenheim: ActivityModel = /*#__PURE__*/ lawOf(batesGuggenheimLaw);

/**
 * The Davies equation of 1962, log10 γ = −A·z²·(√I/(1 + √I) − 0.3·I). For I up to 0.5 mol/L.
 *
 * A is 0.509 at 25 °C, the value it was fitted with, and moves with temperature in proportion to the A of
 * `debyeHuckelAt`. Beyond I = 0.39 mol/L γ turns upward. Ions of one charge are alike; neutral species and water have γ
 * = 1.
 *
 * @example
 * ```ts
 * import { davies } from 'protolysis';
 *
 * 10 ** davies.log10Gamma(1, 0.1, 25); // => 0.7816
 * 10 ** davies.log10Gamma(-2, 0.1, 25); // => 0.3732
 * ```
 */
export const davies: ActivityModel = /*#__PURE__*/ lawOf(daviesLaw);

/**
 * The Davies equation with another linear coefficient: 0.2 is that of 1938, for I up to 0.2 mol/L.
 *
 * @param coefficients - `linear`: the factor of I, L/mol, from −10 to 10
 * @throws InputError where it is missing or out of range
 * @example
 * ```ts
 * import { daviesOf } from 'protolysis';
 *
 * 10 ** daviesOf({ linear: 0.2 }).log10Gamma(1, 0.1, 25); // => 0.7725
 * ```
 */
export function daviesOf(coefficients: { readonly linear: number }): ActivityModel {
  const faults = new Faults('daviesOf');
  const unread = faults.object(coefficients, '', 'coefficients { linear }', ['linear']);
  const linear = faults.number(unread.linear, 'linear', 'a coefficient in L/mol', { from: -10, to: 10 });
  faults.done();
  if (linear === 0.3) return davies;
  return lawOf({
    ...daviesLaw,
    name: `Davies (${linear} I)`,
    c: linear,
    upTo: 0.2,
    source:
      linear === 0.2
        ? {
            kind: 'published',
            work: 'davies-1938',
            where: 'coefficient 0.2, A = 0.509 at 25 °C, up to 0.2 mol/L',
          }
        : { kind: 'commonPractice', note: `the form of Davies with the coefficient ${linear}` },
  });
}
