import fc from 'fast-check';
import { makeSolution as makeInDoubles, pHsOf, titrate } from 'protolysis';
import { compareWithExact, exactEquilibrium, exactPH, makeSolution } from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { balanceOf, chargeAt as chargeInDoubles, emptyCharge } from '../../src/equilibrium/charge-balance.js';
import { familyOf } from '../../src/equilibrium/family.js';
import { formsAt, netOf } from '../../src/exact/model/exact-charge-balance.js';
import { exactMomentsOf } from '../../src/exact/model/exact-moments.js';
import { decimals } from '../../src/exact/numbers/decimals.js';
import { exactly } from '../../src/exact/numbers/exactly.js';
import { strongIon } from '../make.js';
import { type System, systems } from '../property/systems.js';
import { familyReagent } from '../reference/vectors.js';

// The double path is tuned; these tests hold it to the formula as it stands, over the whole input space.

const parts = ({ families, ions }: System) => [
  ...families.map((family) => ({ reagent: familyReagent(family).reagent, molar: family.molar })),
  ...ions.map(({ formula, charge, molar }) => ({ reagent: strongIon(formula, charge), molar })),
];

describe('doubles and decimals agree', () => {
  /**
   * Net charge to a few roundings of its terms, each derivative too. A species that lost j protons from the prevailing one is good
   * to j + Σ|pKa| roundings of its constants, which is what 2^-52 times 400 allows for: 6 steps of |pKa| ≤ 20, times ln 10.
   */
  test('on net charge and slope, at any h', () => {
    fc.assert(
      fc.property(systems, fc.integer({ min: -2e4, max: 18e4 }), (system, pH) => {
        const { pKw, families, ions } = system;
        const own = families.map((family) => familyOf(familyReagent(family).protolyte));
        const charge = ions.reduce((sum, ion) => sum + ion.charge * ion.molar, 0);
        const amounts = families.map(({ molar }) => molar);
        const h = 10 ** (-pH / 1e4);
        const double = chargeInDoubles(
          balanceOf(10 ** -pKw, own),
          { volume: 1, charge, amounts },
          h,
          emptyCharge(),
        );

        const arithmetic = decimals(60);
        const constant = (pK: number) => arithmetic.powerOfTen(exactly(-pK));
        const balance = {
          hydrogen: arithmetic.of(1),
          kw: constant(pKw),
          families: families.map(({ z0, pKa }) => ({
            topCharge: z0,
            constants: pKa.map((pK) => constant(Number(pK))),
          })),
          gas: [],
        };
        const column = {
          volume: arithmetic.of(1),
          charge: arithmetic.of(charge),
          squares: arithmetic.of(0),
          amounts: amounts.map(arithmetic.of),
        };
        const forms = formsAt(
          arithmetic,
          balance,
          column,
          arithmetic.of(h),
          families.map(() => 0),
        );
        const net = netOf(arithmetic, column, forms);
        const { zz: slope } = exactMomentsOf(arithmetic, forms, null);
        const size =
          h +
          10 ** -pKw / h +
          Math.abs(charge) +
          amounts.reduce(
            (sum, n, i) => sum + n * (2 + Math.abs(families[i]?.z0 ?? 0) + (families[i]?.pKa.length ?? 0)),
            0,
          );
        expect(net.minus(double.net).abs().toNumber()).toBeLessThanOrEqual(2 ** -52 * 400 * size);
        expect(slope.div(double.slope).minus(1).abs().toNumber()).toBeLessThanOrEqual(1e-12);
      }),
    );
  });

  test('on pH, to four conditioning limits', () => {
    fc.assert(
      fc.property(systems, (system) => {
        const { inLimits } = compareWithExact(makeSolution({ contents: parts(system) }), {
          pKw: system.pKw,
        });
        expect(inLimits).toBeLessThanOrEqual(4);
      }),
      { numRuns: 150 },
    );
  });

  test('row by row of columns and point by point of a curve, to eight', () => {
    fc.assert(
      fc.property(systems, systems, (one, other) => {
        const analyte = { mL: 20, contents: parts(one) };
        const titrant = {
          mL: 20,
          contents: [{ reagent: strongIon('titrant', other.ions.length > 1 ? 1 : -1), molar: 0.1 }],
        };
        const conditions = { pKw: one.pKw };
        const volumes = [0, 30, 1e-9, 20, 5, 5.0001, 1000, 0.5];
        const pHs = titrate({
          analyte: makeInDoubles(analyte),
          titrant: makeInDoubles(titrant),
          conditions,
        }).pHs(volumes);
        const strengths = volumes.map((mL) => (0.1 * mL) / (20 + mL));
        const rows = pHsOf(
          {
            contents: [
              ...analyte.contents.map(({ reagent, molar }) => ({
                reagent,
                molar: volumes.map((mL) => (molar * 20) / (20 + mL)),
              })),
              ...titrant.contents.map(({ reagent }) => ({ reagent, molar: strengths })),
            ],
          },
          conditions,
        );
        for (const [k, mL] of volumes.entries()) {
          const mixture = makeSolution({
            mL: 20 + mL,
            contents: [
              ...analyte.contents.map(({ reagent, molar }) => ({ reagent, mmol: 20 * molar })),
              ...titrant.contents.map(({ reagent }) => ({ reagent, mmol: 0.1 * mL })),
            ],
          });
          // products and quotients of the input were rounded too, so twice what the input's own rounding is allowed
          const { exact, limit } = compareWithExact(mixture, conditions);
          expect(
            exact
              .minus(pHs[k] as number)
              .abs()
              .toNumber(),
          ).toBeLessThanOrEqual(8 * limit);
          expect(
            exact
              .minus(rows[k] as number)
              .abs()
              .toNumber(),
          ).toBeLessThanOrEqual(8 * limit);
        }
      }),
      { numRuns: 25 },
    );
  });
});

describe('at exact equilibrium', () => {
  test('charge and mass close to the digits', () => {
    fc.assert(
      fc.property(systems, (system) => {
        const solution = makeSolution({ contents: parts(system) });
        const { species, pH } = exactEquilibrium(solution, { pKw: system.pKw, digits: 40 });
        const zero = pH.times(0);
        const total = species.reduce((sum, { charge, molar }) => sum.plus(molar.times(charge)), zero);
        const size = species.reduce((sum, { charge, molar }) => sum.plus(molar.times(charge).abs()), zero);
        expect(total.abs().lte(size.times('1e-38'))).toBe(true);
        for (const { name, molar } of system.families) {
          const own = species.filter(({ protolyteId }) => protolyteId === name);
          const sum = own.reduce((all, one) => all.plus(one.molar), zero);
          expect(sum.minus(molar).abs().lte(sum.times('1e-38'))).toBe(true);
        }
        const h = species[0]?.molar ?? zero;
        expect(h.log(10).plus(pH).abs().lt('1e-38')).toBe(true);
        expect(pH.toString()).toBe(exactPH(solution, { pKw: system.pKw, digits: 40 }).pH.toString());
      }),
      { numRuns: 40 },
    );
  });
});
