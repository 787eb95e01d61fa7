import fc from 'fast-check';
import {
  acids,
  davies,
  debyeHuckelAt,
  equilibrate,
  makeSolution,
  type Protolyte,
  pHOf,
  pKaAt,
  pKHAt,
  pKwAt,
  reagents,
  waterAt25,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { ionProductAt, releasedPKw } from '../../src/equilibrium/temperature/pkw-at.js';
import { waterDensityAt } from '../../src/equilibrium/temperature/water-density.js';
import { waterPermittivityAt } from '../../src/equilibrium/temperature/water-permittivity.js';
import { doubles } from '../../src/solver/arithmetic.js';
import carbonate from '../reference/carbonate.json' with { type: 'json' };
import water from '../reference/water.json' with { type: 'json' };

const pairs = (xs: readonly number[], ys: readonly number[]) =>
  xs.map((x, k) => [x, ys[k] as number] as const);
const table = (name: string) => {
  const found = water.ionisation_constant.tables.find((own) => own.name.startsWith(name));
  return pairs(found?.t_C ?? [], found?.pKw ?? []);
};

describe('pKw', () => {
  test.each(water.ionisation_constant.equation_IAPWS.release_check_values)(
    'is the check value of IAPWS R11-07 at $T_K K and $rho_g_per_cm3 g/cm³',
    ({ T_K, rho_g_per_cm3, pKw }) => {
      expect(releasedPKw(doubles, T_K, rho_g_per_cm3)).toBeCloseTo(pKw, 6);
    },
  );

  test('is that of the CRC Handbook, web edition, to the printed digits', () => {
    // At 25 °C the equation gives 13.9945 and the table prints 13.995: half a unit, and the rounding of that.
    for (const [t, pKw] of table('CRC Handbook web'))
      expect(Math.abs(ionProductAt(t) - pKw)).toBeLessThanOrEqual(0.00055);
  });

  test('is near the measurements of Harned and Owen, 0 to 60 °C', () => {
    // The row of 24 °C, 14.000, does not lie on the table's own curve (14.03) and is left out.
    for (const [t, pKw] of table('Harned').filter(([own]) => own !== 24))
      expect(Math.abs(ionProductAt(t) - pKw)).toBeLessThanOrEqual(0.0035);
  });

  test('has one value at 25 °C, the printed one, and lies above the equation by the same difference elsewhere', () => {
    expect(pKwAt(25)).toBe(13.995);
    expect(waterAt25.pKw).toBe(13.995);
    for (const t of [0, 10, 60, 100])
      expect(pKwAt(t) - ionProductAt(t)).toBeCloseTo(13.995 - ionProductAt(25), 12);
  });

  test('is 13.995 by default at 25 °C, and moves from there as the equation does', () => {
    const neutral = makeSolution({ contents: [] });
    expect(equilibrate(neutral).conditions.pKw).toBe(13.995);
    expect(2 * pHOf(neutral, { celsius: 60 })).toBeCloseTo(pKwAt(60), 12);
    expect(pHOf(neutral, { celsius: 60, pKw: 14 })).toBeCloseTo(7, 12);
  });
});

test('density of water is that of Kell 1975', () => {
  for (const { t_C, Kell } of water.density.check_values)
    expect(waterDensityAt(doubles, t_C)).toBeCloseTo(Kell, 4);
  for (const { t_C, Tanaka } of water.density.check_values)
    if (Tanaka !== null) expect(Math.abs(waterDensityAt(doubles, t_C) - Tanaka)).toBeLessThan(0.0035); // two scales apart
});

test('permittivity of water is 78.30 at 25 °C (Malmberg & Maryott 1956, abstract)', () => {
  expect(waterPermittivityAt(doubles, 25)).toBeCloseTo(78.3, 2);
});

test('A is that of Robinson & Stokes, appendix 7.1, on the molar scale', () => {
  const printed = water.debye_huckel_parameters.published_tables.find(({ name }) =>
    name.startsWith('Robinson'),
  );
  // Their constants of nature differ from those of 2019 in the fourth digit of A: two units of it.
  for (const [t, A] of pairs(printed?.t_C ?? [], printed?.A ?? []))
    expect(
      Math.abs(debyeHuckelAt(t).A / Math.sqrt(waterDensityAt(doubles, t) / 1000) - A),
    ).toBeLessThanOrEqual(0.0002);
});

test('B is 0.3 % or less from that of Manov et al. 1943, whose permittivity is older', () => {
  const printed = water.debye_huckel_parameters.published_tables.find(({ name }) => name.startsWith('Manov'));
  for (const [t, B] of pairs(printed?.t_C ?? [], printed?.B_per_angstrom ?? []))
    expect(Math.abs(debyeHuckelAt(t).B / B - 1)).toBeLessThanOrEqual(0.003);
});

describe('carbonic acid', () => {
  const { t_C, log10_KH, log10_K1, log10_K2 } = carbonate.published_check_values;
  const at25 = pKaAt(acids.carbonic, 25);

  test('moves as K1 and K2 of Plummer & Busenberg 1982 do, to the printed digits', () => {
    for (const [k, t] of t_C.entries()) {
      const [first, second] = pKaAt(acids.carbonic, t) as [number, number];
      // Half a unit of the second decimal, and 0.001 between the catalogue and the equations at 25 °C.
      expect(Math.abs(first + (log10_K1[k] as number))).toBeLessThanOrEqual(0.0065);
      expect(Math.abs(second + (log10_K2[k] as number))).toBeLessThanOrEqual(0.0065);
      expect(Math.abs(pKHAt(t) + (log10_KH[k] as number))).toBeLessThanOrEqual(0.005);
    }
  });

  test.each(carbonate.check_values)('and to four digits of the equations themselves at $t_C °C', (row) => {
    const [first, second] = pKaAt(acids.carbonic, row.t_C) as [number, number];
    expect(pKHAt(row.t_C)).toBeCloseTo(-row.log10_KH, 4);
    expect(first - (at25[0] as number)).toBeCloseTo(-row.log10_K1 - 6.3519, 3);
    expect(second - (at25[1] as number)).toBeCloseTo(-row.log10_K2 - 10.3289, 3);
  });

  test('has at 25 °C the constants of the catalogue', () => {
    expect(at25).toEqual([6.351, 10.329]);
  });
});

describe('pKa(T)', () => {
  test('of Tris is that of Bates & Hetzer 1961 within 0.007 from 0 to 50 °C', () => {
    // J. Phys. Chem. 65, 667, read in the IUPAC Digitized pKa Dataset. dH and dCp are from another evaluation (0.007 between them).
    const printed = [8.85, 8.677, 8.516, 8.362, 8.214, 8.075, 7.934, 7.803, 7.677, 7.554, 7.436];
    for (const [k, pKa] of printed.entries())
      expect(Math.abs((pKaAt(acids.tris, 5 * k)[0] as number) - pKa)).toBeLessThanOrEqual(0.0075);
  });

  test('of MOPS and bicine is that of Roy et al. at 37 °C', () => {
    // J. Solution Chem. (1998) 7.044, (2006) 8.156; 0.004 between the evaluations, 0.001 at 25 °C.
    expect(Math.abs((pKaAt(acids.mops, 37)[0] as number) - 7.044)).toBeLessThanOrEqual(0.0045);
    expect(Math.abs((pKaAt(acids.bicine, 37).at(-1) as number) - 8.156)).toBeLessThanOrEqual(0.0045);
  });

  test('makes a Tris buffer lose 0.028 of pH per °C', () => {
    const buffer = makeSolution({
      contents: [
        { reagent: reagents.tris, molar: 0.05 },
        { reagent: reagents.trisHydrochloride, molar: 0.05 },
      ],
    });
    const slope =
      (pHOf(buffer, { celsius: 26, activity: davies }) - pHOf(buffer, { celsius: 24, activity: davies })) / 2;
    expect(slope).toBeCloseTo(-0.028, 3); // the figure of supplier tables, to its last digit
  });

  test('is continuous in temperature', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Protolyte>(...(Object.values(acids) as Protolyte[])),
        fc.double({ min: 0, max: 99.99, noNaN: true }),
        (protolyte, t) => {
          // No step in the catalogue moves by more than 0.1 per °C.
          for (const [k, pKa] of pKaAt(protolyte, t).entries())
            expect(Math.abs((pKaAt(protolyte, t + 0.001)[k] as number) - pKa)).toBeLessThan(1e-4);
        },
      ),
    );
  });

  test('is noted where it rests on nothing, or on data out of range', () => {
    const { notes } = equilibrate(
      makeSolution({ contents: [{ reagent: reagents.ascorbicAcid, molar: 0.1 }] }),
      { celsius: 40 },
    );
    expect(notes.join()).toMatch(/no enthalpy is given for step/);
    const hot = equilibrate(makeSolution({ contents: [{ reagent: reagents.tris, molar: 0.1 }] }), {
      celsius: 80,
    });
    expect(hot.notes.join()).toMatch(/80 °C is outside the range of the temperature data for step 1/);
    const usual = equilibrate(makeSolution({ contents: [{ reagent: reagents.ascorbicAcid, molar: 0.1 }] }));
    expect(usual.notes.join()).not.toMatch(/enthalpy/);
  });
});
