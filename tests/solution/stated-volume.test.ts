import { inspect } from 'node:util';
import {
  absorbCarbonDioxide,
  addWater,
  aliquot,
  bufferResponse,
  equilibrate,
  makeSolution,
  makeStock,
  makeUpTo,
  mix,
  type PouredSolution,
  pHOf,
  reagents,
  reserveOf,
  strongAdditionTo,
  titrate,
} from 'protolysis';
import * as exact from 'protolysis/exact';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const contents = [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }];
const titrant = makeSolution({ contents });
const sample = makeSolution({ mL: 20, contents });

/** What the compiler refuses, as plain JavaScript would give it. */
const unstated = titrant as unknown as PouredSolution;

describe('a solution made without a volume', () => {
  test.each<[string, () => unknown, string]>([
    ['titrated', () => titrate({ analyte: unstated, titrant }), 'analyte.mL'],
    ['mixed', () => mix(sample, unstated), 'solutions[1].mL'],
    ['diluted', () => addWater(unstated, { mL: 5 }), 'solution.mL'],
    ['made up to a mark', () => makeUpTo(unstated, { mL: 2000 }), 'solution.mL'],
    ['a buffer under drops', () => bufferResponse(unstated, { add: titrant, drops: 1 }), 'solution.mL'],
    ['a buffer to be exhausted', () => reserveOf(unstated), 'solution.mL'],
  ])('is refused where it is %s', (_, call, path) => {
    expect(listed(call)).toEqual([`missing ${path}`]);
    expect(call).toThrow(`${path} is not stated; give mL to makeSolution, since this volume counts.`);
  });

  test('is refused after a trip through JSON too', () => {
    const copy = JSON.parse(JSON.stringify(titrant));
    expect(listed(() => titrate({ analyte: copy, titrant }))).toEqual(['missing analyte.mL']);
  });

  test('serves the exact entry where its concentrations count, and is refused there where it is poured', () => {
    const exactly = unstated as unknown as exact.ExactSolution;
    expect(Number(exact.exactPH(exactly).pH)).toBeCloseTo(pHOf(titrant), 12);
    expect(
      listed(() => exact.exactTitration({ analyte: exactly, titrant: exactly }, { digits: 20 })),
    ).toEqual(['missing analyte.mL']);
    expect(listed(() => exact.mix(exactly))).toEqual(['missing solutions[0].mL']);
    expect(listed(() => exact.addWater(exactly, { mL: '5' }))).toEqual(['missing solution.mL']);
  });

  test('keeps that through what leaves its volume as it is', () => {
    const old = absorbCarbonDioxide(titrant, { share: 0.1 }) as PouredSolution;
    expect(listed(() => mix(old))).toEqual(['missing solutions[0].mL']);
    const added = strongAdditionTo(titrant, 7);
    if (added.status !== 'found') throw new Error(added.reason);
    expect(listed(() => mix(added.solution as PouredSolution))).toEqual(['missing solutions[0].mL']);
  });

  test('is what a bottle holds', () =>
    expect(
      listed(() =>
        mix(
          makeStock({
            reagent: reagents.hydrochloricAcid,
            massPercent: 37,
            density: 1.18,
          }) as unknown as PouredSolution,
        ),
      ),
    ).toEqual(['missing solutions[0].mL']));

  test('serves where its concentrations count, and an aliquot of it has a volume', () => {
    expect(pHOf(titrant)).toBe(pHOf(sample));
    expect(titrate({ analyte: aliquot(titrant, { mL: 20 }), titrant }).pHAt(0)).toBe(equilibrate(sample).pH);
  });

  test('takes no volume by hand, which would leave the amounts of a litre in it', () => {
    expect(listed(() => pHOf({ ...titrant, mL: 20 }))).toEqual(['conflict solution.mL']);
    expect(listed(() => pHOf({ ...sample, volume: 'guessed' } as never))).toEqual([
      'wrong-type solution.volume',
    ]);
  });

  test('is printed without one', () => {
    expect(inspect(titrant)).toBe('solution of no stated volume\n  sodium hydroxide 0.1 mol/L');
    expect(inspect(sample)).toBe('20 mL of solution\n  sodium hydroxide 0.1 mol/L (2 mmol)');
  });
});
