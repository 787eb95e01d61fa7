import * as fc from 'fast-check';
import { davies, indicators, makeSolution, reagents, titrate } from 'protolysis';
import { drawTitration } from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { ask } from '../../docs/try/ask.mjs';
import { newsOf } from '../../docs/try/news.mjs';
import { predict } from '../../docs/try/predict.mjs';

/** The fields as the page begins with them, with others in place of some. */
function fieldsWith(others: Record<string, string> = {}): FormData {
  const fields = new FormData();
  const first = {
    analyte: reagents.sodiumCarbonate.id,
    measure: 'grams',
    amount: '0.2',
    purity: '0.95',
    volume: '50',
    titrant: reagents.hydrochloricAcid.id,
    concentration: '0.1',
    indicator: indicators.bromocresolGreen.id,
    activity: 'ideal',
  };
  for (const [name, value] of Object.entries({ ...first, ...others })) fields.set(name, value);
  return fields;
}

const assay = titrate({
  analyte: makeSolution({
    mL: 50,
    contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }],
  }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});

describe('the page where one may try it', () => {
  test('begins with the titration of the invented powder', () => {
    const { asked } = ask(fieldsWith());
    expect(asked?.titration.equivalencePoints).toEqual(assay.equivalencePoints);
    expect(asked?.indicator).toEqual(indicators.bromocresolGreen);
  });

  test('takes a concentration in place of a mass, the Davies equation, and no indicator', () => {
    const { asked } = ask(
      fieldsWith({ measure: 'molar', amount: '0.04', activity: 'davies', indicator: '' }),
    );
    const real = titrate({
      analyte: makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.04 }] }),
      titrant: assay.setup.titrant,
      conditions: { activity: davies },
    });
    expect(asked?.titration.pHAt(10)).toBe(real.pHAt(10));
    expect(asked?.indicator).toBeNull();
  });

  test.each([
    ['amount', '-1', 'a mass in g, from 0 to 1e12'],
    ['amount', '', 'a mass in g, from 0 to 1e12'],
    ['amount', '0,2', 'a mass in g, from 0 to 1e12'],
    ['amount', '1000', 'a mass that stays below 60 mol/L in 50 mL'],
    ['purity', '95', 'a mass fraction, from 0 to 1'],
    ['volume', '0', 'a volume in mL, from 1e-9 to 1e9'],
    ['concentration', 'strong', 'a concentration in mol/L, from 0 to 60'],
  ])('says of the field %s that %j is wrong', (field, given, wanted) => {
    const { asked, faults } = ask(fieldsWith({ [field]: given }));
    expect(asked).toBeNull();
    expect(faults.map((fault) => [fault.field, fault.wanted])).toEqual([[field, wanted]]);
  });

  test('names every wrong field at once', () => {
    const { faults } = ask(fieldsWith({ volume: '-1', purity: '2', concentration: '' }));
    expect(faults.map(({ field }) => field).sort()).toEqual(['concentration', 'purity', 'volume']);
  });

  test('announces points and the colour to stop at', () => {
    const { asked } = ask(fieldsWith());
    if (!asked) throw new Error('nothing was asked');
    // The points are those of the README; bromocresol green is called at pH 4.6, the middle of its range.
    expect(newsOf(predict(asked))).toMatch(
      /^Equivalence at 17\.93 mL \(pH 8\.34\) and 35\.85 mL \(pH 4\.02\)\. With bromocresol green, stop at green, 35\.\d\d mL\.$/,
    );
  });

  test('has an answer, or a field at fault, for whatever is typed', () => {
    const text = fc.oneof(
      fc.constantFrom('', ' ', '0', '-0', '1e-9', '1e9', '60', '1e-300', '1e400', 'NaN', '0x10', '١', '<b>'),
      fc.double({ noNaN: true, min: -1, max: 100 }).map(String),
    );
    const idOf = (list: object) => fc.constantFrom(...Object.values(list).map(({ id }) => id as string));
    const typed = fc.record({
      analyte: idOf(reagents),
      measure: fc.constantFrom('grams', 'molar'),
      amount: text,
      purity: text,
      volume: text,
      titrant: idOf(reagents),
      concentration: text,
      indicator: fc.oneof(idOf(indicators), fc.constant('')),
      activity: fc.constantFrom('ideal', 'davies'),
    });
    fc.assert(
      fc.property(typed, (fields) => {
        const { asked, faults } = ask(fieldsWith(fields));
        if (asked === null) return faults.length > 0;
        drawTitration(asked.titration, { indicators: asked.indicator ? [asked.indicator] : [] });
        return newsOf(predict(asked)).length > 0;
      }),
      { numRuns: 200 },
    );
  });
});
