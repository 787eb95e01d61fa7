import { heatLimits, makeSolution, makeStock, type Reagent, type RecipePart, reagents } from 'protolysis';
import { expect, test } from 'vitest';
import { workOf } from '../../src/recipe/work-of.js';

const { hydrochloricAcid, sodiumHydroxide, sodiumChloride } = reagents;
const solid = (reagent: Reagent, mmol: number): RecipePart => ({
  kind: 'weighed',
  name: reagent.name,
  reagent,
  mmol,
  purity: 1,
  grams: (mmol * (reagent.molarMass as number)) / 1000,
});
const pour = (reagent: Reagent, molar: number, mL: number): RecipePart => ({
  kind: 'poured',
  name: `${molar} mol/L ${reagent.name}`,
  stock: makeSolution({ contents: [{ reagent, molar }] }),
  mL,
});
/** One litre of what the parts hold, as `prepareSolution` would plan it too. */
const work = (...parts: RecipePart[]) => {
  const poured = parts.reduce((mL, part) => mL + (part.kind === 'poured' ? part.mL : 0), 0);
  const contents = parts.map((part) =>
    part.kind === 'poured'
      ? {
          reagent: (part.stock.contents[0] as { reagent: Reagent }).reagent,
          mmol: ((part.stock.contents[0] as { mmol: number }).mmol * part.mL) / part.stock.mL,
        }
      : { reagent: part.reagent, mmol: part.mmol },
  );
  const solution = makeSolution({ mL: 1000, contents });
  return workOf({ parts, mL: 1000, waterToMakeUp: 1000 - poured, solution, checks: ['Label it.'] });
};
const stepsOf = (...parts: RecipePart[]) => {
  const planned = work(...parts);
  if (planned.status === 'too-hot') throw new Error(planned.reason);
  return planned.steps;
};

test('a litre of 0.1 mol/L sodium hydroxide: water first, the pellets in portions, the mark when cold, the check', () =>
  expect(stepsOf(solid(sodiumHydroxide, 100))).toEqual([
    'Put about 670 mL of water into a beaker, with a stirrer.',
    'Weigh 4.000 g of sodium hydroxide and add it to the cold water in small portions, stirring; it gets hot, so let it cool between them.',
    'Let it come to room temperature.',
    'Transfer it to a volumetric flask, rinse the beaker into it, make up to 1000 mL with water and mix.',
    'Label it.',
  ]));

test('the most dilute goes in first, whichever was named first', () => {
  const [, first, second] = stepsOf(pour(hydrochloricAcid, 5, 10), pour(sodiumChloride, 0.1, 10));
  expect(first).toContain('0.1 mol/L sodium chloride');
  expect(second).toContain('5 mol/L hydrochloric acid');
});

test('an acid that fumes is measured in the fume cupboard from half the strength of its bottle on', () => {
  // 37 % of 1.184 g/mL is 12.0 mol/L
  expect(stepsOf(pour(hydrochloricAcid, 5.9, 10)).join()).not.toContain('fume cupboard');
  expect(stepsOf(pour(hydrochloricAcid, 6.1, 10)).join()).toContain('In the fume cupboard, measure 10.00 mL');
});

test('the rise counts what is in the beaker before the mark: dissolving alone may be too hot', () => {
  // 44.51 kJ/mol into 667 mL of 4 J/(mL K): 16.7 K per mole
  const one = work(solid(sodiumHydroxide, 1000));
  expect(one.heat.kelvin).toBeCloseTo(44.51 / (4 * (2 / 3)), 6);
  const much = work(solid(sodiumHydroxide, 3000));
  expect(much.heat.kelvin).toBeGreaterThan(heatLimits.refused);
  expect(much).toMatchObject({
    status: 'too-hot',
    reason: expect.stringContaining('into cold water in ice'),
  });
});

test('salt and water cool a little, and say nothing of heat', () => {
  const made = work(solid(sodiumChloride, 500));
  if (made.status === 'too-hot') return expect.unreachable();
  expect(made.heat.kelvin).toBeLessThan(0);
  expect(made.notes).toEqual([]);
});

test('a concentrated stock says what its bottle does', () => {
  const stock = makeStock({ reagent: reagents.sulfuricAcid, massPercent: 96, density: 1.84 });
  const [held] = stock.contents as [{ reagent: Reagent; mmol: number }];
  const planned = workOf({
    parts: [{ kind: 'poured', name: '96 % sulfuric acid', stock, mL: 55 }],
    mL: 1000,
    waterToMakeUp: 945,
    solution: { mL: 1000, contents: [{ reagent: held.reagent, mmol: held.mmol * 0.055 }] },
    checks: [],
  });
  if (planned.status === 'too-hot') return expect.unreachable();
  expect(planned.steps.slice(0, 2).join(' ')).toMatch(
    /^Put about .* of water .* Stand the beaker in ice water/,
  );
  expect(planned.cautions.join()).toContain('never water into acid');
});

// Found by a random search: every object has a `toString`, and a table of bottles has none by that name.
test('a reagent whose id is a name that every object has is no bottle', () => {
  for (const id of ['toString', 'constructor', '__proto__', 'hasOwnProperty']) {
    const odd = { ...sodiumChloride, id };
    expect(stepsOf(solid(odd, 10)).join(' ')).toContain('sodium chloride');
  }
});
