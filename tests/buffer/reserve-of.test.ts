import { aliquot, makeSolution, mix, pHOf, reagents, reserveOf } from 'protolysis';
import { expect, test } from 'vitest';

const phosphate = makeSolution({
  mL: 100,
  contents: [
    { reagent: reagents.sodiumDihydrogenPhosphate, molar: 0.03 },
    { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.02 },
  ],
});
const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 1 }] });

test('as much acid as there is base, as much base as there is acid', () => {
  const reserve = reserveOf(phosphate);
  expect(reserve.acid.untilExhausted?.mL).toBeCloseTo(2, 12);
  expect(reserve.base.untilExhausted?.mL).toBeCloseTo(3, 12);
  expect(reserve.acid.untilExhausted?.drops).toBeCloseTo(40, 10);
  expect(reserve.acid.untilExhausted?.reaction).toContain('→ H₂PO₄⁻');
  expect(reserve.base.untilExhausted?.reaction).toContain('→ HPO₄²⁻');
});

test('until the pH has moved by the change, as poured together', () => {
  const { pH, acid: reserve } = reserveOf(phosphate, { change: 0.5 });
  const mixture = mix(phosphate, aliquot(acid, { mL: reserve.untilChange?.mL as number }));
  expect(pH - pHOf(mixture)).toBeCloseTo(0.5, 10);
  expect(reserve.untilChange?.pH).toBe(pH - 0.5);
});

test('a solution that stands at a stoichiometric point is exhausted at the next one', () => {
  const carbonate = makeSolution({
    mL: 50,
    contents: [{ reagent: reagents.sodiumHydrogenCarbonate, molar: 0.1 }],
  });
  const reserve = reserveOf(carbonate);
  expect(reserve.acid.untilExhausted?.mL).toBeCloseTo(5, 10);
  expect(reserve.base.untilExhausted?.mL).toBeCloseTo(5, 10);
});

test('what never moves the pH so far, or has no such point, is null', () => {
  const strong = makeSolution({ mL: 50, contents: [{ reagent: reagents.hydrochloricAcid, molar: 1 }] });
  expect(reserveOf(strong).acid).toEqual({ untilChange: null, untilExhausted: null });
});

test('base moves the pH up as acid moves it down, in drops of the size given', () => {
  const { pH, acid: down, base: up } = reserveOf(phosphate, { change: 0.4, dropSize: 0.04 });
  expect(up.untilChange?.pH).toBe(pH + 0.4);
  expect(down.untilChange?.pH).toBe(pH - 0.4);
  for (const { untilChange } of [up, down])
    expect((untilChange?.drops as number) * 0.04).toBeCloseTo(untilChange?.mL as number, 12);
  const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 1 }] });
  const mixture = mix(phosphate, aliquot(base, { mL: up.untilChange?.mL as number }));
  expect(pHOf(mixture) - pH).toBeCloseTo(0.4, 10);
});

test('a solution that is within 1e-12 of a stoichiometric point stands there', () => {
  const carbonate = {
    mL: 50,
    contents: [
      { reagent: reagents.sodiumHydrogenCarbonate, mmol: 5 },
      { reagent: reagents.sodiumHydroxide, mmol: 1e-11 },
    ],
  };
  expect(reserveOf(carbonate).acid.untilExhausted?.mL).toBeCloseTo(5, 10);
});
