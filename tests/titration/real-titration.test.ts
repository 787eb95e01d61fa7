import fc from 'fast-check';
import {
  absorbCarbonDioxide,
  acids,
  air,
  type Conditions,
  compareModels,
  compareWater,
  davies,
  debyeHuckelExtended,
  debyeHuckelLimiting,
  defineProtolyte,
  defineReagent,
  makeSolution,
  molarOf,
  pKHAt,
  reagents,
  type Source,
  titrate,
  waters,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';
import { mixtureModelOf } from '../../src/titration/model/mixture-model.js';
import { crossingBetween } from '../../src/titration/model/monotone-pieces.js';
import { realModel } from '../../src/titration/model/real-model.js';
import { casesOf, type TitrationInput, titrationOf } from '../reference/vectors.js';

// Invented: 20 mL of a sodium carbonate solution with hydrochloric acid.
const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const phosphoric = makeSolution({ mL: 25, contents: [{ reagent: reagents.phosphoricAcid, molar: 0.1 }] });
const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });

const manners: readonly Conditions[] = [
  { activity: davies },
  { activity: debyeHuckelExtended, celsius: 40 },
  { activity: debyeHuckelLimiting, carbonDioxide: air },
  { carbonDioxide: { ...air, escape: 0.5 } },
  { activity: davies, carbonDioxide: { ...air, escape: 0.9 } },
];

interface Case {
  readonly id: string;
  readonly title: string;
  readonly V_max: string;
  readonly input: TitrationInput;
}

describe.each(casesOf<Case>('titrations.json'))(
  'without activity the two ways agree: $id $title',
  ({ input, V_max }) => {
    const plain = titrationOf(input);
    const { setup } = plain;
    const inUse = readConditions(setup.conditions, '', new Faults('test'));
    const real = realModel(mixtureModelOf(systemOf([setup.analyte, setup.titrant], inUse)));

    test('on pH, slope and inflections', () => {
      for (let share = 0; share <= 1; share += 0.04) {
        const mL = share * Number(V_max);
        const { pH, slope } = real.pointAt(mL);
        expect(pH).toBeCloseTo(plain.pHAt(mL), 8); // the worst conditioned points of the file are good to 5e-9
        expect(slope / plain.slopeAt(mL)).toBeCloseTo(1, 6);
      }
      const within = ({ mL }: { mL: number }) => mL > 1e-3 && mL < Number(V_max);
      const found = real.inflections().filter(within);
      const known = plain.inflectionPoints.filter(within);
      expect(found.map(({ kind }) => kind)).toEqual(known.map(({ kind }) => kind));
      for (const [k, { mL }] of found.entries()) expect(mL / (known[k]?.mL ?? 0)).toBeCloseTo(1, 6);
    });
  },
);

describe.each(manners)('a curve under %o', (conditions) => {
  const titration = titrate({ analyte, titrant, conditions });
  const other = titrate({ analyte: phosphoric, titrant: base, conditions });

  test('has the pH of the mixture', () => {
    for (const mL of [0, 3, 9.9, 10, 14, 19.95, 20, 27, 200]) {
      expect(titration.pHAt(mL)).toBeCloseTo(titration.equilibriumAt(mL).pH, 11);
      expect(other.pHAt(mL)).toBeCloseTo(other.equilibriumAt(mL).pH, 11);
    }
    const volumes = [0, 5, 19.99, 12, 20, 20.01, 7];
    expect(Array.from(titration.pHs(volumes))).toEqual(
      volumes.map((mL) => expect.closeTo(titration.pHAt(mL), 11)),
    );
  });

  test('has the slope of its own pH', () => {
    const course = titration;
    for (const mL of [2, 5.5, 12.5, 17, 19.5, 21, 30])
      for (const one of [course, other]) {
        const step = 1e-3;
        const rise = one.pHAt(mL + step) - one.pHAt(mL - step);
        const far = one.pHAt(mL + 2 * step) - one.pHAt(mL - 2 * step);
        const slope = (8 * rise - far) / (12 * step);
        // Fourth-order differences: 1e-12 of rounding over 1e-3 mL, and the fifth derivative, largest near 20 mL.
        expect(one.slopeAt(mL) / slope).toBeCloseTo(1, 6);
      }
  });

  test('is passed at the volumes that it says', () => {
    for (const one of [titration, other])
      for (let pH = 1.5; pH < 12.5; pH += 0.5)
        for (const mL of one.volumesAt(pH)) expect(one.pHAt(mL)).toBeCloseTo(pH, 9);
  });

  test('has inflections where the slope is at an extreme', () => {
    for (const { mL, kind, slope } of titration.inflectionPoints.filter(
      (own) => own.mL > 0.1 && own.mL < 40,
    )) {
      const beside = [-1e-3, 1e-3].map((step) => Math.abs(titration.slopeAt(mL * (1 + step))));
      for (const one of beside) {
        if (kind === 'steepest') expect(one).toBeLessThan(Math.abs(slope));
        else expect(one).toBeGreaterThan(Math.abs(slope));
      }
    }
  });

  test('adapts: neighbours differ by at most the step', () => {
    const { pH } = titration.curve({ maxStep: 0.1, upTo: 30 });
    for (const [k, own] of pH.slice(1).entries())
      expect(Math.abs(own - (pH[k] as number))).toBeLessThanOrEqual(0.1 + 1e-9);
  });
});

describe('a curve that turns', () => {
  // Sodium chloride into dilute hydrochloric acid: dilution raises pH, and by Davies so does the salt at first; from I = 0.39 on γ rises
  // again and pH falls.
  const acid = makeSolution({ mL: 20, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.001 }] });
  const brine = makeSolution({
    contents: [
      { reagent: reagents.sodiumChloride, molar: 5 },
      { reagent: reagents.hydrochloricAcid, molar: 0.001 },
    ],
  });
  const titration = titrate({ analyte: acid, titrant: brine, conditions: { activity: davies } });

  test('has every crossing in volumesAt, and the first in volumeAt', () => {
    // log10 γ of −0.10 occurs twice by Davies: where √I/(1 + √I) − 0.3·I = 0.10/0.509
    const found = titration.volumesAt(3.1);
    expect(found.length).toBe(2);
    for (const mL of found) expect(titration.pHAt(mL)).toBeCloseTo(3.1, 10);
    expect(titration.volumeAt(3.1)).toBe(found[0]);
    // I = 0.001 + 5·V/(20 + V) of salt at both, so one below and one above the turn at I = 0.39
    const strengths = found.map((mL) => titration.equilibriumAt(mL).ionicStrength);
    expect(strengths[0]).toBeLessThan(0.393);
    expect(strengths[1]).toBeGreaterThan(0.393);
  });

  test('turns where Davies’ γ does, at I = 0.393 mol/L', () => {
    // d/dI (√I/(1 + √I) − 0.3·I) = 0 is √I·(1 + √I)² = 1/0.6
    const turn = titration.volumesAt(3.1).reduce((sum, mL) => sum + mL, 0); // a bracket
    let [low, high] = [0, turn];
    for (let pass = 0; pass < 60; pass += 1) {
      const middle = (low + high) / 2;
      if (titration.slopeAt(middle) > 0) low = middle;
      else high = middle;
    }
    const root = Math.sqrt(titration.equilibriumAt(low).ionicStrength);
    expect(root * (1 + root) ** 2).toBeCloseTo(1 / 0.6, 6);
  });
});

describe.each([
  { what: 'a buffer into itself', own: phosphoric, same: phosphoric },
  {
    what: 'a neutral salt into water',
    own: makeSolution({ mL: 20, contents: [] }),
    same: makeSolution({ contents: [{ reagent: reagents.sodiumChloride, molar: 0.1 }] }),
  },
])('a flat curve: $what', ({ own, same }) => {
  const titration = titrate({ analyte: own, titrant: same, conditions: { activity: davies } });

  test('has its pH from the start, and no inflections', () => {
    expect(titration.volumesAt(titration.pHAt(0))).toEqual([0]);
    expect(titration.inflectionPoints).toEqual([]);
    expect(titration.curve({ maxStep: 0.1, upTo: 30 }).mL).toEqual([0, 30]);
  });
});

test('a curve that jumps past a pH does not have it there: the limiting law far beyond its range', () => {
  // Of the ionic strengths that agree the least is taken; along this titration it ceases to exist, from 0.2 to 3 mol/L.
  const source: Source = { kind: 'fromMemory', note: 'an input of a mathematical test' };
  const oligomer = defineProtolyte({
    id: 'oligomer',
    name: 'oligomer',
    species: Array.from({ length: 13 }, (_, lost) => ({ formula: `A${lost}`, charge: -lost })),
    steps: Array.from({ length: 12 }, (_, k) => ({ pKa: 4 + 0.5 * k, source })),
  });
  const reagent = defineReagent({
    id: 'oligomer',
    name: 'oligomer',
    protolytes: [{ protolyte: oligomer, count: 1 }],
    ions: [],
  });
  const titration = titrate({
    analyte: makeSolution({ mL: 20, contents: [{ reagent, molar: 0.05 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.6 }] }),
    conditions: { activity: debyeHuckelLimiting },
  });
  expect(titration.pHAt(3.31)).toBeGreaterThan(3.6);
  expect(titration.pHAt(3.33)).toBeLessThan(1);
  const found = titration.volumesAt(2.5);
  expect(found.length).toBe(1);
  for (const mL of found) expect(titration.pHAt(mL)).toBeCloseTo(2.5, 9);

  const note = titration.notes.find((one) => /jumps/.test(one)) ?? '';
  const [, at, before, after] = (/at ([\d.]+) mL from pH ([\d.-]+) to ([\d.-]+),/.exec(note) ?? []).map(
    Number,
  ) as [number, number, number, number];
  expect(at).toBeGreaterThan(3.31);
  expect(at).toBeLessThan(3.33);
  // The rounding of the note: half a unit of its last digit.
  expect(Math.abs(titration.pHAt(at - 1e-5) - before)).toBeLessThan(0.006);
  expect(Math.abs(titration.pHAt(at + 1e-5) - after)).toBeLessThan(0.006);
  // From the start to the end of the curve each pH between is passed an odd number of times, the jump included.
  const [start, end] = [titration.pHAt(0), titration.pHAt(1e9)];
  for (let pH = start + 0.037; pH < end; pH += 0.1) {
    if (Math.min(Math.abs(pH - before), Math.abs(pH - after)) < 0.006) continue; // the rounding of the note
    const jumped = pH < before && pH > after;
    expect((titration.volumesAt(pH).length + (jumped ? 1 : 0)) % 2, `pH ${pH}`).toBe(1);
  }
});

test('a titration within the range of its law names no jump', () => {
  for (const conditions of manners)
    expect(titrate({ analyte, titrant, conditions }).notes.join(' ')).not.toMatch(/jumps/);
});

test('a crossing without a finite value is an error, never an answer that is missing', () => {
  expect(() => crossingBetween((mL) => (mL > 1 && mL < 2 ? Number.NaN : mL - 1.5), 0, 3)).toThrow(
    /no value at 1\.5 mL/,
  );
  expect(crossingBetween((mL) => mL - 1.5, 0, 3)).toBe(1.5);
  expect(crossingBetween((mL) => mL + 0.1, 0, 3)).toBe(0);
});

test('no answer depends on what was asked before, to the last digit', () => {
  for (const conditions of manners) {
    const fresh = () => titrate({ analyte, titrant, conditions });
    const used = fresh();
    for (const mL of [0, 5, 19.95, 12, 20.3]) {
      used.volumesAt(7);
      used.pHs([3, 4, 5]);
      expect(used.pHAt(mL)).toBe(fresh().pHAt(mL));
      expect(used.slopeAt(mL)).toBe(fresh().slopeAt(mL));
      expect(used.volumesAt(6.5)).toEqual(fresh().volumesAt(6.5));
      expect(used.curve({ every: 1, upTo: 20 })).toEqual(fresh().curve({ every: 1, upTo: 20 }));
    }
    expect(used.inflectionPoints).toEqual(fresh().inflectionPoints);
  }
});

describe('a boil-out before the second endpoint', () => {
  const plain = titrate({ analyte, titrant });
  const boiled = titrate({ analyte, titrant, boilOut: { mL: 19.5 } });

  test('sharpens it', () => {
    const drop = { within: 0.05 };
    expect(Math.abs(boiled.jumpAt(20, drop))).toBeGreaterThan(3 * Math.abs(plain.jumpAt(20, drop)));
    expect(Math.abs(boiled.slopeAt(20))).toBeGreaterThan(4 * Math.abs(plain.slopeAt(20)));
  });

  test('changes nothing before, and neither equivalence point', () => {
    for (const mL of [0, 10, 19, 19.5]) expect(boiled.pHAt(mL)).toBe(plain.pHAt(mL));
    expect(boiled.equivalencePoints.map(({ mL }) => mL)).toEqual([10, expect.closeTo(20, 12)]);
    expect(boiled.equivalencePoints.map(({ reaction }) => reaction)).toEqual(
      plain.equivalencePoints.map(({ reaction }) => reaction),
    );
  });

  test('lets the indicator’s acid colour go back: pH rises above 8', () => {
    // Skoog, West & Holler, 5th ed. 1988, p. 767: boil for 3 min; the colour of bromocresol green goes back to blue
    expect(boiled.pHAt(19.5)).toBeLessThan(5.5);
    expect(boiled.pHAt(19.5 + 1e-9)).toBeGreaterThan(8);
  });

  test('leaves what the air holds', () => {
    const after = boiled.equilibriumAt(19.5 + 1e-9);
    expect(molarOf(after, acids.carbonic, 'CO2(aq)') / (air.atm * 10 ** -pKHAt(25))).toBeCloseTo(1, 4);
  });

  test('leaves each equivalence point its own inflection, not that of the step which boiling brings back', () => {
    for (const conditions of [{}, { activity: davies }]) {
      const { equivalencePoints } = titrate({ analyte, titrant, boilOut: { mL: 19 }, conditions });
      expect(equivalencePoints.map(({ inflection }) => inflection?.mL)).toEqual([
        expect.closeTo(10, 2),
        expect.closeTo(20, 2),
      ]);
    }
  });

  test('leaves half-way points to either side of it: the second is between the points as they are after boiling', () => {
    const { halfEquivalencePoints } = titrate({ analyte, titrant, boilOut: { mL: 12 } });
    const [before, after] = halfEquivalencePoints;
    expect(halfEquivalencePoints.length).toBe(2);
    expect(before?.mL).toBe(5);
    // HCO3- and CO2(aq) balance there: pH is pKa1, but for the free H+
    expect(after?.pH).toBeCloseTo(6.351, 2);
  });

  test('is refused where the beaker is open to the air anyway', () => {
    expect(() =>
      titrate({ analyte, titrant, boilOut: { mL: 15 }, conditions: { carbonDioxide: air } }),
    ).toThrow(/no boil-out beside/);
  });
});

test('escape sharpens the second endpoint the more of it there is', () => {
  const jumps = [0, 0.5, 0.9, 1].map((share) =>
    Math.abs(
      titrate({ analyte, titrant, conditions: { carbonDioxide: { ...air, escape: share } } }).jumpAt(20),
    ),
  );
  expect(jumps).toEqual([...jumps].sort((a, b) => a - b));
  expect(jumps[3]).toBeGreaterThan(3 * (jumps[0] as number));
});

test('open to the air there is one equivalence point, and a note says why', () => {
  const open = titrate({ analyte, titrant, conditions: { carbonDioxide: air } });
  expect(open.equivalencePoints.map(({ mL, reaction }) => [mL, reaction])).toEqual([
    [20, 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O'],
  ]);
  expect(open.notes).toContain(
    'Open to carbon dioxide at a fixed pressure: points that rest on HCO₃⁻ do not exist.',
  );
});

test('one note tells how far beyond its range a model is carried, also where there is no equivalence point', () => {
  const strong = titrate({
    analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 2 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 4 }] }),
    conditions: { activity: davies },
  });
  expect(strong.notes.filter((note) => note.includes('beyond its range')).length).toBe(1);
  const salted = titrate({
    analyte: makeSolution({ mL: 20, contents: [] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.sodiumChloride, molar: 3 }] }),
    conditions: { activity: davies },
  });
  expect(salted.notes).toEqual([
    'No equivalence point: analyte neutral (pH 7.0), titrant neutral (pH 7.0): no step is done.',
    'Davies (0.3 I): ionic strength 2 mol/L is beyond its range, up to 0.5 mol/L.', // 40 mL to 20 mL
    'Do not use this pH as a number: at ionic strength 2 mol/L no law of activity here holds (common practice: none above 1 mol/L).',
  ]);
});

describe('compareModels', () => {
  const titration = titrate({ analyte, titrant });

  test('finds no difference between a curve and itself', () => {
    const [same] = compareModels(titration, [{}]);
    expect(same?.largest.pH).toBe(0);
  });

  test('finds the largest difference of all', () => {
    const [real, hot] = compareModels(titration, [{ activity: davies }, { celsius: 40 }]);
    for (const comparison of [real, hot]) {
      const other = comparison?.titration;
      for (let mL = 0; mL <= 30; mL += 0.01)
        expect(Math.abs((other?.pHAt(mL) ?? 99) - titration.pHAt(mL))).toBeLessThanOrEqual(
          Math.abs(comparison?.largest.pH ?? 0) + 1e-9,
        );
      const { mL = 0, pH = 0 } = comparison?.largest ?? {};
      expect((other?.pHAt(mL) ?? 99) - titration.pHAt(mL)).toBeCloseTo(pH, 12);
    }
  });
});

describe('compareWater', () => {
  const acid = makeSolution({ mL: 20, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });

  test('good water shifts nothing but what its volume does to an endpoint', () => {
    const { equivalencePoints } = compareWater(
      { analyte: acid, titrant: base },
      { water: waters.freshDeionised, mL: 100 },
    );
    expect(equivalencePoints).toEqual([
      { reaction: 'H⁺ + OH⁻ → H₂O', good: 20, given: 20, mL: 0, percent: 0 },
    ]);
  });

  test('alkalinity of the water eats acid: 50 mL at 2 mmol/L are 0.1 mmol, 1 mL of 0.1 mol/L', () => {
    const { equivalencePoints } = compareWater({ analyte, titrant }, { water: waters.tapLike, mL: 50 });
    const second = equivalencePoints.find(({ reaction }) => reaction === 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O');
    expect(second?.mL).toBeCloseTo(1, 10);
    expect(second?.percent).toBeCloseTo(5, 10);
  });

  test('sodium hydroxide that took up CO2 reads high with phenolphthalein, not with methyl orange', () => {
    const { endpoints } = compareWater(
      { analyte: acid, titrant: base },
      {
        water: waters.freshDeionised,
        mL: 30,
        titrant: absorbCarbonDioxide(base, { share: 0.02 }),
        endpoints: [4, 8.3],
      },
    );
    // 2 % of the hydroxide became carbonate, which gives half its alkalinity by pH 8.3: 1 %.
    expect(endpoints[1]?.percent).toBeCloseTo(1, 1);
    expect(Math.abs(endpoints[0]?.percent ?? 99)).toBeLessThan(0.1);
  });
});

test('pH along a curve is continuous in temperature', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 99.9, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.constantFrom(...manners),
      (celsius, mL, conditions) => {
        const pHAt = (t: number) =>
          titrate({ analyte, titrant, conditions: { ...conditions, celsius: t } }).pHAt(mL);
        expect(Math.abs(pHAt(celsius + 1e-4) - pHAt(celsius))).toBeLessThan(1e-4);
      },
    ),
    { numRuns: 50 },
  );
});
