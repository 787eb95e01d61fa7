import { davies, debyeHuckelExtended, equilibrate, makeSolution, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';

describe('pure water in 0.10 mol/L KCl', () => {
  // D. C. Harris, Quantitative Chemical Analysis, chapter on activity (from memory): γ(H+) 0.83, γ(OH-) 0.76, [H+] 1.26e-7, pH 6.98
  const brine = makeSolution({ contents: [{ reagent: reagents.potassiumChloride, molar: 0.1 }] });

  test('has pH 6.98 with ion sizes', () => {
    const { pH, species } = equilibrate(brine, { activity: debyeHuckelExtended, pKw: 14 });
    const gammaOf = (formula: string) => {
      const one = species.find((own) => own.formula === formula);
      return (one?.activity ?? 0) / (one?.molar ?? 1);
    };
    expect(pH).toBeCloseTo(6.98, 2);
    expect(gammaOf('H+')).toBeCloseTo(0.83, 2);
    expect(gammaOf('OH-')).toBeCloseTo(0.76, 2);
    expect(species[0]?.molar).toBeCloseTo(1.26e-7, 9);
  });

  test('has pH pKw/2 by Davies, which knows no sizes', () => {
    expect(equilibrate(brine, { activity: davies }).pH).toBeCloseTo(13.995 / 2, 12);
  });
});

test('0.05 mol/kg potassium hydrogen phthalate is near the recommended 4.005', () => {
  // J. I. Partanen, P. O. Minkkinen, J. Chem. Eng. Data 42, 805 (1997): calculated 4.003, recommended 4.005. Ours by Davies
  // may differ by what pH standards allow, 0.01 of a pKa and of a coefficient.
  const standard = makeSolution({
    contents: [{ reagent: reagents.potassiumHydrogenPhthalate, molar: 0.05 }],
  });
  expect(Math.abs(equilibrate(standard, { activity: davies }).pH - 4.005)).toBeLessThan(0.014);
});

test('0.05 mol/L Tris set to pH 7.20 at 25 °C is 7.76 at 5 °C and 6.91 at 37 °C', () => {
  // A supplier's buffer table, read to two decimals. pKa measured by Bates & Hetzer (1961) moves by 0.602 and −0.322 on the
  // way, the table by 0.56 and −0.29: the table itself is 0.042 and 0.032 off, and half a unit of its last digit comes on top.
  const at = (molar: number, celsius: number) =>
    equilibrate(
      makeSolution({
        contents: [
          { reagent: reagents.tris, molar: 0.05 },
          { reagent: reagents.hydrochloricAcid, molar },
        ],
      }),
      { celsius, activity: davies },
    ).pH;
  let [low, high] = [0, 0.05];
  for (let pass = 0; pass < 60; pass += 1) {
    const middle = (low + high) / 2;
    if (at(middle, 25) > 7.2) low = middle;
    else high = middle;
  }
  expect(Math.abs(at(low, 5) - 7.76)).toBeLessThanOrEqual(0.047);
  expect(Math.abs(at(low, 37) - 6.91)).toBeLessThanOrEqual(0.037);
});
