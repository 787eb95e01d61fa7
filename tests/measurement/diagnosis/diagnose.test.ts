import { air, davies, makeSolution, reagents, titrate } from 'protolysis';
import { type BenchFault, type Diagnosis, diagnose, simulateReadings } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { Faults } from '../../../src/input/faults.js';
import { calledEndpoint } from '../../../src/measurement/diagnosis/called-endpoint.js';
import { type Case, fittedModel } from '../../../src/measurement/diagnosis/fitted-model.js';
import { randomFrom } from '../../../src/measurement/statistics/random.js';
import { readSetup } from '../../../src/titration/read-setup.js';
import { listed } from '../../faults-of.js';
import { titrationOf } from '../../indicator/titrations.js';

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

describe('an end point that was called', () => {
  const calledIn = (seed: number, endpoint: number, bench: readonly BenchFault[] = []) => {
    const { readings } = simulateReadings(titration, { seed, faults: bench });
    return diagnose(readings, titration, { endpoint });
  };

  test('is told to be past the nearest equivalence point, by how much, and what to do', () => {
    const { endpoint, verdict } = calledIn(4, 25.6, [{ kind: 'overshoot', mL: 0.6 }]);
    expect(verdict).toBe('sound'); // in the readings themselves an overshoot is but a gap
    expect(endpoint).toMatchObject({ mL: 25.6, verdict: 'past' });
    expect(Math.abs((endpoint?.past ?? 0) - 0.6)).toBeLessThan(3 * (endpoint?.standardUncertainty ?? 0));
    expect(endpoint?.standardUncertainty).toBeLessThan(0.05);
    expect(endpoint?.sentence).toMatch(
      /^The end point was called at 25\.60 mL, 0\.\d\d ± 0\.0\d mL past the equivalence point at 2\d\.\d\d mL, HCO₃⁻ \+ H⁺ → .*: it was overshot\.$/,
    );
    expect(endpoint?.remedy).toContain('single drops');
  });

  test.each([
    { at: 12.5, verdict: 'on', point: 12.5 },
    { at: 12.2, verdict: 'before', point: 12.5 },
    { at: 24.7, verdict: 'before', point: 25 },
  ])('at $at mL is $verdict the one at $point mL', ({ at, verdict, point }) => {
    const { endpoint } = calledIn(5, at);
    expect(endpoint?.verdict).toBe(verdict);
    expect(Math.abs((endpoint?.equivalence.mL ?? 0) - point)).toBeLessThan(0.05);
    expect(endpoint?.remedy === '').toBe(verdict === 'on');
  });

  test('is held against the totals as they were read, with the fault of the burette in them', () => {
    const { endpoint, likely } = calledIn(6, 27, [{ kind: 'initialReading', mL: 2 }]);
    expect(likely.map(({ kind }) => kind)).toEqual(['initialReading']);
    expect(endpoint?.verdict).toBe('on');
  });

  test('is not judged where none is given, or where nothing can be titrated to one', () => {
    expect(diagnosed([]).endpoint).toBeNull();
    const salt = titrate({
      analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumChloride, molar: 0.05 }] }),
      titrant: acid,
    });
    const mL = [0, 1, 2, 3, 4, 5, 6, 7, 8];
    const pH = mL.map((volume) => salt.pHAt(volume));
    expect(diagnose({ mL, pH, notes: [] }, salt, { endpoint: 4 }).endpoint).toBeNull();
  });

  test.each<[BenchFault, number]>([
    [{ kind: 'initialReading', mL: 2 }, 2],
    [{ kind: 'airBubble', mL: 0.8, after: 6 }, 0.8],
  ])('is mended to the volume that was poured: %j', (fault, notPoured) => {
    const { endpoint } = calledIn(6, 25.4 + notPoured, [fault]);
    expect(endpoint?.verdict).toBe('past');
    const poured = Number(/^Calculate with (\d+\.\d\d) mL poured\./.exec(endpoint?.remedy ?? '')?.[1]);
    expect(Math.abs(poured - 25)).toBeLessThan(0.1); // 25 mL are due; the sample may be off by what its noise leaves
  });

  test('is unclear where nothing explains the readings, or where they end before it', () => {
    const { readings } = simulateReadings(titration, { seed: 8, faults: [] });
    const other = diagnose(readings, acetic, { endpoint: 20.4 });
    expect(other).toMatchObject({ verdict: 'unexplained', endpoint: { verdict: 'unclear', remedy: '' } });
    const volumes = Array.from({ length: 20 }, (_, k) => k + 0.5);
    const early = simulateReadings(titration, { seed: 8, volumes }).readings;
    expect(diagnose(early, titration, { endpoint: 25.4 }).endpoint).toMatchObject({ verdict: 'unclear' });
  });

  // z = (past − true)/u has a root mean square of 1; of 100 runs within three of its standard deviations, 1/√200
  test('has a standard uncertainty as large as its errors are', () => {
    const random = randomFrom(9);
    const volumes = Array.from({ length: 61 }, (_, k) => k / 2);
    const setup = readSetup(titration.setup, 'setup', new Faults('test'));
    const tolerance = { sampleAmount: 0.02, probeOffset: 0, probeSlope: 0 };
    const squares = Array.from({ length: 100 }, (_, seed) => {
      const { readings } = simulateReadings(titration, { seed, volumes });
      const about: Case = { readings, setup, uncertainty: { pH: 0.02, mL: 0.02 }, tolerance };
      const found = calledEndpoint(25.3 + 0.02 * random.normal(), fittedModel(about, null), about);
      return (((found?.past ?? Number.NaN) - 0.3) / (found?.standardUncertainty ?? 0)) ** 2;
    });
    const rms = Math.sqrt(squares.reduce((sum, each) => sum + each, 0) / squares.length);
    expect(Math.abs(rms - 1)).toBeLessThan(3 / Math.sqrt(200));
  });
});

const acetic = titrationOf(reagents.aceticAcid, reagents.sodiumHydroxide);
const phthalate = titrationOf(reagents.potassiumHydrogenPhthalate, reagents.sodiumHydroxide);

describe('readings that no single fault explains', () => {
  const verdictOn = (readings: Parameters<typeof diagnose>[0]) => diagnose(readings, acetic).verdict;
  const mL = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 23, 24, 25, 26, 28];

  test('are those of another titration', () => {
    const { verdict, sentence, scatter } = diagnose(
      simulateReadings(titration, { seed: 1 }).readings,
      acetic,
    );
    expect(verdict).toBe('unexplained');
    expect(scatter).toBeGreaterThan(5);
    expect(sentence).toMatch(/^No single fault explains these readings: they scatter \d+ times as much/);
  });

  test.each([
    ['a pH that never moves', mL.map(() => 7)],
    ['a pH that jumps', mL.map((_, k) => (k % 2 === 0 ? 0 : 14))],
    ['one reading off by 1', mL.map((volume, k) => acetic.pHAt(volume) + (k === 8 ? 1 : 0))],
    ['the curve upside down', mL.map((volume) => 14 - acetic.pHAt(volume))],
  ])('are %s', (_, pH) => {
    expect(verdictOn({ mL, pH, notes: [] })).toBe('unexplained');
  });

  test.each<readonly BenchFault[]>([
    [
      { kind: 'probeOffset', pH: 0.2 },
      { kind: 'initialReading', mL: 1 },
    ],
    [
      { kind: 'probeSlope', percent: 90 },
      { kind: 'airBubble', mL: 1, after: 6 },
    ],
  ])('are those of two faults, %j and %j', (...two) => {
    expect(diagnosed(two).verdict).toBe('unexplained');
  });

  test('are those that scatter four times as much as is stated', () => {
    const { readings } = simulateReadings(titration, { seed: 11, noise: { pH: 0.08, mL: 0.08 } });
    expect(diagnose(readings, titration).verdict).toBe('unexplained');
    expect(diagnose(readings, titration, { uncertainty: { pH: 0.08, mL: 0.08 } }).verdict).toBe('sound');
  });

  test('sound ones scatter once', () => {
    const { verdict, scatter } = diagnosed([]);
    expect(verdict).toBe('sound');
    expect(Math.abs(scatter - 1)).toBeLessThan(3 / Math.sqrt(2 * 80)); // three standard deviations of some 85 readings
  });
});

describe('what a bench may be off by', () => {
  test.each([
    [titration, 0.02, 98.3],
    [phthalate, -0.02, 101.5],
    [acetic, -0.025, 99],
  ])('a probe that was just calibrated is no fault', (each, pH, percent) => {
    const faults = [
      { kind: 'probeOffset', pH },
      { kind: 'probeSlope', percent },
    ] as const;
    expect(diagnose(simulateReadings(each, { seed: 4, faults }).readings, each).verdict).toBe('sound');
    const strict = { probeTolerance: { pH: 0, percent: 0 } };
    expect(diagnose(simulateReadings(each, { seed: 4, faults }).readings, each, strict).verdict).not.toBe(
      'sound',
    );
  });

  // the difference in pH of the excess, 0.03, is within what a probe may be off
  test('titrant and amount of sample come as one group', () => {
    const faults = [
      { kind: 'sampleAmount', ratio: 1.05 },
      { kind: 'probeOffset', pH: 0.02 },
    ] as const;
    const { likely } = diagnose(simulateReadings(phthalate, { seed: 3, faults }).readings, phthalate);
    expect(likely.map(({ kind }) => kind).sort()).toEqual(['sampleAmount', 'titrantConcentration']);
  });

  test('a content that is not known is no fault where that is said', () => {
    const faults = [
      { kind: 'sampleAmount', ratio: 0.95 },
      { kind: 'probeOffset', pH: 0.2 },
    ] as const;
    const { readings } = simulateReadings(titration, { seed: 5, faults });
    const { likely } = diagnose(readings, titration, { sampleTolerance: 0.1 });
    expect(likely.map(({ kind }) => kind)).toEqual(['probeOffset']);
  });
});

describe('columns that are no running totals', () => {
  const mL = [1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 22, 23, 24, 25, 26, 28];
  const pH = mL.map((volume) => acetic.pHAt(volume) + 1);

  test('two readings at each volume are not called increments', () => {
    const twice = {
      mL: mL.flatMap((each) => [each, each]),
      pH: pH.flatMap((each) => [each, each]),
      notes: [],
    };
    expect(diagnose(twice, acetic).likely.map(({ kind }) => kind)).toEqual(['probeOffset']);
  });

  test('a table upside down tells the same fault, and no note on where it ends', () => {
    const { likely, notes } = diagnose({ mL: mL.toReversed(), pH: pH.toReversed(), notes: [] }, acetic);
    expect(likely.map(({ kind }) => kind)).toEqual(['probeOffset']);
    expect(notes.join()).not.toContain('end before');
  });

  test('increments are told where most of them rise', () => {
    const volumes = [0, 1, 3, 6, 10, 15, 20, 22, 23, 24, 24.5, 25, 26, 28, 31, 35];
    const { readings } = simulateReadings(acetic, {
      seed: 2,
      volumes,
      faults: [{ kind: 'incrementsAsTotals' }],
    });
    expect(diagnose(readings, acetic).likely.map(({ kind }) => kind)).toEqual(['incrementsAsTotals']);
  });

  test('a first total of zero before an initial reading comes as one group with a bubble', () => {
    const late = {
      mL: [0, ...mL.map((each) => each + 2)],
      pH: [acetic.pHAt(0), ...pH.map((each) => each - 1)],
      notes: [],
    };
    const { likely } = diagnose(late, acetic);
    expect(likely.map(({ kind, size }) => [kind, size?.value.toFixed(2)])).toEqual([
      ['airBubble', '2.00'],
      ['initialReading', '2.00'],
    ]);
  });
});

test('says where the law of activity may be at fault', () => {
  const real = titrate({ ...acetic.setup, conditions: { activity: davies } });
  const { readings } = simulateReadings(real, { seed: 2 });
  expect(diagnose(readings, acetic).notes.join()).toContain('conditions: { activity: davies }');
  expect(diagnose(readings, real)).toMatchObject({ verdict: 'sound', notes: [] });
});

test('tells when a bubble left, for a fit', () => {
  const bubble = diagnosed([{ kind: 'airBubble', mL: 0.6, after: 6 }]).likely[0];
  expect(bubble?.size?.after).toBeCloseTo(6, 0);
  expect(bubble?.sentence).toMatch(/^Air bubble in the burette tip: 0\.\d+ ± 0\.0\d+ mL after \d/);
});

test('advises on carbon dioxide by what is in the burette', () => {
  const { explanations } = diagnosed([]);
  const byAcid = explanations.find(({ kind }) => kind === 'carbonDioxideInFlask');
  const ofBase = diagnose(
    simulateReadings(acetic, { seed: 1, faults: [{ kind: 'carbonDioxideInFlask', molar: 0.01 }] }).readings,
    acetic,
  );
  expect(byAcid?.remedy ?? 'hydrogencarbonate').toContain('hydrogencarbonate');
  expect(ofBase.likely[0]?.check).toContain('blank');
});

// found by hostile input: a substance that gives next to nothing determines no end point
test('gives an uncertainty within the range of doubles, or none the range of doubles', () => {
  const faint = structuredClone({ ...acetic.setup, conditions: {} }) as unknown as {
    analyte: { contents: { reagent: { protolytes: { count: number }[] } }[] };
  };
  for (const { reagent } of faint.analyte.contents)
    for (const held of reagent.protolytes) held.count = 1e-300;
  const mL = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
  const pH = [2, 2.1, 2.3, 2.6, 3, 7, 11, 11.3, 11.5, 11.6];
  const setup = faint as unknown as typeof acetic.setup;
  const { endpoint } = diagnose({ mL, pH, notes: [] }, { setup }, { endpoint: 4.1 });
  expect(endpoint).toMatchObject({ verdict: 'unclear', remedy: '' });
  expect(Number.isFinite(endpoint?.standardUncertainty ?? 0)).toBe(true);
});

test('judges how the readings lie about the points by volumes that were poured', () => {
  const volumes = Array.from({ length: 23 }, (_, k) => k); // 22 mL poured, 26 written down
  const faults = [{ kind: 'initialReading', mL: 4 }] as const;
  const { notes } = diagnose(simulateReadings(titration, { seed: 3, volumes, faults }).readings, titration);
  expect(notes.join(' ')).toMatch(/The readings end before the equivalence point at 2\d\.\d\d mL, HCO₃⁻/);
  expect(notes.join(' ')).not.toContain('over the equivalence point at 25.00');
});

test('says of no point without a step that the readings end before it', () => {
  const phosphoric = titrationOf(reagents.phosphoricAcid, reagents.sodiumHydroxide);
  const last = phosphoric.equivalencePoints[1]?.mL ?? 0;
  const volumes = Array.from({ length: 50 }, (_, k) => (k * (last + 3)) / 50);
  expect(
    diagnose(simulateReadings(phosphoric, { seed: 1, volumes }).readings, phosphoric).notes.join(),
  ).not.toContain('end before');
});

test('names the one reading that was written down wrongly', () => {
  const { readings } = simulateReadings(titration, { seed: 12 });
  const pH = readings.pH.map((each, k) => each + (k === 10 ? 0.5 : 0));
  const { verdict, sentence } = diagnose({ ...readings, pH }, titration);
  expect(verdict).toBe('unexplained');
  expect(sentence).toContain(`Most of that is reading 11, pH ${pH[10]?.toFixed(2)}`);
});

test('notes that drift is judged by the order of the rows', () => {
  const { readings } = simulateReadings(titration, { seed: 1, faults: [{ kind: 'probeDrift', pH: 0.25 }] });
  const upsideDown = { ...readings, mL: readings.mL.toReversed(), pH: readings.pH.toReversed() };
  expect(diagnose(upsideDown, titration).notes.join()).toContain('running totals rise');
});

test('takes a tolerance that is undefined as left out', () => {
  const { readings } = simulateReadings(titration, { seed: 1 });
  const options = { probeTolerance: { pH: undefined, percent: 2 } } as unknown as {
    probeTolerance: { percent: 2 };
  };
  expect({ ...diagnose(readings, titration, options) }).toEqual({ ...diagnose(readings, titration) });
});

// A reader found 10 to 14 of 100 sound runs of so few readings called faulty, where the floor of S/n was 0.01.
test.each([8, 10, 12, 15])('calls sound what is sound where there are %i readings only', (count) => {
  const volumes = Array.from({ length: count }, (_, k) => ((k + 0.5) * 30) / count);
  const verdicts = Array.from(
    { length: 40 },
    (_, seed) => diagnose(simulateReadings(titration, { seed, volumes }).readings, titration).verdict,
  );
  expect(verdicts.filter((verdict) => verdict === 'fault').length).toBeLessThanOrEqual(1);
});

test('a strength that is off has an uncertainty as large as its errors are, since the sample is known to 2 %', () => {
  const faults = [{ kind: 'titrantConcentration', ratio: 1.06 }] as const;
  const found = Array.from({ length: 20 }, (_, seed) => {
    const { explanations } = diagnose(simulateReadings(acetic, { seed, faults }).readings, acetic);
    return explanations.find(({ kind }) => kind === 'titrantConcentration')?.size;
  });
  for (const size of found) {
    if (!size) continue;
    expect(Math.abs(size.value - 1.06)).toBeLessThan(3 * (size.standardUncertainty ?? 0));
    expect(size.standardUncertainty).toBeLessThan(0.02);
  }
  expect(found.filter(Boolean).length).toBeGreaterThan(10);
});
