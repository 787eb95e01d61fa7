import { acids, air, type Conditions, capacityOver, defineReagent, makeSolution, reagents } from 'protolysis';
import { expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const phosphate = makeSolution({ contents: [{ reagent: reagents.phosphoricAcid, molar: 0.1 }] });
const hypochlorous = makeSolution({
  contents: [
    {
      reagent: defineReagent({
        id: 'hypochlorous acid',
        name: 'hypochlorous acid',
        protolytes: [{ protolyte: acids.hypochlorous, count: 1 }],
        ions: [],
      }),
      molar: 0.1,
    },
  ],
});

test('a polyprotic acid has a peak at each pKa that water leaves visible', () => {
  const { peaks } = capacityOver(phosphate, { from: 1, to: 13, every: 0.05 });
  // pK1 2.148 stands on the flank of water's own share, pK3 12.35 as well: only pK2 has a summit of its own
  expect(peaks.map(({ pH }) => Number(pH.toFixed(2)))).toEqual([7.2]);
  expect(peaks[0]?.capacity).toBeCloseTo((Math.LN10 * 0.1) / 4, 4);
});

test('a stronger solution shows the peaks at the ends too', () => {
  const strong = makeSolution({ contents: [{ reagent: reagents.phosphoricAcid, molar: 1 }] });
  const { peaks } = capacityOver(strong, { from: 1, to: 13, every: 0.05 });
  expect(peaks.length).toBe(3);
});

test('useful down to 40/121 of the peak is pKa ± 1 for one pair far from water, to 1e-4', () => {
  // water adds 2.3·[H+] at pH 6.2 or 2.3·[OH-] at 8.2: 4e-6 beside a slope of 0.02 per unit
  const [peak] = capacityOver(hypochlorous, { from: 4, to: 10 }).peaks;
  const pKa = acids.hypochlorous.steps[0]?.pKa as number;
  expect(Math.abs((peak?.pH as number) - pKa)).toBeLessThan(1e-4);
  expect(Math.abs((peak?.useful.from as number) - (pKa - 1))).toBeLessThan(1e-3);
  expect(Math.abs((peak?.useful.to as number) - (pKa + 1))).toBeLessThan(1e-3);
});

test('steps that overlap, as in citric acid, make one useful range', () => {
  const citrate = makeSolution({ contents: [{ reagent: reagents.citricAcid, molar: 0.1 }] });
  const { peaks } = capacityOver(citrate, { from: 2.2, to: 9 });
  for (const { useful } of peaks) expect(useful.to as number).toBeGreaterThan(6.9);
  expect(peaks.at(-1)?.useful.from).toBeNull();
});

test('a range that ends before the capacity falls leaves that end open', () => {
  const [peak] = capacityOver(phosphate, { from: 6.5, to: 9 }).peaks;
  expect(peak?.useful.from).toBeNull();
  expect(peak?.useful.to).toBeCloseTo(8.2, 2);
});

test('a pH that nothing reaches is left out, with a note', () => {
  const { pH, notes } = capacityOver(phosphate, { from: 15, to: 16, every: 0.5 });
  expect(pH).toEqual([15, 15.5]);
  expect(notes.length).toBe(1);
});

test('rejects a range that ends before it begins', () =>
  expect(() => capacityOver(phosphate, { from: 7, to: 6 })).toThrow('above that of `from`'));

test('the columns hold every pH from end to end, and there C·K·h/(K + h)²·ln10 with water beside it', () => {
  const acetic = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
  const { pH, capacity, notes } = capacityOver(acetic, { from: 4, to: 5.5, every: 0.5 });
  expect(pH).toEqual([4, 4.5, 5, 5.5]);
  expect(notes).toEqual([]);
  for (const [k, at] of pH.entries()) {
    const [K, h] = [10 ** -4.756, 10 ** -at];
    const expected = Math.LN10 * ((0.1 * K * h) / (K + h) ** 2 + h + 10 ** -13.995 / h);
    // the pH is met within two roundings, and so is h to 1e-14
    expect((capacity[k] as number) / expected).toBeCloseTo(1, 12);
  }
});

test('a share s of the peak of one pair is left at pKa ± log10((2 − s + 2·√(1 − s))/s), within one step too', () => {
  const share = 0.9;
  const [peak] = capacityOver(hypochlorous, { from: 4, to: 10, every: 1, usefulShare: share }).peaks;
  const pKa = acids.hypochlorous.steps[0]?.pKa as number;
  const apart = Math.log10((2 - share + 2 * Math.sqrt(1 - share)) / share);
  // water adds 2e-5 to a slope of 0.035 per unit there
  expect(Math.abs((peak?.useful.from as number) - (pKa - apart))).toBeLessThan(1e-3);
  expect(Math.abs((peak?.useful.to as number) - (pKa + apart))).toBeLessThan(1e-3);
});

test('beside other peaks a useful range ends where its own peak has fallen', () => {
  const strong = makeSolution({ contents: [{ reagent: reagents.phosphoricAcid, molar: 1 }] });
  const { useful } = capacityOver(strong, { from: 1, to: 13, every: 0.25 }).peaks[1] ?? {};
  const pKa = acids.phosphoric.steps[1]?.pKa as number;
  // the neighbouring steps add 1e-4 of C to a slope of 0.16·C·ln10 per unit
  expect(Math.abs((useful?.from as number) - (pKa - 1))).toBeLessThan(1e-3);
  expect(Math.abs((useful?.to as number) - (pKa + 1))).toBeLessThan(1e-3);
});

test('two neighbours to either side of a pKa, equal but for rounding, make one peak', () => {
  // pKa = pKw/2: the capacity is the same at pKa − 0.05 and pKa + 0.05, in some of these to the last bit
  const [step] = acids.hypochlorous.steps;
  const middle = {
    ...acids.hypochlorous,
    id: 'middle',
    steps: [{ pKa: 7, source: step?.source ?? { kind: 'fromMemory' as const, note: 'invented' } }],
  };
  const acid = defineReagent({
    id: 'middle acid',
    name: 'middle acid',
    protolytes: [{ protolyte: middle, count: 1 }],
    ions: [],
  });
  for (let k = 1; k <= 8; k += 1) {
    const solution = makeSolution({ contents: [{ reagent: acid, molar: 0.01 * k }] });
    const range = { from: 6.85, to: 7.15, usefulShare: 0.1, conditions: { pKw: 14 } };
    expect(capacityOver(solution, range).peaks).toHaveLength(1);
  }
});

test('says how many values of pH nothing reaches', () =>
  expect(capacityOver(phosphate, { from: 15, to: 16, every: 0.5 }).notes).toEqual([
    'Left out, since no strong acid or base reaches them: 1 of 3 values of pH.',
  ]));

test('refuses a gas under the id of a protolyte that has other constants', () => {
  const [first, second] = acids.carbonic.steps;
  const protolyte = { ...acids.carbonic, steps: [{ ...first, pKa: 6.4 }, second] };
  const soda = makeSolution({ contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] });
  const conditions = { carbonDioxide: { ...air, protolyte } } as Conditions;
  expect(listed(() => capacityOver(soda, { from: 6, to: 7, conditions }))).toEqual([
    'conflict conditions.carbonDioxide.protolyte',
  ]);
});

test('finds the end of the useful range where the share is that of a value of the grid', () => {
  const tris = makeSolution({ contents: [{ reagent: reagents.tris, molar: 0.1 }] });
  const range = { from: 3, to: 10, every: 0.25, usefulShare: 0.17363444019594895 };
  expect(capacityOver(tris, range).peaks[0]?.useful.from).toBeCloseTo(6.75, 9);
});
