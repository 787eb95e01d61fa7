import fc from 'fast-check';
import {
  aliquot,
  bufferResponse,
  makeSolution,
  mix,
  pHOf,
  type Reagent,
  reagents,
  type Solution,
} from 'protolysis';
import { expect, test } from 'vitest';
import { faultsOf } from '../faults-of.js';

const buffer = makeSolution({
  mL: 50,
  contents: [
    { reagent: reagents.aceticAcid, molar: 0.1 },
    { reagent: reagents.sodiumAcetate, molar: 0.1 },
  ],
});
const oneMolar = (reagent: Reagent): Solution => makeSolution({ contents: [{ reagent, molar: 1 }] });
const acid = oneMolar(reagents.hydrochloricAcid);
const base = oneMolar(reagents.sodiumHydroxide);

test('counts drops from none on, in running totals of the drop size', () => {
  expect(bufferResponse(buffer, { add: acid, drops: 3 }).mL).toEqual([0, 0.05, 0.1, 0.15]);
  expect(bufferResponse(buffer, { add: acid, drops: 2, dropSize: 0.04 }).mL).toEqual([0, 0.04, 0.08]);
});

test('drops add up: n drops one after the other are the same as their volume at once', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), fc.constantFrom(acid, base), (drops, add) => {
      const drop = aliquot(add, { mL: 0.05 });
      const oneByOne = mix(buffer, ...Array.from({ length: drops }, () => drop));
      const { pH } = bufferResponse(buffer, { add, drops });
      expect(pH[drops] as number).toBeCloseTo(pHOf(oneByOne), 10);
      const { pH: atOnce } = bufferResponse(buffer, { add, volumes: [drops * 0.05] });
      expect(atOnce[0] as number).toBeCloseTo(pH[drops] as number, 10);
    }),
    { numRuns: 60 },
  );
});

test('pH falls drop by drop with acid and rises with base, and water always moves further', () => {
  for (const [add, sign] of [
    [acid, -1],
    [base, 1],
  ] as const) {
    const { pH, water } = bufferResponse(buffer, { add, drops: 40 });
    for (let k = 1; k < pH.length; k += 1) {
      expect(sign * ((pH[k] as number) - (pH[k - 1] as number))).toBeGreaterThan(0);
      const [moved, waterMoved] = [pH, water].map((column) => (column[k] as number) - (column[0] as number));
      expect(Math.abs(waterMoved as number)).toBeGreaterThan(Math.abs(moved as number));
    }
  }
});

test('water is the strong acid alone, diluted', () => {
  const { water } = bufferResponse(buffer, { add: acid, drops: 1 });
  // 0.05 mmol in 50.05 mL: h² − c·h − Kw = 0
  const c = 0.05 / 50.05;
  expect(water[1]).toBeCloseTo(-Math.log10((c + Math.sqrt(c * c + 4 * 10 ** -13.995)) / 2), 12);
});

test('other liquids are shown in the volume of the buffer', () => {
  const carbonated = makeSolution({
    mL: 1000,
    contents: [{ reagent: reagents.carbonDioxide, molar: 1.4e-5 }],
  });
  const { beside, water } = bufferResponse(buffer, { add: base, drops: 1, beside: [carbonated] });
  const same = mix(aliquot(carbonated, { mL: 50 }), aliquot(base, { mL: 0.05 }));
  expect(beside[0]?.[0]).toBeCloseTo(5.6, 1); // 10^-4.85 mol/L of CO2: about what water in air holds
  expect(beside[0]?.[1]).toBeCloseTo(pHOf(same), 12);
  expect(beside[0]?.[1] as number).toBeLessThan(water[1] as number);
});

test('wants drops or volumes, and the drop size only beside drops', () => {
  expect(() => bufferResponse(buffer, { add: acid })).toThrow('one of drops and volumes');
  expect(() => bufferResponse(buffer, { add: acid, drops: 1, volumes: [1] })).toThrow('drops and volumes');
  expect(() => bufferResponse(buffer, { add: acid, volumes: [1], dropSize: 0.1 })).toThrow('dropSize');
});

test('a refusal says what was given: none of the two, or both', () => {
  expect(faultsOf(() => bufferResponse(buffer, { add: acid }))).toMatchObject([
    { path: 'addition', received: 'missing' },
  ]);
  expect(faultsOf(() => bufferResponse(buffer, { add: acid, drops: 1, volumes: [1] }))).toMatchObject([
    { path: 'addition', received: expect.stringContaining('drops and volumes') },
  ]);
});
