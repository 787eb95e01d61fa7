import fc from 'fast-check';
import { additionDefaults, makeSolution, planAdditions, reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const carbonate = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});
const acetic = titrate({
  analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
});

describe('a plan of additions', () => {
  // Common practice: additions of about 0.5 mL, 10 to 15 s of stirring before a reading.
  test('goes in half-millilitre steps where the curve is flat', () => {
    const { added } = planAdditions(carbonate);
    expect(additionDefaults.coarse).toBe(0.5);
    expect(added.slice(1, 20)).toEqual(Array.from({ length: 19 }, () => 0.5));
  });

  test('goes in single drops through the step of the curve, and says how steep it is', () => {
    const { mL, added, notes } = planAdditions(acetic);
    const atPoint = mL.findIndex((volume) => volume >= 20);
    expect(added[atPoint]).toBe(0.05);
    expect(notes[0]).toMatch(/^One addition of 0\.05 mL changes the pH by \d\.\d, at (19\.95|20\.0[05]) mL/);
  });

  test('counts readings, minutes and fillings of the burette', () => {
    const plan = planAdditions(acetic, {
      coarse: 1,
      fine: 1,
      upTo: 30,
      settle: 15,
      handling: 45,
      burette: 25,
    });
    expect(plan.readings).toBe(31);
    expect(plan.minutes).toBe((31 * 15 + 30 * 45) / 60);
    expect(plan.fillings).toBe(2);
    expect(plan.notes.at(-1)).toMatch(/^The burette of 25 mL is filled 2 times/);
    expect(planAdditions(acetic, { upTo: 25, burette: 25 }).fillings).toBe(1);
  });

  test('says where one filling would do', () => {
    const { notes } = planAdditions(acetic, { burette: 21 });
    expect(notes.at(-1)).toBe(
      'The burette of 21 mL is filled 2 times: write down its readings before and after, so that the totals go on. Up to 21 mL one filling does, and still passes the last equivalence point, at 20.00 mL.',
    );
    expect(planAdditions(acetic, { burette: 20 }).notes.at(-1)).toMatch(/so that the totals go on\.$/);
  });

  test('ends with the burette where that passes the last point by a tenth', () => {
    const plan = planAdditions(acetic, { burette: 22 });
    expect(plan.mL.at(-1)).toBe(22);
    expect(plan.fillings).toBe(1);
    expect(planAdditions(acetic, { burette: 21.9 }).mL.at(-1)).toBe(30);
    expect(planAdditions(acetic, { burette: 25, upTo: 28 }).mL.at(-1)).toBe(28);
  });

  test('is refused where the whole titration takes less than one fine addition', () => {
    const tiny = titrate({
      analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, mmol: 1e-3 }] }),
      titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 10 }] }),
    });
    expect(() => planAdditions(tiny)).toThrow('give no more than the titration takes, 0.00015 mL');
    expect(planAdditions(tiny, { fine: 1e-4, coarse: 1e-3 }).readings).toBeGreaterThan(1);
  });

  test('predicts the pH of the titration at each total', () => {
    const { mL, pH } = planAdditions(carbonate, { upTo: 30 });
    for (const [k, volume] of mL.entries()) expect(pH[k]).toBe(carbonate.pHAt(volume));
  });

  // One look after the other, from 50 000 fine additions down, would outlast the patience of the test.
  test('takes few looks at the curve for each addition, however fine', () => {
    const { readings } = planAdditions(carbonate, { coarse: 5, fine: 1e-4, maxStep: 0.05, upTo: 60 });
    expect(readings).toBeGreaterThan(50);
  });

  test('keeps every addition within its limits, and the totals are their sums', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(0.02, 0.05, 0.1),
        fc.integer({ min: 1, max: 20 }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        (fine, perCoarse, maxStep, upTo) => {
          const coarse = Number((fine * perCoarse).toPrecision(12));
          const { mL, added, pH } = planAdditions(acetic, { fine, coarse, maxStep, upTo });
          expect(mL[0]).toBe(0);
          expect(Math.abs((mL.at(-1) ?? 0) - upTo)).toBeLessThanOrEqual(fine / 2 + 1e-9);
          for (let k = 1; k < mL.length; k += 1) {
            const [before, now] = [mL[k - 1] ?? 0, mL[k] ?? 0];
            expect(now - before).toBeCloseTo(added[k] ?? 0, 9);
            expect(added[k]).toBeLessThanOrEqual(coarse);
            const change = Math.abs((pH[k] ?? 0) - (pH[k - 1] ?? 0));
            if ((added[k] ?? 0) > fine * 1.001) expect(change).toBeLessThanOrEqual(maxStep);
          }
        },
      ),
    ));

  test.each([
    [
      'coarse additions that are no whole number of fine ones',
      { coarse: 0.5, fine: 0.3 },
      ['conflict options.coarse'],
    ],
    [
      'more additions than a plan holds',
      { coarse: 0.001, fine: 0.001, upTo: 100 },
      ['out-of-range options.coarse'],
    ],
    ['an end before the first addition', { upTo: 0.02 }, ['conflict options.upTo']],
    ['a typing slip', { corase: 1 }, ['unknown-key options.corase']],
  ])('refuses %s', (_, options, faults) =>
    expect(listed(() => planAdditions(acetic, options as never))).toEqual(faults),
  );
});
