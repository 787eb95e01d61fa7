import { type Reagent, reagents } from 'protolysis';
import { exactPH, exactTitration, makeSolution, mix } from 'protolysis/exact';
import { describe, expect, test } from 'vitest';

const { hydrochloricAcid, sodiumHydroxide, sodiumCarbonate, sodiumChloride } = reagents;
const single = (reagent: Reagent, molar: string, mL = '1000') =>
  makeSolution({ mL, contents: [{ reagent, molar }] });

describe('an exact titration', () => {
  const titration = exactTitration(
    { analyte: single(sodiumCarbonate, '0.05', '20'), titrant: single(hydrochloricAcid, '0.3') },
    { digits: 30 },
  );

  test('has equivalence volumes without an end as fractions', () => {
    expect(titration.equivalencePoints.map(({ mL }) => mL)).toEqual(['10/3', '20/3']);
  });

  test('takes such a fraction back', () => {
    const [first] = titration.equivalencePoints;
    expect(titration.pHAt('10/3').pH.toString()).toBe(first?.pH.toString());
    expect(titration.slopeAt('10/3').toString()).toBe(first?.slope.toString());
  });

  test('finds the volume of a pH that it gave for a volume, between its ends', () => {
    const { lower, upper } = titration.pHAt('4.25');
    expect(titration.volumeAt(upper)?.mL.lte('4.25')).toBe(true);
    expect(titration.volumeAt(lower)?.mL.gte('4.25')).toBe(true);
  });

  test('never reaches the pH of its titrant, nor what lies beyond, nor what lies before its start', () => {
    const { pH } = exactPH(single(hydrochloricAcid, '0.3'), { digits: 30 });
    expect(titration.volumeAt(pH.minus('1e-25'))).toBeNull();
    expect(titration.volumeAt('0.1')).toBeNull();
    expect(titration.volumeAt('12')).toBeNull();
  });

  test('has the slope that its pH has', () => {
    const step = '1e-12';
    const rise = titration.pHAt(`4.250000000001`).pH.minus(titration.pHAt(`4.249999999999`).pH);
    const slope = titration.slopeAt('4.25');
    // the third derivative times h² is what a central difference leaves: of the order of 1e-24
    expect(rise.div(2).div(step).div(slope).minus(1).abs().lt('1e-17')).toBe(true);
  });

  test('is flat where there is nothing to titrate', () => {
    const brine = single(sodiumChloride, '0.1');
    const flat = exactTitration({ analyte: brine, titrant: brine }, { digits: 10 });
    expect(flat.slopeAt('5').toString()).toBe('0');
    expect(flat.equivalencePoints).toEqual([]);
    expect(flat.volumeAt('7')).toBeNull();
  });

  test('refuses two reagents of one id', () => {
    const other = { ...hydrochloricAcid, ions: [] };
    expect(() =>
      exactTitration({ analyte: single(other, '0.1'), titrant: single(hydrochloricAcid, '0.1') }),
    ).toThrow('one make-up');
  });

  test('of a strong acid with a strong base crosses pKw/2 at equivalence', () => {
    const strong = exactTitration(
      {
        analyte: single(hydrochloricAcid, '0.1', '25'),
        titrant: single(sodiumHydroxide, '0.125'),
        conditions: { pKw: '14' },
      },
      { digits: 200 },
    );
    expect(strong.equivalencePoints.map(({ mL, pH }) => [mL, pH.toString()])).toEqual([['20', '7']]);
    expect(strong.volumeAt(7)?.mL.toString()).toBe('20');
  });

  test('has the pH of the mixture', () => {
    const { analyte } = titration.setup;
    const mixture = mix(analyte, single(hydrochloricAcid, '0.3', '2.5'));
    expect(titration.pHAt('2.5').pH.toString()).toBe(exactPH(mixture, { digits: 30 }).pH.toString());
  });
});
