import fc from 'fast-check';
import { aliquot, type Solution, type Titration, titrate, waterAt25 } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith, strongIon } from '../make.js';
import { beaker, burette } from '../titration/beakers.js';
import {
  type Composition,
  decades,
  handbook,
  handbookCompositions,
  solutionOf,
  titrations,
  toleranceOf,
} from './compositions.js';

const { pKw } = waterAt25;
const toleranceAt = (titration: Titration, mL: number) => toleranceOf(titration.equilibriumAt(mL));

const mirrored = ({ acids, strongMolar }: Composition): Composition => ({
  acids: acids.map(({ acid: { name, topCharge, pKa }, molar }) => ({
    acid: { name, topCharge: pKa.length - topCharge, pKa: pKa.map((value) => pKw - value).reverse() },
    molar,
  })),
  strongMolar: -strongMolar,
});

describe('any titration of the handbook’s acids', () => {
  test('moves from the pH of the analyte towards that of the titrant, and never back', () => {
    fc.assert(
      fc.property(titrations, fc.array(decades(-3, 3), { minLength: 2, maxLength: 8 }), (setup, volumes) => {
        const titration = titrate(setup);
        const way = Math.sign(titration.pHAt(1e9) - titration.pHAt(0));
        const sorted = [0, ...volumes.sort((a, b) => a - b)];
        for (let k = 1; k < sorted.length; k += 1) {
          const [from, to] = [sorted[k - 1] as number, sorted[k] as number];
          const rise = way * (titration.pHAt(to) - titration.pHAt(from));
          expect(rise).toBeGreaterThanOrEqual(-toleranceAt(titration, from) - toleranceAt(titration, to));
        }
      }),
      { numRuns: 100 },
    );
  });

  test('is the same curve with all volumes scaled, and its slope is scaled down', () => {
    fc.assert(
      fc.property(titrations, decades(-2, 4), decades(-2, 2), ({ analyte, titrant }, scale, mL) => {
        const titration = titrate({ analyte, titrant });
        const large = titrate({ analyte: aliquot(analyte, { mL: analyte.mL * scale }), titrant });
        const tolerance = 2 * toleranceAt(titration, mL);
        expect(Math.abs(large.pHAt(mL * scale) - titration.pHAt(mL))).toBeLessThanOrEqual(tolerance);
        const [one, other] = [titration.slopeAt(mL), large.slopeAt(mL * scale) * scale];
        expect(Math.abs(other - one)).toBeLessThanOrEqual(slopeTolerance(titration, mL));
      }),
      { numRuns: 100 },
    );
  });

  test('mirrored, acid for base, has pKw − pH and the slope turned round, with the same volumes', () => {
    fc.assert(
      fc.property(handbookCompositions, handbookCompositions, decades(-1, 2), (one, other, mL) => {
        const [analyte, titrant] = [solutionOf(one, 20), solutionOf(other, 1000)];
        const titration = titrate({ analyte, titrant });
        const mirror = titrate({
          analyte: solutionOf(mirrored(one), 20),
          titrant: solutionOf(mirrored(other), 1000),
        });
        const tolerance = 2 * toleranceAt(titration, mL);
        expect(Math.abs(pKw - mirror.pHAt(mL) - titration.pHAt(mL))).toBeLessThanOrEqual(tolerance);
        expect(Math.abs(mirror.slopeAt(mL) + titration.slopeAt(mL))).toBeLessThanOrEqual(
          slopeTolerance(titration, mL),
        );
      }),
      { numRuns: 100 },
    );
  });

  test('volumeAt(pHAt(V)) is V within conditioning', () => {
    fc.assert(
      fc.property(titrations, decades(-2, 3), (setup, mL) => {
        const titration = titrate(setup);
        // an error of pH moves the volume by that over the slope; V itself is rounded a few times
        const tolerance =
          (2 * toleranceAt(titration, mL)) / Math.abs(titration.slopeAt(mL)) + 8 * 2 ** -52 * mL;
        fc.pre(tolerance < mL / 2); // on a flat curve the pH does not tell the volume
        expect(Math.abs((titration.volumeAt(titration.pHAt(mL)) ?? Number.NaN) - mL)).toBeLessThanOrEqual(
          tolerance,
        );
      }),
      { numRuns: 300 },
    );
  });

  test('has the slope that an eighth-order difference of pHAt has', () => {
    let compared = 0;
    fc.assert(
      fc.property(titrations, decades(-1, 2), (setup, mL) => {
        const titration = titrate(setup);
        const slope = titration.slopeAt(mL);
        const tolerance = Math.max(...[-4, 0, 4].map((k) => toleranceAt(titration, mL + (k * mL) / 64)));
        let step = mL / 64;
        const move = () =>
          Math.abs(titration.pHAt(mL + 4 * step) - titration.pHAt(mL)) +
          Math.abs(titration.pHAt(mL - 4 * step) - titration.pHAt(mL));
        while (move() > 0.1) step /= 2;
        const difference = [4 / 5, -1 / 5, 4 / 105, -1 / 280].reduce(
          (sum, weight, k) =>
            sum + weight * (titration.pHAt(mL + (k + 1) * step) - titration.pHAt(mL - (k + 1) * step)),
          0,
        );
        // V(pH) is analytic within π/ln 10 = 1.36 of the real line, where the first 1 + h/K can vanish. Nine points within
        // 0.1 leave out (0.1/1.36)⁸ = 9e-10 of the slope times a factor of order 1, 10 to be safe; where an unbuffered
        // analyte makes V itself the scale, (1/16)⁸.
        const truncation = 1e-8 * Math.abs(slope);
        const noise = (4 * tolerance) / step;
        expect(Math.abs(difference / step - slope)).toBeLessThanOrEqual(truncation + noise);
        if (noise < 1e-4 * Math.abs(slope)) compared += 1;
      }),
      { numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(100); // half of them at least tell more than their noise
  });

  test('pHs of many volumes, each from the last one’s answer, are those found cold', () => {
    fc.assert(
      fc.property(titrations, fc.array(decades(-3, 3), { minLength: 1, maxLength: 20 }), (setup, volumes) => {
        const titration = titrate(setup);
        for (const [k, pH] of titration.pHs(volumes).entries()) {
          const mL = volumes[k] as number;
          expect(Math.abs(pH - titration.pHAt(mL))).toBeLessThanOrEqual(2 * toleranceAt(titration, mL));
        }
      }),
      { numRuns: 50 },
    );
  });

  test('an adaptive curve keeps its step, and its volumes rise', () => {
    fc.assert(
      fc.property(titrations, decades(-1.5, 0.5), decades(0, 2), (setup, maxStep, upTo) => {
        const { mL, pH } = titrate(setup).curve({ maxStep, upTo });
        for (let k = 1; k < mL.length; k += 1) {
          expect(Math.abs((pH[k] as number) - (pH[k - 1] as number))).toBeLessThanOrEqual(
            maxStep * (1 + 1e-9),
          );
          expect(mL[k] as number).toBeGreaterThan(mL[k - 1] as number);
        }
      }),
      { numRuns: 100 },
    );
  });
});

/** A slope is T/(ln10·∂F/∂ln h): its relative error is that of h times the number of protons, and of T. */
function slopeTolerance(titration: Titration, mL: number): number {
  const at = titration.equilibriumAt(mL);
  const protons = 16 * Math.LN10 * toleranceOf(at);
  const titrant = titration.setup.titrant;
  const most = titrant.contents.reduce(
    (sum, { reagent, mmol }) =>
      sum +
      (mmol / titrant.mL) *
        Math.max(
          ...reagent.ions.map(({ ion }) => Math.abs(ion.charge)),
          ...reagent.protolytes.map(({ protolyte }) => protolyte.steps.length + 4),
        ),
    10 ** -at.pH + 10 ** (at.pH - pKw),
  );
  const perCharge = 1 / (at.bufferCapacity * at.solution.mL);
  return protons * most * perCharge;
}

describe('equivalence volumes of one acid', () => {
  const base = strongIon('Na+', 1);
  const acid = strongIon('Cl-', -1);
  const volumes = (analyte: Solution, titrant: Solution) => {
    const { equivalencePoints, halfEquivalencePoints } = titrate({ analyte, titrant });
    return [equivalencePoints, halfEquivalencePoints].map((points) => points.map(({ mL }) => mL));
  };

  test('do not depend on its pKa', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...handbook),
        fc.array(fc.double({ min: -10, max: 20, noNaN: true }), { minLength: 6, maxLength: 6 }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.boolean(),
        ({ topCharge, pKa }, others, strong, withBase) => {
          const titrant = burette([withBase ? base : acid, 0.1]);
          const ofAcid = (own: readonly number[]) =>
            volumes(
              beaker(
                [acidWith('a', topCharge, own).reagent, 0.1],
                [strong < 0 ? acid : base, Math.abs(strong) * 0.1],
              ),
              titrant,
            );
          expect(ofAcid(others.slice(0, pKa.length))).toEqual(ofAcid(pKa));
        },
      ),
      { numRuns: 200 },
    );
  });
});
