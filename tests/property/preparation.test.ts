import fc from 'fast-check';
import {
  addWater,
  aliquot,
  indicators,
  makeSolution,
  type PreparedSolution,
  planSample,
  prepareSession,
  prepareSolution,
  type Reagent,
  reagents,
  type Solution,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { flasks, pipettes, type Vessel } from '../../src/catalogue/glassware.js';

const { sodiumCarbonate, hydrochloricAcid, sodiumHydroxide, potassiumHydrogenPhthalate } = reagents;

const sizesOf = (vessels: readonly Vessel[]) => vessels.map(({ mL }) => mL);
const stockOf = (molar: number) => makeSolution({ contents: [{ reagent: hydrochloricAcid, molar }] });
const molarOf = ({ mL, contents }: Solution) => (contents[0]?.mmol ?? 0) / mL;

/** Of a solid, or of a stock with few vessels and many at hand. */
const requests = fc.oneof(
  fc.record({
    from: fc.constantFrom(sodiumCarbonate, potassiumHydrogenPhthalate),
    molar: fc.double({ min: 0.005, max: 0.2, noNaN: true }),
    mL: fc.integer({ min: 10, max: 5000 }),
    glass: fc.constantFrom('A' as const, 'B' as const),
  }),
  fc.record({
    from: fc.constantFrom(2, 1, 0.5).map(stockOf),
    molar: fc.constantFrom(0.5, 0.25, 0.1, 0.05, 0.04, 0.02, 0.01, 0.001, 1e-4, 1e-5, 1e-6),
    mL: fc.constantFrom(20, 100, 250, 900),
    glass: fc.constantFrom('A' as const, 'B' as const),
    vesselPercent: fc.constantFrom(0.2, 0.4, 0.5, 1, 2),
    flasks: fc.subarray(sizesOf(flasks), { minLength: 1 }),
    pipettes: fc.subarray(sizesOf(pipettes), { minLength: 1 }),
  }),
);

/** The solution made anew from the numbers of its recipe. */
function remade({ parts: [part], mL, dilutions }: PreparedSolution): Solution {
  if (part?.kind === 'poured')
    return dilutions.reduce((stock, { times, pipette, flask }) => {
      const measured = aliquot(stock, { mL: times * pipette.mL });
      return addWater(measured, { mL: flask.mL - measured.mL });
    }, part.stock);
  if (!part || part.grams === null) throw new Error('nothing weighed');
  return makeSolution({ mL, contents: [{ reagent: part.reagent, grams: part.grams, purity: part.purity }] });
}

describe('a recipe for a solution', () => {
  test('remade from its own numbers has the concentration asked for to 1e-12', () => {
    let made = 0;
    fc.assert(
      fc.property(requests, (request) => {
        const recipe = prepareSolution(request);
        if (recipe.status !== 'prepared') return;
        made += 1;
        expect(Math.abs(molarOf(remade(recipe)) / request.molar - 1)).toBeLessThanOrEqual(1e-12);
      }),
    );
    expect(made).toBeGreaterThan(20);
  });

  test('asks for no vessel that is not at hand, or not good enough, and never for more than the flask before holds', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const recipe = prepareSolution(request);
        if (recipe.status !== 'prepared') return void expect(recipe.reason.length).toBeGreaterThan(20);
        const atHand = {
          flasks: sizesOf(flasks),
          pipettes: sizesOf(pipettes),
          vesselPercent: 0.5,
          ...request,
        };
        const isGood = ({ mL, tolerance }: Vessel) =>
          expect((100 * tolerance[request.glass]) / mL).toBeLessThanOrEqual(
            atHand.vesselPercent * (1 + 1e-9),
          );
        expect(atHand.flasks).toContain(recipe.mL);
        isGood(recipe.flask);
        let left = Number.POSITIVE_INFINITY;
        for (const { times, pipette, flask } of recipe.dilutions) {
          expect(atHand.flasks).toContain(flask.mL);
          expect(atHand.pipettes).toContain(pipette.mL);
          isGood(flask);
          isGood(pipette);
          expect(times * pipette.mL).toBeLessThanOrEqual(left);
          left = flask.mL;
        }
        expect(recipe.mL * recipe.batches).toBeGreaterThanOrEqual(request.mL * (1 - 1e-9));
      }),
    );
  });

  test('needs twice as much for twice as many groups', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 90 }), (groups, mL) => {
        const [once, twice] = [groups, 2 * groups].map((n) =>
          prepareSolution({ from: potassiumHydrogenPhthalate, molar: 0.1, mL, groups: n }),
        );
        if (once?.status !== 'prepared' || twice?.status !== 'prepared') return expect.unreachable();
        expect(twice.needed).toBe(2 * once.needed);
        expect(twice.mL * twice.batches).toBeGreaterThanOrEqual(2 * once.needed);
      }),
      { numRuns: 30 },
    ));
});

describe('what a session needs', () => {
  const analyte = makeSolution({ mL: 25, contents: [{ reagent: sodiumCarbonate, molar: 0.05 }] });
  const titrations = [
    { setup: { analyte, titrant: stockOf(0.1) }, upTo: 35, runs: 2, indicator: indicators.methylOrange },
  ];
  const solutions = [
    { solution: makeSolution({ mL: 100, contents: [{ reagent: reagents.tris, molar: 0.05 }] }), mL: 50 },
  ];

  /** Every amount of a plan, with its name. */
  const amountsOf = (groups: number, reserve: number) => {
    const plan = prepareSession({ groups, titrations, solutions, reserve });
    return [
      ...plan.solutions.map(({ what, mL }) => [what, mL] as const),
      ...plan.reagents.flatMap(({ id, mmol, grams, bottle }) => [
        [`${id} mmol`, mmol] as const,
        [`${id} g`, grams] as const,
        [`${id} bottle g`, bottle?.grams ?? 0] as const,
        [`${id} bottle mL`, bottle?.mL ?? 0] as const,
      ]),
      ...plan.indicators.flatMap(({ name, drops, mL }) => [[name, drops] as const, [name, mL] as const]),
      ['waste', plan.waste.mL] as const,
    ];
  };

  test('doubles in each amount with the number of groups', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (groups, reserve) => {
          const [once, twice] = [amountsOf(groups, reserve), amountsOf(2 * groups, reserve)];
          expect(once.length).toBeGreaterThan(15);
          // a few roundings of a double
          for (const [k, [name, amount]] of once.entries())
            expect(Math.abs(Number(twice[k]?.[1]) - 2 * Number(amount)), name).toBeLessThanOrEqual(
              1e-14 * Number(amount),
            );
        },
      ),
      { numRuns: 40 },
    ));
});

// GUM supplement 1 (JCGM 101:2008): limits of error drawn from triangular distributions, masses and readings from normal ones. With many
// contributions 1.96 standard uncertainties cover 95.0 %; where one triangular distribution outweighs all, 1 - (1 - 1.96/√6)² = 96.0 %.
// 200 000 trials leave 0.05 % of standard error.
const trials = 200_000;
const noise = 0.002;
const range = { from: 0.94, to: 0.96 + noise };

describe('a stated uncertainty covers 95 % of what its tolerances give', () => {
  const draw = generator(12345);
  const triangular = (a: number) => a * (draw() + draw() - 1);
  const normal = () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
  const drawn = ({ mL, tolerance }: Vessel, glass: 'A' | 'B') => 1 + triangular(tolerance[glass]) / mL;
  const coverageOf = (relative: () => number, share: number): number => {
    let covered = 0;
    for (let k = 0; k < trials; k += 1) if (Math.abs(relative() - 1) <= 1.96 * share) covered += 1;
    return covered / trials;
  };
  const expectCovered = (coverage: number) => {
    expect(coverage).toBeGreaterThan(range.from);
    expect(coverage).toBeLessThan(range.to);
  };

  test.each([
    ['a weighed solid, of which the mass counts most', { from: sodiumCarbonate, molar: 0.05, mL: 100 }],
    ['a weighed solid, of which the flask counts most', { from: sodiumCarbonate, molar: 0.2, mL: 1000 }],
    ['a bottle', { from: { reagent: hydrochloricAcid, purity: 0.37 }, molar: 0.1, mL: 100 }],
    ['one dilution', { from: stockOf(1), molar: 0.1, mL: 100 }],
    ['one dilution of class B', { from: stockOf(1), molar: 0.1, mL: 100, glass: 'B' }],
    ['two dilutions', { from: stockOf(1), molar: 0.001, mL: 100, pipettes: [10, 20, 25] }],
    ['five dilutions', { from: stockOf(1), molar: 1e-5, mL: 100, pipettes: [10], flasks: [100] }],
  ] as const)('%s', (_, request) => {
    const recipe = prepareSolution(request);
    if (recipe.status !== 'prepared') return expect.unreachable(recipe.reason);
    const { parts, flask, glass, dilutions } = recipe;
    const grams = parts[0] && 'grams' in parts[0] ? Number(parts[0].grams) : Number.NaN;
    const ofMass = () => (1 + (normal() * Math.SQRT2 * 0.0002) / grams) / drawn(flask, glass);
    const ofVolumes = () =>
      dilutions.reduce(
        (product, step) => (product * drawn(step.pipette, glass)) / drawn(step.flask, glass),
        1,
      );
    const share = recipe.standardUncertainty / recipe.molar;
    expectCovered(coverageOf(dilutions.length > 0 ? ofVolumes : ofMass, share));
  });

  test.each([
    ['a sample', undefined],
    ['an aliquot of it', { flask: 250, pipette: 25 }],
  ])('the result of a titration of %s', (_, of) => {
    const plan = planSample({
      sample: { reagent: sodiumCarbonate, ...(of && { aliquot: of }) },
      titrant: { reagent: hydrochloricAcid, molar: 0.1 },
    });
    if (plan.status !== 'planned') return expect.unreachable(plan.reason);
    const volume = plan.points[plan.point - 1]?.mL ?? Number.NaN;
    const [flask, pipette] = [flasks.find(({ mL }) => mL === 250), pipettes.find(({ mL }) => mL === 25)];
    const ofVessels = () => (of && flask && pipette ? drawn(flask, 'A') / drawn(pipette, 'A') : 1);
    // 0.2 mg a weighing, 0.02 mL a reading, ISO 385: 0.05 mL for 50 mL of class A
    const relative = () =>
      ((1 + (normal() * Math.SQRT2 * 0.02 + triangular(0.05)) / volume) * ofVessels()) /
      (1 + (normal() * Math.SQRT2 * 0.0002) / plan.grams);
    expectCovered(coverageOf(relative, plan.percent.together / 100));
  });
});

describe('a plan for a sample', () => {
  const all = Object.values(reagents) as Reagent[];

  /** Whether there is a plan: then it ends in the wanted part of the burette. */
  function isPlanned(reagent: Reagent, titrant: Reagent): boolean {
    const molar = 0.1;
    const plan = planSample({ sample: { reagent, purity: 0.9 }, titrant: { reagent: titrant, molar } });
    const pair = `${reagent.id} with ${titrant.id}`;
    if (plan.status === 'impossible') {
      expect(plan.reason.length, pair).toBeGreaterThan(20);
      return false;
    }
    const analyte = makeSolution({ mL: 50, contents: [{ reagent, grams: plan.grams, purity: 0.9 }] });
    const burette = makeSolution({ contents: [{ reagent: titrant, molar }] });
    const { equivalencePoints, jumpAt } = titrate({ analyte, titrant: burette });
    const found = equivalencePoints[plan.point - 1]?.mL ?? 0;
    expect(found, pair).toBeGreaterThanOrEqual(0.6 * 50);
    expect(found, pair).toBeLessThanOrEqual(0.9 * 50);
    expect(Math.abs(jumpAt(found)), pair).toBeGreaterThanOrEqual(0.1);
    return true;
  }

  const weighable = all.filter(({ molarMass }) => molarMass !== undefined);

  test('titrated, ends in the wanted part of the burette: every reagent with the usual titrants', () => {
    let planned = 0;
    for (const reagent of weighable)
      for (const titrant of [hydrochloricAcid, sodiumHydroxide])
        if (reagent.id !== titrant.id && isPlanned(reagent, titrant)) planned += 1;
    expect(planned).toBeGreaterThan(60);
  });

  test('titrated, ends in the wanted part of the burette: any pair of the catalogue', () =>
    fc.assert(
      fc.property(fc.constantFrom(...weighable), fc.constantFrom(...all), (reagent, titrant) => {
        fc.pre(reagent.id !== titrant.id);
        isPlanned(reagent, titrant);
      }),
      { numRuns: 150 },
    ));

  const carbonate = {
    sample: { reagent: sodiumCarbonate },
    titrant: { reagent: hydrochloricAcid, molar: 0.1 },
  };
  const planOf = (more: object) => {
    const plan = planSample({ ...carbonate, ...more });
    if (plan.status !== 'planned') throw new Error(plan.reason);
    return plan;
  };

  test('needs no other mass, and has its points at the same volumes, with any volume of water', () =>
    fc.assert(
      fc.property(fc.double({ min: 10, max: 100, noNaN: true }), (mL) => {
        const [plan, usual] = [planOf({ mL }), planOf({})];
        expect(plan.grams / usual.grams).toBeCloseTo(1, 12);
        for (const [k, point] of plan.points.entries())
          expect(point.mL / Number(usual.points[k]?.mL)).toBeCloseTo(1, 12);
      }),
      { numRuns: 30 },
    ));

  test('has endpoints that move the further, the more of its water there is', () =>
    fc.assert(
      fc.property(fc.double({ min: 20, max: 60, noNaN: true }), (mL) => {
        const shift = (volume: number) => Number(planOf({ mL: volume }).water.endpoints[0]?.mL);
        expect(shift(mL)).toBeLessThan(0);
        expect(shift(1.5 * mL)).toBeLessThan(shift(mL));
      }),
      { numRuns: 30 },
    ));
});

/** Numbers from 0 to 1 (S. K. Park, K. W. Miller, Commun. ACM 31, 1192–1201 (1988), multiplier 48271). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (48271 * state) % 2147483647;
    return state / 2147483647;
  };
}
