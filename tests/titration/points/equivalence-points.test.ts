import { acids, makeSolution, reagents, type Titration, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith, saltOf, sodium } from '../../make.js';
import { titrationOf } from '../beakers.js';

const {
  aceticAcid,
  ammonia,
  boricAcid,
  citricAcid,
  hydrochloricAcid,
  oxalicAcid,
  phosphoricAcid,
  sodiumAcetate,
  sodiumCarbonate,
  sodiumChloride,
  sodiumHydrogenCarbonate,
  sodiumHydroxide,
  sulfuricAcid,
} = reagents;

/** Volumes are quotients of sums of a few products: ten roundings. */
const expectVolumes = (points: readonly { readonly mL: number }[], volumes: readonly number[]) => {
  expect(points).toHaveLength(volumes.length);
  for (const [k, mL] of volumes.entries())
    expect(Math.abs((points[k]?.mL ?? 0) / mL - 1)).toBeLessThanOrEqual(10 * 2 ** -53);
};
const volumesOf = ({ equivalencePoints }: Titration) => equivalencePoints.map(({ mL }) => mL);
const inflectionsAt = ({ equivalencePoints }: Titration) =>
  equivalencePoints.map(({ inflection }) => inflection !== null);

describe('equivalence volumes are stoichiometric', () => {
  test.each([
    ['acetic acid', [[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]], [20]],
    ['boric acid, though the curve hardly shows it', [[boricAcid, 0.001]], [[sodiumHydroxide, 0.001]], [20]],
    ['phosphoric acid', [[phosphoricAcid, 0.1]], [[sodiumHydroxide, 0.1]], [20, 40, 60]],
    [
      'citric acid, whose steps run into each other',
      [[citricAcid, 0.1]],
      [[sodiumHydroxide, 0.1]],
      [20, 40, 60],
    ],
    ['sulfuric acid', [[sulfuricAcid, 0.05]], [[sodiumHydroxide, 0.1]], [10, 20]],
    ['carbonate', [[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]], [20, 40]],
    [
      'carbonate with caustic soda',
      [
        [sodiumCarbonate, 0.05],
        [sodiumHydroxide, 0.05],
      ],
      [[hydrochloricAcid, 0.1]],
      [10, 20, 30],
    ],
    [
      'carbonate with hydrogencarbonate',
      [
        [sodiumCarbonate, 0.05],
        [sodiumHydrogenCarbonate, 0.05],
      ],
      [[hydrochloricAcid, 0.1]],
      [10, 30],
    ],
    [
      'a strong and a weak acid',
      [
        [hydrochloricAcid, 0.05],
        [aceticAcid, 0.05],
      ],
      [[sodiumHydroxide, 0.1]],
      [10, 20],
    ],
    [
      'acetic acid half neutralised',
      [
        [aceticAcid, 0.05],
        [sodiumAcetate, 0.05],
      ],
      [[sodiumHydroxide, 0.1]],
      [10],
    ],
    ['weak acid into weak base', [[ammonia, 0.1]], [[aceticAcid, 0.1]], [20]],
    [
      'hydrochloric acid into which carbonate is poured',
      [[hydrochloricAcid, 0.1]],
      [[sodiumCarbonate, 0.1]],
      [10, 20],
    ],
    [
      'caustic soda into which oxalic acid is poured',
      [[sodiumHydroxide, 0.1]],
      [[oxalicAcid, 0.1]],
      [10, 20],
    ],
    // 2 mmol of acid; 0.1 mol/L of base in 2 forms, of which 0.002 goes to CO2, then HCO3-, then CO3(2-)
    [
      'caustic soda that has drawn carbon dioxide',
      [[aceticAcid, 0.1]],
      [
        [sodiumHydroxide, 0.098],
        [sodiumCarbonate, 0.001],
      ],
      [20, 2 / 0.099, 2 / 0.098],
    ],
    ['salt is no base', [[hydrochloricAcid, 0.1]], [[sodiumChloride, 0.1]], []],
    ['nothing to neutralise', [], [[hydrochloricAcid, 0.1]], []],
    ['an acid into its own solution', [[aceticAcid, 0.1]], [[aceticAcid, 0.2]], []],
  ] as const)('%s', (_, analyte, titrant, volumes) => {
    expectVolumes(titrationOf(analyte, titrant).equivalencePoints, volumes);
  });

  test('the pH there is that of the salt', () => {
    const [point] = titrationOf([[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]]).equivalencePoints;
    // 0.05 mol/L acetate: [OH-] = √(Kw/Ka·C) but for Kw/[OH-]² = 1.3e-4 of water and x/C = 1e-4 of hydrolysis
    const pOH = (13.995 - (acids.acetic.steps[0]?.pKa ?? 0) - Math.log10(0.05)) / 2;
    expect(Math.abs((point?.pH ?? 0) - (13.995 - pOH))).toBeLessThanOrEqual(5e-4);
  });

  test('volumes that differ by rounding alone are one point, which names every step that it completes', () => {
    const traces = acidWith('HB', 0, [5]).reagent;
    const titration = titrationOf(
      [
        [acidWith('HA', 0, [4]).reagent, 0.1],
        [traces, 1e-15],
      ],
      [[sodiumHydroxide, 0.1]],
    );
    expectVolumes(titration.equivalencePoints, [20]);
    expect(titration.equivalencePoints[0]?.reaction).toBe(
      'HA(0) + OH⁻ → HA(-1) + H₂O; HB(0) + OH⁻ → HB(-1) + H₂O',
    );
  });

  test('an acid that is named but not there counts for nothing', () => {
    const with0 = titrationOf(
      [
        [aceticAcid, 0.1],
        [phosphoricAcid, 0],
      ],
      [[sodiumHydroxide, 0.1]],
    );
    expectVolumes(with0.equivalencePoints, [20]);
  });
});

test.each([
  ['phosphoric acid with three parts of sodium hydroxide', phosphoricAcid, 0.1, 0.3, 13],
  ['citric acid with three parts', citricAcid, 0.07, 0.21, 7],
  ['citric acid with three parts, in more water', citricAcid, 0.07, 0.21, 50],
])('%s has no point ahead: what amounts lose to rounding is no volume', (_, acid, molar, hydroxide, mL) => {
  const analyte = makeSolution({
    mL,
    contents: [
      { reagent: acid, molar },
      { reagent: sodiumHydroxide, molar: hydroxide },
    ],
  });
  const titrant = makeSolution({ contents: [{ reagent: sodiumHydroxide, molar: 0.1 }] });
  expect(titrate({ analyte, titrant }).equivalencePoints).toEqual([]);
  const back = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] });
  expect(titrate({ analyte, titrant: back }).equivalencePoints).toHaveLength(3);
});

describe('half-equivalence', () => {
  test('lies at pKa where both forms are plentiful', () => {
    // 0.033 mol/L of each form beside h = 1.7e-5: log ratio off by 2h/0.033/ln 10 = 4.6e-4
    const [half] = titrationOf([[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]]).halfEquivalencePoints;
    expectVolumes([half as { mL: number }], [10]);
    expect(Math.abs((half?.pH ?? 0) - (acids.acetic.steps[0]?.pKa ?? 0))).toBeLessThanOrEqual(4.6e-4);
  });

  test('of a partly neutralised sample counts from the acid it was made from', () => {
    // three parts acid, one part salt: state 0 lies at −5 mL, state 1 at 15 mL, half-way at 5 mL
    const partly = titrationOf(
      [
        [aceticAcid, 0.075],
        [sodiumAcetate, 0.025],
      ],
      [[sodiumHydroxide, 0.1]],
    );
    expectVolumes(partly.equivalencePoints, [15]);
    expectVolumes(partly.halfEquivalencePoints, [5]);
    // 0.04 mol/L of each form: 2h/0.04/ln 10
    expect(Math.abs((partly.halfEquivalencePoints[0]?.pH ?? 0) - 4.756)).toBeLessThanOrEqual(3.9e-4);
  });

  test('takes no neighbour beyond the titrant: what its own charge could not pay for is not on the curve', () => {
    // HSO4- and SO4(2-), 1 to 19, with dihydrogen citrate, 0.1 mmol/mL. One acid left over: 0.1 mmol, so 1 mL. The state before,
    // all HSO4-, is at −19 mL; the states with the titrant's second and third protons gone would be at −1 and −0.5 mL.
    const { equivalencePoints, halfEquivalencePoints } = titrationOf(
      [
        [reagents.sodiumHydrogenSulfate, 0.005],
        [reagents.sodiumSulfate, 0.095],
      ],
      [[reagents.sodiumDihydrogenCitrate, 0.1]],
    );
    expect(equivalencePoints).toHaveLength(1);
    expect(halfEquivalencePoints).toEqual([]);
  });

  test('though a point on the curve counts whatever the titrant lacks', () => {
    // NaHX with a hundredth of Na2X (pKa 4 and 6, pH 5) and NaY with a hundredth of HY (pKa 5, pH 7): in the state HX-, Y- the
    // one has 0.02 mmol too much of Na+, a mL of the other 0.001 mmol too little
    const [x, y] = [acidWith('x', 0, [4, 6]), acidWith('y', 0, [5])];
    const { equivalencePoints } = titrationOf(
      [
        [saltOf(x, sodium), 0.099],
        [saltOf(x, sodium, 2), 0.001],
      ],
      [
        [saltOf(y, sodium), 0.099],
        [y.reagent, 0.001],
      ],
    );
    expect(equivalencePoints.some(({ mL }) => Math.abs(mL - 20) <= 1e-11)).toBe(true); // differences of 2 and 0.1: 1e-13 of either
  });

  test('of a sample neutralised half-way or further is behind it', () => {
    for (const salt of [0.05, 0.07]) {
      const half = titrationOf(
        [
          [aceticAcid, 0.1 - salt],
          [sodiumAcetate, salt],
        ],
        [[sodiumHydroxide, 0.1]],
      );
      expect(half.halfEquivalencePoints).toEqual([]);
    }
  });

  test('lies between each two neighbours', () => {
    const { halfEquivalencePoints } = titrationOf([[phosphoricAcid, 0.1]], [[sodiumHydroxide, 0.1]]);
    expectVolumes(halfEquivalencePoints, [10, 30, 50]);
  });
});

describe('the inflection beside an equivalence point', () => {
  test('is there for acetic acid, a little before it', () => {
    const [point] = titrationOf([[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]]).equivalencePoints;
    expect(point?.inflection?.kind).toBe('steepest');
    expect(Math.abs((point?.inflection?.mL ?? 0) - 20)).toBeLessThan(1e-3);
  });

  test('is missing for the third step of phosphoric acid, and for a base too dilute', () => {
    expect(inflectionsAt(titrationOf([[phosphoricAcid, 0.1]], [[sodiumHydroxide, 0.1]]))).toEqual([
      true,
      true,
      false,
    ]);
    expect(inflectionsAt(titrationOf([[boricAcid, 1e-5]], [[sodiumHydroxide, 1e-5]]))).toEqual([false]);
  });

  test('the slope there is the greatest between the half-way points', () => {
    const titration = titrationOf([[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]]);
    const { inflection } = titration.equivalencePoints[0] ?? {};
    for (let mL = 10; mL <= 30; mL += 0.1)
      expect(Math.abs(titration.slopeAt(mL))).toBeLessThanOrEqual(Math.abs(inflection?.slope ?? 0));
  });
});

test.each([
  ['carbonate', [[sodiumCarbonate, 0.1]], [[hydrochloricAcid, 0.1]]],
  ['phosphoric acid', [[phosphoricAcid, 0.1]], [[sodiumHydroxide, 0.1]]],
  ['citric acid', [[citricAcid, 0.1]], [[sodiumHydroxide, 0.1]]],
] as const)(
  'the inflection beside a point is steepest, and half a step away at most: %s',
  (_, analyte, titrant) => {
    const { equivalencePoints, inflectionPoints } = titrationOf(analyte, titrant);
    expect(equivalencePoints.map(({ mL }) => mL)).toEqual([20, 40, 60].slice(0, equivalencePoints.length));
    for (const { mL, inflection } of equivalencePoints) {
      const last = mL === 20 * equivalencePoints.length;
      const near = inflectionPoints.filter(
        (one) => one.kind === 'steepest' && one.mL > mL - 10 && (last || one.mL < mL + 10),
      );
      expect(inflection).toEqual(near[0] ?? null);
      expect(near.length).toBeLessThanOrEqual(1);
    }
  },
);

test('volumes are worked out once', () => {
  const titration = titrationOf([[aceticAcid, 0.1]], [[sodiumHydroxide, 0.1]]);
  expect(titration.equivalencePoints).toBe(titration.equivalencePoints);
  expect(volumesOf(titration)).toEqual([20]);
});

test('a salt that is an acid and one that is a base meet half-way too', () => {
  const salt = saltOf(acidWith('a', 0, [3, 9]), sodium);
  expectVolumes(titrationOf([[salt, 0.1]], [[sodiumHydroxide, 0.1]]).equivalencePoints, [20]);
  expectVolumes(titrationOf([[salt, 0.1]], [[hydrochloricAcid, 0.1]]).equivalencePoints, [20]);
});
