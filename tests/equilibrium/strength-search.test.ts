import {
  type ActivityModel,
  davies,
  debyeHuckelLimiting,
  defineProtolyte,
  defineReagent,
  guntelberg,
  makeSolution,
  reagents,
  type Solution,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { emptyIonMoments, ionMomentsAt } from '../../src/equilibrium/activity/ion-moments.js';
import { type IonColumn, takeConstants } from '../../src/equilibrium/activity/real-system.js';
import { emptyState, selfConsistent } from '../../src/equilibrium/activity/self-consistent.js';
import { readConditions } from '../../src/equilibrium/conditions.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { realSystemOf, systemOf } from '../../src/equilibrium/system.js';
import { Faults } from '../../src/input/faults.js';

// What the search for pH and ionic strength costs, in sets of coefficients taken: exact, so a test can hold it.

const source: Source = { kind: 'commonPractice', note: 'an input of a mathematical test' };

/** Solutions under a law that counts how often coefficients are taken, and the excess J(I) − I of each. */
function prepared(solutions: readonly Solution[], { law: _, ...activity }: ActivityModel) {
  let taken = 0;
  const watched: ActivityModel = {
    ...activity,
    log10Gamma(charge, ionicStrength, celsius, formula) {
      if (formula === 'H+') taken += 1;
      return activity.log10Gamma(charge, ionicStrength, celsius, formula);
    },
  };
  const system = systemOf(solutions, readConditions({ activity: watched }, '', new Faults('test')));
  const real = realSystemOf(system);
  const columns = system.columns as readonly IonColumn[];
  const search = (k: number, state = emptyState(), rough = false) => {
    const [before, evaluations] = [taken, state.root.evaluations];
    selfConsistent(real, columns[k] as IonColumn, state, rough);
    return { taken: taken - before, evaluations: state.root.evaluations - evaluations, state };
  };
  const stateAt = (k: number, ionicStrength: number) => {
    const column = columns[k] as IonColumn;
    takeConstants(real, ionicStrength);
    const { h } = hydrogenIon(real.conditional, column, 0, emptyRoot());
    const excess = ionMomentsAt(real, column, h, emptyIonMoments()).strength / column.volume - ionicStrength;
    return { ionicStrength, h, activity: h * (real.coefficients.gamma[real.hydrogen] as number), excess };
  };
  return { search, stateAt, excess: (k: number, ionicStrength: number) => stateAt(k, ionicStrength).excess };
}

/** Sodium carbonate with a share of hydrochloric acid. */
const carbonate = (molar: number, share: number) =>
  makeSolution({
    mL: 20,
    contents: [
      { reagent: reagents.sodiumCarbonate, molar },
      { reagent: reagents.hydrochloricAcid, molar: molar * share },
    ],
  });

/** The salt of an acid with these charges, as much of it neutralised as the strong ion does. */
function saltOf(top: number, pKa: readonly number[], molar: number, charge: number): Solution {
  const acid = defineProtolyte({
    id: `acid of ${top}`,
    name: 'acid',
    species: [...pKa, 0].map((_, lost) => ({ formula: `A${lost}`, charge: top - lost })),
    steps: pKa.map((own) => ({ pKa: own, source })),
  });
  const reagent = defineReagent({
    id: `salt of ${top}`,
    name: 'salt',
    protolytes: [{ protolyte: acid, count: 1 }],
    ions: [
      {
        ion: charge < 0 ? { formula: 'Na+', charge: 1 } : { formula: 'Cl-', charge: -1 },
        count: Math.abs(charge),
      },
    ],
  });
  return makeSolution({ mL: 20, contents: [{ reagent, molar }] });
}

/** Gives up eight protons nearly at once: far beyond its range, the limiting law then has three roots. */
const oligomer = (share: number) =>
  saltOf(
    0,
    Array.from({ length: 8 }, (_, k) => 7 + 0.5 * (4 - k)),
    0.1,
    -8 * share,
  );

const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);

describe('a search from a cold start', () => {
  test.each([davies, guntelberg, debyeHuckelLimiting])('takes coefficients at most 6 times, #%#', (law) => {
    const solutions = [1e-3, 0.1].flatMap((molar) =>
      [0, 0.5, 1, 1.5, 2, 2.5].map((share) => carbonate(molar, share)),
    );
    const { search } = prepared(solutions, law);
    const found = solutions.map((_, k) => search(k));
    expect(Math.max(...found.map(({ taken }) => taken))).toBeLessThanOrEqual(6);
    expect(sum(found.map(({ taken }) => taken)) / found.length).toBeLessThanOrEqual(5.4);
    expect(Math.max(...found.map(({ evaluations }) => evaluations))).toBeLessThanOrEqual(3);
  });

  test('spares the last set where only the pH is wanted, which is the same', () => {
    const { search } = prepared([carbonate(0.05, 0.5)], davies);
    const [full, rough] = [search(0), search(0, emptyState(), true)];
    expect(rough.taken).toBe(full.taken - 1);
    expect(rough.state.activity).toBe(full.state.activity);
  });
});

describe('a search from the neighbouring point', () => {
  const points = Array.from({ length: 24 }, (_, k) => k);

  test.each([
    ['carbonate, 1 mmol/L', (k: number) => carbonate(1e-3, 0.1 * k)],
    ['carbonate, 0.1 mol/L', (k: number) => carbonate(0.1, 0.1 * k)],
    ['charges −2 to −3', (k: number) => saltOf(-2, [6], 0.02, -2.1 - 0.035 * k)],
    ['charges 3 to 2', (k: number) => saltOf(3, [6], 0.02, 2.1 + 0.035 * k)],
  ])('hardly ever solves the charge balance by itself: %s', (_, at) => {
    const { search } = prepared(points.map(at), davies);
    const state = emptyState();
    const found = points.map((k) => search(k, state));
    expect(Math.max(...found.map(({ taken }) => taken))).toBeLessThanOrEqual(8);
    expect(sum(found.map(({ taken }) => taken)) / points.length).toBeLessThanOrEqual(5.75);
    expect(state.root.evaluations).toBeLessThanOrEqual(20);
  });

  test('begins anew where the strength leaps', () => {
    const { search } = prepared([carbonate(1e-4, 0.5), carbonate(0.1, 0.5)], davies);
    const state = emptyState();
    const counts = points.map((k) => search(k % 2, state).taken);
    expect(Math.max(...counts)).toBeLessThanOrEqual(8);
  });
});

describe('where there are several roots', () => {
  const shares = [0.005, 0.05, 0.1, 0.15, 0.2, 0.235];
  const { search, stateAt, excess } = prepared(shares.map(oligomer), debyeHuckelLimiting);
  const grid = Array.from({ length: 160 }, (_, k) => 10 ** (-3 + k / 40));

  test.each(shares.map((share, k) => [share, k] as const))(
    'the least is found, to rounding, in a few sets: %d',
    (_, k) => {
      const cold = search(k);
      const strength = cold.state.ionicStrength;
      expect(cold.state.ended).toBe('root');
      expect(cold.taken).toBeLessThanOrEqual(12);
      expect(Math.abs(excess(k, strength))).toBeLessThanOrEqual(4e-15 * strength);
      const signs = grid.map((I) => excess(k, I) > 0);
      expect(signs.filter((own, j) => j > 0 && own !== signs[j - 1])).toHaveLength(3);
      expect(strength).toBeLessThanOrEqual(grid[signs.indexOf(false)] as number);
    },
  );

  test('the least is found from the state of the greatest too', () => {
    for (const k of shares.keys()) {
      const cold = search(k).state;
      const state = emptyState();
      // a bisection for the last change of sign
      let low = grid.findLast((I) => excess(k, I) > 0) as number;
      let high = low * 1.1;
      while (high - low > 1e-9 * high) {
        const middle = (low + high) / 2;
        if (excess(k, middle) > 0) low = middle;
        else high = middle;
      }
      const { ionicStrength, h, activity } = stateAt(k, low);
      Object.assign(state, { ionicStrength, h, activity });
      search(k, state);
      expect(low).toBeGreaterThan(2 * cold.ionicStrength);
      expect(state.ionicStrength / cold.ionicStrength).toBeCloseTo(1, 12);
    }
  });
});

describe('a law that is not of the kind of Debye and Hückel', () => {
  const odd: readonly [string, ActivityModel['log10Gamma'], number][] = [
    ['upside down', (z, I) => z * z * Math.sqrt(I), 8],
    ['by sign', (z, I) => (z < 0 ? 3 : -3) * Math.atan(I) * z * z * 0.2, 8],
    ['wavy', (z, I) => z * Math.sin(20 * Math.sqrt(I)), 60],
  ];
  test.each(odd)('%s', (name, log10Gamma, most) => {
    const solutions = [0.01, 1].flatMap((molar) => [0, 1, 2.5].map((share) => carbonate(molar, share)));
    const { search, excess } = prepared(solutions, { name, log10Gamma, source });
    for (const k of solutions.keys()) {
      const { taken, state } = search(k);
      // without derivatives, each set asks for H+ five times
      expect(taken / 5).toBeLessThanOrEqual(most);
      expect(Math.abs(excess(k, state.ionicStrength))).toBeLessThanOrEqual(1e-12 * state.ionicStrength);
    }
  });
});
