import { pHStandards } from 'protolysis';
import { standardPH } from 'protolysis/measurement';
import { expect, test } from 'vitest';
import { faultsOf } from '../faults-of.js';

test('the pH of a standard at a temperature of its table is the one printed there', () => {
  for (const standard of Object.values(pHStandards))
    for (const [k, t] of standard.celsius.entries())
      expect(standardPH(standard, t)).toBeCloseTo(standard.pH[k] as number, 12);
});

test('between two temperatures it lies on the line between them', () =>
  expect(standardPH(pHStandards.phosphateEqual, 22.5)).toBeCloseTo((6.881 + 6.865) / 2, 12));

test('outside its table a standard has no pH', () => {
  const [fault] = faultsOf(() => standardPH(pHStandards.phthalate, 51));
  expect(fault).toMatchObject({ path: 'celsius', code: 'out-of-range' });
  expect(fault?.expected).toContain('from 0 to 50');
});
