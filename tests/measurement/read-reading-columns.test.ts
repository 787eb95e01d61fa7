import { makeSolution, reagents, titrate } from 'protolysis';
import { diagnose, fitTitration, readReadings, simulateReadings } from 'protolysis/measurement';
import { expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const titration = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});

// the slip most often made: the report, or practice data with their key, in the place of the readings in it
test('tells one who gave what holds the readings to give the readings', () => {
  const report = readReadings('mL,pH\n0,11.4\n5,10.5\n10,9.9\n15,6.5\n20,6\n25,4\n30,2\n35,1.9\n40,1.8');
  const practice = simulateReadings(titration, { seed: 1 });
  for (const given of [report, practice] as unknown as Parameters<typeof diagnose>[0][]) {
    expect(listed(() => diagnose(given, titration))).toEqual(['wrong-type readings']);
    expect(listed(() => fitTitration(given, { titration, free: ['sampleAmount'] }))).toEqual([
      'wrong-type readings',
    ]);
    expect(() => diagnose(given, titration)).toThrow('give its readings: readings holds { readings }');
  }
});
