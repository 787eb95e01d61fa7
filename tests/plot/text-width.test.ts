import { describe, expect, test } from 'vitest';
import { textWidth, wrapped } from '../../src/plot/text-width.js';
import sans from '../reference/sans-widths.json' with { type: 'json' };

const widths = Object.entries(sans.advance).map(([character, advance]) => ({
  character,
  em: advance / sans.unitsPerEm,
}));

describe('the width that the library reckons with', () => {
  test('is never less than the widest of the usual faces takes', () => {
    const short = widths.filter(({ character, em }) => textWidth(character, 1) < em);
    expect(short).toEqual([]);
  });

  test('is not much more than that of an ordinary text', () => {
    const text = 'half-equivalence 8.96 mL, pH 10.32';
    const real = [...text].reduce((all, one) => all + (sans.advance[one as '8'] ?? 0) / sans.unitsPerEm, 0);
    expect(textWidth(text, 1) / real).toBeLessThan(1.1);
  });
});

describe('a text in lines', () => {
  test('has no line that is too long, and loses no letter', () => {
    const text = 'potassium hydrogen phthalate with a-very-long-word-that-fits-no-line-of-this-width by hand';
    const lines = wrapped(text, 90, 12);
    for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(90);
    expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
  });

  test('keeps together what a no-break space holds', () =>
    expect(wrapped('at pH\u00A07.00', 60, 12)).toEqual(['at', 'pH\u00A07.00']));
});
