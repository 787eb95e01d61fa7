import { type ActivityLaw, idealLaw, sizeOtherwise } from '../../equilibrium/activity/activity-law.js';
import { readActivityLaw } from '../../equilibrium/activity/read-activity-law.js';
import { parametersIn } from '../../equilibrium/temperature/debye-huckel-at.js';
import { at, type Faults } from '../../input/faults.js';
import type { ExactArithmetic } from '../numbers/exact-arithmetic.js';

/**
 * Reads a law from a caller's value, noting every fault: the law alone, or a model that says which law it is.
 *
 * @internal
 */
export function readLaw(value: unknown, path: string, faults: Faults): ActivityLaw {
  const what = 'a law of protolysis/exact, such as its davies';
  const unread = faults.object(value, path, what);
  if (unread.law !== undefined) return readActivityLaw(unread.law, at(path, 'law'), faults);
  if (typeof unread.log10Gamma !== 'function') return readActivityLaw(value, path, faults);
  faults.add('wrong-type', path, `${what}: the rounding of a model in doubles has no bound`, value);
  return idealLaw;
}

/** An activity coefficient and d log10 γ/dI. @internal */
export interface Coefficient<N> {
  readonly gamma: N;
  readonly slope: N;
}

/** The properties of a species that its coefficient depends on. @internal */
export interface Charged {
  readonly charge: number;
  readonly formula: string;
}

/** The coefficients of all species at one ionic strength. @internal */
export interface ActivityAt<N> {
  of(species: Charged): Coefficient<N>;
  /** γ of the first species over γ of the second. */
  ratio(above: Charged, below: Charged): N;
}

/**
 * A law at a temperature in one kind of number.
 *
 *   log10 γ = −z²·A·f(I),   f = (1 − 1/(1 + b·√I))/b − c·I,   f′ = 1/(2·√I·(1 + b·√I)²) − c
 *
 * In this form √I stands once in the first term of f; and where b is the same for all ions, every coefficient and every
 * ratio of coefficients is a power of γ of charge 1. So intervals of I give narrow intervals of them.
 *
 * @param atReference - whether the temperature is 25 °C
 * @returns a function of the ionic strength; above `ceiling` it stays what it is there
 * @internal
 */
export function lawIn<N>(
  arithmetic: ExactArithmetic<N>,
  law: ActivityLaw,
  celsius: N,
  atReference: boolean,
  ceiling: N,
): (ionicStrength: N) => ActivityAt<N> {
  const { b = 0, sizes } = law;
  const single = singleChargeOf(arithmetic, law, slopeOfLaw(arithmetic, law, celsius, atReference), ceiling);
  return sizes === undefined
    ? lawOfOneSize(arithmetic, single, b === 0 ? null : arithmetic.decimal(b))
    : lawOfSizes(arithmetic, single, law, parametersIn(arithmetic, celsius).B);
}

/** γ of charge 1 and its slope, at an ionic strength and for one b; null for b = 0. */
type SingleCharge<N> = (ionicStrength: N, b: N | null) => Coefficient<N>;

/** A at a temperature, (L/mol)^½. */
function slopeOfLaw<N>(
  arithmetic: ExactArithmetic<N>,
  { A25 }: ActivityLaw,
  celsius: N,
  atReference: boolean,
): N {
  const { of, times, over, decimal } = arithmetic;
  if (A25 === undefined) return parametersIn(arithmetic, celsius).A;
  if (atReference) return decimal(A25);
  return times(decimal(A25), over(parametersIn(arithmetic, celsius).A, parametersIn(arithmetic, of(25)).A));
}

function singleChargeOf<N>(
  { of, plus, minus, times, over, decimal, sqrt, tenTo, held }: ExactArithmetic<N>,
  { c = 0 }: ActivityLaw,
  A: N,
  ceiling: N,
): SingleCharge<N> {
  const minusA = minus(of(0), A);
  const linear = decimal(c);
  return (ionicStrength, b) => {
    const { at: strength, rate } = held(ionicStrength, ceiling);
    const root = sqrt(strength);
    const denominator = b === null ? of(1) : plus(of(1), times(b, root));
    const f = b === null ? root : over(minus(of(1), over(of(1), denominator)), b);
    const slope = over(of(1), times(times(of(2), root), times(denominator, denominator)));
    return {
      gamma: tenTo(times(minusA, minus(f, times(linear, strength)))),
      slope: times(times(minusA, rate), minus(slope, linear)),
    };
  };
}

/** The coefficient of an ion of any charge, from that of charge 1. */
const ofCharge = <N>(
  arithmetic: ExactArithmetic<N>,
  charge: number,
  { gamma, slope }: Coefficient<N>,
): Coefficient<N> => ({
  gamma: powerOf(arithmetic, gamma, charge * charge),
  slope: arithmetic.times(arithmetic.of(charge * charge), slope),
});

/** A law with the same b for all ions. */
function lawOfOneSize<N>(arithmetic: ExactArithmetic<N>, single: SingleCharge<N>, b: N | null) {
  return (ionicStrength: N): ActivityAt<N> => {
    const coefficient = single(ionicStrength, b);
    return {
      of: ({ charge }) => ofCharge(arithmetic, charge, coefficient),
      ratio: (above, below) => powerOf(arithmetic, coefficient.gamma, above.charge ** 2 - below.charge ** 2),
    };
  };
}

/** A law with sizes of ions: b is B times the size. */
function lawOfSizes<N>(
  arithmetic: ExactArithmetic<N>,
  single: SingleCharge<N>,
  { sizes = {}, otherwise = sizeOtherwise }: ActivityLaw,
  B: N,
) {
  const { decimal, times, over } = arithmetic;
  const sizeOf = new Map(Object.entries(sizes));
  return (ionicStrength: N): ActivityAt<N> => {
    const known = new Map<number, Coefficient<N>>();
    const ofSpecies = ({ formula, charge }: Charged): Coefficient<N> => {
      const size = sizeOf.get(formula) ?? otherwise;
      const coefficient = known.get(size) ?? single(ionicStrength, times(B, decimal(size)));
      known.set(size, coefficient);
      return ofCharge(arithmetic, charge, coefficient);
    };
    return {
      of: ofSpecies,
      ratio: (above, below) => over(ofSpecies(above).gamma, ofSpecies(below).gamma),
    };
  };
}

/** x to a whole power, by squaring. */
function powerOf<N>(arithmetic: ExactArithmetic<N>, x: N, power: number): N {
  const { of, times, over } = arithmetic;
  if (power < 0) return over(of(1), powerOf(arithmetic, x, -power));
  if (power < 2) return power === 0 ? of(1) : x;
  const half = powerOf(arithmetic, x, Math.floor(power / 2));
  return power % 2 === 0 ? times(half, half) : times(times(half, half), x);
}
