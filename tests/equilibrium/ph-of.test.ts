import { equilibrate, makeSolution, pHOf, reagents } from 'protolysis';
import { expect, test } from 'vitest';

test('pHOf(solution, conditions) is the pH that equilibrate finds', () => {
  const solution = makeSolution({ contents: [{ reagent: reagents.phosphoricAcid, molar: 0.02 }] });
  expect(pHOf(solution)).toBe(equilibrate(solution).pH);
  expect(pHOf(solution, { pKw: 13 })).toBe(equilibrate(solution, { pKw: 13 }).pH);
});

test('the same composition has the same pH in any volume', () => {
  const pH = [1e-9, 1, 1000, 1e9].map((mL) =>
    pHOf(makeSolution({ mL, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] })),
  );
  // n = c·V and n/V round once each: C is off by 2⁻⁵³ relative or less, twice, which moves pH by half of that over ln 10
  for (const one of pH) expect(Math.abs(one - (pH[0] as number))).toBeLessThanOrEqual(4 * 2 ** -52);
});

test('pKw may be left undefined', () => {
  const water = makeSolution({ contents: [] });
  expect(pHOf(water, {})).toBe(pHOf(water));
});
