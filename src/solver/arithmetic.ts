/** What a formula asks of a kind of number, so that it can be written once for doubles, decimals, intervals and fractions. */
export interface Arithmetic<N> {
  /** A whole number. */
  of(value: number): N;
  plus(a: N, b: N): N;
  minus(a: N, b: N): N;
  times(a: N, b: N): N;
  over(a: N, b: N): N;
}

/** @internal */
export const doubles: Arithmetic<number> = {
  of: (value) => value,
  plus: (a, b) => a + b,
  minus: (a, b) => a - b,
  times: (a, b) => a * b,
  over: (a, b) => a / b,
};
