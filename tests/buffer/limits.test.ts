import {
  acids,
  bufferLimits,
  bufferResponse,
  capacityOver,
  chooseBuffer,
  makeSolution,
  prepareBuffer,
  reagents,
  reserveOf,
  strongAdditionTo,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const { aceticAcid, ammonia, hydrochloricAcid, sodiumAcetate, sodiumChloride, sodiumHydroxide } = reagents;
const buffer = makeSolution({
  mL: 100,
  contents: [
    { reagent: aceticAcid, molar: 0.1 },
    { reagent: sodiumAcetate, molar: 0.1 },
  ],
});
const base = makeSolution({ contents: [{ reagent: sodiumHydroxide, molar: 0.1 }] });

const over = (more: object) => capacityOver(buffer, { from: 4, to: 5, ...more });
const recipe = (more: object) =>
  prepareBuffer({ pH: 4.7, mL: 100, molar: 0.1, from: [aceticAcid, sodiumAcetate], ...more });
const dropped = (more: object) => bufferResponse(buffer, { add: base, ...more } as never);
const chosen = (more: object) => chooseBuffer({ pH: 5, among: [acids.acetic], ...more });
const reserve = (more: object) => reserveOf(buffer, more);
const [leastPH, mostPH] = bufferLimits.pH;

/** A call, what is one too far, and its fault; then what is just allowed. */
const limits: readonly [string, (more: object) => unknown, object, string, object][] = [
  ['capacityOver', over, { from: leastPH - 0.1 }, 'from', { from: leastPH, every: 1 }],
  ['capacityOver', over, { to: mostPH + 0.1 }, 'to', { to: mostPH, every: 1 }],
  ['capacityOver', over, { every: 0.009 }, 'every', { every: 0.01 }],
  ['capacityOver', over, { every: 1.01 }, 'every', { every: 1 }],
  ['capacityOver', over, { usefulShare: 0 }, 'usefulShare', { usefulShare: 1e-9 }],
  ['capacityOver', over, { usefulShare: 1.01 }, 'usefulShare', { usefulShare: 1 }],
  ['prepareBuffer', recipe, { pH: mostPH + 0.1 }, 'pH', { pH: mostPH }],
  ['prepareBuffer', recipe, { pH: leastPH - 0.1 }, 'pH', { pH: leastPH }],
  ['prepareBuffer', recipe, { mL: 9e-7 }, 'mL', { mL: 1e-6 }],
  ['prepareBuffer', recipe, { mL: 1.1e8 }, 'mL', { mL: 1e8 }],
  ['prepareBuffer', recipe, { molar: 21 }, 'molar', { molar: 20 }],
  ['prepareBuffer', recipe, { ionicStrength: 21 }, 'ionicStrength', { ionicStrength: 20 }],
  ['prepareBuffer', recipe, { dilutions: [2, 0.9] }, 'dilutions[1]', { dilutions: [2, 1] }],
  ['prepareBuffer', recipe, { mL: 1e4, dilutions: [1.1e5] }, 'dilutions[0]', { mL: 1e4, dilutions: [1e5] }],
  ['prepareBuffer', recipe, { dilutions: [1.1e6] }, 'dilutions[0]', { dilutions: [1e6] }],
  ['prepareBuffer', recipe, { errorPercent: 51 }, 'errorPercent', { errorPercent: 50 }],
  ['prepareBuffer', recipe, { errorPercent: -51 }, 'errorPercent', { errorPercent: -50 }],
  ['bufferResponse', dropped, { drops: -1 }, 'drops', { drops: 0 }],
  ['bufferResponse', dropped, { drops: 1.5 }, 'drops', { drops: 1 }],
  ['bufferResponse', dropped, { drops: 1, dropSize: 11 }, 'dropSize', { drops: 1, dropSize: 10 }],
  ['bufferResponse', dropped, { drops: 1, dropSize: 9e-5 }, 'dropSize', { drops: 1, dropSize: 1e-4 }],
  ['chooseBuffer', chosen, { pH: mostPH + 0.1 }, 'pH', { pH: mostPH }],
  ['chooseBuffer', chosen, { molar: 20.1 }, 'molar', { molar: 20 }],
  ['reserveOf', reserve, { change: 0 }, 'change', { change: 0.01 }],
  ['reserveOf', reserve, { change: 10.1 }, 'change', { change: 10 }],
];

describe('numbers go as far as their limits', () => {
  test.each(limits)('%s, %#', (_, call, beyond, path, allowed) => {
    expect(listed(() => call(beyond)).filter((fault) => fault.endsWith(` ${path}`))).toHaveLength(1);
    expect(listed(() => call(allowed))).toEqual([]);
  });

  test('strongAdditionTo', () => {
    expect(listed(() => strongAdditionTo(buffer, mostPH + 0.1))).toEqual(['out-of-range pH']);
    expect(listed(() => strongAdditionTo(buffer, leastPH))).toEqual([]);
  });

  test('a stock and the strength of what is weighed', () => {
    const from = (other: unknown) => listed(() => recipe({ from: [aceticAcid, other] }));
    const stockOf = (molar: number) =>
      makeSolution({ mL: 1000, contents: [{ reagent: sodiumHydroxide, molar }] });
    expect(from(stockOf(20))).toEqual([]);
    expect(from(stockOf(20.1))).toEqual(['out-of-range from[1].contents[0]']);
    expect(from({ reagent: sodiumAcetate, purity: 1 })).toEqual([]);
    expect(from({ reagent: sodiumAcetate, purity: 1.01 })).toEqual(['out-of-range from[1].purity']);
  });
});

describe('what goes together', () => {
  test('either drops or volumes, and a drop size only with drops', () => {
    expect(listed(() => dropped({}))).toEqual(['missing addition']);
    expect(listed(() => dropped({ drops: 1, volumes: [1] }))).toEqual(['conflict addition']);
    expect(listed(() => dropped({ volumes: [1], dropSize: 0.05 }))).toEqual(['conflict dropSize']);
    expect(listed(() => dropped({ volumes: [1] }))).toEqual([]);
  });

  test('a salt only with an ionic strength, and one that is neutral', () => {
    expect(listed(() => recipe({ salt: sodiumChloride }))).toEqual(['conflict salt']);
    expect(listed(() => recipe({ salt: hydrochloricAcid, ionicStrength: 0.2 }))).toEqual(['conflict salt']);
    expect(listed(() => recipe({ salt: ammonia, ionicStrength: 0.2 }))).toEqual(['conflict salt']);
  });

  test('a range has two ends', () => {
    expect(listed(() => over({ to: 4 }))).toEqual(['conflict to']);
    expect(listed(() => chosen({ rankBy: 'colour' }))).toEqual(['wrong-type rankBy']);
  });
});
