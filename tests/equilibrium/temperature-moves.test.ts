import { acids, defineProtolyte, pKaAt, type Source, type Step } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { notesOnTemperature } from '../../src/equilibrium/temperature/pka-at.js';
import { pKaSlopeAt } from '../../src/equilibrium/temperature/pka-slope-at.js';

const source: Source = { kind: 'commonPractice', note: 'an invented step' };

/** An acid of these steps. */
const acidOf = (...steps: readonly Omit<Step, 'source'>[]) =>
  defineProtolyte({
    id: 'moves',
    name: 'acid',
    species: Array.from({ length: steps.length + 1 }, (_, lost) => ({ formula: `A${lost}`, charge: -lost })),
    steps: steps.map((step) => ({ ...step, source })),
  });

const thermal = { pKa: 8, dH: 40, dCp: -80 };
/** Each term of the fit gives about a tenth of pKa or more over 50 °C. */
const fit = { coefficients: [20, 0.01, -2000, 3, 4e5], celsius: [10, 40] } as const;
const fitted = { pKa: 6, log10K: { ...fit, source } };

describe('how pKa moves with temperature', () => {
  test.each([0, 25, 37, 60])('is the slope of pKaAt at %d °C', (t) => {
    for (const step of [thermal, { pKa: 8, dH: -40 }, fitted]) {
      const acid = acidOf(step);
      const at = (celsius: number) => pKaAt(acid, celsius)[0] as number;
      const inside = Math.max(t, 0.1);
      const slope = (at(inside + 0.01) - at(inside - 0.01)) / 0.02;
      // Central differences over 0.01 °C: a third derivative of 1e-6 gives 1e-10, rounding 1e-13.
      expect(pKaSlopeAt({ ...step, source }, inside)).toBeCloseTo(slope, 8);
    }
  });

  test('is −ΔH/(ln10·R·T²) by van ’t Hoff: Tris, 47.45 kJ/mol, loses 0.028 per °C', () => {
    // Goldberg, Kishore, Lennen, J. Phys. Chem. Ref. Data 31, 231 (2002): ΔH of Tris. 47450/(2.302585·8.314463·298.15²) = 0.02788.
    expect(pKaSlopeAt({ pKa: 8.072, dH: 47.45, source }, 25)).toBeCloseTo(-0.02788, 5);
    expect(pKaSlopeAt(acids.tris.steps[0] as Step, 25)).toBeCloseTo(-0.028, 3);
  });

  test('is not known of a step with neither an enthalpy nor an equation', () => {
    expect(pKaSlopeAt({ pKa: 4, source }, 25)).toBeNull();
    expect(pKaSlopeAt({ pKa: 4, source }, 50)).toBeNull();
  });
});

describe('the notes on temperature', () => {
  const bare = { pKa: 3 };
  const fixed = 'acid: no enthalpy is given for step 1, so its pKa is that of 25 °C.';
  const outside = (t: number, steps: string) =>
    `acid: ${t} °C is outside the range of the temperature data for step ${steps}.`;

  test('say nothing at 25 °C', () => {
    expect(notesOnTemperature(acidOf(bare), 25)).toEqual([]);
  });

  test.each([
    [0, [fixed, outside(0, '2')]],
    [9.9, [fixed, outside(9.9, '2')]],
    [10, [fixed]],
    [40, [fixed]],
    [40.1, [fixed, outside(40.1, '2')]],
    [50, [fixed, outside(50, '2')]],
    [50.1, [fixed, outside(50.1, '2, 3')]],
  ])('name the steps that stay and those out of range, at %d °C', (t, notes) => {
    expect(notesOnTemperature(acidOf(bare, fitted, thermal), t)).toEqual(notes);
  });

  test('say nothing of steps whose data reach so far', () => {
    expect(notesOnTemperature(acidOf(fitted, thermal), 30)).toEqual([]);
    expect(notesOnTemperature(acidOf(thermal), 0)).toEqual([]);
    expect(notesOnTemperature(acidOf(bare), 80)).toEqual([fixed]);
  });
});
