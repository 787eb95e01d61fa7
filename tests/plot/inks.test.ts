import { colourDifference } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { curveInks, ink, paleInk, readingInk } from '../../src/plot/inks.js';

/** Contrast with white paper: W3C, Web Content Accessibility Guidelines 2.1, "contrast ratio" and "relative luminance". */
function contrast(hex: string): number {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((one) => (one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4)) as [
    number,
    number,
    number,
  ];
  return 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05);
}

describe('the inks', () => {
  // 4.5: success criterion 1.4.3 of the same guidelines, for text of ordinary size
  test('can be read on white paper', () => {
    expect(contrast('#767676')).toBeCloseTo(4.54, 2);
    for (const colour of [ink, paleInk, readingInk, ...curveInks.map((one) => one.colour)])
      expect(contrast(colour)).toBeGreaterThanOrEqual(4.5);
  });

  test('have each dashes of their own, for a copy in black and white', () => {
    const dashes = curveInks.map(({ dash }) => dash ?? 'none');
    expect(new Set(dashes).size).toBe(curveInks.length);
  });

  // 10 of CIEDE2000: more than four times what is just noticed side by side, 2.3 (common practice).
  test('of neighbouring curves differ for any kind of colour vision', () => {
    const pairs = curveInks.slice(1).map((one, k) => [curveInks[k]?.colour ?? '', one.colour] as const);
    for (const [a, b] of pairs)
      for (const difference of Object.values(colourDifference(a, b))) expect(difference).toBeGreaterThan(10);
  });
});
