import {
  acids,
  air,
  davies,
  makeSolution,
  reagents,
  type Titration,
  type TitrationSetup,
  titrate,
} from 'protolysis';
import { type FitOptions, type FreeParameter, fitTitration, type TitrationFit } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../../src/measurement/statistics/random.js';
import { faultsOf } from '../../faults-of.js';

const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
const carbonate = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, mmol: 2 }] });
const acetic = makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol: 2.5 }] });

const steps = (upTo: number, count = 60) => Array.from({ length: count }, (_, k) => (upTo * k) / (count - 1));

/** What a perfect bench reads. */
const readingsOf = (titration: Pick<Titration, 'pHAt'>, mL: readonly number[]) => ({
  mL,
  pH: mL.map((volume) => titration.pHAt(volume)),
  notes: [],
});

const found = (fit: TitrationFit, free: FreeParameter) =>
  fit.parameters.find((parameter) => JSON.stringify(parameter.free) === JSON.stringify(free))?.value;

describe.each([
  { law: 'ideal', conditions: {} },
  { law: 'Davies', conditions: { activity: davies } },
  { law: 'open to the air', conditions: { carbonDioxide: air } },
])('fitTitration finds what was changed, $law', ({ law, conditions }) => {
  const open = law === 'open to the air';

  test('amount, probe and burette at once', () => {
    const meant = titrate({ analyte: acetic, titrant: base, conditions });
    const real = titrate({
      analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol: 2.4 }] }),
      titrant: base,
      conditions,
    });
    const mL = steps(35).map((volume) => volume + 0.3);
    const pH = mL.map((volume) => 7 + 0.97 * (real.pHAt(volume) - 7) + 0.05);
    const readings = { mL: mL.map((volume) => volume - 0.3), pH, notes: [] };
    // the first total is zero, and a total of zero is before the first drop: leave it out here
    const later = { ...readings, mL: readings.mL.slice(1), pH: pH.slice(1) };
    const free = ['sampleAmount', 'probeOffset', 'probeSlope', 'initialReading'] as const;
    const fit = fitTitration(later, { titration: meant, free });
    expect(fit.status).toBe('converged');
    // readings on the curve to 1e-9 of their uncertainty: parameters to about as much of theirs
    expect(found(fit, 'sampleAmount')).toBeCloseTo(2.4, 7);
    expect(found(fit, 'probeOffset')).toBeCloseTo(0.05, 7);
    expect(found(fit, 'probeSlope')).toBeCloseTo(97, 5);
    expect(found(fit, 'initialReading')).toBeCloseTo(-0.3, 6);
  });

  test('a drift, readings too soon and a bubble', () => {
    const titration = titrate({ analyte: acetic, titrant: base, conditions });
    const poured = steps(35);
    let before = titration.pHAt(0);
    const pH = poured.map((volume, k) => {
      before = 0.3 * before + 0.7 * titration.pHAt(volume);
      return before + 0.2 * (k / 59); // what drifts does not lag
    });
    const mL = poured.map((volume) => (volume > 8 ? volume + 0.4 : volume));
    const free = ['probeDrift', 'readTooSoon', { airBubbleAfter: 8 }] as const;
    const fit = fitTitration({ mL, pH, notes: [] }, { titration, free });
    expect(found(fit, 'probeDrift')).toBeCloseTo(0.2, 7);
    expect(found(fit, 'readTooSoon')).toBeCloseTo(0.3, 7);
    expect(found(fit, free[2])).toBeCloseTo(0.4, 6);
    expect(fit.equivalencePoints[0]?.mL).toBeCloseTo(25.4, 6);
  });

  test.each([
    { initial: -0.5, bubbles: [{ after: 24.8, mL: 0.3 }], point: 24.5 },
    {
      initial: 0,
      bubbles: [
        { after: 25.2, mL: 0.4 },
        { after: 10, mL: 0.5 },
      ],
      point: 25.9,
    },
    { initial: 0.5, bubbles: [{ after: 25.2, mL: 0.4 }], point: 25.9 },
  ])(
    'an equivalence point at $point mL as a total, by what was read until then',
    ({ initial, bubbles, point }) => {
      const titration = titrate({ analyte: acetic, titrant: base, conditions });
      const mL = steps(35).slice(1);
      const lost = (total: number) =>
        bubbles.reduce((sum, each) => (total > each.after ? sum + each.mL : sum), 0);
      const pH = mL.map((total) => titration.pHAt(total - initial - lost(total)));
      const free = [...bubbles.map(({ after }) => ({ airBubbleAfter: after })), 'initialReading' as const];
      const fit = fitTitration({ mL, pH, notes: [] }, { titration, free });
      expect(found(fit, 'initialReading')).toBeCloseTo(initial, 6);
      expect(fit.equivalencePoints[0]?.mL).toBeCloseTo(point, 6);
    },
  );

  test('one of two reagents in the flask, and the titrant', () => {
    const setup = (hydroxide: number, molar: number): TitrationSetup => ({
      analyte: makeSolution({
        mL: 50,
        contents: [
          { reagent: reagents.sodiumCarbonate, mmol: 1.5 },
          { reagent: reagents.sodiumHydroxide, mmol: hydroxide },
        ],
      }),
      titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar }] }),
      conditions,
    });
    const free = [{ amountOf: 'sodiumHydroxide' }, 'titrantConcentration'] as const;
    const readings = readingsOf(titrate(setup(0.62, 0.103)), steps(50));
    const fit = fitTitration(readings, { titration: titrate(setup(0.4, 0.1)), free });
    expect(found(fit, free[0])).toBeCloseTo(0.62, 7);
    expect(found(fit, free[1])).toBeCloseTo(0.103, 8);
  });

  test('a pKa', () => {
    const steps49 = acids.acetic.steps.map((step) => ({ ...step, pKa: 4.9 }));
    const weaker = {
      ...reagents.aceticAcid,
      protolytes: [{ protolyte: { ...acids.acetic, steps: steps49 }, count: 1 }],
    };
    const analyte = makeSolution({ mL: 25, contents: [{ reagent: weaker, mmol: 2.5 }] });
    const real = titrate({ analyte, titrant: base, conditions });
    const free = [{ pKa: 'acetic', step: 1 }] as const;
    const titration = titrate({ analyte: acetic, titrant: base, conditions });
    const fit = fitTitration(readingsOf(real, steps(35)), { titration, free });
    expect(found(fit, free[0])).toBeCloseTo(4.9, 8);
    expect(titrate(fit.setup).pHAt(12)).toBeCloseTo(real.pHAt(12), 8);
  });

  test.skipIf(open)('carbon dioxide in the flask and in the titrant', () => {
    const setup = (flask: number, titrant: number): TitrationSetup => ({
      analyte: makeSolution({
        mL: 50,
        contents: [
          { reagent: reagents.hydrochloricAcid, mmol: 2 },
          { reagent: reagents.carbonDioxide, mmol: flask },
        ],
      }),
      titrant: makeSolution({
        contents: [
          { reagent: reagents.sodiumHydroxide, molar: 0.1 },
          { reagent: reagents.carbonDioxide, molar: titrant },
        ],
      }),
      conditions,
    });
    const free = ['carbonDioxideInFlask', 'carbonDioxideInTitrant'] as const;
    const readings = readingsOf(titrate(setup(0.1, 0.004)), steps(30));
    const fit = fitTitration(readings, { titration: titrate(setup(0, 0)), free });
    expect(found(fit, free[0])).toBeCloseTo(0.1 / 50, 9);
    expect(found(fit, free[1])).toBeCloseTo(0.004, 8);
  });
});

describe('far from what was meant', () => {
  const meant = {
    acetic: { reagent: reagents.aceticAcid, by: base },
    carbonate: { reagent: reagents.sodiumCarbonate, by: acid },
  };
  const of = (what: keyof typeof meant, mmol: number) =>
    titrate({
      analyte: makeSolution({ mL: 25, contents: [{ reagent: meant[what].reagent, mmol }] }),
      titrant: meant[what].by,
    });
  const shown = (titration: Titration) => {
    const readings = readingsOf(
      titration,
      steps(1.3 * (titration.equivalencePoints.at(-1)?.mL ?? 0), 40).slice(1),
    );
    return { ...readings, pH: readings.pH.map((pH) => 7 + 0.98 * (pH - 7) + 0.05) };
  };

  test.each([
    ['acetic', 0.3],
    ['acetic', 3],
    ['acetic', 10],
    ['carbonate', 0.01],
    ['carbonate', 0.5],
    ['carbonate', 10],
  ] as const)('%s of %f times the amount is found beside slope and offset', (what, times) => {
    const free = ['sampleAmount', 'probeSlope', 'probeOffset'] as const;
    const fit = fitTitration(shown(of(what, 2.5 * times)), { titration: of(what, 2.5), free });
    expect(fit.status).toBe('converged');
    expect((found(fit, 'sampleAmount') ?? 0) / 2.5).toBeCloseTo(times, 7);
    expect(found(fit, 'probeOffset')).toBeCloseTo(0.05, 6);
    expect(fit.scatter).toBeLessThan(1e-6);
  });

  test('a fit three times as far from its readings as they are uncertain says so', () => {
    const titration = of('acetic', 2.5);
    const readings = shown(titration);
    const notesWith = (distance: number) => {
      const pH = readings.pH.map((each, k) => each + (k % 2 === 0 ? 1 : -1) * distance * 0.5);
      const free = ['sampleAmount', 'probeSlope', 'probeOffset'] as const;
      return fitTitration({ ...readings, pH }, { titration, free, uncertainty: { pH: 0.5, mL: 0.02 } }).notes;
    };
    expect(notesWith(2.5).join()).not.toContain('further from this curve');
    expect(notesWith(4).join()).toContain('further from this curve than their uncertainties allow');
  });

  test('a fit that stays far from its readings says so', () => {
    const { notes } = fitTitration(shown(of('acetic', 2.5)), {
      titration: of('carbonate', 2.5),
      free: ['sampleAmount'],
    });
    expect(notes.join()).toContain('further from this curve than their uncertainties allow');
  });
});

const noisy = (titration: Titration, upTo: number, seed: number, u = { pH: 0.01, mL: 0.02 }) => {
  const random = randomFrom(seed);
  const mL = steps(upTo);
  return {
    mL,
    pH: mL.map(
      (volume, k) =>
        titration.pHAt(k === 0 ? 0 : Math.max(0, volume + u.mL * random.normal())) + u.pH * random.normal(),
    ),
    notes: [],
  };
};

describe('what a fit says of itself', () => {
  const titration = titrate({ analyte: carbonate, titrant: acid });
  const readings = noisy(titration, 50, 3);
  const fit = fitTitration(readings, { titration, free: ['sampleAmount', 'probeOffset'] });

  test('equivalence points are those of the fitted set-up, and move with the amount', () => {
    const points = titrate(fit.setup).equivalencePoints;
    expect(fit.equivalencePoints.map(({ reaction }) => reaction)).toEqual(
      points.map(({ reaction }) => reaction),
    );
    for (const [k, { mL, estimate: ofPoint }] of fit.equivalencePoints.entries()) {
      expect(mL).toBeCloseTo(points[k]?.mL ?? 0, 9);
      // V ∝ amount, so both have one relative uncertainty
      const { estimate, value: mmol } = fit.parameters[0] as TitrationFit['parameters'][number];
      expect((ofPoint?.standardUncertainty ?? 0) / mL).toBeCloseTo(
        (estimate?.standardUncertainty ?? 0) / mmol,
        9,
      );
    }
  });

  test('totals that all read 1 mL more put the points and the initial reading 1 mL higher', () => {
    const fitFrom = (first: number) => {
      const mL = readings.mL.slice(1).map((volume) => volume + first);
      const free = ['sampleAmount', 'initialReading'] as const;
      return fitTitration({ mL, pH: readings.pH.slice(1), notes: [] }, { titration, free });
    };
    const [plain, late] = [fitFrom(0), fitFrom(1)];
    // one sum of squares in other variables: both searches end within a millionth of the standard uncertainties
    expect(found(late, 'initialReading')).toBeCloseTo((found(plain, 'initialReading') ?? 0) + 1, 7);
    expect(found(late, 'sampleAmount')).toBeCloseTo(found(plain, 'sampleAmount') ?? 0, 7);
    for (const [k, { mL }] of plain.equivalencePoints.entries())
      expect(late.equivalencePoints[k]?.mL).toBeCloseTo(mL + 1, 7);
  });

  test('distances are those of an ordinary weighted fit where the curve is level', () => {
    const k = 30; // between both points the curve is nearly level and straight
    const pH = titrate(fit.setup).pHAt(readings.mL[k] ?? 0) + (found(fit, 'probeOffset') ?? 0);
    const slope = titrate(fit.setup).slopeAt(readings.mL[k] ?? 0);
    const expected = ((readings.pH[k] ?? 0) - pH) / Math.hypot(0.01, 0.02 * slope);
    expect(fit.fitted.distance[k]).toBeCloseTo(expected, 3); // the curve bends by 1e-3 across a step
  });

  test('scatter and its degrees of freedom go into the uncertainty where it is estimated', () => {
    const known = fitTitration(readings, {
      titration,
      free: ['sampleAmount', 'probeOffset'],
      scatter: 'known',
    });
    const [a, b] = [fit.parameters[0]?.estimate, known.parameters[0]?.estimate];
    expect(a?.degreesOfFreedom).toBe(58);
    expect(b?.degreesOfFreedom).toBeNull();
    expect((a?.standardUncertainty ?? 0) / (b?.standardUncertainty ?? 1)).toBeCloseTo(fit.scatter, 10);
  });

  test('is plain data', () => expect(JSON.parse(JSON.stringify(fit))).toEqual({ ...fit }));

  test('names the parameters that these readings cannot tell apart', () => {
    const both = fitTitration(readings, { titration, free: ['sampleAmount', 'titrantConcentration'] });
    expect(both.inseparable).toEqual([['amount of sample', 'concentration of the titrant']]);
    expect(both.notes.join(' ')).toContain('can hardly tell one from another');
    expect(fit.inseparable).toEqual([]);
  });

  test('gives no uncertainty to what the readings do not determine', () => {
    const twice = fitTitration(readings, {
      titration,
      free: ['sampleAmount', { amountOf: 'sodiumCarbonate' }],
    });
    expect(twice.parameters.map(({ estimate }) => estimate)).toEqual([null, null]);
    expect(twice.notes).toContain('These readings do not determine this: amount of sample.');
  });

  test('gives none to what is less certain than its whole range', () => {
    const [mL, pH] = [
      [20, 20.001],
      [6.3, 6.3],
    ];
    const { parameters, notes } = fitTitration(
      { mL, pH, notes: [] },
      { titration, free: ['probeOffset', 'sampleAmount'], scatter: 'known' },
    );
    expect(parameters.map(({ estimate }) => estimate)).toContain(null);
    expect(notes.join()).toContain('These readings do not determine this: offset of the probe.');
  });

  test('prints no digits that are rounding alone', () => {
    const exact = fitTitration(readingsOf(titration, steps(50)), { titration, free: ['sampleAmount'] });
    expect(`${exact}`).toContain('\n  2.0000 mmol  amount of sample');
    expect(`${exact}`).not.toMatch(/\d{8}/);
  });

  test('says that copies of one reading show no scatter', () => {
    const copies = { mL: [5, 5], pH: [9.9, 9.9], notes: [] };
    const noted = (scatter: 'known' | 'estimated') =>
      fitTitration(copies, { titration, free: ['sampleAmount'], scatter }).notes.join();
    expect(noted('estimated')).toContain('on the curve without scatter');
    expect(noted('known')).not.toContain('scatter');
  });

  test('says where a parameter stands at its limit', () => {
    const less = titrate({
      analyte: makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumHydroxide, mmol: 2 }] }),
      titrant: acid,
    });
    const fitted = [1, 2, 3, 4, 5, 6].map((seed) =>
      fitTitration(noisy(less, 40, seed), {
        titration: less,
        free: ['carbonDioxideInFlask', 'sampleAmount'],
      }),
    );
    const atLimit = fitted.filter(({ parameters }) => parameters[0]?.atLimit);
    expect(atLimit.length).toBeGreaterThan(0); // no carbon dioxide there: half of them, or so
    for (const { parameters, notes, status } of atLimit) {
      expect(status).toBe('converged');
      expect(parameters[0]?.value).toBe(0);
      expect(notes.join(' ')).toContain('At the end of its range');
    }
  });

  test('has no equivalence point beyond what a titration holds', () => {
    const { reagent, mmol } = acid.contents[0] as (typeof acid.contents)[number];
    const faint = { ...reagent, ions: reagent.ions.map((each) => ({ ...each, count: 1e-231 })) };
    const setup = {
      analyte: titration.setup.analyte,
      titrant: { ...acid, contents: [{ reagent: faint, mmol }] },
    };
    const free = ['sampleAmount', 'probeOffset'] as const;
    expect(fitTitration(readings, { titration: { setup }, free }).equivalencePoints).toEqual([]);
  });

  test('says where the law of activity is beyond its range, as the titration does', () => {
    const strong = (mmol: number) =>
      titrate({
        analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol }] }),
        titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 5 }] }),
        conditions: { activity: davies },
      });
    const { notes } = fitTitration(readingsOf(strong(120), steps(30)), {
      titration: strong(125),
      free: ['sampleAmount'],
    });
    expect(notes.join(' ')).toMatch(
      /Davies \(0\.3 I\): ionic strength .* beyond its range, up to 0\.5 mol\/L/,
    );
    expect(fit.notes).toEqual([]);
  });

  test('sees by the runs that the model misses something', () => {
    const drifted = { ...readings, pH: readings.pH.map((pH, k) => pH + 0.002 * k) };
    const { runs, notes } = fitTitration(drifted, { titration, free: ['sampleAmount', 'probeOffset'] });
    expect(runs.probability).toBeLessThan(1e-3);
    expect(notes).toEqual([
      expect.stringMatching(/^The readings lie further from this curve/),
      expect.stringMatching(
        /^The readings lie in \d+ runs above and below the curve, where \d+ are expected: the model may miss/,
      ),
    ]);
    expect(fit.notes).toEqual([]);
    expect(fit.runs.probability).toBeGreaterThan(0.05);
  });
});

describe('scaling', () => {
  const titration = (factor: number) =>
    titrate({
      analyte: makeSolution({
        mL: 50 * factor,
        contents: [{ reagent: reagents.sodiumCarbonate, mmol: 2 * factor }],
      }),
      titrant: acid,
    });
  test('all volumes three times as large make a point three times as large', () => {
    const readings = noisy(titration(1), 50, 8);
    const free = ['sampleAmount', 'probeOffset'] as const;
    const small = fitTitration(readings, {
      titration: titration(1),
      free,
      uncertainty: { pH: 0.01, mL: 0.02 },
    });
    const large = fitTitration(
      { ...readings, mL: readings.mL.map((volume) => 3 * volume) },
      { titration: titration(3), free, uncertainty: { pH: 0.01, mL: 0.06 } },
    );
    for (const [k, { mL }] of small.equivalencePoints.entries())
      expect(large.equivalencePoints[k]?.mL).toBeCloseTo(3 * mL, 6);
  });
});

describe('fitTitration says what is wrong', () => {
  const titration = titrate({ analyte: carbonate, titrant: acid });
  const readings = readingsOf(titration, steps(50, 6));
  const faults = (options: unknown, given: unknown = readings) =>
    faultsOf(() => fitTitration(given as never, options as FitOptions)).map(({ path }) => path);

  test.each([
    { what: 'an unknown parameter', options: { free: ['amount'] }, path: 'options.free[0]' },
    { what: 'nothing free', options: { free: [] }, path: 'options.free' },
    { what: 'a parameter twice', options: { free: ['probeOffset', 'probeOffset'] }, path: 'options.free[1]' },
    {
      what: 'a reagent that is not there',
      options: { free: [{ amountOf: 'borax' }] },
      path: 'options.free[0].amountOf',
    },
    {
      what: 'an acid that is not there',
      options: { free: [{ pKa: 'acetic', step: 1 }] },
      path: 'options.free[0].pKa',
    },
    {
      what: 'two parameters in one',
      options: { free: [{ amountOf: 'sodiumCarbonate', pKa: 'carbonic', step: 1 }] },
      path: 'options.free[0].pKa',
    },
    {
      what: 'a step too many',
      options: { free: [{ pKa: 'carbonic', step: 3 }] },
      path: 'options.free[0].step',
    },
    {
      what: 'an uncertainty too small for the arithmetic',
      options: { free: ['probeOffset'], uncertainty: { pH: 1e-300, mL: 1 } },
      path: 'options.uncertainty.pH',
    },
    {
      what: 'no uncertainty',
      options: { free: ['probeOffset'], uncertainty: { pH: 0, mL: 1 } },
      path: 'options.uncertainty.pH',
    },
    {
      what: 'a scatter of another kind',
      options: { free: ['probeOffset'], scatter: 'no' },
      path: 'options.scatter',
    },
  ])('$what', ({ options, path }) => expect(faults({ titration, ...options })).toContain(path));

  test('names that there are none of, each once, and what a bubble needs', () => {
    const free = ['sampleAmount', 'airBubble', 'x'] as never;
    const listed = faultsOf(() => fitTitration(readings, { titration, free }));
    expect(listed.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'out-of-range options.free[1]',
      'out-of-range options.free[2]',
    ]);
    expect(listed[0]?.expected).toBe('{ airBubbleAfter: mL }, the volume at which it left');
  });

  test('too few readings', () => {
    const few = readingsOf(titration, [1, 2]);
    expect(faults({ titration, free: ['sampleAmount', 'probeOffset'] }, few)).toContain('readings.mL');
  });

  test('a titration that is boiled out, or gives off its gas, has no fit', () => {
    const boiled = titrate({ analyte: carbonate, titrant: acid, boilOut: { mL: 39 } });
    expect(faults({ titration: boiled, free: ['sampleAmount'] })).toContain(
      'options.titration.setup.boilOut',
    );
    const escaping = titrate({
      analyte: carbonate,
      titrant: acid,
      conditions: { carbonDioxide: { ...air, escape: 0.5 } },
    });
    expect(faults({ titration: escaping, free: ['sampleAmount'] })).toContain(
      'options.titration.setup.conditions.carbonDioxide.escape',
    );
  });

  test('no free carbon dioxide in a titration open to the air', () => {
    const open = titrate({ analyte: carbonate, titrant: acid, conditions: { carbonDioxide: air } });
    expect(faults({ titration: open, free: ['carbonDioxideInFlask'] })).toContain('options.free[0]');
    expect(() => fitTitration(readings, { titration: open, free: [{ pKa: 'carbonic', step: 1 }] })).toThrow(
      'a protolyte of fixed amount there: there is none.',
    );
  });
});
