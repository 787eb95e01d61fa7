import fc from 'fast-check';
import { makeSolution, reagents, titrate } from 'protolysis';
import {
  type BenchFault,
  type BenchFaultKind,
  gradeAnswer,
  type PracticeKey,
  simulateReadings,
} from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { benchEffects, benchFaultKinds } from '../../../src/measurement/practice/bench-effects.js';
import { listed } from '../../faults-of.js';
import { throughJSON } from '../../json.js';

const carbonate = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});
const keyWith = (...faults: BenchFault[]) => simulateReadings(carbonate, { seed: 1, faults }).key;
const late = keyWith({ kind: 'initialReading', mL: 1.2 });

/** One fault of each kind, of a size that pH and volumes can bear. */
const sizes: Partial<Record<string, number>> = { ratio: 0.9, molar: 0.005, percent: 90, wait: 0.7, pH: 0.2 };
const oneOfEach = benchFaultKinds.map(
  (kind) =>
    ({
      kind,
      ...Object.fromEntries(Object.keys(benchEffects[kind].sizes).map((key) => [key, sizes[key] ?? 1])),
    }) as BenchFault,
);
const anyFaults = fc.subarray(oneOfEach);

test('a key grades its own answer in full, whatever the faults, before and after a trip through JSON', () =>
  fc.assert(
    fc.property(anyFaults, fc.integer({ min: 0, max: 1e6 }), (faults, seed) => {
      const { key } = simulateReadings(carbonate, { seed, faults });
      const grade = gradeAnswer(key, key.expected);
      expect([grade.points, grade.of]).toEqual([10, 10]);
      expect(gradeAnswer(throughJSON(key), throughJSON(key.expected))).toEqual(grade);
    }),
    { numRuns: 50 },
  ));

test('no answer gets more points than there are, or less than none', () => {
  const part = fc.double({ min: 0, max: 100, noNaN: true });
  const volume = fc.oneof(fc.double({ min: 0, max: 60, noNaN: true }), fc.constantFrom(12.5, 13.7, 25, 26.2));
  const answers = fc.record(
    {
      endpoints: fc.array(volume, { maxLength: 40 }),
      mmol: fc.record({ sodiumCarbonate: fc.constantFrom(1.2, 1.25, 1.31, 5) }, { requiredKeys: [] }),
      faults: fc.array(fc.constantFrom(...benchFaultKinds)),
    },
    { requiredKeys: [] },
  );
  const points = fc.record({ endpoints: part, mmol: part, faults: part });
  const tolerance = fc.record({ mL: part, percent: part });
  fc.assert(
    fc.property(answers, points, tolerance, (answer, points, tolerance) => {
      const grade = gradeAnswer(late, answer, { points, tolerance });
      expect(grade.points).toBeGreaterThanOrEqual(0);
      expect(grade.points).toBeLessThanOrEqual(grade.of);
      expect(grade.of).toBe(points.endpoints + points.mmol + points.faults);
      for (const item of grade.items) expect(item.points).toBeLessThanOrEqual(item.of);
    }),
  );
});

const wordsOf = (...args: Parameters<typeof gradeAnswer>) =>
  gradeAnswer(...args).items.map(({ words }) => words);
const sharesOf = (...args: Parameters<typeof gradeAnswer>) =>
  gradeAnswer(...args).items.map(({ points, of }) => points / of);

describe('a number', () => {
  const only = { points: { endpoints: 0, faults: 0 } };
  const amount = (mmol: number) => [late, { mmol: { sodiumCarbonate: mmol } }, only] as const;

  test('within the tolerance is right', () => {
    expect(sharesOf(...amount(1.225))).toEqual([1]);
    expect(wordsOf(...amount(1.24))).toEqual([
      'Amount of sodium carbonate: 1.24 mmol is right within 0.025 mmol of 1.25 mmol.',
    ]);
  });

  test('within three times the tolerance gets half', () => {
    expect(sharesOf(...amount(1.18))).toEqual([0.5]);
    expect(wordsOf(...amount(1.2))).toEqual([
      'Amount of sodium carbonate: 1.2 mmol is off 1.25 mmol by 0.05 mmol, within three times the tolerance of 0.025 mmol. Half the points.',
    ]);
  });

  test('that the readings give before correction gets half, near the right one or not', () => {
    const far = keyWith({ kind: 'initialReading', mL: 5 });
    expect(far.uncorrected.mmol).toEqual({ sodiumCarbonate: 1.5 });
    expect(wordsOf(far, { mmol: { sodiumCarbonate: 1.5 } }, only)).toEqual([
      'Amount of sodium carbonate: 1.5 mmol is what the readings give as they stand; corrected, it is 1.25 mmol. Half the points.',
    ]);
  });

  test('further off, or left out, gets none', () => {
    expect(wordsOf(...amount(2))).toEqual([
      'Amount of sodium carbonate: 2 mmol is off 1.25 mmol by 0.75 mmol, more than three times the tolerance of 0.025 mmol.',
    ]);
    expect(wordsOf(late, {}, only)).toEqual(['Amount of sodium carbonate: no answer; it is 1.25 mmol.']);
    expect(sharesOf(late, {})).toEqual([0, 0, 0, 0]);
  });
});

describe('end points', () => {
  const only = { points: { mmol: 0, faults: 0 } };

  test('count in any order, each on its own', () => {
    expect(sharesOf(late, { endpoints: [25.05, 12.45] }, only)).toEqual([1, 1]);
    expect(sharesOf(late, { endpoints: [25.05] }, only)).toEqual([0, 1]);
  });

  test('a volume that counts for one is no answer for another', () => {
    expect(wordsOf(late, { endpoints: [12.45] }, only)[1]).toBe('End point 2: no answer; it is 25 mL.');
    expect(wordsOf(late, { endpoints: [12.45, 24] }, only)[1]).toBe(
      'End point 2: 24 mL is off 25 mL by 1 mL, more than three times the tolerance of 0.1 mL.',
    );
  });

  test('that are more than there are share the points', () => {
    expect(sharesOf(late, { endpoints: [12.5, 25, 30, 31] }, only)).toEqual([0.5, 0.5]);
    expect(wordsOf(late, { endpoints: [12.5, 25, 30, 31] }, only)[0]).toBe(
      'End point 1: 12.5 mL is right within 0.1 mL of 12.5 mL. There are 4 volumes for 2 end points, which share the points.',
    );
  });
});

describe('faults', () => {
  const only = { points: { endpoints: 0, mmol: 0 } };
  const both = keyWith({ kind: 'airBubble', mL: 0.5, after: 3 }, { kind: 'probeDrift', pH: 0.2 });
  const share = (key: typeof late, faults: readonly BenchFaultKind[]) => sharesOf(key, { faults }, only)[0];

  test('count by the share of right names in all that are there or named', () => {
    expect(share(both, ['probeDrift', 'airBubble'])).toBe(1);
    expect(share(both, ['probeDrift'])).toBe(1 / 2);
    expect(share(both, ['probeDrift', 'probeDrift', 'probeOffset'])).toBe(1 / 3);
    expect(share(both, benchFaultKinds)).toBe(2 / benchFaultKinds.length);
    expect(wordsOf(both, { faults: ['probeDrift', 'probeOffset'] }, only)).toEqual([
      'Faults: right: drift of the probe; missed: air bubble in the burette tip; not there: offset of the probe.',
    ]);
  });

  test('that are none are right to be called none', () => {
    expect(share(keyWith(), [])).toBe(1);
    expect(share(keyWith(), ['probeDrift'])).toBe(0);
    expect(wordsOf(keyWith(), { faults: [] }, only)).toEqual(['Faults: none, and the run is sound.']);
    expect(wordsOf(keyWith(), {}, only)).toEqual(['Faults: no answer; there are none.']);
  });

  test('that look alike count under either name', () => {
    const weak = keyWith({ kind: 'titrantConcentration', ratio: 0.95 });
    expect(share(weak, ['sampleAmount'])).toBe(1);
    expect(share(weak, ['sampleAmount', 'titrantConcentration'])).toBe(1 / 2);
    expect(wordsOf(weak, { faults: ['sampleAmount'] }, only)[0]).toMatch(/either name counts\.$/);
  });

  // Both give the same volumes; what is 5 % more dilute differs by up to −log10 0.95 = 0.022 in pH, as much as a probe is good to.
  test('look alike to within what a probe is good to', () => {
    const volumes = Array.from({ length: 70 }, (_, k) => k / 2);
    const pHsOf = (fault: BenchFault) =>
      simulateReadings(carbonate, { seed: 1, volumes, noise: { pH: 0, mL: 0 }, faults: [fault] }).readings.pH;
    const weak = pHsOf({ kind: 'titrantConcentration', ratio: 0.95 });
    const much = pHsOf({ kind: 'sampleAmount', ratio: 1 / 0.95 });
    const farthest = Math.max(...weak.map((pH, k) => Math.abs(pH - (much[k] as number))));
    expect(farthest).toBeLessThan(-Math.log10(0.95) + 0.001); // two roundings
  });
});

test('a grade is a few lines as a text, with its points to four digits', () => {
  const text = String(gradeAnswer(late, { endpoints: [12.45] }, { points: { endpoints: 8 / 3, mmol: 1 } }));
  expect(text.split('\n')).toEqual([
    '1.333 of 5.667 points',
    '  1.333 of 1.333: End point 1: 12.45 mL is right within 0.1 mL of 12.5 mL.',
    '  0 of 1.333: End point 2: no answer; it is 25 mL.',
    '  0 of 1: Amount of sodium carbonate: no answer; it is 1.25 mmol.',
    '  0 of 2: Faults: no answer; there is: initial reading of the burette not subtracted.',
  ]);
});

test('a key written by hand needs no flask: a reagent is then called by its id', () => {
  const { expected, uncorrected } = keyWith();
  const { items } = gradeAnswer({ expected, uncorrected } as PracticeKey, {});
  expect(items[2]?.words).toBe('Amount of sodiumCarbonate: no answer; it is 1.25 mmol.');
});

test('an answer is read with care', () => {
  const key = keyWith();
  expect(listed(() => gradeAnswer(key, { mmol: { sodiumcarbonate: 1 } }))).toEqual([
    'unknown-key answer.mmol.sodiumcarbonate',
  ]);
  expect(listed(() => gradeAnswer(key, { faults: ['bubble' as 'airBubble'], endpoints: [-1] }))).toEqual([
    'out-of-range answer.endpoints[0]',
    'wrong-type answer.faults[0]',
  ]);
  expect(listed(() => gradeAnswer(key, { mmol: null } as never, { points: null } as never))).toEqual([
    'wrong-type answer.mmol',
    'wrong-type options.points',
  ]);
});
