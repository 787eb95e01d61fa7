import { numberAt } from '../../solver/number-at.js';
import type { Protolyte } from '../../substance/protolyte.js';
import type { Balance, Column } from '../charge-balance.js';
import type { Family } from '../family.js';
import type { ActivityModel } from './activity-model.js';
import { type Coefficients, coefficientsOf, type Kind, takeCoefficients } from './coefficients.js';

/** A column with the share of its strong ions in the ionic strength. */
export interface IonColumn extends Column {
  /** Σ z²·n over the strong ions. */
  readonly squares: number;
}

/** A gas held at a fixed pressure, and its forms in solution. */
export interface GasAtPressure {
  readonly protolyte: Protolyte;
  /** Activity of the dissolved gas, mol/L: Henry's constant times the pressure. */
  readonly dissolved: number;
}

/** A charge balance whose constants depend on the ionic strength. */
export interface RealSystem {
  readonly coefficients: Coefficients;
  /** With thermodynamic constants. */
  readonly ideal: Balance;
  /** With the constants that hold between concentrations where `coefficients` were taken last. */
  readonly conditional: Balance;
  /** Which kind each species is: of each family from most to least protonated, and of the gas likewise. */
  readonly kinds: readonly Int32Array[];
  readonly gasKinds: Int32Array;
  readonly hydrogen: number;
  readonly hydroxide: number;
  /** Of each family, the greatest variance of z² − z and of z² + z over its forms. */
  readonly spreads: Float64Array;
}

/** A charge balance with a law of activity, its coefficients not yet taken. @internal */
export function makeRealSystem(
  ideal: Balance,
  protolytes: readonly Protolyte[],
  gas: GasAtPressure | null,
  spectators: readonly Kind[],
  { activity, celsius }: { readonly activity: ActivityModel; readonly celsius: number },
): RealSystem {
  const kinds: Kind[] = [];
  const numbers = new Map<string, number>();
  const kindOf = (formula: string, charge: number): number => {
    const key = activity.squareLaw ? `${charge}` : `${formula} ${charge}`;
    const number = numbers.get(key) ?? kinds.length;
    if (number === kinds.length) kinds.push({ formula, charge });
    numbers.set(key, number);
    return number;
  };
  const kindsOf = ({ species }: Protolyte) =>
    Int32Array.from(species, ({ formula, charge }) => kindOf(formula, charge));
  const hydrogen = kindOf('H+', 1);
  const hydroxide = kindOf('OH-', -1);
  const families = protolytes.map(kindsOf);
  const gasKinds = gas ? kindsOf(gas.protolyte) : new Int32Array(0);
  return {
    coefficients: coefficientsOf(activity, celsius, kinds, spectators),
    ideal,
    conditional: copyOf(ideal),
    kinds: families,
    gasKinds,
    hydrogen,
    hydroxide,
    spreads: Float64Array.from(protolytes, spreadOf),
  };
}

/** No variance exceeds a quarter of the squared range (T. Popoviciu, Mathematica (Cluj) 9, 129–145 (1935)). */
function spreadOf({ species }: Protolyte): number {
  const range = (sign: number) => {
    const values = species.map(({ charge }) => charge * charge + sign * charge);
    return Math.max(...values) - Math.min(...values);
  };
  return Math.max(range(1), range(-1)) ** 2 / 4;
}

const copyOf = ({ families, gas, ...rest }: Balance): Balance => ({
  ...rest,
  families: families.map((family) => ({
    ...family,
    constants: family.constants.slice(),
    reciprocals: family.reciprocals.slice(),
  })),
  ...(gas ? { gas: gas.slice() } : {}),
});

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

/**
 * Takes the coefficients at an ionic strength and the constants that then hold between concentrations:
 *
 *   K′_j = K_j·γ_(j−1)/(γ_j·γ_H),   Kw′ = Kw/(γ_H·γ_OH),   (c₀β_j)′ = c₀β_j/(γ_j·γ_H^j)
 *
 * @internal
 */
export function takeConstants(real: RealSystem, ionicStrength: number): void {
  const { coefficients, ideal, conditional, kinds, gasKinds, hydrogen, hydroxide } = real;
  takeCoefficients(coefficients, ionicStrength);
  const { gamma } = coefficients;
  const hydrogenGamma = numberAt(gamma, hydrogen);
  (conditional as Writable<Balance>).kw = ideal.kw / hydrogenGamma / numberAt(gamma, hydroxide);
  for (let i = 0; i < kinds.length; i += 1) {
    const kind = kinds[i] as Int32Array;
    const from = ideal.families[i] as Family;
    const to = conditional.families[i] as Writable<Family>;
    to.inOrder = true;
    for (let j = 0; j < from.constants.length; j += 1) {
      const factor =
        (gamma[numberAt(kind, j)] as number) / (gamma[numberAt(kind, j + 1)] as number) / hydrogenGamma;
      to.constants[j] = numberAt(from.constants, j) * factor;
      to.reciprocals[j] = numberAt(from.reciprocals, j) / factor;
      if (j > 0 && numberAt(to.constants, j) > numberAt(to.constants, j - 1)) to.inOrder = false;
    }
  }
  if (ideal.gas && conditional.gas)
    for (let j = 1, power = 1; j <= ideal.gas.length; j += 1) {
      power *= hydrogenGamma;
      conditional.gas[j - 1] = numberAt(ideal.gas, j - 1) / (gamma[numberAt(gasKinds, j)] as number) / power;
    }
}
