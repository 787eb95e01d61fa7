import { absorbCarbonDioxide, acids, equilibrate, makeSolution, molarOf, reagents } from 'protolysis';
import { expect, test } from 'vitest';

const fresh = makeSolution({ mL: 250, contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });

test('all of the hydroxide gives sodium carbonate, half of it half', () => {
  const soda = makeSolution({ mL: 250, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
  expect(equilibrate(absorbCarbonDioxide(fresh, { share: 1 })).pH).toBeCloseTo(equilibrate(soda).pH, 12);
  const half = equilibrate(absorbCarbonDioxide(fresh, { share: 0.5 }));
  expect(molarOf(half, acids.carbonic, 'CO3(2-)')).toBeCloseTo(0.025, 3); // 0.4 % of it hydrolyses
  // 0.05 mol/L of hydroxide is left: pH 12.7
  expect(half.pH).toBeCloseTo(13.995 + Math.log10(0.05), 2);
});

test('no share, no change', () => {
  expect(equilibrate(absorbCarbonDioxide(fresh, { share: 0 })).pH).toBe(equilibrate(fresh).pH);
});

test('a solution without an excess of strong cations has nothing to absorb with', () => {
  const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
  expect(() => absorbCarbonDioxide(acid, { share: 0.1 })).toThrow(/more strong cations than anions/);
});
