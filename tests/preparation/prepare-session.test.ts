import fc from 'fast-check';
import { indicators, makeSolution, prepareSession, reagents, type SessionRequest } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const analyte = makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const buffer = makeSolution({ mL: 100, contents: [{ reagent: reagents.tris, molar: 0.05 }] });
const request: SessionRequest = {
  groups: 10,
  titrations: [{ setup: { analyte, titrant }, upTo: 35, runs: 2, indicator: indicators.methylOrange }],
  solutions: [{ solution: buffer, mL: 50 }],
};

describe('what a session needs', () => {
  test('is what every group and run needs, with the reserve', () => {
    const { solutions, reagents: needed, indicators: drops } = prepareSession(request);
    const expected: [string, number][] = [
      ['hydrochloric acid 0.1 mol/L', 10 * 2 * (35 + 15) * 1.2],
      ['Tris 0.05 mol/L', 10 * 50 * 1.2],
      ['sodium carbonate 0.05 mol/L', 10 * 2 * 25 * 1.2],
    ];
    expect(solutions.map(({ what }) => what)).toEqual(expected.map(([what]) => what));
    for (const [k, [, mL]] of expected.entries()) expect(solutions[k]?.mL).toBeCloseTo(mL, 9);
    expect(needed.find(({ id }) => id === 'sodiumCarbonate')?.grams).toBeCloseTo(600 * 0.05 * 0.1059875, 9);
    expect(drops).toEqual([{ name: 'methyl orange', drops: 48, mL: 48 * 0.05 }]);
  });

  test('doubles with the number of groups', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (groups, reserve) => {
          const [once, twice] = [groups, 2 * groups].map((n) =>
            prepareSession({ ...request, groups: n, reserve }),
          );
          for (const [k, { mL }] of (once?.solutions ?? []).entries())
            expect(twice?.solutions[k]?.mL).toBeCloseTo(2 * mL, 6);
          for (const [k, { mmol }] of (once?.reagents ?? []).entries())
            expect(twice?.reagents[k]?.mmol).toBeCloseTo(2 * mmol, 6);
          expect(twice?.waste.neutralise?.mmol).toBeCloseTo(2 * (once?.waste.neutralise?.mmol ?? 0), 6);
        },
      ),
      { numRuns: 20 },
    ));

  test('neutralises its waste: strong acid in excess takes as much strong base', () => {
    const { waste } = prepareSession({ groups: 1, reserve: 0, solutions: [{ solution: titrant, mL: 100 }] });
    expect(waste.pH).toBeCloseTo(1, 9);
    expect(waste.neutralise).toMatchObject({ name: 'sodium hydroxide' });
    expect(waste.neutralise?.mmol).toBeCloseTo(10, 4);
  });

  // The preparation room makes the titrant from the bottle: its words are not those of the dilute solution.
  test('cautions of the bottles and the indicators too, not of the dilute solutions alone', () => {
    const base = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
    const acid = makeSolution({ mL: 25, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
    const { cautions } = prepareSession({
      groups: 1,
      titrations: [
        { setup: { analyte: acid, titrant: base }, upTo: 35, indicator: indicators.phenolphthalein },
      ],
    });
    for (const words of [
      /^hydrochloric acid: Corrosive from 25 %.*fume cupboard\. Pour acid into water/,
      /^sodium hydroxide: Severely corrosive from 5 %/,
      /^phenolphthalein: .*candidate list/,
    ])
      expect(cautions).toContainEqual(expect.stringMatching(words));
    expect(cautions.at(-1)).toMatch(/supervisor/);
  });

  test('says in its text whole drops, a volume from the bottle to three digits and the neutraliser to two', () => {
    const { text } = prepareSession({ ...request, reserve: 0.11 });
    expect(text).toContain('methyl orange: 2.22 mL (45 drops)');
    expect(text).toMatch(/or about \d\d?\.\d\d? mL of 37 %/);
    expect(text).toMatch(/neutral with about \d\d mmol of /);
  });

  test('reads as text: what to make, from what, the waste and the cautions', () => {
    const { text } = prepareSession(request);
    expect(text.split('\n').slice(0, 2)).toEqual(['Make:', '  1200 mL of hydrochloric acid 0.1 mol/L']);
    expect(text).toMatch(/Waste: 2400 mL, about pH \d\.\d, neutral with about [\d.]+ mmol of /);
    expect(text).toMatch(/local rules/);
  });

  test.each([
    ['no group', { groups: 0 }, ['out-of-range groups']],
    [
      'more than any vessel',
      { groups: 10_000, solutions: [{ solution: buffer, mL: 1e5 }] },
      ['out-of-range groups'],
    ],
    ['nothing to do', { groups: 1, titrations: [], solutions: [] }, ['missing request']],
    ['a typing slip', { groups: 1, titration: [] }, ['unknown-key request.titration', 'missing request']],
  ])('refuses %s', (_, more, faults) => {
    const { titrations, solutions } = request;
    const asked = 'groups' in more && more.groups === 0 ? { titrations, solutions, ...more } : more;
    expect(listed(() => prepareSession(asked as never)).slice(0, 1)).toEqual(faults.slice(0, 1));
  });
});
