/**
 * The operations that a formula needs of a kind of number. A formula over them is written once for doubles, decimals,
 * intervals and fractions.
 */
export interface Arithmetic<N> {
  /** A whole number. */
  of(value: number): N;
  plus(a: N, b: N): N;
  minus(a: N, b: N): N;
  times(a: N, b: N): N;
  over(a: N, b: N): N;
}

/** The operations that fractions do not have. */
export interface Functions<N> extends Arithmetic<N> {
  /** The decimal that a number is written as: 0.1 is one tenth, if this kind of number can hold it. */
  decimal(value: number): N;
  sqrt(x: N): N;
  exp(x: N): N;
  ln(x: N): N;
  log10(x: N): N;
  readonly pi: N;
}

/** The operations on the numbers of the language. @internal */
export const doubles: Functions<number> = {
  of: (value) => value,
  plus: (a, b) => a + b,
  minus: (a, b) => a - b,
  times: (a, b) => a * b,
  over: (a, b) => a / b,
  decimal: (value) => value,
  sqrt: Math.sqrt,
  exp: Math.exp,
  ln: Math.log,
  log10: Math.log10,
  pi: Math.PI,
};

/** a + b·x + c·x² + …, by Horner's rule. @internal */
export function polynomial<N>(
  { plus, times, decimal }: Functions<N>,
  coefficients: readonly number[],
  x: N,
): N {
  const [last, ...rest] = coefficients.map(decimal).reverse() as [N, ...N[]];
  return rest.reduce((sum, coefficient) => plus(coefficient, times(x, sum)), last);
}
