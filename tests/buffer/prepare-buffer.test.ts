import fc from 'fast-check';
import {
  acids,
  air,
  aliquot,
  type BufferIngredient,
  type BufferRecipe,
  type BufferRequest,
  capacityOf,
  davies,
  debyeHuckelLimiting,
  equilibrate,
  heatLimits,
  type Ingredient,
  lastCaution,
  makeSolution,
  makeStock,
  mix,
  pHOf,
  prepareBuffer,
  type Reagent,
  reagents,
  type Solution,
} from 'protolysis';
import { describe, expect, test } from 'vitest';

const stock = (reagent: Reagent, molar: number) => makeSolution({ contents: [{ reagent, molar }] });
const recipeFor = (request: BufferRequest): BufferRecipe => {
  const recipe = prepareBuffer(request);
  if (recipe.status === 'impossible') throw new Error(recipe.reason);
  return recipe;
};
const { aceticAcid, sodiumAcetate, tris, hydrochloricAcid, sodiumHydroxide } = reagents;

/** Every usual way, with the pKa that it serves. */
const ways: readonly (readonly [string, number, readonly [BufferIngredient, BufferIngredient], string])[] = [
  ['weak acid and its salt', 4.756, [aceticAcid, sodiumAcetate], 'acetic'],
  ['weak acid and strong base', 4.756, [stock(aceticAcid, 5), sodiumHydroxide], 'acetic'],
  ['salt and strong acid', 4.756, [stock(hydrochloricAcid, 6), sodiumAcetate], 'acetic'],
  ['weak base and strong acid', 8.072, [tris, stock(hydrochloricAcid, 5)], 'tris'],
  ['weak base and its salt', 8.072, [tris, reagents.trisHydrochloride], 'tris'],
  [
    'two salts',
    7.198,
    [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
    'phosphoric',
  ],
  [
    'two stocks',
    10.329,
    [stock(reagents.sodiumCarbonate, 2), stock(reagents.sodiumHydrogenCarbonate, 2)],
    'carbonic',
  ],
  [
    'a salt and a concentrated solution by mass',
    9.25,
    [reagents.ammoniumChloride, { reagent: reagents.ammonia, purity: 0.28 }],
    'ammonium',
  ],
];

describe.each(ways)('from %s', (_, pKa, from, id) => {
  test('the buffer has the pH and the concentration asked for, to 1e-10', () => {
    fc.assert(
      fc.property(
        fc.double({ min: pKa - 0.75, max: pKa + 0.75, noNaN: true }),
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        (pH, molar, mL) => {
          const { solution, pH: stated } = recipeFor({ pH, molar, mL, from });
          expect(solution.mL).toBe(mL);
          expect(stated).toBeCloseTo(pH, 10);
          expect(pHOf(solution)).toBeCloseTo(pH, 10);
          const total = equilibrate(solution)
            .species.filter(({ protolyteId }) => protolyteId === id)
            .reduce((sum, one) => sum + one.molar, 0);
          expect(Math.abs(total / molar - 1)).toBeLessThan(1e-10);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('its masses and volumes, poured together and made up, are that buffer', () => {
    const { parts, waterToMakeUp, solution, mL } = recipeFor({ pH: pKa + 0.3, molar: 0.1, mL: 250, from });
    const contents = parts.flatMap((part): Ingredient[] => {
      if (part.kind === 'poured')
        return part.stock.contents.map(({ reagent, mmol }) => ({
          reagent,
          mmol: (mmol * part.mL) / part.stock.mL,
        }));
      return [{ reagent: part.reagent, grams: part.grams as number, purity: part.purity }];
    });
    const poured = parts.reduce((sum, part) => sum + (part.kind === 'poured' ? part.mL : 0), 0);
    expect(waterToMakeUp + poured).toBeCloseTo(mL, 10);
    expect(pHOf(makeSolution({ mL, contents }))).toBeCloseTo(pHOf(solution), 10);
  });
});

test('the amounts are those of the charge balance written out for one pair', () => {
  // x = [base] − [H+] + [OH-] in sodium acetate, C − x in acetic acid
  const [K, h] = [10 ** -4.756, 10 ** -5.1];
  const salt = (0.1 * K) / (K + h) - h + 10 ** -13.995 / h;
  const { parts } = recipeFor({ pH: 5.1, molar: 0.1, mL: 100, from: [aceticAcid, sodiumAcetate] });
  const mmolOf = (id: string) =>
    parts
      .map((part) => (part.kind !== 'poured' && part.reagent.id === id ? part.mmol : 0))
      .reduce((a, b) => a + b);
  const [acid, base] = [mmolOf('aceticAcid'), mmolOf('sodiumAcetate')];
  expect(base).toBeCloseTo(100 * salt, 12);
  expect(acid).toBeCloseTo(100 * (0.1 - salt), 12);
});

test('a salt brings the ionic strength to what is asked, and leaves pH and concentration', () => {
  const recipe = recipeFor({
    pH: 7,
    molar: 0.05,
    mL: 500,
    from: [reagents.potassiumDihydrogenPhosphate, reagents.dipotassiumHydrogenPhosphate],
    ionicStrength: 0.2,
    salt: reagents.potassiumChloride,
  });
  expect(recipe.ionicStrength).toBeCloseTo(0.2, 10);
  expect(equilibrate(recipe.solution).ionicStrength).toBeCloseTo(0.2, 10);
  expect(recipe.pH).toBeCloseTo(7, 10);
  expect(recipe.parts.at(-1)?.name).toBe('potassium chloride');
});

test('two stocks without a concentration fill the volume between them', () => {
  const [one, other] = [stock(reagents.disodiumHydrogenPhosphate, 0.2), stock(reagents.citricAcid, 0.1)];
  const { parts, waterToMakeUp, steps, solution } = recipeFor({ pH: 5, mL: 20, from: [one, other] });
  const [first, second] = ['phosphate', 'citric'].map((what) => {
    const part = parts.find(({ name }) => name.includes(what));
    return part?.kind === 'poured' ? part.mL : Number.NaN;
  }) as [number, number];
  expect(first + second).toBeCloseTo(20, 12);
  expect(waterToMakeUp).toBe(0);
  expect(steps.join()).not.toContain('water');
  const poured = mix(
    { mL: first, contents: one.contents.map((held) => ({ ...held, mmol: (held.mmol * first) / 1000 })) },
    { mL: second, contents: other.contents.map((held) => ({ ...held, mmol: (held.mmol * second) / 1000 })) },
  );
  expect(pHOf(poured)).toBeCloseTo(pHOf(solution), 12);
});

describe('cannot be done', () => {
  test('and the numbers in the reason can be told apart', () => {
    const recipe = prepareBuffer({
      pH: 7,
      molar: 1e-9,
      mL: 100,
      from: [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
    });
    if (recipe.status === 'prepared') return expect.unreachable();
    const [, from, to, asked] = /pH ([\d.]+) to ([\d.]+), not ([\d.]+):/.exec(recipe.reason) ?? [];
    expect(Number(asked) < Number(from) || Number(asked) > Number(to)).toBe(true);
    expect(from).not.toBe(to);
    expect(Number(from)).toBeCloseTo(recipe.reachable?.from ?? Number.NaN, 3);
  });

  test.each<[string, BufferRequest, string, RegExp]>([
    [
      'above the salt alone',
      { pH: 10, molar: 0.1, mL: 100, from: [aceticAcid, sodiumAcetate] },
      'out-of-reach',
      /negative amount of acetic acid/,
    ],
    [
      'below the acid alone',
      { pH: 2, molar: 0.1, mL: 100, from: [aceticAcid, sodiumAcetate] },
      'out-of-reach',
      /negative amount of sodium acetate/,
    ],
    [
      'an acid and acid',
      { pH: 6, molar: 0.1, mL: 100, from: [aceticAcid, stock(hydrochloricAcid, 1)] },
      'out-of-reach',
      /negative amount of 1 mol\/L hydrochloric acid/,
    ],
    [
      'weak stocks',
      { pH: 7.4, molar: 0.15, mL: 200, from: [stock(tris, 0.2), stock(hydrochloricAcid, 0.2)] },
      'too-dilute',
      /more than 200 mL/,
    ],
    [
      'a stock below the concentration',
      { pH: 8, molar: 0.3, mL: 200, from: [stock(tris, 0.2), stock(hydrochloricAcid, 5)] },
      'too-dilute',
      /more than 200 mL/,
    ],
    [
      'a stock that is no acid, however concentrated',
      { pH: 4, molar: 0.1, mL: 200, from: [stock(tris, 1), stock(reagents.sodiumChloride, 1)] },
      'out-of-reach',
      /1 mol\/L sodium chloride is neither acid nor base/,
    ],
    [
      'an acid too dilute for that',
      { pH: 4, molar: 0.1, mL: 200, from: [tris, stock(hydrochloricAcid, 0.01)] },
      'out-of-reach',
      /even the whole volume of 0.01 mol\/L hydrochloric acid is not enough/,
    ],
    [
      'a lower ionic strength',
      {
        pH: 7.2,
        molar: 0.1,
        mL: 200,
        ionicStrength: 0.1,
        from: [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
      },
      'ionic-strength',
      /above 0.1/,
    ],
    [
      'a tartrate that stays undissolved',
      { pH: 3.8, molar: 0.1, mL: 100, from: [reagents.potassiumHydrogenTartrate, sodiumHydroxide] },
      'saturated',
      /potassium hydrogen tartrate would not stay dissolved/,
    ],
  ])('%s', (_, request, because, reason) => {
    const answer = prepareBuffer(request);
    expect(answer).toMatchObject({ status: 'impossible', because });
    expect(answer.status === 'impossible' && answer.reason).toMatch(reason);
  });

  test.each([
    ['by the limiting law', debyeHuckelLimiting, 2],
    ['by Davies', davies, 11],
  ])('an ionic strength beyond reach %s, with the highest that is reached', (_, activity, ionicStrength) => {
    const request: BufferRequest = {
      pH: 7,
      molar: 0.05,
      mL: 500,
      from: [reagents.potassiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
      ionicStrength,
      conditions: { activity },
    };
    const answer = prepareBuffer(request);
    expect(answer).toMatchObject({ status: 'impossible', because: 'ionic-strength' });
    if (answer.status === 'prepared') return expect.unreachable();
    const most = answer.mostIonicStrength as number;
    expect(most).toBeLessThan(ionicStrength);
    expect(answer.reason).toContain(`reaches ${Number(most.toPrecision(4))} mol/L, not ${ionicStrength}`);
    expect(recipeFor({ ...request, ionicStrength: most * 0.999 }).ionicStrength).toBeCloseTo(most * 0.999, 9);
    expect(prepareBuffer({ ...request, ionicStrength: most * 1.001 }).status).toBe('impossible');
  });

  test('says which pH can be reached', () => {
    const answer = prepareBuffer({ pH: 10, molar: 0.1, mL: 100, from: [aceticAcid, sodiumAcetate] });
    if (answer.status === 'prepared') return expect.unreachable();
    expect(answer.reachable?.from).toBe(pHOf(stock(aceticAcid, 0.1)));
    expect(answer.reachable?.to).toBe(pHOf(stock(sodiumAcetate, 0.1)));
  });

  test('of two bases with a limit on the one side, but not with enough of the other', () => {
    // the saturated tartrate itself, 0.0341 mol/L, still dissolves
    const request: BufferRequest = {
      pH: 3.75,
      molar: 0.034,
      mL: 100,
      from: [reagents.potassiumHydrogenTartrate, sodiumHydroxide],
    };
    expect(prepareBuffer(request).status).toBe('prepared');
  });
});

describe('a recipe says', () => {
  const recipe = recipeFor({ pH: 7.8, molar: 0.05, mL: 1000, from: [stock(hydrochloricAcid, 1), tris] });

  test('the capacity, and what dilution does', () => {
    expect(recipe.capacity).toBe(capacityOf(recipe.solution));
    expect(recipe.afterDilution.map(({ times }) => times)).toEqual([2, 10]);
    expect(recipe.afterDilution[0]?.pH).toBe(pHOf({ ...recipe.solution, mL: 2000 }));
  });

  test('what an error of one percent does: f·Δn/(β·V), to the second order', () => {
    const equilibrium = equilibrate(recipe.solution);
    const cation = equilibrium.species.find(({ formula }) => formula === '(HOCH2)3CNH3+')?.fraction as number;
    const [weighed, poured] = recipe.errors;
    // one mmol of Tris brings the charge of its cation, one of HCl that of chloride
    const trisShift = (cation * 0.01 * 50) / (recipe.capacity * 1000);
    const acidMmol =
      recipe.solution.contents.find(({ reagent }) => reagent.id === 'hydrochloricAcid')?.mmol ?? 0;
    expect(weighed).toMatchObject({ of: 'Tris', percent: 1 });
    expect(Math.abs((weighed?.pHShift as number) / trisShift - 1)).toBeLessThan(0.02);
    expect(
      Math.abs((poured?.pHShift as number) / ((-0.01 * acidMmol) / (recipe.capacity * 1000)) - 1),
    ).toBeLessThan(0.02);
    expect(recipe.errors.at(-1)?.of).toBe('final volume');
  });

  test('cautions that defer to the safety data sheet, for the acid at the strength of its stock', () => {
    expect(recipe.cautions.at(-1)).toBe(lastCaution);
    expect(recipe.cautions.join()).toMatch(/hydrochloric acid, 1 mol\/L .* below the limits/);
  });

  test('the order of work: water, solids, what is poured, the mark, the check', () => {
    expect(recipe.steps.map((step) => step.split(' ')[0])).toEqual([
      'Put',
      'Weigh',
      'Measure',
      'Let',
      'Transfer',
      'Check',
    ]);
  });

  test('when it is hardly a buffer', () => {
    expect(recipe.notes).toEqual([]);
    const weak = recipeFor({ pH: 10.5, molar: 0.05, mL: 1000, from: [tris, sodiumHydroxide] });
    expect(weak.notes.join()).toContain('far from any pKa');
  });

  test('plain data that survives JSON', () => expect(JSON.parse(JSON.stringify(recipe))).toEqual(recipe));
});

describe('rejects', () => {
  const from = [aceticAcid, sodiumAcetate] as const;
  test.each<[string, unknown, string]>([
    [
      'a strong acid to weigh',
      { pH: 7, molar: 0.1, mL: 100, from: [tris, hydrochloricAcid] },
      'hydrochloric acid without its strength; give a stock solution or { reagent, purity }',
    ],
    [
      'a gas to weigh',
      { pH: 9, molar: 0.1, mL: 100, from: [reagents.ammonia, reagents.ammoniumChloride] },
      'ammonia without its strength',
    ],
    [
      'carbon dioxide to weigh',
      { pH: 7, molar: 0.1, mL: 100, from: [reagents.carbonDioxide, sodiumHydroxide] },
      'a gas',
    ],
    [
      'a strong acid of which no bottle is known',
      { pH: 7, molar: 0.1, mL: 100, from: [tris, { ...hydrochloricAcid, id: 'mine' }] },
      'a strong acid is not weighed',
    ],
    [
      'sulfuric acid without its strength',
      { pH: 2, molar: 0.1, mL: 100, from: [reagents.sulfuricAcid, reagents.sodiumSulfate] },
      'on sale are 95 to 98 %',
    ],
    ['solids without a concentration', { pH: 5, mL: 100, from }, 'molar is missing'],
    [
      'no weak acid or base',
      { pH: 5, molar: 0.1, mL: 100, from: [sodiumHydroxide, reagents.sodiumChloride] },
      'with a weak acid or base',
    ],
    [
      'several protolytes without a word',
      { pH: 5, molar: 0.1, mL: 100, from: [reagents.citricAcid, reagents.disodiumHydrogenPhosphate] },
      'one of citric, phosphoric',
    ],
    [
      'a stock with nothing in it',
      { pH: 5, molar: 0.1, mL: 100, from: [stock(aceticAcid, 0), sodiumHydroxide] },
      'an ingredient that holds some acetic',
    ],
    ['three ingredients', { pH: 5, molar: 0.1, mL: 100, from: [...from, tris] }, 'at most 2'],
    [
      'a salt of a weak acid for the ionic strength',
      { pH: 5, molar: 0.1, mL: 100, from, ionicStrength: 1, salt: sodiumAcetate },
      'a salt of strong ions alone',
    ],
    [
      'a protolyte that is not there',
      { pH: 5, molar: 0.1, mL: 100, from, protolyte: acids.tris },
      'one of acetic',
    ],
  ])('%s', (_, request, message) => expect(() => prepareBuffer(request as BufferRequest)).toThrow(message));
});

test('of several protolytes the one that is named sets the concentration', () => {
  const { solution } = recipeFor({
    pH: 5,
    molar: 0.05,
    mL: 100,
    protolyte: acids.citric,
    from: [reagents.citricAcid, reagents.disodiumHydrogenPhosphate],
  });
  expect(solution.contents[0]).toMatchObject({ reagent: { id: 'citricAcid' }, mmol: expect.closeTo(5, 12) });
});

test('with activity coefficients too, pH and ionic strength are met', () => {
  const conditions = { activity: davies };
  const recipe = recipeFor({
    pH: 7,
    molar: 0.025,
    mL: 500,
    from: [reagents.potassiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
    ionicStrength: 0.15,
    conditions,
  });
  expect(pHOf(recipe.solution, conditions)).toBeCloseTo(7, 10);
  expect(equilibrate(recipe.solution, conditions).ionicStrength).toBeCloseTo(0.15, 10);
});

test.each(ways)('from %s, the pH is met warm, with activity and open to the air', (_, pKa, from, id) => {
  for (const carbonDioxide of id === 'carbonic' ? [undefined] : [undefined, air]) {
    const conditions = { activity: davies, celsius: 37, ...(carbonDioxide && { carbonDioxide }) };
    const { solution } = recipeFor({ pH: pKa - 0.4, molar: 0.05, mL: 250, from, conditions });
    expect(pHOf(solution, conditions)).toBeCloseTo(pKa - 0.4, 10);
  }
});

describe('the order of work', () => {
  const kindsOf = (request: BufferRequest) =>
    recipeFor(request).parts.map(({ name }) => name.split(' ').at(-1));

  test('puts the concentrated acid into what is dilute, whichever was named first', () => {
    const concentrated = stock(hydrochloricAcid, 12);
    const { steps } = recipeFor({ pH: 4.8, mL: 100, from: [concentrated, stock(sodiumAcetate, 0.2)] });
    expect(steps[0]).toMatch(/^Measure 99.21 mL of 0.2 mol\/L sodium acetate and put it into a beaker/);
    expect(steps[1]).toMatch(
      /^In the fume cupboard, measure 0.7851 mL of 12 mol\/L hydrochloric acid and pour it in slowly/,
    );
  });

  test('has solids before stocks, unless a stock is most of the liquid', () => {
    const request = { pH: 8, molar: 0.05, mL: 100 };
    expect(kindsOf({ ...request, from: [stock(hydrochloricAcid, 1), tris] })).toEqual(['Tris', 'acid']);
    // 0.54 equivalents of 0.05 mol/L in 0.03 mol/L acid: 90 of 100 mL
    expect(kindsOf({ ...request, from: [tris, stock(hydrochloricAcid, 0.03)] })).toEqual(['acid', 'Tris']);
  });

  test('has four digits with their zeros, and the mass fraction of what is not pure', () => {
    const from = [{ reagent: reagents.phosphoricAcid, purity: 0.85 }, sodiumHydroxide] as const;
    const { steps } = recipeFor({ pH: 7, molar: 0.1, mL: 1000, from });
    expect(steps[2]).toMatch(/^Weigh 11.53 g of phosphoric acid \(85 % by mass\)/);
    const dilute = recipeFor({ pH: 4.756, molar: 0.1, mL: 1000, from: [aceticAcid, sodiumAcetate] });
    expect(dilute.steps[1]).toMatch(/^Weigh 4.100 g of sodium acetate/);
  });
});

describe('liquids from the bottle', () => {
  test('are weighed as liquids with their volume, in the fume cupboard where they fume', () => {
    const { parts, steps } = recipeFor({
      pH: 4.7,
      molar: 0.1,
      mL: 1000,
      from: [aceticAcid, sodiumHydroxide],
    });
    // 0.1 mol of 99.8 % acid of 1.049 g/mL
    const grams = (0.1 * 60.052) / 0.998;
    expect(parts.at(-1)).toMatchObject({ kind: 'liquid', purity: 0.998, grams: expect.closeTo(grams, 10) });
    expect(steps.at(-4)).toBe(
      `In the fume cupboard, weigh ${grams.toFixed(3)} g of acetic acid (99.8 % by mass), a liquid of about ${(grams / 1.049).toPrecision(3)} mL, and pour it in slowly, stirring.`,
    );
  });

  test('have no volume where the strength is not that of the usual bottle', () => {
    const { parts } = recipeFor({
      pH: 3.75,
      molar: 0.1,
      mL: 1000,
      from: [{ reagent: reagents.formicAcid, purity: 0.9 }, sodiumHydroxide],
    });
    expect(parts.at(-1)).toMatchObject({ kind: 'liquid', mL: null });
  });

  test.each([
    ['hydrochloricAcid', 0.37],
    ['nitricAcid', 0.65],
    ['sulfuricAcid', 0.96],
    ['phosphoricAcid', 0.85],
    ['formicAcid', 0.98],
    ['lacticAcid', 0.9],
    ['ammonia', 0.25],
  ] as const)('%s is refused without its strength, and measured with it', (id, purity) => {
    const reagent = reagents[id];
    const other = id === 'ammonia' ? reagents.ammoniumChloride : reagents.disodiumHydrogenPhosphate;
    const request = (first: BufferIngredient): BufferRequest => ({
      pH: id === 'ammonia' ? 9.25 : 7,
      molar: 0.05,
      mL: 100,
      from: [first, other],
      protolyte: id === 'ammonia' ? acids.ammonium : acids.phosphoric,
    });
    expect(() => prepareBuffer(request(reagent))).toThrow(/without its strength; give a stock solution or/);
    const { parts } = recipeFor(request({ reagent, purity }));
    expect(parts.find(({ kind }) => kind === 'liquid')).toMatchObject({ purity });
  });

  test('of sodium hydroxide pellets are a solid, and its 50 % solution is a liquid', () => {
    const kindOf = (base: BufferIngredient) =>
      recipeFor({ pH: 7, molar: 0.1, mL: 1000, from: [reagents.sodiumDihydrogenPhosphate, base] }).parts.find(
        ({ name }) => name.startsWith('sodium hydroxide'),
      )?.kind;
    expect(kindOf(sodiumHydroxide)).toBe('weighed');
    expect(kindOf({ reagent: sodiumHydroxide, purity: 0.97 })).toBe('weighed');
    expect(kindOf({ reagent: sodiumHydroxide, purity: 0.5 })).toBe('liquid');
  });
});

describe('the heat of mixing', () => {
  const hot = [
    makeStock({ reagent: aceticAcid, massPercent: 99.8, density: 1.049 }),
    makeStock({ reagent: sodiumHydroxide, massPercent: 50, density: 1.525 }),
  ] as const;

  test('refuses glacial acetic acid with 50 % sodium hydroxide, with the way to do it', () => {
    const answer = prepareBuffer({ pH: 4.756, mL: 1000, from: hot });
    expect(answer).toMatchObject({ status: 'impossible', because: 'too-hot' });
    if (answer.status === 'prepared') return expect.unreachable();
    expect(answer.heat?.kelvin).toBeGreaterThan(80);
    expect(answer.reason).toMatch(/dilute each of them first.*into cold water/);
  });

  test('the concentration that the refusal names is then prepared from cold stocks', () => {
    const answer = prepareBuffer({ pH: 4.756, mL: 1000, from: hot });
    const share =
      Number(/no more than (\d+) %/.exec(answer.status === 'impossible' ? answer.reason : '')?.[1]) / 100;
    const [acid, base] = hot.map(({ contents: [held] }) =>
      stock((held as { reagent: Reagent }).reagent, (share * (held as { mmol: number }).mmol) / 1000),
    );
    const mild = recipeFor({ pH: 4.756, mL: 1000, from: [acid as Solution, base as Solution] });
    expect(mild.heat.kelvin).toBeLessThan(heatLimits.refused);
  });

  test('is told from 5 K on, cooled from 10 K on, and refused from 40 K on', () => {
    const made = (molar: number) =>
      prepareBuffer({ pH: 4.7, molar, mL: 1000, from: [aceticAcid, sodiumHydroxide] });
    for (const molar of [0.1, 0.2, 0.4, 0.5, 0.7, 1, 1.5, 2, 2.5, 3]) {
      const answer = made(molar);
      const kelvin = answer.heat?.kelvin as number;
      expect(answer.status).toBe(kelvin < heatLimits.refused ? 'prepared' : 'impossible');
      if (answer.status === 'impossible') continue;
      expect(answer.notes.some((note) => note.startsWith('Mixing gives off'))).toBe(
        kelvin >= heatLimits.stated,
      );
      expect(answer.steps.some((step) => step.includes('ice water'))).toBe(kelvin >= heatLimits.cooled);
    }
    expect(made(0.1).heat?.kelvin).toBeLessThan(heatLimits.stated);
    expect(made(3).heat?.kelvin).toBeGreaterThan(heatLimits.refused);
  });
});

describe('the check by a probe', () => {
  const request: BufferRequest = {
    pH: 7.2,
    molar: 0.1,
    mL: 500,
    from: [reagents.sodiumDihydrogenPhosphate, reagents.disodiumHydrogenPhosphate],
  };
  const check = (conditions: BufferRequest['conditions'] = {}) =>
    recipeFor({ ...request, conditions }).steps.at(-1);

  test('expects the pH by Davies beside that of an ideal calculation', () => {
    const { solution } = recipeFor(request);
    const reading = pHOf(solution, { activity: davies }).toFixed(2);
    expect(check()).toBe(
      `Check with a calibrated probe at 25 °C: pH 7.20 is calculated; with the activity of its ions (Davies) about ${reading} is expected.`,
    );
    expect(check({ activity: davies, celsius: 37 })).toBe(
      'Check with a calibrated probe at 37 °C: pH 7.20 is expected.',
    );
    expect(check({ activity: debyeHuckelLimiting })).toBe(
      'Check with a calibrated probe at 25 °C: pH 7.20 is expected.',
    );
  });

  test('expects that a fresh buffer is not yet in equilibrium with the air', () => {
    const conditions = { activity: davies, carbonDioxide: air };
    const { steps, solution } = recipeFor({
      pH: 9.5,
      molar: 0.2,
      mL: 250,
      from: [{ reagent: reagents.ammonia, purity: 0.28 }, reagents.ammoniumChloride],
      conditions,
    });
    const fresh = pHOf(solution, { activity: davies });
    expect(fresh).toBeGreaterThan(9.8);
    expect(steps.at(-1)).toContain(
      `pH 9.50 is calculated; freshly made, with no carbon dioxide gone or taken up, about ${fresh.toFixed(2)} is expected.`,
    );
  });
});

describe('notes on carbon dioxide', () => {
  const carbonate = (pH: number, conditions = {}) =>
    recipeFor({
      pH,
      molar: 0.1,
      mL: 100,
      from: [reagents.sodiumHydrogenCarbonate, stock(hydrochloricAcid, 1)],
      conditions,
    }).notes.join();

  test('that it leaves in bubbles where it would stand above one atmosphere', () => {
    // 0.034 mol/(L·atm): half of 0.1 mol/L at pH = pK1 is 1.5 atm, an eleventh of it at pK1 + 1 is 0.27 atm
    expect(carbonate(6.35)).toContain('1.5 atm');
    expect(carbonate(7.35)).not.toContain('atm');
  });

  test('that open to the air its concentration does not stay', () => {
    expect(carbonate(7.35, { carbonDioxide: air })).toContain('the air decides');
    expect(carbonate(7.35)).not.toContain('the air decides');
  });
});

test('what does not go in at all is no part, and has no error', () => {
  const pH = pHOf(stock(aceticAcid, 0.1));
  const { parts, errors } = recipeFor({ pH, molar: 0.1, mL: 1000, from: [aceticAcid, sodiumAcetate] });
  expect(parts.map(({ name }) => name)).toEqual(['acetic acid (99.8 % by mass)']);
  expect(errors.map(({ of }) => of)).toEqual(['acetic acid (99.8 % by mass)', 'final volume']);
});

test('a reagent without a molar mass is measured in mmol, and has no grams', () => {
  const unknown: Reagent = { ...tris, id: 'tris of unknown formula' };
  const { formula, molarMass, ...bare } = unknown as Reagent & { formula: string; molarMass: number };
  const { parts } = recipeFor({ pH: 8, molar: 0.1, mL: 100, from: [bare, stock(hydrochloricAcid, 1)] });
  expect(parts.find(({ kind }) => kind === 'weighed')).toMatchObject({
    mmol: expect.closeTo(10, 10),
    grams: null,
  });
});

test('where the stocks fill the volume but for rounding, no water is left to make up', () => {
  for (let mL = 1; mL <= 3e6; mL *= 3) {
    const alone = {
      pH: pHOf(stock(tris, 0.3)),
      molar: 0.3,
      mL,
      from: [stock(tris, 0.3), sodiumHydroxide],
    } as const;
    const between = { pH: 8, mL, from: [stock(tris, 0.3), stock(hydrochloricAcid, 0.7)] } as const;
    for (const request of [alone, between]) expect(recipeFor(request).waterToMakeUp).toBe(0);
  }
});

describe('an error of ten percent', () => {
  test('in the final volume is that much more water', () => {
    const from = [aceticAcid, sodiumAcetate] as const;
    const { errors, pH, solution } = recipeFor({ pH: 3.5, molar: 0.01, mL: 100, from, errorPercent: 10 });
    const shift = pHOf({ ...solution, mL: 110 }) - pH;
    expect(errors.at(-1)).toEqual({ of: 'final volume', percent: 10, pHShift: expect.closeTo(shift, 12) });
    expect(Math.abs(shift)).toBeGreaterThan(0.005);
  });

  test('in one of two stocks that are poured together adds to the volume', () => {
    const [acid, base] = [stock(aceticAcid, 0.01), stock(sodiumAcetate, 0.02)];
    const { errors, parts, pH } = recipeFor({ pH: 4, mL: 100, from: [acid, base], errorPercent: 10 });
    const mLOf = (name: string) =>
      parts
        .map((part) => (part.kind === 'poured' && part.name.includes(name) ? part.mL : 0))
        .reduce((a, b) => a + b);
    const shiftOf = (moreAcid: number, moreBase: number) =>
      pHOf(
        mix(
          aliquot(acid, { mL: mLOf('acetic acid') * moreAcid }),
          aliquot(base, { mL: mLOf('sodium acetate') * moreBase }),
        ),
      ) - pH;
    expect(errors).toEqual([
      { of: '0.01 mol/L acetic acid', percent: 10, pHShift: expect.closeTo(shiftOf(1.1, 1), 12) },
      { of: '0.02 mol/L sodium acetate', percent: 10, pHShift: expect.closeTo(shiftOf(1, 1.1), 12) },
    ]);
  });
});
