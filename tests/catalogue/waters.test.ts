import { aliquot, bufferResponse, makeSolution, mix, reagents, sourcesOf, waters } from 'protolysis';
import { expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const base = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });

test.each(Object.values(waters))('$name is a solution like any other, with a name and a source', (water) => {
  expect(mix(base, aliquot(water, { mL: 50 })).mL).toBe(70);
  expect(bufferResponse(base, { add: base, drops: 1, beside: [water] }).beside[0]).toHaveLength(2);
  expect(sourcesOf(water).length).toBeGreaterThan(0);
});

test('a mixture is a new thing: it takes over neither name nor source', () => {
  expect(Object.keys(mix(waters.tapLike, waters.inAir)).sort()).toEqual(['contents', 'mL']);
});

test('a name or a source that is none is refused', () => {
  const bad = { ...base, name: 7, source: { kind: 'hearsay' } } as never;
  expect(listed(() => mix(bad))).toEqual([
    'wrong-type solutions[0].name',
    'wrong-type solutions[0].source.kind',
  ]);
});
