import { davies, makeSolution, reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { Faults } from '../../../src/input/faults.js';
import { chemistryAt, chemistryOf } from '../../../src/measurement/fit/chemistry.js';
import { readFitOptions } from '../../../src/measurement/fit/fit-options.js';
import { idealResponse } from '../../../src/measurement/fit/ideal-response.js';
import { realResponse } from '../../../src/measurement/fit/real-response.js';
import { emptyResponse } from '../../../src/measurement/fit/response.js';

const setup = {
  analyte: makeSolution({
    mL: 40,
    contents: [
      { reagent: reagents.sodiumCarbonate, mmol: 1 },
      { reagent: reagents.sodiumHydroxide, mmol: 0.3 },
      { reagent: reagents.disodiumHydrogenPhosphate, mmol: 0.5 },
    ],
  }),
  titrant: makeSolution({
    contents: [
      { reagent: reagents.hydrochloricAcid, molar: 0.1 },
      { reagent: reagents.aceticAcid, molar: 0.02 },
    ],
  }),
};
const free = [
  'sampleAmount',
  'titrantConcentration',
  'carbonDioxideInFlask',
  'carbonDioxideInTitrant',
  { amountOf: 'sodiumHydroxide' },
  { pKa: 'carbonic', step: 1 },
  { pKa: 'carbonic', step: 2 },
  { pKa: 'phosphoric', step: 2 },
  { pKa: 'acetic', step: 1 },
  'probeOffset',
] as const;

describe.each([{ law: 'ideal' }, { law: 'Davies' }])('the response, $law', ({ law }) => {
  const titration = titrate({ ...setup, conditions: law === 'ideal' ? {} : { activity: davies } });
  const how = readFitOptions({ titration, free }, 'options', new Faults('test'));
  const chemistry = chemistryOf(how.setup, how.parameters);
  const values = how.parameters.map(({ start }) => start + 0.001); // no amount at its limit
  const respond = (at: readonly number[]) =>
    (law === 'ideal' ? idealResponse : realResponse)(chemistry, chemistryAt(chemistry, at));
  const responseAt = (at: readonly number[], mL: number) => {
    const out = emptyResponse(free.length);
    respond(at)(mL, out, true);
    return out;
  };

  test('is the pH and slope of the titration at the start', () => {
    const start = how.parameters.map((parameter) => parameter.start);
    for (const mL of [0, 2, 8, 13.2, 20, 30]) {
      const { pH, slope } = responseAt(start, mL);
      expect(pH).toBeCloseTo(titration.pHAt(mL), 10); // both searches end at 1e-12
      expect(slope).toBeCloseTo(titration.slopeAt(mL), 8);
    }
  });

  // the difference of fourth order over ±h and ±2h is off by h⁴·f⁽⁵⁾/30 and by the roots' 1e-12/h
  const near = (found: number | undefined, difference: number) =>
    expect(Math.abs((found ?? Number.NaN) - difference)).toBeLessThan(1e-6 * (1 + Math.abs(difference)));

  test.each(free.map((parameter, j) => ({ parameter: JSON.stringify(parameter), j })))(
    'moves with $parameter as differences do',
    ({ j }) => {
      for (const mL of [0, 1, 4.4, 11, 19, 30]) {
        const moved = (by: number) =>
          responseAt(
            values.map((value, k) => value + (k === j ? by : 0)),
            mL,
          ).pH;
        const h = 1e-3 * Math.max(values[j] ?? 0, 1e-2);
        const difference = (8 * (moved(h) - moved(-h)) - (moved(2 * h) - moved(-2 * h))) / (12 * h);
        near(responseAt(values, mL).moves[j], difference);
      }
    },
  );
});
