import fc from 'fast-check';
import {
  air,
  davies as daviesInDoubles,
  defineProtolyte,
  defineReagent,
  equilibrate,
  makeSolution as makeInDoubles,
  pKwAt,
  reagents,
  type Source,
  titrate,
} from 'protolysis';
import {
  compareWithExact,
  davies,
  debyeHuckelExtended,
  debyeHuckelLimiting,
  type ExactConditions,
  exactEquilibrium,
  exactPH,
  exactTitration,
  guntelberg,
  ideal,
  makeSolution,
  mix,
} from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { isLeastStrength } from '../../src/exact/model/is-least-strength.js';
import { readExactProblem } from '../../src/exact/model/read-exact-problem.js';
import { exactly } from '../../src/exact/numbers/exactly.js';
import { acidWith, strongIon } from '../make.js';
import { systems } from '../property/systems.js';
import { familyReagent } from '../reference/vectors.js';

const { sodiumCarbonate, sodiumHydrogenCarbonate, hydrochloricAcid, sodiumChloride } = reagents;
const soda = makeSolution({ mL: '20', contents: [{ reagent: sodiumCarbonate, molar: '0.05' }] });
const acid = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: '0.1' }] });
const water = makeSolution({ contents: [] });

test('doubles are within four conditioning limits of the exact pH under any conditions', () => {
  const conditions = fc.record({
    activity: fc.constantFrom(ideal, davies, guntelberg, debyeHuckelLimiting, debyeHuckelExtended),
    celsius: fc.constantFrom(0, 25, 37, '61.5', 100),
    carbonDioxide: fc.option(fc.constantFrom(air, { atm: '1' }, { atm: 0 }, { atm: 0.01, pKH: '1.4' })),
  });
  fc.assert(
    fc.property(systems, conditions, ({ families, ions }, { carbonDioxide, ...rest }) => {
      const solution = makeSolution({
        contents: [
          ...families.map((family) => ({ reagent: familyReagent(family).reagent, molar: family.molar })),
          ...ions.map(({ formula, charge, molar }) => ({ reagent: strongIon(formula, charge), molar })),
        ],
      });
      const given = carbonDioxide ? { ...rest, carbonDioxide } : rest;
      expect(compareWithExact(solution, given).inLimits).toBeLessThanOrEqual(4);
    }),
    { numRuns: 30 },
  );
}, 60_000);

describe('under real conditions', () => {
  test('pH of pure water is half of pKw, which moves as the release of IAPWS does', () => {
    for (const celsius of [0, 50, 100]) {
      const { pH, proven } = exactPH(water, { celsius, digits: 20 });
      expect(2 * pH.toNumber()).toBeCloseTo(pKwAt(celsius), 12);
      expect(proven).toBe('only');
    }
  });

  test('pure water has pH = pKw/2 whatever the law, since γ of H+ and OH- cancel', () => {
    for (const activity of [davies, guntelberg, debyeHuckelLimiting])
      expect(exactPH(water, { activity, pKw: 14, digits: 100 }).pH.toString()).toBe('7');
  });

  test('at 25 °C and no law, it is what it is without conditions', () => {
    const [plain, told] = [exactPH(soda), exactPH(soda, { celsius: '25.0', activity: ideal })];
    expect(told.pH.toString()).toBe(plain.pH.toString());
  });

  test('a bracket narrows inside the wider ones as digits are added', () => {
    const given = { activity: davies, celsius: 37, carbonDioxide: air };
    const [few, many] = [exactPH(soda, { digits: 8, ...given }), exactPH(soda, { digits: 60, ...given })];
    expect(many.pH.gt(few.lower) && many.pH.lt(few.upper)).toBe(true);
    expect(many.upper.minus(many.lower).toString()).toBe('2e-63');
  });

  test('charges of 10 mol/L that cancel but for what water leaves ask for more digits, no more', () => {
    const { reagent } = acidWith('strong', 0, [-10, 20]);
    const salt = makeSolution({
      contents: [
        { reagent, molar: 10 },
        { reagent: strongIon('Na+', 1), molar: 10 },
      ],
    });
    const { lower, upper, proven } = exactPH(salt, { activity: davies, digits: 30 });
    expect(upper.minus(lower).toString()).toBe('2e-33');
    expect(proven).toBe('least');
  });

  test('charge, mass and ionic strength close at equilibrium to the digits', () => {
    const mixture = mix(
      soda,
      makeSolution({ mL: '5', contents: [{ reagent: hydrochloricAcid, molar: '0.1' }] }),
    );
    const { species, ionicStrength } = exactEquilibrium(mixture, {
      activity: davies,
      celsius: 10,
      digits: 40,
    });
    const zero = ionicStrength.times(0);
    const charge = species.reduce((sum, { charge, molar }) => sum.plus(molar.times(charge)), zero);
    const squares = species.reduce((sum, { charge, molar }) => sum.plus(molar.times(charge ** 2)), zero);
    expect(charge.abs().lt('1e-39')).toBe(true);
    expect(squares.div(2).minus(ionicStrength).abs().lt('1e-39')).toBe(true);
    const carbonate = species.filter(({ protolyteId }) => protolyteId === 'carbonic');
    const total = carbonate.reduce((sum, { molar }) => sum.plus(molar), zero);
    expect(total.minus('0.04').abs().lt('1e-39')).toBe(true);
    // mass action with thermodynamic constants: a(H+)·a(CO3 2-)/a(HCO3-) is K2, the same at any strength
    const K2 = (activity: typeof davies) => {
      const { species: own, pH } = exactEquilibrium(mixture, { activity, celsius: 10, digits: 40 });
      const of = (formula: string) => own.find((one) => one.formula === formula)?.activity ?? zero;
      return of('CO3(2-)').div(of('HCO3-')).log(10).minus(pH);
    };
    expect(K2(davies).minus(K2(guntelberg)).abs().lt('1e-37')).toBe(true);
  });

  test('species agree with those of equilibrate', () => {
    const contents = [{ reagent: sodiumHydrogenCarbonate, molar: 0.1 }];
    const double = equilibrate(makeInDoubles({ contents }), {
      activity: daviesInDoubles,
      celsius: 37,
      carbonDioxide: air,
    });
    const exact = exactEquilibrium(makeSolution({ contents }), {
      activity: davies,
      celsius: 37,
      carbonDioxide: air,
      digits: 20,
    });
    expect(exact.species.map(({ formula }) => formula)).toEqual(double.species.map(({ formula }) => formula));
    for (const [k, { molar, activity, fraction }] of exact.species.entries()) {
      const own = double.species[k];
      expect(molar.toNumber() / (own?.molar ?? 0)).toBeCloseTo(1, 11);
      expect(activity.toNumber() / (own?.activity ?? 0)).toBeCloseTo(1, 11);
      expect(fraction?.toNumber() ?? 0).toBeCloseTo(own?.fraction ?? 0, 11);
    }
    expect(exact.bufferCapacity.toNumber() / double.bufferCapacity).toBeCloseTo(1, 11);
  });

  test('conditions are told as plain data, and give the same when they come back through JSON', () => {
    const given = { activity: davies, celsius: 37, carbonDioxide: air, digits: 20 };
    const { conditions, pH } = exactEquilibrium(soda, given);
    const copy: ExactConditions = JSON.parse(JSON.stringify(conditions));
    expect(copy.celsius).toBe('37');
    expect(exactEquilibrium(soda, { ...copy, digits: 20 }).pH.toString()).toBe(pH.toString());
  });
});

describe('where there are three self-consistent states', () => {
  // 1 mol/L of an acid that gives up four protons at once, far beyond the range of the law: on a grid of I, J − I changes its sign
  // at 0.00034, 7.2 and 10 mol/L (as in tests/equilibrium/self-consistent.test.ts)
  const source: Source = { kind: 'fromMemory', note: 'an input of a mathematical test' };
  const protolyte = defineProtolyte({
    id: 'oligomer',
    name: 'oligomer',
    species: Array.from({ length: 5 }, (_, lost) => ({ formula: `A${lost}`, charge: -lost })),
    steps: Array.from({ length: 4 }, (_, k) => ({ pKa: 7 - k / 2, source })),
  });
  const oligomer = { id: 'oligomer', name: 'oligomer', protolytes: [{ protolyte, count: 1 }], ions: [] };
  const reagent = defineReagent(oligomer);
  const given = { activity: debyeHuckelLimiting, digits: 20 };

  test('the least is given and proven to be the least', () => {
    const sample = makeSolution({ contents: [{ reagent, molar: 1 }] });
    const { proven, ionicStrength } = exactEquilibrium(sample, given);
    expect(proven).toBe('least');
    expect(ionicStrength.gt('0.00032') && ionicStrength.lt('0.00034')).toBe(true);
  });

  test('nothing is proven of a bracket up to any of the others', () => {
    const sample = makeSolution({ contents: [{ reagent, molar: 1 }] });
    const { system, column } = readExactProblem('test', sample, given);
    for (const [upper, proven] of [
      ['0.00034', true],
      ['0.001', true],
      ['8', false],
      ['11', false],
    ] as const)
      expect(isLeastStrength(system, column, { lower: exactly(0), upper: exactly(Number(upper)) })).toBe(
        proven,
      );
  });

  test('where the scan would take too long, it is left open', () => {
    const sample = makeSolution({
      contents: [
        { reagent, molar: 1 },
        { reagent: reagents.sodiumHydroxide, molar: '0.4' },
      ],
    });
    expect(exactPH(sample, given).proven).toBe('some');
  });
});

describe.each<[string, ExactConditions]>([
  ['with Davies', { activity: davies }],
  ['with Davies at 10 °C', { activity: davies, celsius: '10' }],
  ['with sizes of ions, open to air', { activity: debyeHuckelExtended, carbonDioxide: air }],
  ['open to air', { carbonDioxide: air }],
])('an exact titration %s', (_, conditions) => {
  const titration = exactTitration({ analyte: soda, titrant: acid, conditions }, { digits: 25 });

  test('has the pH of the mixture', () => {
    const poured = makeSolution({ mL: '7.5', contents: [{ reagent: hydrochloricAcid, molar: '0.1' }] });
    const { pH } = exactPH(mix(soda, poured), { ...conditions, digits: 25 });
    expect(titration.pHAt('7.5').pH.toString()).toBe(pH.toString());
  });

  test('has the slope that its pH has', () => {
    const rise = titration.pHAt('7.5000000001').pH.minus(titration.pHAt('7.4999999999').pH);
    // 1e-20 times the third derivative, and the last of 25 digits over 2e-10
    expect(rise.div('2e-10').div(titration.slopeAt('7.5')).minus(1).abs().lt('1e-13')).toBe(true);
  });

  test('finds the volume of a pH that it gave for a volume', () => {
    const { lower, upper } = titration.pHAt('12.5');
    const [late, early] = [titration.volumeAt(lower), titration.volumeAt(upper)];
    expect(early?.mL.lte('12.5') && late?.mL.gte('12.5')).toBe(true);
    expect(late?.upper.minus(late.lower).lte('2e-28')).toBe(true);
  });

  test('has the points of the titration in doubles', () => {
    const inDoubles = titrate({
      analyte: makeInDoubles({ mL: 20, contents: [{ reagent: sodiumCarbonate, molar: 0.05 }] }),
      titrant: makeInDoubles({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
      conditions: readExactProblem('test', soda, { ...conditions, digits: 20 }).conditions.inUse.given,
    });
    const points = titration.equivalencePoints;
    expect(points.map(({ mL }) => Number(mL))).toEqual(inDoubles.equivalencePoints.map(({ mL }) => mL));
    for (const [k, { pH, slope }] of points.entries()) {
      expect(pH.toNumber()).toBeCloseTo(inDoubles.equivalencePoints[k]?.pH ?? 0, 10);
      expect(slope.toNumber()).toBeCloseTo(inDoubles.equivalencePoints[k]?.slope ?? 0, 6);
    }
  });
});

test('a curve that is flat under a law too has slope 0 and no volume', () => {
  const brine = makeSolution({ contents: [{ reagent: sodiumChloride, molar: '0.1' }] });
  const flat = exactTitration(
    { analyte: brine, titrant: brine, conditions: { activity: davies } },
    { digits: 10 },
  );
  expect(flat.slopeAt('5').toString()).toBe('0');
  expect(flat.volumeAt('8')).toBeNull();
});

describe('refused', () => {
  test('is a model of activity in doubles, with what to give instead', () => {
    expect(() => exactPH(soda, { activity: { ...daviesInDoubles, law: undefined } as never })).toThrow(
      /activity is the law of activity 'Davies \(0\.3 I\)'; give a law of protolysis\/exact, such as its davies: the rounding of a model in doubles has no bound/,
    );
  });

  test('is carbon dioxide that escapes', () => {
    expect(() => exactPH(soda, { carbonDioxide: { ...air, escape: 0.5 } as never })).toThrow(
      /carbonDioxide.escape is 0.5; give no share that escapes/,
    );
  });

  test.each<[string, object]>([
    ['celsius', { celsius: 101 }],
    ['activity.sizes.H', { activity: { ...debyeHuckelExtended, sizes: { H: 0 } } }],
    ['activity.b', { activity: { ...debyeHuckelExtended, b: 1 } }],
    ['activity.c', { activity: { ...davies, c: 11 } }],
    ['activity.d', { activity: { ...davies, d: 1 } }],
    ['activity.source', { activity: { name: 'none' } }],
    ['carbonDioxide.atm', { carbonDioxide: {} }],
    ['carbonDioxide.pKH', { carbonDioxide: { atm: 1, pKH: 'x' } }],
  ])('is a bad %s', (path, conditions) => {
    expect(() => exactPH(soda, conditions)).toThrow(path);
    expect(() => compareWithExact(soda, conditions)).toThrow(path);
  });

  test('are constants of carbonic acid other than those of the solution', () => {
    const protolyte = { ...sodiumCarbonate.protolytes[0]?.protolyte } as never as {
      steps: { pKa: number }[];
    };
    const other = { ...protolyte, steps: protolyte.steps.map((step) => ({ ...step, pKa: step.pKa + 1 })) };
    expect(() => exactPH(soda, { carbonDioxide: { atm: 1, protolyte: other as never } })).toThrow(
      'one set of constants',
    );
  });
});
