import {
  type ActivityModel,
  batesGuggenheim,
  davies,
  daviesOf,
  debyeHuckelAt,
  debyeHuckelExtendedOf,
  debyeHuckelLimiting,
  guntelberg,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import {
  type Coefficients,
  coefficientsOf,
  takeBends,
  takeCoefficients,
} from '../../src/equilibrium/activity/coefficients.js';
import { faultsOf, listed } from '../faults-of.js';

const source: Source = { kind: 'commonPractice', note: 'an invented law' };
const { A, B } = debyeHuckelAt(25);

/** The laws as their authors print them, −A·z²·(√I/(1 + b·√I) − c·I), and both derivatives with x = √I, by hand. */
const closed = (A: number, b: number, c: number) => ({
  value: (z: number, x: number) => -A * z * z * (x / (1 + b * x) - c * x * x),
  slope: (z: number, x: number) => -A * z * z * (1 / (2 * x * (1 + b * x) ** 2) - c),
  bend: (z: number, x: number) =>
    A * z * z * (1 / (4 * x ** 3 * (1 + b * x) ** 2) + b / (2 * x ** 2 * (1 + b * x) ** 3)),
});

const laws: readonly [ActivityModel, ReturnType<typeof closed>][] = [
  [debyeHuckelLimiting, closed(A, 0, 0)],
  [guntelberg, closed(A, 1, 0)],
  [batesGuggenheim, closed(A, 1.5, 0)],
  [davies, closed(0.509, 1, 0.3)],
  [daviesOf({ linear: 0.2 }), closed(0.509, 1, 0.2)],
  [debyeHuckelExtendedOf({ sizes: { X: 9 } }), closed(A, 9 * B, 0)],
];

/** Nearness of a closed form: a few roundings. */
const near = (value: number, expected: number) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-13 * Math.abs(expected));

describe('each law', () => {
  test.each(laws)('is its closed form, with both derivatives, #%#', (law, { value, slope, bend }) => {
    for (const z of [-3, -1, 1, 2])
      for (const x of [0.01, 0.3, 1.5]) {
        near(law.log10Gamma(z, x * x, 25, 'X'), value(z, x));
        near(law.dLog10Gamma?.(z, x * x, 25, 'X') ?? Number.NaN, slope(z, x));
        near(law.d2Log10Gamma?.(z, x * x, 25, 'X') ?? Number.NaN, bend(z, x));
      }
  });

  test.each(laws)('leaves a neutral species alone, at zero strength too, #%#', (law) => {
    for (const I of [0, 0.1]) {
      expect(law.log10Gamma(0, I, 25, 'X')).toBe(0);
      expect(law.dLog10Gamma?.(0, I, 25, 'X')).toBe(0);
      expect(law.d2Log10Gamma?.(0, I, 25, 'X')).toBe(0);
    }
  });

  test('of ion sizes takes 4.5 Å where no formula is given', () => {
    const law = debyeHuckelExtendedOf({ sizes: { X: 9 } });
    near(law.log10Gamma(1, 0.09, 25), closed(A, 4.5 * B, 0).value(1, 0.3));
  });
});

/** A law whose logarithm is −f·I for an ion of charge z and a formula. */
const linear = (f: (z: number, formula: string) => number, more: object = {}): ActivityModel => ({
  name: 'linear',
  log10Gamma: (z, I, _, formula = '') => -f(z, formula) * I,
  source,
  ...more,
});
const kind = (charge: number, formula: string) => ({ charge, formula });

describe('the ceiling', () => {
  const ceilingOf = (
    model: ActivityModel,
    charges: readonly number[] = [],
    spectators: readonly number[] = [],
  ) =>
    coefficientsOf(
      model,
      25,
      charges.map((z) => kind(z, 'A')),
      spectators.map((z) => kind(z, 'X')),
    ).ceiling;
  /** 100 mol/L, lowered by tenths until it is at most this. */
  const lowered = (most: number) => {
    let ceiling = 100;
    while (ceiling > most) ceiling *= 0.9;
    return ceiling;
  };

  test('is 100 mol/L where coefficients stay small', () => {
    expect(ceilingOf(linear(() => 0.05))).toBe(100);
    expect(ceilingOf(linear(() => -0.05))).toBe(100);
  });

  test('is lowered until log10 γ of H+ and of OH- is at most 5', () => {
    for (const one of ['H+', 'OH-']) {
      expect(ceilingOf(linear((_, formula) => (formula === one ? 1 : 0)))).toBe(lowered(5));
      expect(ceilingOf(linear((_, formula) => (formula === one ? -1 : 0)))).toBe(lowered(5));
    }
  });

  test('is lowered until that of every other ion, spectators too, is at most 90', () => {
    const other = linear((z, formula) => (/H/.test(formula) ? 0 : z));
    expect(ceilingOf(other, [1, 50])).toBe(lowered(1.8));
    expect(ceilingOf(other, [50, 1])).toBe(lowered(1.8));
    expect(ceilingOf(other, [1], [1, 50])).toBe(lowered(1.8));
  });

  test('is lowered 400 times at most, where no strength fits', () => {
    let ceiling = 100;
    for (let tenth = 0; tenth < 400; tenth += 1) ceiling *= 0.9;
    expect(ceilingOf({ name: 'six', log10Gamma: () => 6, source })).toBe(ceiling);
  });
});

/** Coefficients of these charges, taken at a strength. */
function taken(model: ActivityModel, ionicStrength: number, charges = [1, -2, 0, 3]): Coefficients {
  const out = coefficientsOf(
    model,
    25,
    charges.map((z) => kind(z, `A(${z})`)),
    [],
  );
  takeCoefficients(out, ionicStrength);
  return out;
}

describe.each([true, false])('coefficients where squareLaw is %s', (squareLaw) => {
  const law: ActivityModel = { ...davies, squareLaw };

  test('are those of the law', () => {
    const { gamma, log10, slope } = taken(law, 0.09);
    const { value, slope: slopeOf } = closed(0.509, 1, 0.3);
    for (const [k, z] of [1, -2, 0, 3].entries()) {
      near(log10[k] as number, value(z, 0.3));
      near(gamma[k] as number, 10 ** value(z, 0.3));
      near(slope[k] as number, slopeOf(z, 0.3));
    }
  });

  test('are 1 at zero strength, whatever the law says there', () => {
    const nowhere = { ...law, log10Gamma: (z: number, I: number) => (I === 0 ? Number.NaN : -z * z * I) };
    const { gamma, log10, slope } = taken({ ...nowhere, dLog10Gamma: (z, I) => (-z * z) / I }, 0);
    expect([...gamma]).toEqual([1, 1, 1, 1]);
    for (const column of [log10, slope]) expect([...column].map(Math.abs)).toEqual([0, 0, 0, 0]);
  });

  test('are held from the ceiling on, where their slopes are zero', () => {
    const steep = linear((z) => z * z, { squareLaw });
    const { ceiling } = taken(steep, 0);
    const below = taken(steep, ceiling * (1 - 1e-12));
    for (const strength of [ceiling, 2 * ceiling]) {
      const { gamma, slope, log10, ionicStrength } = taken(steep, strength);
      expect(ionicStrength).toBe(strength);
      expect([...slope].map(Math.abs)).toEqual([0, 0, 0, 0]);
      for (const [k, own] of log10.entries()) expect(own).toBeCloseTo(below.log10[k] as number, 9);
      near(gamma[0] as number, 10 ** -ceiling);
    }
    // Central differences of a straight line: rounding only, 1e-12 over the step of a thousandth.
    for (const [k, z] of [1, -2, 0, 3].entries()) expect(below.slope[k]).toBeCloseTo(-z * z, 10);
  });

  test('beyond 90 are refused, with the charge and the strength', () => {
    const at = (log10: number) => ({
      ...linear(() => 0, { squareLaw }),
      log10Gamma: (z: number, I: number) => (I === 0.5 && z === 1 ? log10 : 0),
      dLog10Gamma: () => 0,
    });
    for (const most of [90, -90]) expect(taken(at(most), 0.5, [1]).log10[0]).toBe(most);
    for (const beyond of [90.1, -90.1]) {
      const call = () => taken(at(beyond), 0.5, [1]);
      expect(listed(call)).toEqual(['out-of-range log10Gamma(1, 0.5)']);
      expect(faultsOf(call)[0]?.expected).toBe('a log10 γ, from -90 to 90');
    }
    expect(listed(() => taken(at(Number.NaN), 0.5, [1]))).toEqual(['not-finite log10Gamma(1, 0.5)']);
  });
});

test('a square law is asked once for all ions', () => {
  const asked: number[] = [];
  const watched = {
    ...davies,
    log10Gamma: (z: number, I: number, t: number) => {
      if (I === 0.1) asked.push(z);
      return davies.log10Gamma(z, I, t);
    },
  };
  taken(watched, 0.1);
  expect(asked).toEqual([1]);
});

describe('second derivatives', () => {
  const bendsAt = (model: ActivityModel, ionicStrength: number) => {
    const out = taken(model, ionicStrength);
    takeBends(out);
    return out.bend;
  };
  const { log10Gamma, dLog10Gamma } = davies;
  const { bend } = closed(0.509, 1, 0.3);
  const bare: ActivityModel = { name: 'own', log10Gamma, source };
  const differenced = [bare, dLog10Gamma ? { ...bare, dLog10Gamma } : bare];

  test('are those of the law, or differences of fourth order', () => {
    for (const [k, z] of [1, -2, 0, 3].entries()) {
      near(bendsAt(davies, 0.09)[k] as number, bend(z, 0.3));
      // The next term of the expansion: 1e-8 of I^−½ at a hundredth of I, and the rounding of two differences.
      const bends = differenced.map((model) => bendsAt(model, 0.09)[k] as number);
      for (const own of bends)
        expect(Math.abs(own - bend(z, 0.3))).toBeLessThanOrEqual(1e-6 * Math.abs(bend(z, 0.3)));
    }
  });

  test('are zero from the ceiling on', () => {
    const steep: ActivityModel = { ...linear((z) => z * z), d2Log10Gamma: () => 7 };
    const { ceiling } = taken(steep, 0);
    expect([...bendsAt(steep, ceiling)]).toEqual([0, 0, 0, 0]);
    expect([...bendsAt(steep, ceiling * (1 - 1e-9))]).toEqual([7, 7, 7, 7]);
  });
});
