import fc from 'fast-check';
import { absorbCarbonDioxide, makeSolution, type Reagent, reagents, titrate } from 'protolysis';
import { type BenchFault, findEndpoints, readReadings, simulateReadings } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { benchFaultKinds } from '../../../src/measurement/practice/bench-effects.js';
import { faultsOf, listed } from '../../faults-of.js';
import reference from '../../reference/practice.json' with { type: 'json' };
import stored from './practice-data.json' with { type: 'json' };

const titrationOf = (reagent: Reagent, molar: number, titrant: Reagent) =>
  titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent, molar }] }),
    titrant: makeSolution({ contents: [{ reagent: titrant, molar: 0.1 }] }),
    conditions: { pKw: 14 },
  });

const strong = titrationOf(reagents.hydrochloricAcid, 0.1, reagents.sodiumHydroxide);
const ammonia = titrationOf(reagents.ammonia, 0.1, reagents.hydrochloricAcid);
const carbonate = titrationOf(reagents.sodiumCarbonate, 0.05, reagents.hydrochloricAcid);
const { volumes } = reference;
const quiet = { pH: 0, mL: 0 };

// By tests/reference/practice.py, from the closed form for a strong acid and a strong base, to the last digit shown.
test.each(reference.rows)('seed $seed with $faults gives the data that another language gives', (row) => {
  const faults = row.faults as BenchFault[];
  const { readings } = simulateReadings(strong, { seed: row.seed, volumes, noise: row.noise, faults });
  expect(readings.mL).toEqual(row.mL);
  expect(readings.pH).toEqual(row.pH);
});

test('each kind of fault that needs no carbon dioxide is among them', () => {
  const there = reference.rows.flatMap(({ faults }) => faults.map(({ kind }) => kind));
  expect(benchFaultKinds.filter((kind) => !there.includes(kind))).toEqual([
    'carbonDioxideInFlask',
    'carbonDioxideInTitrant',
  ]);
});

// practice-data.json holds what this package made when it was written; that it stays is the promise.
test('the data of a seed stay what they are', () => {
  const runs = [
    simulateReadings(carbonate, { seed: 17 }),
    simulateReadings(ammonia, {
      seed: 18,
      faults: [
        { kind: 'probeDrift', pH: 0.2 },
        { kind: 'carbonDioxideInFlask', molar: 0.005 },
      ],
    }),
  ];
  expect(runs.map(({ readings, key: { expected } }) => ({ readings, expected }))).toEqual(stored);
});

describe('without errors', () => {
  const pHsOf = (titration: typeof strong, faults: readonly BenchFault[] = []) =>
    simulateReadings(titration, { seed: 1, volumes, noise: quiet, faults }).readings.pH;
  const expectClose = (a: readonly number[], b: ArrayLike<number>) => {
    for (const [k, pH] of a.entries()) expect(Math.abs(pH - (b[k] as number))).toBeLessThan(0.000501); // rounded to 0.001
  };

  test('the readings are the curve', () => {
    for (const titration of [strong, ammonia, carbonate])
      expectClose(pHsOf(titration), titration.pHs(volumes));
  });

  test('carbon dioxide in the flask is that of a solution made with it', () => {
    const { analyte, titrant, conditions } = ammonia.setup;
    const mixed = makeSolution({
      mL: analyte.mL,
      contents: [...analyte.contents, { reagent: reagents.carbonDioxide, molar: 0.004 }],
    });
    const other = titrate({ analyte: mixed, titrant, ...(conditions ? { conditions } : {}) });
    expectClose(pHsOf(ammonia, [{ kind: 'carbonDioxideInFlask', molar: 0.004 }]), other.pHs(volumes));
  });

  // 2 OH⁻ + CO₂ → CO₃²⁻ + H₂O: of 0.1 mol/L, 8 % take up 0.004 mol/L.
  test('carbon dioxide in NaOH is what absorbCarbonDioxide makes of it', () => {
    const { analyte, titrant, conditions } = strong.setup;
    const old = absorbCarbonDioxide(titrant, { share: 0.08 });
    const other = titrate({ analyte, titrant: old, ...(conditions ? { conditions } : {}) });
    expectClose(pHsOf(strong, [{ kind: 'carbonDioxideInTitrant', molar: 0.004 }]), other.pHs(volumes));
  });

  test('a fault of no size, or out of reach, leaves no trace and is refused', () => {
    const none: BenchFault[] = [
      { kind: 'sampleAmount', ratio: 1 },
      { kind: 'titrantConcentration', ratio: 1 },
      { kind: 'carbonDioxideInFlask', molar: 0 },
      { kind: 'carbonDioxideInTitrant', molar: 0 },
      { kind: 'readTooSoon', wait: 20 },
      { kind: 'probeSlope', percent: 100 },
      { kind: 'probeOffset', pH: 0 },
      { kind: 'probeDrift', pH: 0 },
      { kind: 'airBubble', mL: 0, after: 3 },
      { kind: 'initialReading', mL: 0 },
      { kind: 'airBubble', mL: 1, after: 60 },
    ];
    const initial = { kind: 'initialReading', mL: 1 } as const; // beside one that shows
    for (const fault of none) {
      const faults = fault.kind === 'initialReading' ? [fault] : [fault, initial];
      const refused = faultsOf(() => simulateReadings(carbonate, { seed: 5, volumes, faults }));
      expect(refused.map(({ path, received }) => [path, received])).toEqual([
        ['options.faults', expect.stringContaining(fault.kind)],
      ]);
    }
  });

  test('carbon dioxide in a flask that keeps that of the air leaves no trace and is refused', () => {
    const open = titrate({ ...ammonia.setup, conditions: { carbonDioxide: { atm: 4.2e-4 } } });
    const faults = [{ kind: 'carbonDioxideInFlask', molar: 0.005 }] as const;
    expect(listed(() => simulateReadings(open, { seed: 5, volumes, faults }))).toEqual([
      'conflict options.faults',
    ]);
  });
});

test('faults act in one order, whatever the order in the list', () => {
  const faults: BenchFault[] = [
    { kind: 'carbonDioxideInFlask', molar: 0.003 },
    { kind: 'incrementsAsTotals' },
    { kind: 'sampleAmount', ratio: 0.9 },
    { kind: 'probeOffset', pH: 0.1 },
    { kind: 'probeSlope', percent: 90 },
    { kind: 'initialReading', mL: 2 },
  ];
  const backwards = [...faults].reverse();
  expect(simulateReadings(ammonia, { seed: 3, faults })).toEqual(
    simulateReadings(ammonia, { seed: 3, faults: backwards }),
  );
});

test('errors have the deviation that was asked for', () => {
  // In the flat buffer region of ammonia a volume hardly counts; 6000 readings give a deviation to 1 %, five of which are allowed.
  const flat = Array.from({ length: 300 }, (_, k) => 10 + k * 0.01);
  const truth = ammonia.pHs(flat);
  const errors = Array.from({ length: 20 }, (_, seed) =>
    simulateReadings(ammonia, { seed, volumes: flat, noise: { pH: 0.02, mL: 0 } }).readings.pH.map(
      (pH, k) => pH - (truth[k] as number),
    ),
  ).flat();
  const mean = errors.reduce((sum, e) => sum + e, 0) / errors.length;
  const deviation = Math.sqrt(errors.reduce((sum, e) => sum + (e - mean) ** 2, 0) / errors.length);
  expect(Math.abs(mean)).toBeLessThan((5 * 0.02) / Math.sqrt(errors.length));
  expect(Math.abs(deviation / 0.02 - 1)).toBeLessThan(0.05);
});

test('the same seed gives the same data, another one others, of the same truth', () =>
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 53 - 2 }), (seed) => {
      const [one, same, next] = [seed, seed, seed + 1].map((each) =>
        simulateReadings(strong, { seed: each, volumes }),
      ) as [Run, Run, Run];
      expect(same).toEqual(one);
      expect(next.readings.pH).not.toEqual(one.readings.pH);
      expect(next.key.expected).toEqual(one.key.expected);
    }),
    { numRuns: 30 },
  ));

type Run = ReturnType<typeof simulateReadings>;

test('sound readings lead to the end point of the key', () => {
  for (const titration of [strong, ammonia, carbonate])
    for (const seed of [1, 2, 3, 4, 5]) {
      const { readings, key } = simulateReadings(titration, { seed });
      const [found] = findEndpoints(readings, { method: 'steepestSlope' }).endpoints;
      expect(Math.abs((found?.mL ?? 0) - (key.expected.endpoints.at(-1) ?? 0))).toBeLessThan(0.1); // two drops
    }
});

test('readings come from one burette, or say from how many fillings', () => {
  const pool = titrationOf(reagents.sodiumCarbonate, 0.0733, reagents.hydrochloricAcid); // 36.65 mL to the last point
  const { readings } = simulateReadings(pool, { seed: 5 });
  expect(readings.mL.at(-1)).toBe(50);
  expect(readings.notes).toEqual(['Simulated readings, for practice.']);
  const much = simulateReadings(titrationOf(reagents.aceticAcid, 0.2, reagents.sodiumHydroxide), { seed: 5 });
  expect(much.readings.mL.at(-1)).toBe(75);
  expect(much.readings.notes[1]).toBe('Totals over 2 fillings of a burette of 50 mL.');
});

test('increments written as totals are what readReadings finds them to be', () => {
  const { readings } = simulateReadings(strong, { seed: 9, faults: [{ kind: 'incrementsAsTotals' }] });
  const { mL, pH } = readings;
  expect(readReadings({ mL, pH }).findings.map(({ code }) => code)).toContain('increments');
});

describe('the key', () => {
  const keyOf = (titration: typeof strong, faults: readonly BenchFault[]) =>
    simulateReadings(titration, { seed: 1, faults }).key;

  test('says what was in flask and burette', () => {
    const key = keyOf(strong, [
      { kind: 'sampleAmount', ratio: 0.9 },
      { kind: 'titrantConcentration', ratio: 1.1 },
    ]);
    expect(key.flask.contents[0]?.mmol).toBeCloseTo(2.25, 12);
    expect((key.burette.contents[0]?.mmol ?? 0) / key.burette.mL).toBeCloseTo(0.11, 12);
    expect(key.expected.mmol).toEqual({ hydrochloricAcid: 2.25 });
    expect(key.expected.endpoints[0]).toBeCloseTo(2.25 / 0.11, 6);
    expect(key.uncorrected.mmol.hydrochloricAcid).toBeCloseTo((2.25 / 0.11) * 0.1, 6);
  });

  test('has the end points as they are read beside those as they are', () => {
    expect(keyOf(carbonate, [{ kind: 'initialReading', mL: 1.2 }]).uncorrected).toEqual({
      endpoints: [13.7, 26.2],
      mmol: { sodiumCarbonate: 1.31 },
    });
    expect(keyOf(carbonate, [{ kind: 'airBubble', mL: 0.5, after: 20 }]).uncorrected.endpoints).toEqual([
      12.5, 25.5,
    ]);
    expect(keyOf(carbonate, [{ kind: 'incrementsAsTotals' }]).uncorrected).toEqual({
      endpoints: [],
      mmol: {},
    });
  });

  // Carbon dioxide in ammonia is carbonate, titrated to the end with it; in a strong acid it takes NaOH of its own.
  test('asks for the steepest of the end points that carbon dioxide makes', () => {
    const fault = { kind: 'carbonDioxideInFlask', molar: 0.005 } as const;
    expect(keyOf(ammonia, [fault]).expected.endpoints).toEqual([25]);
    expect(keyOf(strong, [fault]).expected.endpoints).toEqual([26.25]);
    expect(keyOf(strong, [fault]).uncorrected.mmol).toEqual({ hydrochloricAcid: 2.625 });
  });

  test('asks for no salt that takes no part', () => {
    const salted = titrate({
      analyte: makeSolution({
        mL: 25,
        contents: [
          { reagent: reagents.hydrochloricAcid, molar: 0.1 },
          { reagent: reagents.sodiumChloride, molar: 0.1 },
        ],
      }),
      titrant: strong.setup.titrant,
    });
    expect(Object.keys(keyOf(salted, []).expected.mmol)).toEqual(['hydrochloricAcid']);
  });
});

describe('refuses', () => {
  const refused = (options: object) => () => simulateReadings(strong, { seed: 1, ...options });

  test('a fault twice, a kind that there is not, a size too much or none', () => {
    const offset = { kind: 'probeOffset', pH: 0.1 };
    expect(listed(refused({ faults: [offset, offset] }))).toEqual(['conflict options.faults[1].kind']);
    expect(listed(refused({ faults: [{ kind: 'airbubble', mL: 1 }] }))).toEqual([
      'wrong-type options.faults[0].kind',
    ]);
    expect(listed(refused({ faults: [{ ...offset, mL: 1 }, { kind: 'probeDrift' }] }))).toEqual([
      'unknown-key options.faults[0].mL',
      'missing options.faults[1].pH',
    ]);
  });

  test('volumes that do not rise, and fewer than five', () =>
    expect(listed(refused({ volumes: [0, 1, 1, 2] }))).toEqual([
      'out-of-range options.volumes',
      'conflict options.volumes[2]',
    ]));

  test('an overshoot that leaves fewer than five readings', () => {
    const overshot = { volumes: [24.9, 25, 25.1, 25.2, 25.3], faults: [{ kind: 'overshoot', mL: 100 }] };
    expect(listed(refused(overshot))).toEqual(['conflict options.faults']);
  });

  test('nothing in the place of the noise', () =>
    expect(listed(refused({ noise: null }))).toEqual(['wrong-type options.noise']));

  test('what no meter shows', () => {
    const faults = [
      { kind: 'probeSlope', percent: 200 },
      { kind: 'probeDrift', pH: 5 },
    ];
    expect(listed(refused({ faults }))).toEqual(['conflict options.faults']);
  });

  test('a titrant stronger than any', () => {
    const { analyte } = strong.setup;
    const titrant = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 10 }] });
    const faults = [{ kind: 'titrantConcentration', ratio: 50 }] as const;
    const [fault] = faultsOf(() => simulateReadings(titrate({ analyte, titrant }), { seed: 1, faults }));
    expect(fault?.path).toBe('titration.setup with the faults.titrant.contents[0].mmol');
  });

  test('to overshoot where the volumes reach no end point, and to plan where there is too much to plan', () => {
    const faults = [{ kind: 'overshoot', mL: 1 }];
    expect(listed(refused({ faults, volumes: [0, 1, 2, 3, 4] }))).toEqual(['conflict options.faults']);
    const { titrant } = strong.setup;
    const vat = makeSolution({ mL: 1e6, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
    expect(listed(() => simulateReadings(titrate({ analyte: vat, titrant }), { seed: 1 }))).toEqual([
      'missing options.volumes',
    ]);
  });
});
