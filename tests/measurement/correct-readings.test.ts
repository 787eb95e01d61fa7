import fc from 'fast-check';
import { pHStandards } from 'protolysis';
import { calibrateProbe, correctReadings, probeDrift } from 'protolysis/measurement';
import { expect, test } from 'vitest';

const { phthalate, borax } = pHStandards;
const calibration = (slope: number, offset: number) =>
  calibrateProbe(
    [phthalate, borax].map((standard) => ({
      standard,
      celsius: 25,
      pH: 7 + offset + slope * ((standard === phthalate ? 4.005 : 9.18) - 7),
    })),
  );

test('a drift that goes by time is taken out again', () =>
  fc.assert(
    fc.property(
      fc.tuple(fc.integer({ min: 90, max: 102 }), fc.integer({ min: 90, max: 102 })),
      fc.tuple(fc.integer({ min: -30, max: 30 }), fc.integer({ min: -30, max: 30 })),
      ([s0, s1], [o0, o1]) => {
        const seconds = [0, 10, 30, 100];
        const truth = [3, 4, 8, 11];
        const pH = truth.map((p, k) => {
          const share = (seconds[k] as number) / 100;
          return 7 + (o0 + share * (o1 - o0)) / 100 + ((s0 + share * (s1 - s0)) / 100) * (p - 7);
        });
        const corrected = correctReadings(
          { mL: [0, 1, 2, 3], pH, seconds, notes: ['mine'] },
          { before: calibration(s0 / 100, o0 / 100), after: calibration(s1 / 100, o1 / 100) },
        );
        corrected.pH.forEach((each, k) => {
          expect(each).toBeCloseTo(truth[k] as number, 9);
        });
        expect(corrected.seconds).toEqual(seconds);
        expect(corrected.notes[0]).toBe('mine');
      },
    ),
  ));

test('without times the drift goes by the number of the reading, and the note says so', () => {
  const readings = { mL: [0, 5, 6], pH: [4, 5, 6], notes: [] };
  const { pH, notes } = correctReadings(readings, { before: calibration(1, 0), after: calibration(1, 0.2) });
  expect(pH.map((each) => each.toFixed(6))).toEqual(['4.000000', '4.900000', '5.800000']);
  expect(notes.join()).toContain('number of reading');
});

test('a calibration that makes a pH off the scale is doubted', () => {
  const readings = { mL: [0, 1, 2], pH: [3, 7, 12], notes: [] };
  const { notes } = correctReadings(readings, { before: calibration(0.2, 0) });
  expect(notes[1]).toBe('2 of 3 lie outside -2 to 16 then: doubt the calibration.');
  expect(correctReadings(readings, { before: calibration(0.95, 0) }).notes).toHaveLength(1);
});

test('a drift at both ends of the scale: the worse end is named, and a small one needs nothing', () => {
  const drift = probeDrift(calibration(1, 0), calibration(0.96, 0.01));
  expect(drift.worst).toBeCloseTo(0.13, 9); // at pH 4; −0.11 at pH 10
  expect(drift.slope).toBeCloseTo(-4, 9);
  expect(drift.recalibrate).toBe(true);
  expect(probeDrift(calibration(1, 0), calibration(1, 0.04)).recalibrate).toBe(false);
  expect(probeDrift(calibration(1, 0), calibration(1, 0.04), { tolerance: 0.03 }).recalibrate).toBe(true);
});
