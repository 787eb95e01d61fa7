import {
  type ActivityModel,
  davies,
  daviesOf,
  debyeHuckelAt,
  debyeHuckelExtended,
  debyeHuckelExtendedOf,
  ideal,
  makeSolution,
  pHOf,
  pKaAt,
  pKHAt,
  pKwAt,
  reagents,
  type Source,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { idealLaw } from '../../src/equilibrium/activity/activity-law.js';
import { readActivityLaw } from '../../src/equilibrium/activity/read-activity-law.js';
import { readActivityModel } from '../../src/equilibrium/activity/read-activity-model.js';
import { Faults } from '../../src/input/faults.js';
import { faultsOf, listed } from '../faults-of.js';

const source: Source = { kind: 'commonPractice', note: 'an invented law' };
const sample = makeSolution({ contents: [{ reagent: reagents.sodiumChloride, molar: 0.1 }] });
const own = { name: 'own', log10Gamma: (z: number) => -z * z * 0.1, source };

/** What is wrong with a model: codes and paths below `conditions.activity`. */
const refused = (more: object, model: object = own): string[] =>
  listed(() => pHOf(sample, { activity: { ...model, ...more } as ActivityModel })).map((fault) =>
    fault.replace(/conditions\.activity\.?/, ''),
  );
const read = (model: object): ActivityModel => {
  const faults = new Faults('test');
  const result = readActivityModel(model, 'activity', 25, faults);
  faults.done();
  return result;
};

describe('a model of one’s own', () => {
  test('needs a name, a function and a source, and nothing else', () => {
    expect(refused({})).toEqual([]);
    expect(refused({ name: undefined })).toEqual(['missing name']);
    expect(refused({ log10Gamma: undefined })).toEqual(['missing log10Gamma']);
    expect(refused({ source: undefined })).toEqual(['missing source']);
  });

  test.each(['log10Gamma', 'dLog10Gamma', 'd2Log10Gamma'])('has functions where it has %s', (key) => {
    expect(refused({ [key]: 3 })).toEqual([`wrong-type ${key}`]);
    expect(refused({ [key]: () => 0 })).toEqual([]);
  });

  test('has a range above zero, and a square law or none', () => {
    expect(refused({ upTo: 0 })).toEqual(['out-of-range upTo']);
    expect(refused({ upTo: 1.1e9 })).toEqual(['out-of-range upTo']);
    expect(refused({ upTo: 1e9 })).toEqual([]);
    expect(refused({ squareLaw: 'yes' })).toEqual(['wrong-type squareLaw']);
    expect(refused({ squareLaw: false })).toEqual([]);
  });

  test('keeps the sources on which it rests, each of them read', () => {
    expect(read({ ...own, restsOn: [source] }).restsOn).toEqual([source]);
    expect(read(own).restsOn).toEqual([]);
    expect(refused({ restsOn: [source, { kind: 'commonPractice' }] })).toEqual(['missing restsOn[1].note']);
    expect(refused({ restsOn: source })).toEqual(['wrong-type restsOn']);
  });

  test.each([1, -1, 0])('is tried once with the charge %d', (charge) => {
    const at = (value: number) => ({ log10Gamma: (z: number) => (z === charge ? value : 0) });
    const path = `log10Gamma(${charge}, 0.1)`;
    expect(refused(at(90.1))).toEqual([`out-of-range ${path}`]);
    expect(refused(at(-90.1))).toEqual([`out-of-range ${path}`]);
    expect(refused(at(Number.NaN))).toEqual([`not-finite ${path}`]);
    expect(listed(() => read({ ...own, ...at(90) }))).toEqual([]);
    expect(listed(() => read({ ...own, ...at(-90) }))).toEqual([]);
  });

  test('does not throw', () => {
    const log10Gamma = () => {
      throw new RangeError('no');
    };
    expect(refused({ log10Gamma })).toEqual(['wrong-type log10Gamma']);
  });

  test('whose values are bad is not asked about its square law too', () => {
    const log10Gamma = (z: number) => (z === -1 ? Number.NaN : 0.1 * Math.abs(z));
    expect(refused({ log10Gamma, squareLaw: true })).toEqual(['not-finite log10Gamma(-1, 0.1)']);
  });
});

describe('a model that says log10 γ = z²·f(I)', () => {
  const square = (log10Gamma: ActivityModel['log10Gamma']) => ({ squareLaw: true, log10Gamma });

  test.each([0, -1, 2])(
    'is taken at its word where it is so, and refused where the charge %d differs',
    (z) => {
      expect(refused(square((charge) => -0.1 * charge * charge))).toEqual([]);
      const call = () =>
        pHOf(sample, {
          activity: { ...own, ...square((charge) => -0.1 * (charge * charge + (charge === z ? 1 : 0))) },
        });
      expect(listed(call)).toEqual(['conflict conditions.activity.squareLaw']);
      expect(faultsOf(call)[0]?.expected).toContain(
        `log10Gamma(${z}, 0.1) of ${z * z} times log10Gamma(1, 0.1), `,
      );
    },
  );

  test('may be off by rounding, 1e-12 of the value', () => {
    const off = (share: number) => square((z) => -0.1 * z * z * (z === 2 ? 1 + share : 1));
    expect(refused(off(5e-13))).toEqual([]);
    expect(refused(off(2e-12))).toEqual(['conflict squareLaw']);
  });

  test('may be the same for all ions of a charge only', () => {
    const bySodium = (z: number, _: number, __: number, formula?: string) =>
      -z * z * (formula === 'Na+' ? 0.2 : 0.1);
    expect(refused(square(bySodium)).length).toBeGreaterThan(0);
  });
});

describe('functions beside a law as plain data', () => {
  test.each([1, -2])('agree with the law at the charge %d', (charge) => {
    const log10Gamma = (z: number, I: number, celsius: number) =>
      davies.log10Gamma(z, I, celsius) + (z === charge ? 1e-9 : 0);
    expect(refused({ log10Gamma }, davies)).toEqual(['conflict log10Gamma']);
    expect(refused({}, davies)).toEqual([]);
  });

  test('do not throw', () => {
    const log10Gamma = () => {
      throw new RangeError('no');
    };
    expect(refused({ log10Gamma }, davies)).toEqual(['conflict log10Gamma']);
  });

  test('are not compared with a law that is faulty itself', () => {
    expect(refused({ law: { ...davies.law, upTo: -1 } }, davies)).toEqual(['out-of-range law.upTo']);
  });
});

describe('a law as plain data', () => {
  const law = (more: object) => refused({ law: { name: 'own', source, ...more } }, {});

  test.each([
    ['A25', 0, 10],
    ['b', 0, 100],
    ['c', -10, 10],
    ['upTo', 0, 1e9],
  ] as const)('has %s from %d to %d', (key, from, to) => {
    expect(law({ [key]: from })).toEqual([]);
    expect(law({ [key]: to })).toEqual([]);
    expect(law({ [key]: from - 0.01 })).toEqual([`out-of-range law.${key}`]);
    expect(law({ [key]: to * 1.01 })).toEqual([`out-of-range law.${key}`]);
    expect(law({ [key]: '1' })).toEqual([`wrong-type law.${key}`]);
  });

  test('has sizes from 0.1 to 100 Å', () => {
    for (const size of [0.1, 100]) {
      expect(law({ sizes: { X: size } })).toEqual([]);
      expect(law({ sizes: {}, otherwise: size })).toEqual([]);
    }
    for (const size of [0.09, 101]) {
      expect(law({ sizes: { X: size } })).toEqual(['out-of-range law.sizes.X']);
      expect(law({ sizes: {}, otherwise: size })).toEqual(['out-of-range law.otherwise']);
    }
    expect(law({ sizes: 4 })).toEqual(['wrong-type law.sizes']);
    expect(law({ sizes: { X: 1 }, b: undefined })).toEqual([]);
  });

  test.each(['A25', 'b', 'c'])('has no %s beside sizes', (key) => {
    expect(law({ sizes: {}, [key]: 1 })).toEqual([`conflict law.${key}`]);
  });

  test('that is faulty is not used: the ideal one takes its place until the faults are thrown', () => {
    const read = (A25: number) => readActivityLaw({ name: 'own', A25, source }, 'law', new Faults('test'));
    expect(read(11)).toBe(idealLaw);
    expect(read(10)).toEqual({ name: 'own', A25: 10, source });
  });

  test('is the ideal one where A is zero, which rests on nothing', () => {
    expect(read(JSON.parse(JSON.stringify(ideal)))).toBe(ideal);
  });

  test.each([{ b: 1 }, { sizes: {} }])('keeps its range where it has one', (form) => {
    const bare = { law: { name: 'own', source, ...form } };
    expect('upTo' in read(bare)).toBe(false);
    expect(read({ law: { ...bare.law, upTo: 0.1 } }).upTo).toBe(0.1);
  });
});

describe('what the calls on laws and temperatures refuse', () => {
  test('a linear coefficient beyond 10 L/mol', () => {
    for (const linear of [-10, 10]) expect(listed(() => daviesOf({ linear }))).toEqual([]);
    for (const linear of [-10.1, 10.1])
      expect(listed(() => daviesOf({ linear }))).toEqual(['out-of-range linear']);
  });

  test('sizes beyond 100 Å', () => {
    expect(listed(() => debyeHuckelExtendedOf({ sizes: { X: 101 }, otherwise: 101 }))).toEqual([
      'out-of-range sizes.X',
      'out-of-range otherwise',
    ]);
    expect(listed(() => debyeHuckelExtendedOf({ sizes: { X: 100 }, otherwise: 100 }))).toEqual([]);
  });

  test.each([pKwAt, pKHAt, debyeHuckelAt, (t: number) => pKaAt({} as never, t)])(
    'temperatures at which water is not liquid',
    (call) => {
      const faults = (t: number) => listed(() => call(t)).filter((fault) => fault.endsWith(' celsius'));
      for (const t of [0, 100]) expect(faults(t)).toEqual([]);
      for (const t of [-0.1, 100.1]) expect(faults(t)).toEqual(['out-of-range celsius']);
    },
  );
});

describe('where a law comes from', () => {
  test('the coefficient 0.3 is that of Davies, 0.2 that of 1938, others are practice', () => {
    expect(daviesOf({ linear: 0.3 })).toBe(davies);
    expect(daviesOf({ linear: 0.2 }).source).toMatchObject({ kind: 'published', work: 'davies-1938' });
    expect(daviesOf({ linear: 0.25 }).source).toEqual({
      kind: 'commonPractice',
      note: 'the form of Davies with the coefficient 0.25',
    });
  });

  test('a law of ion sizes rests on the density and the permittivity of water, as Davies does', () => {
    expect(debyeHuckelExtended.restsOn).toHaveLength(2);
    expect(debyeHuckelExtended.restsOn).toEqual(davies.restsOn);
  });
});
