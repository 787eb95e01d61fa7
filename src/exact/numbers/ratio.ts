import type { Arithmetic } from '../../solver/arithmetic.js';

/** A fraction of whole numbers in lowest terms, the denominator positive: exact under + − × ÷. @internal */
export interface Ratio {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/** The four operations on fractions; none is rounded. @internal */
export const ratios: Arithmetic<Ratio> = {
  of: (value) => ({ numerator: BigInt(value), denominator: 1n }),
  plus: (a, b) =>
    reduced(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator),
  minus: (a, b) =>
    reduced(a.numerator * b.denominator - b.numerator * a.denominator, a.denominator * b.denominator),
  times: (a, b) => reduced(a.numerator * b.numerator, a.denominator * b.denominator),
  over: (a, b) => reduced(a.numerator * b.denominator, a.denominator * b.numerator),
};

/** −1, 0 or 1. @internal */
export const signOf = ({ numerator }: Ratio): number => (numerator > 0n ? 1 : numerator < 0n ? -1 : 0);

/** Negative, zero or positive, as a sort wants it. @internal */
export const compared = (a: Ratio, b: Ratio): number => signOf(ratios.minus(a, b));

/** @throws RangeError where the denominator is zero. */
function reduced(numerator: bigint, denominator: bigint): Ratio {
  if (denominator === 0n) throw new RangeError('a fraction with a denominator of zero');
  let [a, b] = [numerator < 0n ? -numerator : numerator, denominator < 0n ? -denominator : denominator];
  while (b !== 0n) [a, b] = [b, a % b];
  const sign = denominator < 0n ? -1n : 1n;
  return { numerator: (sign * numerator) / a, denominator: (sign * denominator) / a };
}

const decimal = /^([+-]?)(\d*)(?:\.(\d*))?(?:e([+-]?\d{1,3}))?$/i;

/** The value of `0.1`, `1e-7` or `2/3`; undefined where the text is none of these. @internal */
export function ratioOf(text: string): Ratio | undefined {
  const [top = '', bottom, ...rest] = text.split('/');
  if (rest.length > 0) return undefined;
  const numerator = decimalOf(top);
  if (bottom === undefined || numerator === undefined) return numerator;
  const denominator = decimalOf(bottom);
  return denominator === undefined || denominator.numerator === 0n
    ? undefined
    : ratios.over(numerator, denominator);
}

function decimalOf(text: string): Ratio | undefined {
  const [, sign, whole = '', part = '', exponent = '0'] = decimal.exec(text) ?? [];
  if (sign === undefined || whole + part === '') return undefined;
  const digits = BigInt(sign + whole + part);
  const power = Number(exponent) - part.length;
  return power >= 0 ? reduced(digits * 10n ** BigInt(power), 1n) : reduced(digits, 10n ** BigInt(-power));
}

/** The same as a text that `ratioOf` reads: a decimal where it ends, else a fraction. @internal */
export function textOf({ numerator, denominator }: Ratio): string {
  let rest = denominator;
  let places = 0;
  for (const prime of [2n, 5n]) {
    let times = 0;
    for (; rest % prime === 0n; rest /= prime) times += 1;
    places = Math.max(places, times);
  }
  if (rest !== 1n) return `${numerator}/${denominator}`;
  const scaled = (numerator * 10n ** BigInt(places)) / denominator;
  const digits = `${scaled < 0n ? -scaled : scaled}`.padStart(places + 1, '0');
  const point = digits.length - places;
  const part = places === 0 ? '' : `.${digits.slice(point)}`;
  return `${scaled < 0n ? '-' : ''}${digits.slice(0, point)}${part}`;
}
