import fc from 'fast-check';
import {
  addWater,
  aliquot,
  findById,
  makeSolution,
  makeStock,
  type PreparedSolution,
  prepareSolution,
  type Reagent,
  reagents,
  type Solution,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { flasks, pipettes } from '../../src/catalogue/glassware.js';
import { listed } from '../faults-of.js';

const { sodiumCarbonate, hydrochloricAcid, sodiumHydroxide, potassiumHydrogenPhthalate, boricAcid } =
  reagents;
const prepared = (recipe: ReturnType<typeof prepareSolution>): PreparedSolution => {
  if (recipe.status !== 'prepared') throw new Error(recipe.reason);
  return recipe;
};
const molarOf = ({ mL, contents }: Solution) => (contents[0]?.mmol ?? 0) / mL;
const oneMolar = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 1 }] });

/** The solution made anew from the numbers of its recipe. */
function remade({ parts, mL, dilutions }: PreparedSolution): Solution {
  const [part] = parts;
  if (part?.kind === 'poured')
    return dilutions.reduce((stock, { times, pipette, flask }) => {
      const measured = aliquot(stock, { mL: times * pipette.mL });
      return addWater(measured, { mL: flask.mL - measured.mL });
    }, part.stock);
  if (!part || part.grams === null) throw new Error('nothing weighed');
  return makeSolution({ mL, contents: [{ reagent: part.reagent, grams: part.grams, purity: part.purity }] });
}

describe('a recipe for a solution', () => {
  // Common practice of the analytical laboratory, and a line of arithmetic each: m = c·V·M/w.
  test.each([
    [
      '0.1 mol/L HCl of the 37 % acid: 8.3 mL to the litre',
      { from: { reagent: hydrochloricAcid, purity: 0.37 }, molar: 0.1, mL: 1000 },
      'mL',
      8.3,
      0.05,
    ],
    [
      '0.1 mol/L NaOH of the 50 % solution: 5.2 mL to the litre',
      { from: { reagent: sodiumHydroxide, purity: 0.5 }, molar: 0.1, mL: 1000 },
      'mL',
      5.25,
      0.05,
    ],
    [
      '0.1 mol/L NaOH of pellets: 4.0 g to the litre',
      { from: { reagent: sodiumHydroxide, purity: 1 }, molar: 0.1, mL: 1000 },
      'grams',
      4,
      0.005,
    ],
    [
      '0.05 mol/L sodium carbonate: 5.299 g to the litre',
      { from: sodiumCarbonate, molar: 0.05, mL: 1000 },
      'grams',
      5.299,
      0.0005,
    ],
    [
      '0.1 mol/L phthalate: 20.42 g to the litre',
      { from: potassiumHydrogenPhthalate, molar: 0.1, mL: 1000 },
      'grams',
      20.42,
      0.005,
    ],
  ] as const)('%s', (_, request, key, value, tolerance) => {
    const [part] = prepared(prepareSolution(request)).parts;
    const found = part && key in part ? Number((part as unknown as Record<string, number>)[key]) : Number.NaN;
    expect(Math.abs(found - value)).toBeLessThanOrEqual(tolerance);
  });

  test('is made in the smallest flask at hand that holds it, or in several of the largest', () => {
    const one = prepared(prepareSolution({ from: sodiumCarbonate, molar: 0.05, mL: 240, glass: 'B' }));
    expect([one.mL, one.flask.mL, one.glass]).toEqual([250, 250, 'B']);
    const several = prepared(
      prepareSolution({ from: sodiumCarbonate, molar: 0.05, mL: 900, flasks: [100, 250] }),
    );
    expect([several.mL, several.batches]).toEqual([250, 4]);
    expect(several.notes[0]).toBe('Make 4 flasks of it: the recipe is for one.');
  });

  test('dilutes a stock in one step where a pipette fits, and in two where none does', () => {
    const once = prepared(prepareSolution({ from: oneMolar, molar: 0.1, mL: 250 }));
    expect(once.dilutions.map(({ times, pipette, flask }) => [times, pipette.mL, flask.mL])).toEqual([
      [1, 25, 250],
    ]);
    const twice = prepared(
      prepareSolution({ from: oneMolar, molar: 0.001, mL: 100, pipettes: [10, 20, 25] }),
    );
    expect(twice.dilutions).toHaveLength(2);
    expect(twice.steps[1]).toContain('of the solution just made');
  });

  test('says whether it is a primary standard, or to be standardised and against what', () => {
    const carbonate = prepared(prepareSolution({ from: sodiumCarbonate, molar: 0.05, mL: 100 }));
    expect(carbonate.standardisation?.kind).toBe('primary');
    const acid = prepared(prepareSolution({ from: oneMolar, molar: 0.1, mL: 100 }));
    expect(acid.steps.at(-2)).toMatch(
      /^Standardise it before use against sodium carbonate or tris or borax, since /,
    );
    for (const id of acid.standardisation?.kind === 'needed' ? acid.standardisation.against : [])
      expect(Object.keys(reagents)).toContain(id);
  });

  test('takes it from the reagent that it is a primary standard, also from one of the user', () => {
    const { sulfamicAcid, borax } = reagents;
    const made = prepared(prepareSolution({ from: sulfamicAcid, molar: 0.1, mL: 100 }));
    expect(made.standardisation).toMatchObject({ kind: 'primary', standardises: 'bases' });
    expect(made.notes[0]).toBe('A primary standard for bases: dried in a desiccator.');
    const { primaryStandard: _, ...technical } = borax;
    expect(prepared(prepareSolution({ from: technical, molar: 0.01, mL: 100 })).standardisation).toBeNull();
  });

  test('standardises acids and bases against primary standards for them', () => {
    const against = (reagent: Reagent) => {
      const stock = makeSolution({ mL: 100, contents: [{ reagent, molar: 1 }] });
      const { standardisation } = prepared(prepareSolution({ from: stock, molar: 0.1, mL: 100 }));
      const ids = standardisation?.kind === 'needed' ? standardisation.against : [];
      return ids.map((id) => findById<Reagent>(reagents, id).primaryStandard?.standardises);
    };
    expect(new Set(against(reagents.hydrochloricAcid))).toEqual(new Set(['acids']));
    expect(new Set(against(reagents.sodiumHydroxide))).toEqual(new Set(['bases']));
  });

  test('says why there is none', () => {
    expect(prepareSolution({ from: oneMolar, molar: 2, mL: 100 })).toMatchObject({ because: 'too-dilute' });
    expect(prepareSolution({ from: oneMolar, molar: 0.0123, mL: 100 })).toMatchObject({
      because: 'no-vessel',
    });
    expect(prepareSolution({ from: boricAcid, molar: 2, mL: 100 })).toMatchObject({ because: 'saturated' });
    expect(
      prepareSolution({ from: { reagent: reagents.sulfuricAcid, purity: 0.96 }, molar: 6, mL: 100 }),
    ).toMatchObject({ because: 'too-hot' });
  });

  test('opens a fuming stock in the fume cupboard, and asks whether much of a solid dissolves', () => {
    const strong = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 10 }] });
    expect(prepared(prepareSolution({ from: strong, molar: 1, mL: 100 })).steps[0]).toMatch(
      /^In the fume cupboard, put water/,
    );
    const salt = prepared(prepareSolution({ from: reagents.sodiumChloride, molar: 5, mL: 100 }));
    expect(salt.notes.join(' ')).toMatch(/Whether so much dissolves is not checked/);
  });

  test('carries cautions that defer to the safety data sheet, the local rules and the supervisor', () => {
    const { cautions } = prepared(
      prepareSolution({ from: { reagent: hydrochloricAcid, purity: 0.37 }, molar: 0.1, mL: 1000 }),
    );
    expect(cautions.join(' ')).toMatch(/never water into acid.*safety data sheet.*local rules.*supervisor/s);
  });

  const requests = fc.oneof(
    fc.record({
      from: fc.constantFrom(sodiumCarbonate, potassiumHydrogenPhthalate),
      molar: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
      mL: fc.integer({ min: 10, max: 1000 }),
    }),
    fc.record({
      from: fc.constant(oneMolar),
      molar: fc.constantFrom(0.5, 0.25, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001),
      mL: fc.constantFrom(50, 100, 250, 500, 1000),
    }),
  );

  test('remade from its own numbers has the concentration asked for to 1e-12', () =>
    fc.assert(
      fc.property(requests, (request) => {
        const recipe = prepareSolution(request);
        fc.pre(recipe.status === 'prepared');
        expect(Math.abs(molarOf(remade(recipe)) / request.molar - 1)).toBeLessThanOrEqual(1e-12);
      }),
    ));

  test('asks for no vessel that is not at hand', () =>
    fc.assert(
      fc.property(
        fc.subarray(
          [...flasks].map(({ mL }) => mL),
          { minLength: 2 },
        ),
        fc.subarray(
          [...pipettes].map(({ mL }) => mL),
          { minLength: 1 },
        ),
        fc.constantFrom(0.1, 0.05, 0.01),
        (flasksAtHand, pipettesAtHand, molar) => {
          const recipe = prepareSolution({
            from: oneMolar,
            molar,
            mL: 40,
            flasks: flasksAtHand,
            pipettes: pipettesAtHand,
          });
          if (recipe.status !== 'prepared') {
            expect(recipe.reason.length).toBeGreaterThan(20);
            return;
          }
          expect(flasksAtHand).toContain(recipe.mL);
          for (const { flask, pipette } of recipe.dilutions) {
            expect(flasksAtHand).toContain(flask.mL);
            expect(pipettesAtHand).toContain(pipette.mL);
          }
        },
      ),
    ));

  // GUM supplement 1 (JCGM 101:2008): tolerances drawn from triangular distributions, masses from normal ones.
  test.each([
    ['a weighed solid', { from: sodiumCarbonate, molar: 0.05, mL: 100 }],
    ['one dilution', { from: oneMolar, molar: 0.1, mL: 100 }],
    ['two dilutions', { from: oneMolar, molar: 0.001, mL: 100, pipettes: [10, 20, 25] }],
  ])('has a stated uncertainty that covers 95 % of what its tolerances give: %s', (_, request) => {
    const recipe = prepared(prepareSolution(request));
    const draw = generator(12345);
    const triangular = (a: number) => a * (draw() + draw() - 1);
    const normal = () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
    const trials = 20_000;
    let covered = 0;
    for (let k = 0; k < trials; k += 1) {
      const relative =
        recipe.dilutions.length > 0
          ? recipe.dilutions.reduce(
              (product, { pipette, flask }) =>
                (product * (1 + triangular(pipette.tolerance.A) / pipette.mL)) /
                (1 + triangular(flask.tolerance.A) / flask.mL),
              1,
            )
          : (1 + (normal() * Math.SQRT2 * 0.0002) / gramsOf(recipe)) /
            (1 + triangular(toleranceOf(recipe.mL)) / recipe.mL);
      if (Math.abs(relative - 1) * recipe.molar <= 1.96 * recipe.standardUncertainty) covered += 1;
    }
    // binomial: four standard errors of 20 000 trials are 0.6 %
    expect(covered / trials).toBeGreaterThan(0.94);
    expect(covered / trials).toBeLessThan(0.966);
  });

  test.each([
    ['a flask of no standard', { flasks: [100, 123] }, ['out-of-range flasks[1]']],
    ['a class that is none', { glass: 'C' }, ['wrong-type glass']],
    ['an acid without its strength', { from: hydrochloricAcid }, ['missing from']],
    [
      'a stock of two reagents',
      {
        from: makeSolution({
          contents: [
            { reagent: sodiumCarbonate, molar: 0.1 },
            { reagent: boricAcid, molar: 0.1 },
          ],
        }),
      },
      ['conflict from'],
    ],
  ])('refuses %s', (_, more, faults) =>
    expect(
      listed(() => prepareSolution({ from: sodiumCarbonate, molar: 0.05, mL: 100, ...more } as never)),
    ).toEqual(faults),
  );

  test('takes a stock by what its bottle says', () => {
    const bottle = makeStock({ reagent: hydrochloricAcid, massPercent: 37, density: 1.184 });
    expect(prepareSolution({ from: bottle, molar: 0.1, mL: 1000 }).status).toBe('impossible');
  });
});

const gramsOf = ({ parts: [part] }: PreparedSolution): number =>
  part?.kind === 'weighed' ? (part.grams ?? 0) : 0;
const toleranceOf = (mL: number): number =>
  flasks.find((flask) => flask.mL === mL)?.tolerance.A ?? Number.NaN;

/** Numbers from 0 to 1 (S. K. Park, K. W. Miller, Commun. ACM 31, 1192–1201 (1988), multiplier 48271). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (48271 * state) % 2147483647;
    return state / 2147483647;
  };
}
