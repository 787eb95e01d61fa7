import { planSample, prepareSolution, type Reagent, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';

// United States Pharmacopeia, Volumetric Solutions: quoted from memory, not checked against the page. It prints what one millilitre of a
// solution of 1 mol/L is equivalent to, and about how much of the primary standard is weighed.
const factors: readonly [string, Reagent, Reagent, number, number][] = [
  [
    'sodium carbonate for 1 mol/L HCl: about 1.5 g, 52.99 mg each mL',
    reagents.sodiumCarbonate,
    reagents.hydrochloricAcid,
    52.99,
    1.5,
  ],
  [
    'tromethamine for 1 mol/L HCl: about 5.0 g, 121.14 mg each mL',
    reagents.tris,
    reagents.hydrochloricAcid,
    121.14,
    5,
  ],
  [
    'phthalate for 1 mol/L NaOH: about 5 g, 204.22 mg each mL',
    reagents.potassiumHydrogenPhthalate,
    reagents.sodiumHydroxide,
    204.22,
    5,
  ],
];

describe('a pharmacopoeia weighs as much', () => {
  test.each(factors)('%s', (_, reagent, titrant, milligrams, about) => {
    const plan = planSample({ sample: { reagent }, titrant: { reagent: titrant, molar: 1 }, mL: 100 });
    if (plan.status !== 'planned') return expect.unreachable(plan.reason);
    const mL = plan.points[plan.point - 1]?.mL ?? Number.NaN;
    // half a unit of the last digit printed
    expect(Math.abs((1000 * plan.grams) / mL - milligrams)).toBeLessThanOrEqual(0.005);
    // its mass ends in a burette of 50 mL
    expect((1000 * about) / milligrams).toBeGreaterThan(20);
    expect((1000 * about) / milligrams).toBeLessThan(45);
  });

  // The same, hydrochloric acid of 1 mol/L: 85 mL of the concentrated acid to the litre, a little more than the arithmetic asks, since it is
  // standardised afterwards.
  test('85 mL of concentrated hydrochloric acid to a litre of 1 mol/L', () => {
    const recipe = prepareSolution({
      from: { reagent: reagents.hydrochloricAcid, purity: 0.37 },
      molar: 1,
      mL: 1000,
    });
    if (recipe.status !== 'prepared') return expect.unreachable(recipe.reason);
    const [part] = recipe.parts;
    const mL = part?.kind === 'liquid' ? Number(part.mL) : Number.NaN;
    expect(mL).toBeGreaterThan(0.96 * 85);
    expect(mL).toBeLessThanOrEqual(85);
  });
});
