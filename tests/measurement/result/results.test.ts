import fc from 'fast-check';
import {
  assay,
  backTitratedAmount,
  compositionFromEndpoints,
  standardiseTitrant,
  titratedAmount,
} from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { faultsOf } from '../../faults-of.js';

const estimate = (value: number, standardUncertainty: number, degreesOfFreedom: number | null = null) => ({
  value,
  standardUncertainty,
  degreesOfFreedom,
});
const standard = { molarMass: 106, ratio: 2 };
const pathsOf = (call: () => unknown) => faultsOf(call).map(({ path }) => path);

describe('standardiseTitrant', () => {
  test('the scatter of the runs is the repeatability, with its degrees of freedom', () => {
    const runs = [24.9, 25, 25.1].map((mL) => ({ grams: 0.1325, mL }));
    const { contributions, degreesOfFreedom, replicates, standardUncertainty } = standardiseTitrant({
      standard,
      runs,
    });
    expect(contributions.map(({ input, percent }) => [input, percent])).toEqual([
      ['purity', 0],
      ['molarMass', 0],
      ['repeatability', 100],
    ]);
    expect(degreesOfFreedom).toBeCloseTo(2, 8);
    expect(standardUncertainty).toBeCloseTo(replicates?.mean.standardUncertainty ?? 0, 12);
  });

  test('one run has no repeatability, and says so', () => {
    const { notes, replicates } = standardiseTitrant({ standard, runs: [{ grams: 0.1325, mL: 25 }] });
    expect(replicates).toBeNull();
    expect(notes).toEqual(['One run tells nothing of the scatter: the budget has no repeatability.']);
  });

  test('an error that all runs share is not made smaller by more runs', () => {
    const uncertaintyOf = (count: number) =>
      standardiseTitrant({
        standard,
        runs: Array.from({ length: count }, () => ({ grams: 0.1325, mL: 25 })),
        buretteError: estimate(0, 0.02),
      }).standardUncertainty;
    expect(uncertaintyOf(10)).toBeCloseTo(uncertaintyOf(2), 12);
    expect(uncertaintyOf(2)).toBeCloseTo(0.1 * (0.02 / 25), 8);
  });

  test('blank, late end point and balance are taken off', () => {
    const exact = standardiseTitrant({ standard, runs: [{ grams: 0.1325, mL: 25 }] });
    const shifted = standardiseTitrant({
      standard,
      runs: [{ grams: 0.1335, mL: 25.4 }],
      blank: 0.1,
      endpointError: 0.2,
      buretteError: 0.1,
      weighingError: 0.001,
    });
    expect(shifted.value).toBeCloseTo(exact.value, 14);
  });

  test('a blank that is larger than a run is a fault of that run', () =>
    expect(
      pathsOf(() =>
        standardiseTitrant({
          standard,
          runs: [
            { grams: 0.1, mL: 25 },
            { grams: 0.1, mL: 1 },
          ],
          blank: 2,
        }),
      ),
    ).toEqual(['runs[1].mL']));
});

describe('assay', () => {
  test('finds the mass fraction that the powder was made with, whatever the dilution', () =>
    fc.assert(
      fc.property(
        fc.record({
          share: fc.double({ min: 0.05, max: 1, noNaN: true }),
          grams: fc.double({ min: 0.1, max: 10, noNaN: true }),
          part: fc.double({ min: 0.01, max: 1, noNaN: true }),
        }),
        ({ share, grams, part }) => {
          const mL = (2 * 1000 * share * grams * part) / 106 / 0.1;
          const { value } = assay({
            runs: [{ grams, mL }],
            molar: 0.1,
            molarMass: 106,
            ratio: 2,
            flask: 250,
            aliquot: 250 * part,
          });
          expect(Math.abs(value / share - 1)).toBeLessThan(1e-14); // ten roundings
        },
      ),
    ));

  test('the titrant’s uncertainty is one of the contributions, and its degrees of freedom count', () => {
    const { contributions, degreesOfFreedom } = assay({
      runs: [{ grams: 0.25, mL: 46 }],
      molar: estimate(0.1, 0.0002, 6),
      molarMass: 106,
      ratio: 2,
    });
    expect(contributions.find(({ input }) => input === 'molar')?.percent).toBe(100);
    expect(degreesOfFreedom).toBeCloseTo(6, 8);
  });

  test('a flask without its aliquot, and an aliquot of more than the flask, are faults', () => {
    const rest = { runs: [{ grams: 0.25, mL: 46 }], molar: 0.1, molarMass: 106, ratio: 2 };
    expect(pathsOf(() => assay({ ...rest, flask: 250 }))).toEqual(['aliquot']);
    expect(pathsOf(() => assay({ ...rest, flask: 20, aliquot: 25 }))).toEqual(['aliquot']);
  });
});

describe('titratedAmount and backTitratedAmount', () => {
  test('the blank’s uncertainty adds to that of the volume', () => {
    const { standardUncertainty } = titratedAmount({
      mL: estimate(25, 0.03),
      molar: 0.1,
      blank: estimate(0.1, 0.04),
    });
    expect(standardUncertainty).toBeCloseTo(0.1 * 0.05, 9);
  });

  test('with a blank the uncertainty of the excess plays no part', () => {
    const excess = { mL: estimate(50, 0.05), molar: estimate(0.1, 0.001) };
    const [mL, molar] = [estimate(10, 0.02), estimate(0.1, 0.0001)];
    const byExcess = backTitratedAmount({ excess, mL, molar });
    const byBlank = backTitratedAmount({ blank: estimate(50, 0.02), mL, molar });
    expect(byBlank.value).toBeCloseTo(byExcess.value, 12);
    expect(byBlank.standardUncertainty).toBeLessThan(byExcess.standardUncertainty / 5);
  });

  test('asks for one of excess and blank, and for no more titrant than they take', () => {
    const rest = { mL: 60, molar: 0.1 };
    const excess = { mL: 50, molar: 0.1 };
    expect(pathsOf(() => backTitratedAmount(rest))).toEqual(['excess']);
    expect(pathsOf(() => backTitratedAmount({ ...rest, excess, blank: 50 }))).toEqual(['excess']);
    expect(pathsOf(() => backTitratedAmount({ ...rest, excess }))).toEqual(['mL']);
    expect(pathsOf(() => titratedAmount({ ...rest, blank: 61 }))).toEqual(['blank']);
  });
});

describe('compositionFromEndpoints', () => {
  test('the parts take all the acid, and the first end point is that of hydroxide and carbonate', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        (first, more) => {
          const second = first + more;
          const found = compositionFromEndpoints({ first, second, molar: 0.1 });
          const [hydroxide, carbonate, hydrogencarbonate] = [
            found.hydroxide,
            found.carbonate,
            found.hydrogencarbonate,
          ].map((part) => part?.value ?? 0) as [number, number, number];
          expect(hydroxide + 2 * carbonate + hydrogencarbonate).toBeCloseTo(0.1 * second, 10);
          expect(hydroxide + carbonate).toBeCloseTo(0.1 * first, 10);
          expect(Math.min(hydroxide, hydrogencarbonate)).toBe(0);
        },
      ),
    ));

  test('says where carbonate alone would do', () => {
    const near = compositionFromEndpoints({
      first: estimate(10.02, 0.02),
      second: estimate(20, 0.02),
      molar: 0.1,
    });
    expect(near.notes).toHaveLength(1);
    const far = compositionFromEndpoints({
      first: estimate(10.2, 0.02),
      second: estimate(20, 0.02),
      molar: 0.1,
    });
    expect(far.notes).toEqual([]);
  });

  test('a second end point before the first is a fault', () =>
    expect(pathsOf(() => compositionFromEndpoints({ first: 20, second: 10, molar: 0.1 }))).toEqual([
      'second',
    ]));
});
