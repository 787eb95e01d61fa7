import { acids, capacityOver, defineReagent, makeSolution, reagents } from 'protolysis';
import { expect, test } from 'vitest';

const phosphate = makeSolution({ contents: [{ reagent: reagents.phosphoricAcid, molar: 0.1 }] });

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
  const [peak] = capacityOver(
    makeSolution({
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
    }),
    { from: 4, to: 10 },
  ).peaks;
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
