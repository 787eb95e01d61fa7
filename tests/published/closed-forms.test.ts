import { equilibrate, makeSolution, pHOf, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith, saltOf, sodium, strongIon } from '../make.js';

// Answers that need no iteration, each from its equation. With pKw 14 the inputs condition these pH to a few 1e-15
// (each input off by 2⁻⁵², as in reference/vectors/README.md); 1e-13 leaves room for 7·2⁻⁵² in both numbers compared.
const tolerance = 1e-13;
const conditions = { pKw: 14 };
const acid = strongIon('Cl-', -1);
const base = strongIon('Na+', 1);
const expectPH = (contents: Parameters<typeof makeSolution>[0]['contents'], pH: number) =>
  expect(Math.abs(pHOf(makeSolution({ contents }), conditions) - pH)).toBeLessThanOrEqual(tolerance);

describe('strong acid and base', () => {
  const phi = (1 + Math.sqrt(5)) / 2;

  test('1e-7 mol/L strong acid: h² − c·h − Kw = 0 gives h = φ·1e-7, pH = 7 − log10 φ', () => {
    expectPH([{ reagent: acid, molar: 1e-7 }], 7 - Math.log10(phi));
  });

  test('1e-7 mol/L strong base mirrors it: pH = 7 + log10 φ', () => {
    expectPH([{ reagent: base, molar: 1e-7 }], 7 + Math.log10(phi));
  });

  test('any strong acid: h = (c + √(c² + 4Kw))/2', () => {
    for (const c of [1e-12, 3e-8, 2e-7, 1e-6, 0.01, 1, 20])
      expectPH([{ reagent: acid, molar: c }], -Math.log10((c + Math.sqrt(c * c + 4e-14)) / 2));
  });
});

describe('water', () => {
  const water = equilibrate(makeSolution({ contents: [] }), conditions);

  test('is at pKw/2, with β = 2·ln10·√Kw and ionic strength √Kw', () => {
    expect(water.pH).toBe(7);
    expect(Math.abs(water.bufferCapacity / (2 * Math.LN10 * 1e-7) - 1)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(water.ionicStrength / 1e-7 - 1)).toBeLessThanOrEqual(tolerance);
  });
});

describe('weak acids', () => {
  test('pKa 7, 4.5e-7 mol/L: h − Kw/h = C·K/(K + h) is met by h = 2e-7', () => {
    expectPH([{ reagent: acidWith('a', 0, [7]).reagent, molar: 4.5e-7 }], 7 - Math.log10(2));
  });

  test('its mirror, a base whose conjugate acid has pKa 7', () => {
    expectPH([{ reagent: acidWith('b', 1, [7]).reagent, molar: 4.5e-7 }], 7 + Math.log10(2));
  });

  test('pKa 4, 0.02 mol/L without water to speak of: h² + K·h − K·C = 0', () => {
    // leaving Kw/h out of h − Kw/h = K·C/(K + h) moves h by less than Kw/h, hence pH by less than Kw/h² = 5.3e-9
    const h = (-1e-4 + Math.sqrt(1e-8 + 4 * 1e-4 * 0.02)) / 2;
    const reagent = acidWith('a', 0, [4]).reagent;
    const pH = pHOf(makeSolution({ contents: [{ reagent, molar: 0.02 }] }), conditions);
    expect(Math.abs(pH + Math.log10(h))).toBeLessThanOrEqual(1e-14 / (h * h));
  });

  test('half neutralised, pKa 7: both forms alike at pH 7, at any concentration', () => {
    const pair = acidWith('a', 0, [7]);
    for (const molar of [1e-12, 1e-7, 1e-3, 20])
      expectPH(
        [
          { reagent: pair.reagent, molar },
          { reagent: saltOf(pair, sodium), molar },
        ],
        7,
      );
  });
});

describe('symmetry puts the answer at pKw/2', () => {
  test('a zwitterion whose pKa add up to pKw', () => {
    for (const molar of [1e-9, 1e-4, 0.1, 20])
      expectPH([{ reagent: acidWith('z', 1, [2.5, 11.5]).reagent, molar }], 7);
  });

  test('the salt of a weak acid and a weak base of equal strength', () => {
    expectPH(
      [
        { reagent: acidWith('a', 0, [4.75]).reagent, molar: 0.1 },
        { reagent: acidWith('b', 1, [9.25]).reagent, molar: 0.1 },
      ],
      7,
    );
  });
});

describe('strong acid into strong base', () => {
  const titration = titrate({
    analyte: makeSolution({ mL: 20, contents: [{ reagent: base, molar: 0.1 }] }),
    titrant: makeSolution({ contents: [{ reagent: acid, molar: 0.1 }] }),
    conditions,
  });

  test('equivalence lies where the amounts are equal, at pKw/2', () => {
    const [point] = titration.equivalencePoints;
    expect(point?.mL).toBe(20);
    expect(point?.pH).toBe(7);
  });

  test('the slope there is −c/(2·ln10·√Kw·(V₀ + V))', () => {
    // dpH/dV = T/(ln10·∂F/∂ln h), T = h − Kw/h − c = −c, ∂F/∂ln h = (V₀ + V)·2·√Kw; condition 1e-10 in pH, so 2.3e-10 in h
    const slope = -0.1 / (2 * Math.LN10 * 1e-7 * 40);
    expect(Math.abs(titration.slopeAt(20) / slope - 1)).toBeLessThanOrEqual(1e-13);
  });
});
