import { bufferResponse, capacityOver, makeSolution, reagents, rows, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });

describe('rows', () => {
  test('of a curve hold a point each', () => {
    const curve = titrate({ analyte, titrant }).curve({ every: 5, upTo: 20 });
    const points = rows(curve);
    expect(points).toHaveLength(5);
    expect(points[2]).toEqual({ mL: 10, pH: curve.pH[2], slope: curve.slope[2] });
  });

  test("of a buffer's response hold what was set beside it as a list", () => {
    const response = bufferResponse(analyte, { add: titrant, drops: 2, beside: [analyte] });
    const [first] = rows(response);
    expect(first).toEqual({ mL: 0, pH: response.pH[0], water: response.water[0], beside: [response.pH[0]] });
  });

  test('leave out notes, peaks and single values', () => {
    const capacity = capacityOver(analyte, { from: 5, to: 7, every: 1 });
    expect(capacity.peaks.length).toBeGreaterThan(0);
    expect(Object.keys(rows(capacity)[0] ?? {})).toEqual(['pH', 'capacity']);
  });

  test('take typed arrays, texts and nulls', () =>
    expect(rows({ mL: Float64Array.of(1, 2), of: ['a', null], share: 0.5 })).toEqual([
      { mL: 1, of: 'a' },
      { mL: 2, of: null },
    ]));

  test('of columns without a value are none', () => expect(rows({ mL: [], pH: [] })).toEqual([]));

  test.each([
    ['no object', null, ['wrong-type the argument']],
    ['no column', { mL: 5, notes: ['x'] }, ['missing the argument']],
    ['columns of two lengths', { mL: [1, 2], pH: [7] }, ['conflict pH']],
    ['inner columns of two lengths', { mL: [1], beside: [[1], [1, 2]] }, ['conflict beside']],
    ['values that are no cells', { mL: [{}], pH: [Number.NaN] }, ['wrong-type mL[0]', 'not-finite pH[0]']],
    ['a list beside a column in one', { beside: [[1], 2] }, ['wrong-type beside[1]', 'conflict beside']],
  ])('refuse %s', (_, table, faults) => expect(listed(() => rows(table as object))).toEqual(faults));
});
