import { expect } from 'vitest';

/**
 * A printed number: the value may lie half a unit of its last digit away, as text keeps the zeros that say where that is.
 * Half a unit is what rounding leaves; nothing is added to it but a few roundings of a double (a printed tie may fall either way).
 */
export function expectPrinted(value: number, printed: string): void {
  const [mantissa = '', exponent = '0'] = printed.split('e');
  const decimals = (mantissa.split('.')[1] ?? '').length;
  const half = 0.5 * 10 ** (Number(exponent) - decimals);
  const error = Math.abs(value - Number(printed));
  expect(error, `${value} printed as ${printed}`).toBeLessThanOrEqual(half * (1 + 1e-9));
}
