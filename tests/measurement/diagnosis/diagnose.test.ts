import { air, makeSolution, reagents, titrate } from 'protolysis';
import { type BenchFault, type Diagnosis, diagnose, simulateReadings } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { listed } from '../../faults-of.js';

const carbonate = makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({ analyte: carbonate, titrant: acid });
const diagnosed = (faults: readonly BenchFault[], seed = 11): Diagnosis =>
  diagnose(simulateReadings(titration, { seed, faults }).readings, titration);

/** Each of a size in the middle of what is ordinary, and how near the size found must be: three standard uncertainties. */
const faults = [
  { kind: 'initialReading', mL: 2 },
  { kind: 'airBubble', mL: 0.6, after: 6 },
  { kind: 'probeOffset', pH: 0.25 },
  { kind: 'probeSlope', percent: 90 },
  { kind: 'probeDrift', pH: 0.2 },
  { kind: 'readTooSoon', wait: 0.7 },
  { kind: 'carbonDioxideInFlask', molar: 0.006 },
  { kind: 'carbonDioxideInTitrant', molar: 0.012 },
  { kind: 'titrantConcentration', ratio: 1.06 },
  { kind: 'sampleAmount', ratio: 0.94 },
] as const satisfies readonly BenchFault[];

const sizeOf = (fault: (typeof faults)[number]): number =>
  Number(Object.entries(fault).filter(([key]) => key !== 'kind' && key !== 'after')[0]?.[1]);

describe('diagnose', () => {
  test.each(faults)('tells $kind, with its size', (fault) => {
    const { verdict, likely } = diagnosed([fault]);
    expect(verdict).toBe('fault');
    const found = likely.find(({ kind }) => kind === fault.kind);
    const { value = Number.NaN, standardUncertainty } = found?.size ?? {};
    expect(Math.abs(value - sizeOf(fault))).toBeLessThan(4 * (standardUncertainty ?? 0));
  });

  test('tells increments that were written down as totals', () => {
    expect(diagnosed([{ kind: 'incrementsAsTotals' }]).likely.map(({ kind }) => kind)).toEqual([
      'incrementsAsTotals',
    ]);
  });

  test('calls sound what is sound, noise and a little more sample included', () => {
    expect(diagnosed([]).sentence).toBe('The readings look sound.');
    expect(diagnosed([{ kind: 'sampleAmount', ratio: 1.015 }]).verdict).toBe('sound');
    const perfect = { mL: Array.from({ length: 40 }, (_, k) => k), notes: [] };
    expect(diagnose({ ...perfect, pH: perfect.mL.map((mL) => titration.pHAt(mL)) }, titration).verdict).toBe(
      'sound',
    );
  });

  test('gives the amount of sample as much room as it is told', () => {
    const { readings } = simulateReadings(titration, {
      seed: 3,
      faults: [{ kind: 'sampleAmount', ratio: 1.06 }],
    });
    expect(diagnose(readings, titration, { sampleTolerance: 0.1 }).verdict).toBe('sound');
    expect(diagnose(readings, titration).verdict).toBe('fault');
  });

  test('gives one group for what a level curve cannot tell apart, and what would', () => {
    const volumes = [2, 4, 6, 8, 10, 12, 14, 16, 18, 20]; // no end point passed closely
    const { readings } = simulateReadings(titration, {
      seed: 2,
      volumes,
      faults: [{ kind: 'titrantConcentration', ratio: 1.08 }],
    });
    const { likely, sentence } = diagnose(readings, titration);
    expect(likely.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['sampleAmount', 'titrantConcentration']),
    );
    expect(sentence).toContain('cannot tell');
    expect(likely.every(({ check, remedy }) => check.length > 10 && remedy.length > 10)).toBe(true);
  });

  test('ranks every explanation by its evidence', () => {
    const { explanations } = diagnosed([{ kind: 'probeDrift', pH: 0.3 }]);
    const evidence = explanations.map((each) => each.evidence);
    expect(evidence).toEqual([...evidence].sort((a, b) => b - a));
    expect(new Set(explanations.map(({ kind }) => kind)).size).toBe(explanations.length);
  });

  test('notes where the readings leap over an equivalence point or end before it', () => {
    const { readings } = simulateReadings(titration, {
      seed: 5,
      volumes: [0, 1, 3, 5, 7, 9, 11, 14, 16, 18],
    });
    const { notes } = diagnose(readings, titration);
    expect(notes[0]).toContain('go from 11.00 to 14.00 mL over the equivalence point at 12.50 mL');
    expect(notes[1]).toContain('end before the equivalence point at 25.00 mL');
  });

  test('tries no carbon dioxide where the air gives it', () => {
    const open = titrate({ analyte: carbonate, titrant: acid, conditions: { carbonDioxide: air } });
    const { readings } = simulateReadings(open, { seed: 1 });
    expect(diagnose(readings, open).explanations.some(({ kind }) => kind.startsWith('carbonDioxide'))).toBe(
      false,
    );
  });

  test('is plain data', () => {
    const diagnosis = diagnosed([]);
    expect(JSON.parse(JSON.stringify(diagnosis))).toEqual({ ...diagnosis });
  });

  test('says what is wrong with what it is given', () => {
    const { readings } = simulateReadings(titration, { seed: 1 });
    expect(listed(() => diagnose({ mL: [1], pH: [7], notes: [] }, titration))).toEqual([
      'out-of-range readings.mL',
    ]);
    expect(listed(() => diagnose(readings, titration, { sampleTolerance: 2 }))).toEqual([
      'out-of-range options.sampleTolerance',
    ]);
    const boiled = titrate({ analyte: carbonate, titrant: acid, boilOut: { mL: 24 } });
    expect(listed(() => diagnose(readings, boiled))).toEqual(['conflict titration.setup.boilOut']);
  });
});
