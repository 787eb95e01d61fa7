import {
  acids,
  defineReagent,
  findById,
  makeSolution,
  makeStock,
  type PreparedSolution,
  prepareSolution,
  type Reagent,
  reagents,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { keeping } from '../../src/catalogue/keeping.js';
import { standardisation } from '../../src/catalogue/standardisation.js';
import { listed } from '../faults-of.js';

const { sodiumCarbonate, hydrochloricAcid, sodiumHydroxide, potassiumHydrogenPhthalate, boricAcid } =
  reagents;
const prepared = (recipe: ReturnType<typeof prepareSolution>): PreparedSolution => {
  if (recipe.status !== 'prepared') throw new Error(recipe.reason);
  return recipe;
};
const oneMolar = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 1 }] });

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
    expect(several.notes[0]).toBe('Make 4 flasks of it for the 900 mL: the recipe is for one.');
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
      /^Standardise it or its stock before use against sodium carbonate or tris, since /,
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

  test('names no substance of very high concern to standardise against, where others serve', () => {
    for (const { against } of Object.values(standardisation))
      for (const id of against) expect(findById<Reagent>(reagents, id).veryHighConcern).toBeUndefined();
  });

  test.each([
    ['sodiumCarbonateDecahydrate', /against standardised hydrochloric acid, since it loses water/],
    [
      'bariumHydroxideOctahydrate',
      /against standardised hydrochloric acid, since it takes up carbon dioxide/,
    ],
    ['lithiumHydroxide', /against potassium hydrogen phthalate or .*, since it takes up/],
  ] as const)('has %s standardised', (id, words) => {
    const { steps } = prepared(prepareSolution({ from: reagents[id], molar: 0.02, mL: 100 }));
    expect(steps).toContainEqual(expect.stringMatching(words));
  });

  test('standardises acids and bases against primary standards for them', () => {
    const against = (reagent: Reagent) => {
      const stock = makeSolution({ mL: 100, contents: [{ reagent, molar: 1 }] });
      const { standardisation: known } = prepared(prepareSolution({ from: stock, molar: 0.1, mL: 100 }));
      const ids = known?.kind === 'needed' ? known.against : [];
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
      /^In the fume cupboard, put about 33 mL of water/,
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

  test('takes as many dilutions as the vessels at hand ask for', () => {
    const vessels = { pipettes: [10], flasks: [100] };
    const five = prepared(prepareSolution({ from: oneMolar, molar: 1e-5, mL: 100, ...vessels }));
    expect(five.dilutions.map(({ molar }) => molar)).toHaveLength(5);
    expect(prepareSolution({ from: oneMolar, molar: 1e-6, mL: 1, pipettes: [2], flasks: [5] })).toMatchObject(
      {
        because: 'no-vessel',
      },
    );
  });

  test('leaves out vessels that are not good enough, and dilutes once more instead', () => {
    const request = { from: oneMolar, molar: 1e-4, mL: 100 };
    const coarse = prepared(prepareSolution({ ...request, vesselPercent: 1 }));
    const fine = prepared(prepareSolution({ ...request, vesselPercent: 0.3 }));
    expect([coarse.dilutions.length, fine.dilutions.length]).toEqual([2, 3]);
    expect(fine.standardUncertainty).toBeLessThan(coarse.standardUncertainty);
    expect(prepareSolution({ ...request, vesselPercent: 0.01 })).toMatchObject({
      because: 'no-vessel',
      reason: 'no flask at hand is good to 0.01 % of its volume',
    });
  });

  test('makes no more than it has to on the way: of flasks the smallest that serve', () => {
    const { dilutions } = prepared(
      prepareSolution({ from: oneMolar, molar: 0.001, mL: 100, pipettes: [10, 20, 25] }),
    );
    expect(dilutions.map(({ flask }) => flask.mL)).toEqual([1000, 100]);
  });

  test('says that no dilutions give it, with every vessel there is', () => {
    const from = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 19.7 }] });
    expect(prepareSolution({ from, molar: 3.7e-6, mL: 2000, vesselPercent: 100 })).toMatchObject({
      because: 'no-vessel',
    });
  });

  test('makes no solution in hundreds of flasks', () =>
    expect(prepareSolution({ from: sodiumCarbonate, molar: 0.05, mL: 1e5, flasks: [5] })).toMatchObject({
      because: 'no-vessel',
      reason: '100000 mL would take 20000 flasks of 5 mL: ask for less, or use larger flasks',
    }));

  test('sends to the burette where no pipette fits', () =>
    expect(prepareSolution({ from: oneMolar, molar: 0.37, mL: 100 })).toMatchObject({
      because: 'no-vessel',
      reason: expect.stringContaining(
        'measure 37 mL with a burette into the 100 mL flask, a third of it filled with water',
      ),
    }));

  // A burette of 37 % acid, 96 % sulfuric acid or 50 % alkali drips over hands and fumes at the height of the eyes.
  test.each([
    ['hydrochloric acid', { reagent: hydrochloricAcid, massPercent: 37, density: 1.184 }],
    ['sulfuric acid', { reagent: reagents.sulfuricAcid, massPercent: 96, density: 1.84 }],
    ['sodium hydroxide', { reagent: sodiumHydroxide, massPercent: 50, density: 1.525 }],
  ])('sends concentrated %s to the balance, not to a burette', (_, bottle) => {
    const recipe = prepareSolution({ from: makeStock(bottle), molar: 0.123, mL: 1000 });
    const reason = recipe.status === 'impossible' ? recipe.reason : '';
    expect(reason).toMatch(/no stock for a burette: weigh it as its bottle holds it, \{ reagent, purity \}/);
    expect(reason).not.toMatch(/measure/);
  });

  // No hot solution goes into a volumetric flask: it is calibrated at 20 °C.
  test('dilutes in a beaker in ice water what gets hot, and refuses what gets too hot', () => {
    const { sulfuricAcid } = reagents;
    const stock = (molar: number) => makeSolution({ contents: [{ reagent: sulfuricAcid, molar }] });
    const warm = prepared(prepareSolution({ from: stock(10), molar: 1, mL: 100 }));
    expect(warm.heat.kelvin).toBeGreaterThan(10);
    expect(warm.steps[0]).toMatch(
      /^Put about 33 mL of water into a beaker in ice water, .*add 10 mL of 10 mol\/L.*room temperature, transfer it to a 100 mL flask/,
    );
    const mild = prepared(prepareSolution({ from: stock(1), molar: 0.1, mL: 100 }));
    expect(mild.steps[0]).toMatch(/^Put about 33 mL of water into a 100 mL flask/);
    expect(prepareSolution({ from: stock(18), molar: 4.5, mL: 100 })).toMatchObject({ because: 'too-hot' });
  });

  test('takes water free of carbon dioxide for a hydroxide, and keeps it in plastic', () => {
    const { steps } = prepared(
      prepareSolution({ from: { reagent: sodiumHydroxide, purity: 0.98 }, molar: 0.1, mL: 1000 }),
    );
    expect(steps[0]).toMatch(/^Take water free of carbon dioxide/);
    expect(steps.at(-2)).toMatch(/^Keep it in a plastic bottle/);
    for (const id of Object.keys(keeping)) expect(Object.keys(reagents)).toContain(id);
  });

  test('makes nothing in glass that attacks it', () => {
    const hydrofluoricAcid = defineReagent({
      id: 'hydrofluoricAcid',
      name: 'hydrofluoric acid',
      formula: 'HF',
      protolytes: [{ protolyte: acids.hydrofluoric, count: 1 }],
      ions: [],
      source: { kind: 'commonPractice', note: 'its formula' },
    });
    const from = makeSolution({ contents: [{ reagent: hydrofluoricAcid, molar: 1 }] });
    expect(prepareSolution({ from, molar: 0.1, mL: 100 })).toMatchObject({ because: 'attacks-glass' });
  });

  test('refuses more than a flask holds, more than dissolves and less than can be weighed', () => {
    const acid = { reagent: hydrochloricAcid, purity: 0.37 };
    expect(prepareSolution({ from: acid, molar: 15, mL: 100 })).toMatchObject({ because: 'too-strong' });
    expect(prepareSolution({ from: sodiumCarbonate, molar: 15, mL: 100 })).toMatchObject({
      because: 'too-strong',
    });
    expect(prepareSolution({ from: sodiumCarbonate, molar: 1e-5, mL: 100 })).toMatchObject({
      because: 'too-little',
    });
    const little = prepared(prepareSolution({ from: sodiumCarbonate, molar: 0.001, mL: 100 }));
    expect(little.notes[1]).toMatch(/^The mass is small: the weighing alone costs 2\.7 %/);
  });

  test.each([
    ['a flask of no standard', { flasks: [100, 123] }, ['out-of-range flasks[1]']],
    [
      'a bottle stronger than any',
      { from: { reagent: hydrochloricAcid, purity: 1 } },
      ['out-of-range from.purity'],
    ],
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
