import { inspect } from 'node:util';
import {
  chooseIndicators,
  davies,
  equilibrate,
  indicators,
  makeSolution,
  prepareBuffer,
  prepareSolution,
  rankIndicators,
  reagents,
  titrate,
} from 'protolysis';
import { describe, expect, test } from 'vitest';

const analyte = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({ analyte, titrant, conditions: { activity: davies } });

describe('what a console of Node.js prints', () => {
  test('of a solution: its volume and contents', () =>
    expect(inspect(analyte)).toBe('20 mL of solution\n  sodium carbonate 0.05 mol/L (1 mmol)'));

  test('of water: its volume', () =>
    expect(inspect(makeSolution({ mL: 5, contents: [] }))).toBe('5 mL of water'));

  test('of an equilibrium: pH, the prevailing species and the notes', () => {
    const shown = inspect(equilibrate(analyte)).split('\n');
    expect(shown[0]).toMatch(/^pH 11\.\d{3}, ionic strength 0\.14\d+ mol\/L, buffer capacity /);
    expect(shown[1]).toBe('  Na⁺ 0.1 mol/L');
    expect(shown.length).toBeLessThan(12);
  });

  test('of a titration: its points in order, and the notes', () => {
    const shown = inspect(titration).split('\n');
    expect(shown[0]).toBe(
      'titration of 20 mL (sodium carbonate 0.05 mol/L) with hydrochloric acid 0.1 mol/L',
    );
    expect(shown[1]).toMatch(/^ {4}0\.00 mL {2}pH 11\.\d\d {2}start$/);
    expect(shown.slice(2, 6).map((line) => line.slice(2, 11).trim())).toEqual([
      '5.00 mL',
      '10.00 mL',
      '15.00 mL',
      '20.00 mL',
    ]);
    expect(shown.length).toBeLessThan(12);
  });

  test('of rankings: points, reasons and what was left out', () => {
    const list = [indicators.methylOrange, indicators.phenolphthalein, indicators.methylYellow];
    for (const ranking of [rankIndicators(titration, list), chooseIndicators(titration, list)]) {
      const shown = inspect(ranking);
      expect(shown).toContain('1. methyl orange: ');
      expect(shown).toContain('left out: methyl yellow (dimethyl yellow), since ');
      expect(shown.split('\n').length).toBeLessThan(12);
    }
  });

  test('of a recipe: its steps and cautions', () => {
    const recipe = prepareBuffer({
      pH: 4.7,
      molar: 0.1,
      mL: 100,
      from: [
        { reagent: reagents.aceticAcid, purity: 1 },
        { reagent: reagents.sodiumAcetate, purity: 1 },
      ],
    });
    expect(inspect(recipe)).toMatch(/^recipe for 100 mL\n {2}1\. /);
  });

  test('and of no recipe: why there is none', () => {
    const buffer = prepareBuffer({
      pH: 10,
      molar: 0.1,
      mL: 100,
      from: [reagents.sodiumAcetate, reagents.sodiumAcetateTrihydrate],
    });
    expect(inspect(buffer)).toMatch(/^no recipe \(out-of-reach\): these reach pH .* not 10: .*$/);
    const stock = makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumChloride, molar: 0.1 }] });
    const solution = prepareSolution({ from: stock, molar: 1, mL: 100 });
    expect(inspect(solution)).toMatch(/^no recipe \(too-dilute\): the stock has 0.1 mol\/L .*$/);
  });

  test('and the same as a text, in a browser too', () => {
    expect(`${analyte}`).toBe(inspect(analyte));
    expect(String(titration)).toBe(inspect(titration));
  });

  test('changes nothing else: JSON and keys are those of plain data', () => {
    const plain = JSON.parse(JSON.stringify(analyte));
    expect(analyte).toEqual(plain);
    expect(Object.keys(analyte)).toEqual(['mL', 'contents']);
    expect(structuredClone(analyte)).toEqual(plain);
  });
});
