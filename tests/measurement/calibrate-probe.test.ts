import fc from 'fast-check';
import { pHStandards } from 'protolysis';
import { type CalibrationPoint, calibrateProbe, pHFromPotential, standardPH } from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const { phthalate, phosphateEqual, borax, phosphateBlood } = pHStandards;

/** What a meter shows with a probe of this slope, as a fraction, and offset in pH. */
const shownBy = (slope: number, offset: number, celsius = 25) =>
  [phthalate, phosphateEqual, borax].map(
    (standard): CalibrationPoint => ({
      standard,
      celsius,
      pH: 7 + offset + slope * (standardPH(standard, celsius) - 7),
    }),
  );

// A closed form: the points lie on the line that is looked for.
test('slope and offset of any probe are found from what it shows, whatever the temperature', () =>
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 1.5, noNaN: true }),
      fc.double({ min: -2, max: 2, noNaN: true }),
      fc.integer({ min: 0, max: 50 }),
      (slope, offset, celsius) => {
        const found = calibrateProbe(shownBy(slope, offset, celsius));
        expect(found.slope.value).toBeCloseTo(100 * slope, 9);
        expect(found.offset.value).toBeCloseTo(offset, 9);
        for (const residual of found.residuals) expect(residual).toBeCloseTo(0, 9);
      },
    ),
  ));

// R. P. Buck et al. (2002): k = 59.159 mV at 25 °C; to its last digit.
test('an ideal probe gives 59.159 mV per pH at 25 °C', () => {
  const k = 59.159;
  const points = [phthalate, borax].map((standard) => ({
    standard,
    celsius: 25,
    mV: -k * (standardPH(standard, 25) - 7),
  }));
  const { slope, offsetMV } = calibrateProbe(points);
  expect(Math.abs(slope.value - 100)).toBeLessThan((100 * 0.0005) / k);
  expect(offsetMV).toBeCloseTo(0, 9);
});

test('a potential means the pH of the standard it was read in', () => {
  const points = [phthalate, borax].map((standard, k) => ({
    standard,
    celsius: 30,
    mV: [170, -120][k] as number,
  }));
  const calibration = calibrateProbe(points);
  expect(pHFromPotential(calibration, 170, { celsius: 30 })).toBeCloseTo(standardPH(phthalate, 30), 12);
  expect(pHFromPotential(calibration, -120, { celsius: 30 })).toBeCloseTo(standardPH(borax, 30), 12);
});

test('with three standards the uncertainty is the scatter about the line, with two that of the standards', () => {
  const [low, middle, high] = shownBy(1, 0) as [CalibrationPoint, CalibrationPoint, CalibrationPoint];
  const three = calibrateProbe([low, { ...middle, pH: (middle.pH as number) + 0.03 }, high]);
  expect(three.slope.degreesOfFreedom).toBe(1);
  expect(three.residuals[1]).toBeGreaterThan(0.015);
  expect(three.residuals.reduce((sum, each) => sum + each, 0)).toBeCloseTo(0, 9);
  // 0.005·100/√(Δ²/2), Δ = 9.180 − 4.005
  const two = calibrateProbe([low, high]);
  expect(two.slope).toMatchObject({ degreesOfFreedom: null });
  expect(two.slope.standardUncertainty).toBeCloseTo((0.5 * Math.SQRT2) / (9.18 - 4.005), 9);
});

// Three readings that lie on a line by chance do not make three standards exact.
test('with three standards the uncertainty is no less than that of the standards', () => {
  const { slope, offset, residuals } = calibrateProbe(shownBy(1, 0));
  const at = [phthalate, phosphateEqual, borax].map((standard) => standardPH(standard, 25));
  const mean = at.reduce((sum, pH) => sum + pH, 0) / 3;
  const sxx = at.reduce((sum, pH) => sum + (pH - mean) ** 2, 0);
  expect(Math.max(...residuals.map(Math.abs))).toBeLessThan(1e-9);
  expect(slope.standardUncertainty).toBeCloseTo(0.5 / Math.sqrt(sxx), 9);
  expect(offset.standardUncertainty).toBeCloseTo(0.005 * Math.sqrt(1 / 3 + (7 - mean) ** 2 / sxx), 9);
  expect([slope.degreesOfFreedom, offset.degreesOfFreedom]).toEqual([null, null]);
});

describe('a warning in words', () => {
  const warningsOf = (points: readonly CalibrationPoint[], celsius?: number) =>
    calibrateProbe(points, celsius === undefined ? {} : { sample: { celsius } }).warnings;
  const [low, middle, high] = shownBy(1, 0) as [CalibrationPoint, CalibrationPoint, CalibrationPoint];

  test('none for a good probe', () => expect(warningsOf(shownBy(0.98, 0.1), 25)).toEqual([]));

  test.each<[string, readonly CalibrationPoint[], number | undefined]>([
    ['slope is 94.0 %', shownBy(0.94, 0), undefined],
    ['slope is 106.0 %', shownBy(1.06, 0), undefined],
    ['mV at pH 7', shownBy(1, 0.6), undefined],
    ['pH apart', [middle, { standard: phosphateBlood, celsius: 25, pH: 7.413 }], undefined],
    ['off the line', [low, { ...middle, pH: 6.97 }, high], undefined],
    ['standards were at', [low, { standard: borax, celsius: 30, pH: 9.139 }], undefined],
    ['sample is at 40 °C', [low, middle, high], 40],
  ])('%s', (words, points, celsius) => {
    const warnings = warningsOf(points, celsius);
    expect(warnings.filter((warning) => warning.includes(words))).toHaveLength(1);
  });
});

// 4.002 at 20 °C and 4.005 at 25 °C: a slope over 0.003 pH would be that of the errors.
test('one standard at two temperatures makes no line; beside another it may stand twice', () => {
  const at = (standard: typeof phthalate | typeof borax, celsius: number): CalibrationPoint => ({
    standard,
    celsius,
    pH: standardPH(standard, celsius),
  });
  expect(listed(() => calibrateProbe([at(phthalate, 20), at(phthalate, 25)]))).toEqual(['conflict points']);
  const copied = { ...at(borax, 0), standard: JSON.parse(JSON.stringify(borax)) as typeof borax };
  expect(listed(() => calibrateProbe([at(borax, 50), copied]))).toEqual(['conflict points']);
  const beside = calibrateProbe([at(phthalate, 20), at(phthalate, 25), at(borax, 25)]);
  expect(beside.slope.value).toBeCloseTo(100, 9);
});

test('one standard, one pH twice, or potentials that rise with the pH are refused', () => {
  const [low, , high] = shownBy(1, 0) as [CalibrationPoint, CalibrationPoint, CalibrationPoint];
  expect(listed(() => calibrateProbe([low]))).toEqual(['out-of-range points']);
  expect(listed(() => calibrateProbe([low, low]))).toEqual(['conflict points']);
  expect(
    listed(() =>
      calibrateProbe([
        { ...low, pH: 9 },
        { ...high, pH: 4 },
      ]),
    ),
  ).toEqual(['conflict points']);
});
