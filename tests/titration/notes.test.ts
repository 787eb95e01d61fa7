import { air, davies, makeSolution, reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { beaker, burette, titrationOf } from './beakers.js';

const { hydrochloricAcid, sodiumCarbonate, sodiumChloride, sodiumHydroxide } = reagents;
const escaped = 'Equivalence points count the carbon dioxide that has escaped as if it were still there.';

describe('the notes of a titration', () => {
  test.each([
    [0.1, 0.01, 'analyte acidic (pH 1.0), titrant acidic (pH 2.0)', hydrochloricAcid],
    [0.1, 0.01, 'analyte basic (pH 13.0), titrant basic (pH 12.0)', sodiumHydroxide],
    [0.1, 0.01, 'analyte neutral (pH 7.0), titrant neutral (pH 7.0)', sodiumChloride],
  ])('say why no step is done: %d mol/L with %d, %s', (molar, other, found, reagent) => {
    expect(titrationOf([[reagent, molar]], [[reagent, other]]).notes).toEqual([
      `No equivalence point: ${found}: no step is done.`,
    ]);
  });

  test('are none where there is nothing to say', () => {
    expect(titrationOf([[hydrochloricAcid, 0.1]], [[sodiumHydroxide, 0.1]]).notes).toEqual([]);
  });

  test('name the greatest ionic strength, here that of the start', () => {
    // 0.8 mol/L of salt and 0.1 of acid; the titrant only dilutes it
    const { notes } = titrate({
      analyte: makeSolution({
        mL: 20,
        contents: [
          { reagent: sodiumChloride, molar: 0.8 },
          { reagent: hydrochloricAcid, molar: 0.1 },
        ],
      }),
      titrant: burette([sodiumHydroxide, 0.1]),
      conditions: { activity: davies },
    });
    expect(notes).toEqual(['Davies (0.3 I): ionic strength 0.9 mol/L is beyond its range, up to 0.5 mol/L.']);
  });

  test('tell of carbon dioxide that escapes, where some does', () => {
    const notes = (share: number) =>
      titrate({
        analyte: beaker([sodiumCarbonate, 0.05]),
        titrant: burette([hydrochloricAcid, 0.1]),
        conditions: { carbonDioxide: { ...air, escape: share } },
      }).notes;
    expect(notes(0.5)).toContain(escaped);
    expect(notes(0)).not.toContain(escaped);
  });
});
