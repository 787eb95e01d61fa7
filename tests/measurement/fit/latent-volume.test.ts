import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beforeFirstDrop, nearestOn } from '../../../src/measurement/fit/latent-volume.js';

const u = { pH: 0.02, mL: 0.05 };

/** A step at 10 mL as of an equivalence point, at most 8 pH per mL. */
const step = (mL: number) => {
  const rise = Math.tanh((mL - 10) / 0.5);
  return { pH: 7 + 4 * rise, slope: (4 * (1 - rise * rise)) / 0.5 };
};

// The reading that lies d standard uncertainties from a point t of the curve, along its normal in units of u:
// y = f + d·u_pH²/w and x = t − d·f′·u_mL²/w with w = √(u_pH² + f′²·u_mL²), for which (1) is level at t and φ = d².
const besides = (t: number, d: number) => {
  const { pH, slope } = step(t);
  const w = Math.hypot(u.pH, slope * u.mL);
  return { mL: t - (d * slope * u.mL ** 2) / w, pH: pH + (d * u.pH ** 2) / w, w, slope };
};

describe('the nearest point of a curve', () => {
  test('is the one that the reading was made from, at its distance, on flat and on steep parts', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 7, max: 13, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (t, d) => {
          const { mL, pH, w, slope } = besides(t, d);
          const found = nearestOn(step, { mL, pH }, u);
          expect(Math.abs(found.mL - t)).toBeLessThan(1e-5 * u.mL); // ten times the last step
          expect(found.distance).toBeCloseTo(d, 8); // off by the square of that
          expect(found.perPH * w).toBeCloseTo(1, 3);
          expect(found.perML * w).toBeCloseTo(slope, 3);
        },
      ),
    ));

  test('of a straight line is the closed form of Orear, whatever the reading', () => {
    const line = (mL: number) => ({ pH: 3 + 0.7 * mL, slope: 0.7 });
    const w = Math.hypot(u.pH, 0.7 * u.mL);
    for (const [mL, pH] of [
      [5, 6.6],
      [5, 6.3],
      [2, 4.4],
    ] as const) {
      const d = (pH - 3 - 0.7 * mL) / w;
      const found = nearestOn(line, { mL, pH }, u);
      expect(found.distance).toBeCloseTo(d, 12);
      expect(found.mL).toBeCloseTo(mL + (d * 0.7 * u.mL ** 2) / w, 12);
      expect(found.pH).toBeCloseTo(3 + 0.7 * found.mL, 12);
    }
  });

  // φ at its least does not move with t, so differences of whole searches must give the derivatives at fixed t
  test('moves as perPH and perML say', () => {
    for (const t of [9, 9.6, 10, 10.3, 12]) {
      const { mL, pH } = besides(t, 1.5);
      const { perPH, perML } = nearestOn(step, { mL, pH }, u);
      const raised = (by: number) =>
        nearestOn((at) => ({ ...step(at), pH: step(at).pH + by }), { mL, pH }, u).distance;
      const read = (by: number) => nearestOn(step, { mL: mL + by, pH }, u).distance;
      const [h, k] = [1e-4 * u.pH, 1e-4 * u.mL];
      expect(((raised(h) - raised(-h)) / (2 * h)) * u.pH).toBeCloseTo(-perPH * u.pH, 4);
      expect(((read(k) - read(-k)) / (2 * k)) * u.mL).toBeCloseTo(-perML * u.mL, 4);
    }
  });
});

describe('before the first drop', () => {
  const rising = (mL: number) => ({ pH: 3 + mL, slope: 1 });

  test('nothing can have been delivered: a reading below the curve stays at zero, with both parts of φ', () => {
    const found = nearestOn(rising, { mL: 0.01, pH: 2.9 }, u);
    expect(found.mL).toBe(0);
    expect(found.distance).toBeCloseTo(-Math.hypot(0.1 / u.pH, 0.01 / u.mL), 12);
    expect(found.perPH).toBeCloseTo(0.1 / u.pH ** 2 / Math.abs(found.distance), 12);
    expect(found.perML).toBeCloseTo(0.01 / u.mL ** 2 / Math.abs(found.distance), 12);
  });

  test('a reading on the curve at zero is at no distance', () =>
    expect(nearestOn(rising, { mL: 0, pH: 3 }, u)).toMatchObject({ mL: 0, distance: 0 }));

  test('a volume of zero is sure, so only the pH counts', () =>
    expect(beforeFirstDrop({ pH: 3, slope: 40 }, 3.05, u)).toEqual({
      mL: 0,
      pH: 3,
      distance: expect.closeTo(2.5, 12),
      perPH: 50,
      perML: 0,
    }));
});
