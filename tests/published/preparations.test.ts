import {
  makeSolution,
  planSample,
  prepareSession,
  prepareSolution,
  type Reagent,
  reagents,
} from 'protolysis';
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

interface Protocol {
  readonly sample: Reagent;
  readonly titrant: Reagent;
  readonly molar: number;
  /** As printed, g. */
  readonly from: number;
  readonly to: number;
  readonly water: number;
}

// What classes weigh for a burette of 50 mL.
// D. A. Skoog, D. M. West, F. J. Holler, Fundamentals of Analytical Chemistry, 5th ed. (1988), pp. 767-769, as a university's sheet reproduces it:
// 0.20 to 0.25 g of sodium carbonate in about 50 mL for 0.1 mol/L acid, 0.7 to 0.8 g of phthalate in 50 to 75 mL for 0.1 mol/L base.
// H. P. Talbot, Quantitative Chemical Analysis, 6th ed., standardization of hydrochloric acid: 1.00 to 1.10 g of sodium carbonate in about 80 mL for
// half-normal acid.
const skoogCarbonate = {
  sample: reagents.sodiumCarbonate,
  titrant: reagents.hydrochloricAcid,
  molar: 0.1,
  from: 0.2,
  to: 0.25,
  water: 50,
};
const skoogPhthalate = {
  sample: reagents.potassiumHydrogenPhthalate,
  titrant: reagents.sodiumHydroxide,
  molar: 0.1,
  from: 0.7,
  to: 0.8,
  water: 60,
};
const talbotCarbonate = { ...skoogCarbonate, molar: 0.5, from: 1, to: 1.1, water: 80 };

const planFor = ({ sample, titrant, molar, water }: Protocol) => {
  const plan = planSample({ sample: { reagent: sample }, titrant: { reagent: titrant, molar }, mL: water });
  if (plan.status !== 'planned') throw new Error(plan.reason);
  return plan;
};

describe('the amounts of a class protocol', () => {
  test.each([
    ['Skoog, carbonate', skoogCarbonate],
    ['Skoog, phthalate', skoogPhthalate],
  ])('the planned mass is one that the protocol prints: %s', (_, protocol) => {
    const { grams } = planFor(protocol);
    // half a unit of the last digit printed
    const half = protocol.from < 0.5 ? 0.005 : 0.05;
    expect(grams).toBeGreaterThanOrEqual(protocol.from - half);
    expect(grams).toBeLessThanOrEqual(protocol.to + half);
  });

  // The planned range ends at 90 % of the burette. The heaviest carbonate of Skoog takes 94 % of it, 47.2 mL.
  test.each([
    ['Skoog, carbonate', skoogCarbonate, [37.74, 47.18]],
    ['Skoog, phthalate', skoogPhthalate, [34.28, 39.17]],
    ['Talbot, carbonate', talbotCarbonate, [37.74, 41.51]],
  ])('takes as much of the burette as the arithmetic of the page does: %s', (_, protocol, volumes) => {
    const { grams, points, point, range } = planFor(protocol);
    const perGram = Number(points[point - 1]?.mL) / grams;
    for (const [k, mass] of [protocol.from, protocol.to].entries())
      expect(Math.abs(perGram * mass - Number(volumes[k]))).toBeLessThanOrEqual(0.005);
    expect(range.from).toBeLessThan(protocol.from);
    expect(range.to).toBeGreaterThan((protocol.from + protocol.to) / 2);
  });

  // U.S. Geological Survey, National Field Manual, section 6.6: 0.8686 g of sodium carbonate in a litre is 0.01639 N.
  test('0.8686 g of sodium carbonate to the litre of 0.01639 N', () => {
    const recipe = prepareSolution({ from: reagents.sodiumCarbonate, molar: 0.01639 / 2, mL: 1000 });
    if (recipe.status !== 'prepared') return expect.unreachable(recipe.reason);
    const [part] = recipe.parts;
    // half a unit of the last digit of the normality, as a mass
    const half = (0.000005 / 2) * 105.99;
    expect(Math.abs(Number(part?.kind === 'weighed' && part.grams) - 0.8686)).toBeLessThanOrEqual(half);
  });

  // Skoog, the same chapter: about 8 mL of the concentrated acid to a litre of 0.1 mol/L. From memory, not checked against the page.
  test('about 8 mL of concentrated hydrochloric acid to a litre of 0.1 mol/L', () => {
    const from = { reagent: reagents.hydrochloricAcid, purity: 0.37 };
    const recipe = prepareSolution({ from, molar: 0.1, mL: 1000 });
    if (recipe.status !== 'prepared') return expect.unreachable(recipe.reason);
    const [part] = recipe.parts;
    expect(Math.abs(Number(part?.kind === 'liquid' && part.mL) - 8)).toBeLessThanOrEqual(0.5);
  });

  // Royal Society of Chemistry and Nuffield Foundation, Practical Chemistry, Titrating sodium hydroxide with hydrochloric acid: 25 mL of 0.4 mol/L
  // base, titrated twice, with about 100 mL of each solution for a group. From memory, not checked against the page.
  test('what is handed out to a group is enough, and no more than twice what it needs', () => {
    const { solutions } = prepareSession({
      groups: 1,
      titrations: [
        {
          setup: {
            analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.4 }] }),
            titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.4 }] }),
          },
          upTo: 26,
          runs: 2,
        },
      ],
    });
    expect(solutions).toHaveLength(2);
    for (const { mL } of solutions) {
      expect(mL).toBeLessThanOrEqual(100);
      expect(mL).toBeGreaterThanOrEqual(50);
    }
  });
});
