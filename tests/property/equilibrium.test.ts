import fc from 'fast-check';
import { addWater, aliquot, equilibrate, makeUpTo, mix, pHOf, waterAt25 } from 'protolysis';
import { describe, expect, test } from 'vitest';
import type { Column } from '../../src/equilibrium/charge-balance.js';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';
import {
  type Acid,
  type Composition,
  decades,
  handbook,
  handbookCompositions,
  reagentOf,
  solutionOf,
  toleranceOf,
  wildCompositions,
} from './compositions.js';

const { pKw } = waterAt25;

/** Net charge at rounding level: the pH is off by its tolerance at most, and each charge is rounded a few times. */
const roundingOfCharge = (at: ReturnType<typeof equilibrate>) =>
  at.bufferCapacity * toleranceOf(at) +
  64 * 2 ** -53 * at.species.reduce((sum, { charge, molar }) => sum + Math.abs(charge) * molar, 0);

function expectBalances({ acids }: Composition, at: ReturnType<typeof equilibrate>): void {
  expect(Math.abs(at.chargeImbalance)).toBeLessThanOrEqual(roundingOfCharge(at));
  for (const { acid, molar } of acids) {
    const own = at.species.filter(({ protolyteId }) => protolyteId === acid.name);
    const rounding = (acid.pKa.length + 4) * 2 ** -52;
    const shares = own.map(({ fraction }) => fraction ?? Number.NaN);
    for (const share of shares) expect(share >= 0 && share <= 1).toBe(true);
    expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThanOrEqual(rounding);
    const total = own.reduce((sum, one) => sum + one.molar, 0);
    expect(Math.abs(total - molar)).toBeLessThanOrEqual(rounding * molar);
  }
}

describe('any mixture of the handbook’s acids', () => {
  test('closes its charge and mass balance', () => {
    fc.assert(
      fc.property(handbookCompositions, (composition) => {
        expectBalances(composition, equilibrate(solutionOf(composition)));
      }),
      { numRuns: 300 },
    );
  });

  test('has a lower pH the more strong acid it holds', () => {
    fc.assert(
      fc.property(handbookCompositions, decades(-6, 0), (composition, part) => {
        const at = equilibrate(solutionOf(composition));
        // 1e-6 of all charge that can be there: far above rounding, which is 1e-15 of it
        const all = composition.acids.reduce(
          (sum, { acid, molar }) => sum + molar * (acid.pKa.length + 4),
          1e-7,
        );
        const more = { ...composition, strongMolar: composition.strongMolar - part * all };
        expect(pHOf(solutionOf(more))).toBeLessThan(at.pH);
      }),
      { numRuns: 300 },
    );
  });

  test('does not remember in which order it was mixed', () => {
    fc.assert(
      fc.property(fc.array(handbookCompositions, { minLength: 3, maxLength: 3 }), (compositions) => {
        const [a, b, c] = compositions.map((composition, k) => solutionOf(composition, 10 + 7 * k));
        if (!a || !b || !c) throw new Error('three solutions');
        const at = equilibrate(mix(a, b, c));
        for (const other of [mix(c, b, a), mix(mix(a, b), c), mix(a, mix(c, b))])
          expect(Math.abs(pHOf(other) - at.pH)).toBeLessThanOrEqual(2 * toleranceOf(at));
      }),
      { numRuns: 100 },
    );
  });

  test('has the same pH in an aliquot, and in a diluted one whichever way the water goes in', () => {
    fc.assert(
      fc.property(handbookCompositions, decades(-3, 3), (composition, mL) => {
        const solution = solutionOf(composition);
        const at = equilibrate(solution);
        expect(Math.abs(pHOf(aliquot(solution, { mL })) - at.pH)).toBeLessThanOrEqual(2 * toleranceOf(at));
        const diluted = equilibrate(addWater(solution, { mL }));
        const marked = pHOf(makeUpTo(solution, { mL: 100 + mL }));
        expect(Math.abs(marked - diluted.pH)).toBeLessThanOrEqual(2 * toleranceOf(diluted));
      }),
      { numRuns: 100 },
    );
  });

  test('tends to neutral water as it is diluted', () => {
    fc.assert(
      fc.property(handbookCompositions, fc.integer({ min: 0, max: 7 }), (composition, times) => {
        const dilute = equilibrate(makeUpTo(solutionOf(composition), { mL: 100 * 10 ** times }));
        // the charge of all else is |Kw/h − h| = 2√Kw·sinh(ln10·|pH − pKw/2|), and at most what acids and ions can hold
        const most =
          composition.acids.reduce(
            (sum, { acid, molar }) =>
              sum + molar * Math.max(Math.abs(acid.topCharge), Math.abs(acid.topCharge - acid.pKa.length)),
            Math.abs(composition.strongMolar),
          ) /
          10 ** times;
        const bound = Math.asinh(most / (2 * 10 ** (-pKw / 2))) / Math.LN10;
        expect(Math.abs(dilute.pH - pKw / 2)).toBeLessThanOrEqual(bound + toleranceOf(dilute));
      }),
      { numRuns: 200 },
    );
  });

  test('mirrored, acid for base, has pKw − pH', () => {
    fc.assert(
      fc.property(handbookCompositions, ({ acids, strongMolar }) => {
        const at = equilibrate(solutionOf({ acids, strongMolar }));
        const mirrored = {
          acids: acids.map(({ acid: { name, topCharge, pKa }, molar }) => ({
            acid: { name, topCharge: pKa.length - topCharge, pKa: pKa.map((value) => pKw - value).reverse() },
            molar,
          })),
          strongMolar: -strongMolar,
        };
        const pH = pHOf(solutionOf(mirrored));
        expect(Math.abs(pKw - pH - at.pH)).toBeLessThanOrEqual(2 * toleranceOf(at));
      }),
      { numRuns: 200 },
    );
  });
});

describe('a half-neutralised acid of the handbook', () => {
  const monoprotic = handbook.filter(({ pKa }) => pKa.length === 1);
  const halfWay = (acid: Acid, molar: number) =>
    equilibrate(solutionOf({ acids: [{ acid, molar }], strongMolar: (0.5 - acid.topCharge) * molar }));

  test('there are many', () => expect(monoprotic.length).toBeGreaterThan(20));

  test.each(monoprotic)('$name: pH tends to pKa as concentration grows', (acid) => {
    const [pKa = 0] = acid.pKa;
    let before = Number.POSITIVE_INFINITY;
    for (const molar of [1e-6, 1e-4, 1e-2, 1, 20]) {
      const at = halfWay(acid, molar);
      // [A]/[HA] = (C/2 + d)/(C/2 − d) with d = h − Kw/h, so pH − pKa is its logarithm
      const h = 10 ** -at.pH;
      const d = h - 10 ** -pKw / h;
      const away = at.pH - pKa;
      if (Math.abs(d) < molar / 4)
        // h is known to ln10·tolerance, and d/C no better than that
        expect(Math.abs(away - Math.log10((molar / 2 + d) / (molar / 2 - d)))).toBeLessThanOrEqual(
          1e-13 + 8 * toleranceOf(at),
        );
      expect(Math.abs(away)).toBeLessThanOrEqual(before + 2 * toleranceOf(at));
      before = Math.abs(away);
    }
    // at 20 mol/L: 2d/(C/2)/ln 10 at most, and d is below 0.06 mol/L for pKa above 1.3, below 14 − 1.3 likewise
    if (pKa > 1.3 && pKa < pKw - 1.3) expect(before).toBeLessThanOrEqual(0.0053);
  });
});

describe('anything within the limits', () => {
  test('has a finite pH and closes its balances', () => {
    fc.assert(
      fc.property(wildCompositions, fc.constantFrom(10, 13.995, 20), (composition, itsPKw) => {
        const at = equilibrate(solutionOf(composition), { pKw: itsPKw });
        expect(Number.isFinite(at.pH)).toBe(true);
        expectBalances(composition, at);
      }),
      { numRuns: 500 },
    );
  });

  test('takes a few looks at the charge balance, from a cold start', () => {
    let all = 0;
    let runs = 0;
    fc.assert(
      fc.property(wildCompositions, (composition) => {
        const { balance, columns } = systemOf(
          [solutionOf(composition)],
          readConditions({ pKw }, 'conditions', new Faults('test')),
        );
        const { evaluations } = hydrogenIon(balance, columns[0] as Column, 0, emptyRoot());
        // every other pass halves a bracket of at most 50 in ln h down to steps of 1e-6: 2·log2(5e7) = 52
        expect(evaluations).toBeLessThanOrEqual(52);
        all += evaluations;
        runs += 1;
      }),
      { numRuns: 500 },
    );
    // 2.70 on average over 5000 of them, 0.1 of deviation over 500: a guess that is worse by half a step shows
    expect(all / runs).toBeLessThanOrEqual(3.1);
  });

  test('has the same pH with one acid written as two', () => {
    fc.assert(
      fc.property(handbookCompositions, ({ acids: [first], strongMolar }) => {
        if (!first) throw new Error('an acid');
        const { acid, molar } = first;
        const at = equilibrate(solutionOf({ acids: [first], strongMolar }));
        const parts = [acid, { ...acid, name: `${acid.name}, again` }];
        const two = pHOf(
          solutionOf({ acids: parts.map((one) => ({ acid: one, molar: molar / 2 })), strongMolar }),
        );
        expect(reagentOf(acid).protolytes).toHaveLength(1);
        expect(Math.abs(two - at.pH)).toBeLessThanOrEqual(2 * toleranceOf(at));
      }),
      { numRuns: 100 },
    );
  });
});
