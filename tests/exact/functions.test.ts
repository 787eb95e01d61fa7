import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { acids, type Protolyte } from 'protolysis';
import * as laws from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { modelOf } from '../../src/equilibrium/activity/debye-huckel-extended.js';
import { henryAt, henryFit } from '../../src/equilibrium/carbon-dioxide.js';
import { parametersAt, parametersIn } from '../../src/equilibrium/temperature/debye-huckel-at.js';
import { log10KAt } from '../../src/equilibrium/temperature/log10-k-at.js';
import { movedPKa, stepAt } from '../../src/equilibrium/temperature/pka-at.js';
import { ionProductAt, ionProductIn, releasedPKw } from '../../src/equilibrium/temperature/pkw-at.js';
import { lawIn } from '../../src/exact/model/exact-activity.js';
import { decimals } from '../../src/exact/numbers/decimals.js';
import type { Interval } from '../../src/exact/numbers/interval-operations.js';
import { intervals } from '../../src/exact/numbers/intervals.js';
import type { Step } from '../../src/substance/protolyte.js';
import water from '../reference/water.json' with { type: 'json' };

const digits = 40;
const arithmetic = intervals(digits);
const Wide = Decimal.clone({ defaults: true, precision: 2 * digits });
const near = ({ low, high }: Interval, value: Decimal, width: string) => {
  expect(low.lte(value) && high.gte(value), `${low} to ${high} for ${value}`).toBe(true);
  expect(new Wide(high).minus(low).lte(value.abs().plus(1).times(width))).toBe(true);
};
const point = (x: number): Interval => arithmetic.decimal(x);
/** Relative, or absolute below 1: eight digits, which the squarings of an exponential lose, and two for 10^±15. */
const lost = '1e-30';
const positive = fc.double({ min: -15, max: 15, noNaN: true }).map((x) => 10 ** x);

describe('on intervals', () => {
  // decimal.js works these out to any precision by routes of its own
  test('roots, powers and logarithms hold the value, and are narrow', () => {
    fc.assert(
      fc.property(positive, (x) => {
        const exact = new Wide(String(x));
        near(arithmetic.sqrt(point(x)), exact.sqrt(), '1e-38');
        near(arithmetic.log10(point(x)), exact.log(10), lost);
        near(arithmetic.ln(point(x)), exact.ln(), lost);
        const exponent = exact.ln();
        const own = { low: exponent.toDP(60, 3), high: exponent.toDP(60, 2) };
        near(arithmetic.exp(own), exact, lost);
        near(arithmetic.tenTo(point(Math.log10(x))), Wide.pow(10, String(Math.log10(x))), lost);
      }),
      { numRuns: 60 },
    );
  });

  test('so do π, the root of 0 and the logarithm of 1', () => {
    near(arithmetic.pi, Wide.acos(-1), '1e-37');
    near(arithmetic.sqrt(point(0)), new Wide(0), '0');
    near(arithmetic.log10(point(1)), new Wide(0), lost);
  });

  test('so do all of them over intervals that are wide', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const between = new Wide(low).plus(new Wide(high).minus(low).times(share));
        const wide = { low: point(low).low, high: point(high).high };
        for (const [own, exact] of [
          [arithmetic.sqrt(wide), between.sqrt()],
          [arithmetic.log10(wide), between.log(10)],
          [arithmetic.times(wide, wide), between.times(between)],
        ] as const)
          expect(own.low.lte(exact) && own.high.gte(exact)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the formulas of temperature on decimals', () => {
  test.each(water.ionisation_constant.equation_IAPWS.release_check_values)(
    'give the check value of IAPWS R11-07 at $T_K K and $rho_g_per_cm3 g/cm³ to the printed digits',
    ({ T_K, rho_g_per_cm3, pKw }) => {
      const own = decimals(digits);
      const value = releasedPKw(own, own.decimal(T_K), own.decimal(rho_g_per_cm3));
      expect(value.toNumber()).toBeCloseTo(pKw, 6);
    },
  );

  // A double is off by a few roundings of the largest term: 180 for pKw, 400 for a fit with log10 T, 40 for ΔH.
  test('agree with the doubles, from 0 to 100 °C', () => {
    const own = decimals(digits);
    const bit = 2 ** -52;
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.constantFrom<Protolyte>(...(Object.values(acids) as Protolyte[])),
        (celsius, { steps }) => {
          const t = own.decimal(celsius);
          const apart = (decimal: Decimal, double: number) => decimal.minus(double).abs().toNumber();
          expect(apart(ionProductIn(own, t), ionProductAt(celsius))).toBeLessThan(2 * 180 * bit);
          expect(apart(log10KAt(own, henryFit, t), -henryAt(celsius))).toBeLessThan(400 * bit);
          for (const step of steps)
            expect(apart(movedPKa(own, step, t), stepAt(step, celsius))).toBeLessThan(
              (step.log10K ? 2 * 400 : 80) * bit,
            );
          const { A, B } = parametersIn(own, t);
          expect(apart(A, parametersAt(celsius).A)).toBeLessThan(10 * bit);
          expect(apart(B, parametersAt(celsius).B)).toBeLessThan(10 * bit);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('move pKa from its value at 25 °C', () => {
    const { low, high } = movedPKa(arithmetic, acids.tris.steps[0] as Step, point(25));
    expect(low.lte('8.072') && high.gte('8.072') && high.minus(low).lt(1e-30)).toBe(true);
  });
});

describe('the laws of activity on decimals', () => {
  const all = [
    laws.davies,
    { ...laws.davies, name: 'Davies (0.2 I)', c: 0.2 },
    laws.guntelberg,
    laws.batesGuggenheim,
    laws.debyeHuckelLimiting,
    laws.debyeHuckelExtended,
    { ...laws.debyeHuckelExtended, sizes: { 'Na+': 2.5 } },
  ];

  test('agree with the models in doubles on γ and its slope, for any ion, strength and temperature', () => {
    const own = decimals(digits);
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.integer({ min: -6, max: 6 }),
        fc.constantFrom('H+', 'Na+', 'Cl-', 'X'),
        fc.double({ min: -12, max: 1, noNaN: true }),
        fc.constantFrom(0, 25, 37.5, 100),
        (law, charge, formula, log, celsius) => {
          const I = 10 ** log;
          const model = modelOf(law);
          const at = lawIn(own, law, own.decimal(celsius), celsius === 25, own.of(1e6))(own.of(I));
          const { gamma, slope } = at.of({ charge, formula });
          const log10Gamma = model.log10Gamma(charge, I, celsius, formula);
          // where the two terms of Davies cancel, the rounding of either is left
          const size = charge ** 2 * (1 + I) + Math.abs(log10Gamma);
          expect(gamma.log(10).minus(log10Gamma).abs().toNumber()).toBeLessThanOrEqual(20 * 2 ** -52 * size);
          const double = model.dLog10Gamma?.(charge, I, celsius, formula) ?? Number.NaN;
          const steep = charge ** 2 * (1 / Math.sqrt(I) + 1);
          expect(slope.minus(double).abs().toNumber()).toBeLessThanOrEqual(20 * 2 ** -52 * steep);
          const other = { charge: -charge - 1, formula: 'Cl-' };
          const quotient = gamma.div(at.of(other).gamma);
          expect(at.ratio({ charge, formula }, other).div(quotient).minus(1).abs().lt(1e-30)).toBe(true);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('stay above a ceiling what they are there', () => {
    const own = decimals(digits);
    const at = lawIn(own, laws.davies, own.of(25), true, own.of(2));
    const [below, above] = [at(own.of(2)), at(own.of(3))].map((one) => one.of({ charge: 1, formula: 'H+' }));
    expect(above?.gamma.eq(below?.gamma ?? 0)).toBe(true);
    expect(above?.slope.isZero()).toBe(true);
  });

  test('on an interval hold what they are anywhere on it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.double({ min: -9, max: 0, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (law, log, share) => {
          const low = 10 ** log;
          const wide = { low: point(low).low, high: point(1.5 * low).high };
          const lawAt = lawIn(arithmetic, law, point(25), true, point(100));
          const ion = { charge: -2, formula: 'SO4(2-)' };
          const [over, inside] = [lawAt(wide).of(ion), lawAt(point(low * (1 + share / 2))).of(ion)];
          for (const key of ['gamma', 'slope'] as const)
            expect(over[key].low.lte(inside[key].low) && over[key].high.gte(inside[key].high)).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('Davies at 25 °C is the equation of 1962', () => {
    const own = decimals(digits);
    const { gamma } = lawIn(
      own,
      laws.davies,
      own.of(25),
      true,
      own.of(100),
    )(own.decimal(0.09)).of({
      charge: 1,
      formula: 'H+',
    });
    const closed = new Wide('-0.509').times(new Wide('0.3').div('1.3').minus('0.027'));
    expect(gamma.log(10).minus(closed).abs().lt(1e-30)).toBe(true);
  });
});
