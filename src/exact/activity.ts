import { type ActivityLaw, idealLaw, sizeOtherwise } from '../equilibrium/activity/activity-law.js';
import { parametersIn } from '../equilibrium/temperature/debye-huckel-at.js';
import { at, type Faults } from '../errors.js';
import { readSource } from '../source.js';
import type { Rendering } from './rendering.js';

const keys = ['name', 'A25', 'b', 'c', 'sizes', 'upTo', 'source'];

/** Reads a law from a caller's value, noting every fault. @internal */
export function readActivityLaw(value: unknown, path: string, faults: Faults): ActivityLaw {
  const before = faults.count;
  const what = 'a law of protolysis/exact, such as its davies';
  const unread = faults.object(value, path, what);
  if (typeof unread.log10Gamma === 'function') {
    faults.add('wrong-type', path, `${what}: the rounding of a model in doubles has no bound`, value);
    return idealLaw;
  }
  faults.object(unread, path, what, keys);
  faults.text(unread.name, at(path, 'name'), 'a name');
  const number = (key: string, expected: string, from: number, to: number) =>
    unread[key] === undefined || faults.number(unread[key], at(path, key), expected, { from, to });
  number('A25', 'an A in (L/mol)^½', 0, 10);
  number('b', 'a coefficient in (L/mol)^½', 0, 100);
  number('c', 'a coefficient in L/mol', -10, 10);
  number('upTo', 'an ionic strength in mol/L', 0, 1e9);
  const read = { ...unread, source: readSource(unread.source, at(path, 'source'), faults) };
  const law = unread.sizes === undefined ? read : { ...read, sizes: readSizes(unread, path, faults) };
  return faults.count > before ? idealLaw : (law as unknown as ActivityLaw);
}

function readSizes(
  unread: Readonly<Record<string, unknown>>,
  path: string,
  faults: Faults,
): Readonly<Record<string, number>> {
  for (const key of ['A25', 'b', 'c'])
    if (unread[key] !== undefined)
      faults.add('conflict', at(path, key), 'no such coefficient beside sizes', unread[key]);
  const here = at(path, 'sizes');
  const sizes = faults.object(unread.sizes, here, 'sizes in Å by formula');
  const limits = { above: 0, to: 100 };
  return Object.fromEntries(
    Object.entries(sizes).map(([formula, size]) => [
      formula,
      faults.number(size, at(here, formula), 'a size in Å', limits),
    ]),
  );
}

/** An activity coefficient and d log10 γ/dI. @internal */
export interface Coefficient<N> {
  readonly gamma: N;
  readonly slope: N;
}

/** The coefficient of an ion at the ionic strength that has been set. @internal */
export type CoefficientOf<N> = (charge: number, formula: string) => Coefficient<N>;

/**
 * A law at a temperature in one kind of number.
 *
 *   log10 γ = −z²·A·f(I),   f = (1 − 1/(1 + b·√I))/b − c·I,   f′ = 1/(2·√I·(1 + b·√I)²) − c
 *
 * In this form √I stands once in the first term of f, so that intervals give its exact range.
 *
 * @param isReference - whether the temperature is 25 °C
 * @returns a function of the ionic strength, held above `ceiling`
 * @internal
 */
export function lawIn<N>(
  arithmetic: Rendering<N>,
  { A25, b = 0, c = 0, sizes }: ActivityLaw,
  celsius: N,
  isReference: boolean,
  ceiling: N,
): (ionicStrength: N) => CoefficientOf<N> {
  const { of, plus, minus, times, over, decimal, sqrt, tenTo, held } = arithmetic;
  const parameters = () => parametersIn(arithmetic, celsius);
  const A = (): N => {
    if (A25 === undefined) return parameters().A;
    if (isReference) return decimal(A25);
    return times(decimal(A25), over(parameters().A, parametersIn(arithmetic, of(25)).A));
  };
  const minusA = minus(of(0), A());
  const B = sizes && parameters().B;
  const sizeOf = new Map(Object.entries(sizes ?? {}));

  return (ionicStrength) => {
    const { at: strength, rate } = held(ionicStrength, ceiling);
    const root = sqrt(strength);
    const linear = decimal(c);
    const coefficientOf = (square: number, factor: N | null): Coefficient<N> => {
      const grown = factor === null ? of(1) : plus(of(1), times(factor, root));
      const f = factor === null ? root : over(minus(of(1), over(of(1), grown)), factor);
      const slope = over(of(1), times(times(of(2), root), times(grown, grown)));
      const scale = times(of(square), minusA);
      return {
        gamma: tenTo(times(scale, minus(f, times(linear, strength)))),
        slope: times(times(scale, rate), minus(slope, linear)),
      };
    };
    const known = new Map<string, Coefficient<N>>();
    return (charge, formula) => {
      const size = sizeOf.get(formula) ?? sizeOtherwise;
      const key = B === undefined ? `${charge * charge}` : `${charge * charge} ${size}`;
      const factor = B === undefined ? (b === 0 ? null : decimal(b)) : times(B, decimal(size));
      const coefficient =
        known.get(key) ??
        (charge === 0 ? { gamma: of(1), slope: of(0) } : coefficientOf(charge * charge, factor));
      known.set(key, coefficient);
      return coefficient;
    };
  };
}
