import type { Totals } from '../solution/totals.js';
import { numberAt } from '../solver/number-at.js';
import { sum } from '../solver/sum.js';
import type { Protolyte } from '../substance/protolyte.js';
import type { Ion } from '../substance/reagent.js';
import type { IonColumn } from './activity/real-system.js';
import { type Family, fractionsOf } from './family.js';
import { gasForms } from './gas-forms.js';
import type { SolvedSolution } from './solve-solution.js';
import type { System } from './system.js';

/** One species at equilibrium. */
export interface SpeciesAt {
  readonly formula: string;
  readonly charge: number;
  /** The protolyte it is a form of; null for H+, OH- and the strong ions. */
  readonly protolyteId: string | null;
  /** Concentration, mol/L. */
  readonly molar: number;
  /** Activity, mol/L. */
  readonly activity: number;
  /** Its share of its protolyte; null where there is none. */
  readonly fraction: number | null;
}

/**
 * Every species of a solved solution: H+ and OH-, the forms of each protolyte that is present, those of the gas, the
 * strong ions.
 *
 * @param column - what is in the solution now, after any escape of CO2
 * @internal
 */
export const speciesOf = (
  system: System,
  column: IonColumn,
  totals: Totals,
  solved: SolvedSolution,
): SpeciesAt[] => [
  ...waterIons(solved),
  ...formsOfProtolytes(system, column, totals, solved),
  ...formsOfGas(system, solved),
  ...strongIons(system, column, totals, solved),
];

function waterIons({ h, balance, real }: SolvedSolution): SpeciesAt[] {
  const gamma = real?.coefficients.gamma;
  return [
    ion('H+', 1, h, gamma?.[real?.hydrogen ?? 0]),
    ion('OH-', -1, balance.kw / h, gamma?.[real?.hydroxide ?? 0]),
  ];
}

function formsOfProtolytes(
  { protolytes }: System,
  { amounts, volume }: IonColumn,
  totals: Totals,
  { h, balance, real }: SolvedSolution,
): SpeciesAt[] {
  const present = new Set(totals.protolytes.map(({ protolyte }) => protolyte.id));
  return protolytes.flatMap((protolyte, index) => {
    if (!present.has(protolyte.id)) return [];
    const total = numberAt(amounts, index) / volume;
    const fractions = fractionsOf(balance.families[index] as Family, h);
    const molar = fractions.map((fraction) => fraction * total);
    return formsOf(
      protolyte,
      molar,
      fractions,
      (lost) => real?.coefficients.gamma[real.kinds[index]?.[lost] ?? 0],
    );
  });
}

function formsOfGas(system: System, solved: SolvedSolution): SpeciesAt[] {
  const { gas } = system;
  if (!gas) return [];
  const { h, real } = solved;
  const molar = gasForms(system, solved, h);
  const total = sum(molar);
  const fractions = molar.map((form) => (total > 0 ? form / total : 0));
  return formsOf(
    gas.protolyte,
    molar,
    fractions,
    (lost) => real?.coefficients.gamma[real.gasKinds[lost] ?? 0],
  );
}

/** The strong ions, whose coefficients do not enter the charge balance. */
function strongIons(
  { inUse: { activity, celsius } }: System,
  { volume }: IonColumn,
  { ions }: Totals,
  { real }: SolvedSolution,
): SpeciesAt[] {
  const strength = Math.min(real?.coefficients.ionicStrength ?? 0, real?.coefficients.ceiling ?? 0);
  const gammaOf = ({ charge, formula }: Ion) => 10 ** activity.log10Gamma(charge, strength, celsius, formula);
  return ions.map(({ ion: strong, mmol }) =>
    ion(strong.formula, strong.charge, mmol / volume, gammaOf(strong)),
  );
}

const ion = (formula: string, charge: number, molar: number, gamma = 1): SpeciesAt => ({
  formula,
  charge,
  protolyteId: null,
  molar,
  activity: gamma * molar,
  fraction: null,
});

function formsOf(
  { id, species }: Protolyte,
  molar: readonly number[],
  fractions: readonly number[],
  gammaOf: (lost: number) => number | undefined,
): SpeciesAt[] {
  return species.map(({ formula, charge }, lost) => ({
    formula,
    charge,
    protolyteId: id,
    molar: numberAt(molar, lost),
    activity: (gammaOf(lost) ?? 1) * numberAt(molar, lost),
    fraction: numberAt(fractions, lost),
  }));
}
