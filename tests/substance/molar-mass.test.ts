import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atomicWeights, atomicWeightsFromMemory, waterMass } from '../../src/catalogue/atomic-weights.js';
import { InputError } from '../../src/input/input-error.js';
import { molarMassOf } from '../../src/substance/molar-mass.js';
import { answerOrInputError, hostile } from '../property/hostile.js';
import reference from '../reference/atomic-weights.json' with { type: 'json' };

// T. Prohaska et al., Pure Appl. Chem. 94, 573–600 (2022); tests/reference/atomic-weights.json says what was read where.
describe('atomic weights', () => {
  test('are those of the reference table, element by element', () => {
    const table = Object.fromEntries(
      reference.elements.map((e) => [e.symbol, e.value_used_for_molar_masses]),
    );
    expect(atomicWeights).toEqual(table);
  });

  test('give the molar mass of water that heats and recipes take', () => {
    expect(waterMass).toBe(molarMassOf('H2O'));
  });

  test('that rest on memory are named', () => {
    const fromMemory = reference.elements.filter(
      // An abridged value was used, and only its interval was read; or nothing was read.
      (e) => e.standard_2021.startsWith('[') || e.check === 'memory',
    );
    expect([...atomicWeightsFromMemory].sort()).toEqual(fromMemory.map((e) => e.symbol).sort());
  });

  test('meet the standard interval, where there is one, within the uncertainty that is printed with them', () => {
    const intervals = reference.elements.filter((e) => e.standard_2021.startsWith('['));
    expect(intervals.length).toBe(12);
    for (const { symbol, standard_2021, abridged_uncertainty } of intervals) {
      const [low = Number.NaN, high = Number.NaN] = standard_2021.match(/[\d.]+/g)?.map(Number) ?? [];
      const weight = atomicWeights[symbol as keyof typeof atomicWeights];
      expect(weight + abridged_uncertainty, symbol).toBeGreaterThanOrEqual(low);
      expect(weight - abridged_uncertainty, symbol).toBeLessThanOrEqual(high);
    }
  });
});

describe('molar mass', () => {
  test.each(reference.reagents)(
    'of $name, $formula',
    ({ formula, molar_mass_g_per_mol, usual_printed_value }) => {
      expect(molarMassOf(formula)).toBe(molar_mass_g_per_mol);
      // Labels and handbooks print two decimals, some from older weights: within 0.02 (reference file, from memory).
      expect(Math.abs(molarMassOf(formula) - usual_printed_value)).toBeLessThan(0.02);
    },
  );

  // Sums by hand: 2 (14.007 + 4·1.008) + 32.06 + 4·15.999; 4·39.0983 + 55.845 + 6 (12.011 + 14.007) + 3·18.015.
  test.each([
    ['(NH4)2SO4', 132.134],
    ['K4[Fe(CN)6]·3H2O', 422.3912],
    ['K2CO3·1.5H2O', 165.2271],
    ['Ca(OH)2', 74.092],
    ['Na2CO3·10H2O', 286.1375],
    ['Na2CO3*10H2O', 286.1375],
    ['Na2CO3.10H2O', 286.1375],
  ])('of %s, with brackets and dots', (formula, expected) => {
    expect(molarMassOf(formula)).toBe(expected);
  });

  test.each(['SO4(2-)', 'SO4(2-)(aq)', 'SO4(aq)', 'SO4-', 'SO4+'])(
    'a charge or a state weighs nothing: %s',
    (formula) => {
      expect(molarMassOf(formula)).toBe(molarMassOf('SO4'));
    },
  );

  test.each([
    ['Na2Xx3', "an element of known atomic weight instead of 'Xx' at character 4"],
    ['Ca(OH2', "a formula with a ')' for the '(' at character 3"],
    ['[Ca(OH)2}', "a formula with a ']' for the '[' at character 1"],
    ['Ca)OH', "without the ')' at character 3"],
    ['Na₂CO₃', "without the '₂' at character 3"],
    ['CO3 2-', "without the ' ' at character 4"],
    ['H0', 'a count above 0 and at most 1000 at character 2'],
    ['Na2C03', 'a count that does not begin with 0 (oxygen is the letter O) at character 5'],
    ['H1001', 'a count above 0 and at most 1000 at character 2'],
    ['Na2CO3·0H2O', 'a count above 0 and at most 1000 at character 8'],
    ['Na2CO3·', 'an element symbol at character 8'],
    ['()', 'an element symbol at character 2'],
    ['na2co3', 'an element symbol at character 1'],
    ['constructor', 'an element symbol at character 1'],
    ['((C100)100)100', 'at most 100000 atoms'],
  ])('%s cannot be read, and the message says where', (formula, expected) => {
    const error = answerTo(() => molarMassOf(formula));
    expect(error.issues).toEqual([
      {
        code: 'bad-formula',
        path: 'formula',
        expected: expect.stringContaining(expected),
        received: `'${formula}'`,
      },
    ]);
  });

  test('of anything is a number above 0 or an InputError', () => {
    const letters = fc.string({ unit: fc.constantFrom(...'NaClOH([{}])·.*0129+- q') });
    fc.assert(
      fc.property(fc.oneof(hostile, letters), (value) => {
        const mass = answerOrInputError(() => molarMassOf(value as string));
        expect(mass === undefined || (Number.isFinite(mass) && mass > 0)).toBe(true);
      }),
    );
  });

  test('adds up: the mass of joined parts is the sum of the masses', () => {
    const part = fc.constantFrom('H2O', 'NaCl', 'C6H12O6', 'Ca(OH)2', '[Fe(CN)6]', 'CuSO4');
    fc.assert(
      fc.property(part, part, fc.integer({ min: 1, max: 20 }), (a, b, n) => {
        // Each term is rounded to 1e-4, so the sum may be off by half of that for a and n times half of it for b.
        expect(Math.abs(molarMassOf(`${a}·${n}${b}`) - molarMassOf(a) - n * molarMassOf(b))).toBeLessThan(
          1e-4 * (n + 2),
        );
      }),
    );
  });
});

function answerTo(call: () => unknown): InputError {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('no InputError');
}
