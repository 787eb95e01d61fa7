import { describe, expect, test } from 'vitest';
import { type Balance, balanceOf, type Column } from '../../src/equilibrium/charge-balance.js';
import { type Family, familyOf } from '../../src/equilibrium/family.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { hydrogenIonSeriesOf, writeNextHydrogenIon } from '../../src/equilibrium/hydrogen-ion-series.js';
import type { System } from '../../src/equilibrium/system.js';
import { counted } from '../counted.js';
import { acidWith } from '../make.js';

// How many evaluations of the charge balance a search takes: exact, so a worse start or step is seen where the root is the same.

/** Acids: the charge of the most protonated form, and the pKa. */
type Acids = readonly (readonly [topCharge: number, pKa: readonly number[]])[];

const balanceWith = (acids: Acids, gas?: Float64Array): Balance =>
  balanceOf(
    1e-14,
    acids.map(([top, pKa], i) => familyOf(acidWith(`${i}`, top, pKa).protolyte)),
    gas,
  );

const molars = [1e-8, 1e-6, 1e-4, 1e-2, 1, 10];

/** Solutions from 1e-8 to 10 mol/L of each acid, from one wholly protonated, with some strong acid, to one wholly deprotonated. */
function columnsOf({ families }: Balance): Column[] {
  const shares = Array.from({ length: 12 }, (_, k) => -0.25 + (1.5 * k) / 11);
  const protons = families.reduce((sum, { constants }) => sum + constants.length, 0) || 1;
  const top = families.reduce((sum, { topCharge }) => sum + topCharge, 0);
  return molars.flatMap((molar) =>
    shares.map((share) => ({
      volume: 2,
      charge: 2 * molar * (share * protons - top),
      amounts: families.map(() => 2 * molar),
    })),
  );
}

/** Evaluations in all: as many as the search takes, and one. Solved cold, along a curve, and leaping through all solutions. */
const systems: readonly (readonly [
  name: string,
  acids: Acids,
  cold: number,
  curve: number,
  leaps: number,
])[] = [
  ['strong ions', [], 73, 44, 87],
  ['an acid', [[0, [4.76]]], 118, 51, 115],
  ['a base', [[1, [9.25]]], 118, 50, 113],
  ['a strong acid by its constant', [[0, [-3]]], 212, 46, 98],
  ['an acid with three protons', [[0, [2.15, 7.2, 12.35]]], 154, 60, 122],
  ['an acid with two steps that overlap', [[0, [4.2, 5.6]]], 141, 50, 122],
  ['an acid whose second step comes first', [[0, [6, 4]]], 162, 49, 129],
  ['an acid that loses four protons at once', [[4, [9, 5, 1, -3]]], 251, 48, 122],
  [
    'an acid and a base',
    [
      [0, [4.76]],
      [1, [9.25]],
    ],
    119,
    56,
    121,
  ],
  [
    'a mixture',
    [
      [0, [2.15, 7.2, 12.35]],
      [0, [3.13, 4.76, 6.4]],
      [1, [9.25]],
    ],
    155,
    76,
    133,
  ],
  ['six protons of charge 2', [[2, [0, 1.5, 2, 2.7, 6.1, 10.2]]], 172, 63, 123],
];

/** The root of each solution, each from the one before, with all evaluations. */
function series(balance: Balance, columns: readonly Column[]) {
  const of = hydrogenIonSeriesOf(balance);
  const out = new Float64Array(columns.length);
  columns.forEach(({ volume, charge, amounts }, k) => {
    of.totals.set([volume, charge, ...Array.from(amounts)]);
    writeNextHydrogenIon(balance, of, out, k);
  });
  return { out, evaluations: of.root.evaluations };
}

const points = 40;

/** The points of a titration of each acid at 0.1 mol/L, from a strong acid to a strong base in excess. */
function titration({ families }: Balance): Column[] {
  const protons = families.reduce((sum, { constants }) => sum + constants.length, 0) || 1;
  const top = families.reduce((sum, { topCharge }) => sum + topCharge, 0);
  return Array.from({ length: points }, (_, k) => ({
    volume: 2,
    charge: 0.2 * (protons * (-0.1 + (1.2 * k) / (points - 1)) - top),
    amounts: families.map(() => 0.2),
  }));
}

describe.each(systems)('%s', (_, acids, cold, curve, leaps) => {
  const balance = balanceWith(acids);
  const columns = columnsOf(balance);

  test('from a first guess', () => {
    const all = columns.map((column) => hydrogenIon(balance, column, 0, emptyRoot()).evaluations);
    expect(sum(all)).toBeLessThanOrEqual(cold);
    expect(Math.max(...all)).toBeLessThanOrEqual(15);
  });

  test('from the solution before, along a curve and from one to one that is quite different', () => {
    expect(series(balance, titration(balance)).evaluations).toBeLessThanOrEqual(curve);
    expect(series(balance, columns).evaluations).toBeLessThanOrEqual(leaps);
  });

  test('to the same root', () => {
    const { out } = series(balance, columns);
    const apart = columns.map((column, k) =>
      Math.abs((out[k] as number) / hydrogenIon(balance, column, 0, emptyRoot()).h - 1),
    );
    expect(Math.max(...apart)).toBeLessThan(1e-13); // some roundings of the amounts
  });
});

test('a guess at the root costs one evaluation, none costs more', () => {
  const balance = balanceWith([[0, [-3]]]);
  const column = { volume: 1, charge: 0, amounts: [1] };
  const cold = hydrogenIon(balance, column, 0, emptyRoot());
  expect(cold.evaluations).toBeGreaterThan(1);
  expect(hydrogenIon(balance, column, cold.h, emptyRoot()).evaluations).toBe(1);
});

test('a balance without a number ends at a bracket of two doubles, within the halvings that 600 units of ln h take', () => {
  const [family] = balanceWith([[0, [4.76]]]).families as [Family];
  const nothing = Float64Array.of(Number.NaN);
  const balance = balanceOf(1e-14, [{ ...family, constants: nothing, reciprocals: nothing }]);
  const { ended, evaluations } = hydrogenIon(balance, { volume: 1, charge: 0, amounts: [1] }, 0, emptyRoot());
  expect(ended).toBe('bracket');
  expect(evaluations).toBeLessThanOrEqual(62);
});

test('are what the searches themselves count', () => {
  const plain = balanceWith([
    [0, [4.76]],
    [1, [9.25]],
  ]);
  const { system, evaluations } = counted({ balance: plain } as System);
  const columns = columnsOf(plain);
  expect(series(system.balance, columns).evaluations).toBe(evaluations());
  const before = evaluations();
  const root = hydrogenIon(system.balance, columns[0] as Column, 0, emptyRoot());
  expect(root.evaluations).toBe(evaluations() - before);
});

test('a gas of two steps at a fixed pressure', () => {
  // its forms with one and two protons less are so many mol/L at h = 1
  let all = 0;
  for (const first of [1e-20, 1e-12, 1e-8, 1e-4])
    for (const second of [1e-30, 1e-20, 1e-15, 1e-10])
      for (const charge of [-1, -1e-3, 0, 1e-6, 1e-3, 1]) {
        const balance = balanceWith([], Float64Array.of(first, second));
        const { h, evaluations } = hydrogenIon(balance, { volume: 1, charge, amounts: [] }, 0, emptyRoot());
        all += evaluations;
        // h + charge = (Kw + first)/h + 2·second/h²
        const [up, down] = [
          h + Math.max(charge, 0),
          (1e-14 + first) / h + (2 * second) / h ** 2 + Math.max(-charge, 0),
        ];
        expect(Math.abs(up / down - 1)).toBeLessThan(1e-14); // some roundings
      }
  expect(all).toBeLessThanOrEqual(165);
});

const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);
