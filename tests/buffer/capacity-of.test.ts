import fc from 'fast-check';
import {
  aliquot,
  capacityOf,
  makeSolution,
  mix,
  pHOf,
  reagents,
  type Solution,
  strongAdditionTo,
  titrate,
} from 'protolysis';
import { expect, test } from 'vitest';

const pairs: readonly Solution[] = [
  [reagents.aceticAcid, reagents.sodiumAcetate],
  [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
  [reagents.citricAcid, reagents.trisodiumCitrate],
  [reagents.ammonia, reagents.ammoniumChloride],
  [reagents.sodiumHydrogenCarbonate, reagents.sodiumCarbonate],
].map((pair) => makeSolution({ mL: 50, contents: pair.map((reagent) => ({ reagent, molar: 0.05 })) }));

test('0.1 mol/L of one pair at pH = pKa has ln10·C/4 = 0.0576 (Van Slyke), and water its own share', () => {
  const buffer = makeSolution({
    contents: [
      { reagent: reagents.sodiumDihydrogenPhosphate, molar: 0.05 },
      { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.05 },
    ],
  });
  // the first and third step of phosphoric acid, each five units away, add 2e-6 of it
  expect(capacityOf(buffer) / ((Math.LN10 * 0.1) / 4)).toBeCloseTo(1, 3);
  expect(capacityOf({ mL: 1, contents: [] })).toBeCloseTo(2 * Math.LN10 * 10 ** (-13.995 / 2), 15);
});

test('is what a small addition of strong base shows', () => {
  for (const solution of pairs) {
    const pH = pHOf(solution);
    const [up, down] = [1e-4, -1e-4].map((step) => strongAdditionTo(solution, pH + step));
    if (up?.status !== 'found' || down?.status !== 'found') return expect.unreachable();
    // central difference: error of the second order, 1e-8 of the third derivative
    expect((up.molar + down.molar) / 2e-4 / capacityOf(solution)).toBeCloseTo(1, 6);
  }
});

test('the slope of a titration is F_titrant/(β·(V₀ + V))', () => {
  const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.2 }] });
  fc.assert(
    fc.property(fc.constantFrom(...pairs), fc.double({ min: 0.01, max: 60, noNaN: true }), (analyte, mL) => {
      const mixture = mix(analyte, aliquot(titrant, { mL }));
      const h = 10 ** -pHOf(mixture);
      const charge = h - 10 ** -13.995 / h - 0.2;
      const slope = charge / (capacityOf(mixture) * mixture.mL);
      expect(titrate({ analyte, titrant }).slopeAt(mL) / slope).toBeCloseTo(1, 9);
    }),
    { numRuns: 200 },
  );
});

test('rejects a negative amount', () =>
  expect(() => capacityOf({ mL: 1, contents: [{ reagent: reagents.tris, mmol: -1 }] })).toThrow('mmol'));
