import { expect } from 'vitest';

/** Half a unit of the last digit of a decimal number as it is written. */
function halfLastDigit(text: string): number {
  const [mantissa = '', exponent = '0'] = text.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

/** Matches the numbers that are written so when rounded to its digits; the slack is for the ties of binary rounding. */
export function shown(text: string) {
  const slack = 4 * Number.EPSILON * Math.abs(Number(text));
  return {
    $$typeof: Symbol.for('jest.asymmetricMatcher'),
    asymmetricMatch: (actual: unknown): boolean =>
      typeof actual === 'number' && Math.abs(actual - Number(text)) <= halfLastDigit(text) + slack,
    toString: () => text,
    toAsymmetricMatcher: () => text,
  };
}

/** Asserts that `call` throws an error that reads, as `Name: message`, from its start on like `part`. */
export function expectThrow(call: () => unknown, part: string): void {
  let thrown: unknown = 'nothing was thrown';
  try {
    call();
  } catch (error) {
    thrown = error;
  }
  expect(String(thrown).slice(0, part.length)).toBe(part);
}
