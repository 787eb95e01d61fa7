import {
  acids,
  equilibrate,
  makeSolution,
  molarOf,
  pHOf,
  reagents,
  type Solution,
  waterAt25,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { throughJSON } from '../json.js';
import { acidWith, strongIon } from '../make.js';

const { aceticAcid, sodiumAcetate, sodiumHydrogenCarbonate, sodiumChloride } = reagents;
const buffer = makeSolution({
  mL: 50,
  contents: [
    { reagent: aceticAcid, molar: 0.1 },
    { reagent: sodiumAcetate, molar: 0.3 },
  ],
});

describe('pure water', () => {
  const water = equilibrate(makeSolution({ contents: [] }));

  test('is at pKw/2', () => {
    expect(Math.abs(water.pH - waterAt25.pKw / 2)).toBeLessThanOrEqual(4 * 2 ** -52 * 7);
  });

  test('holds H+ and OH- alone, of zero charge in all', () => {
    expect(water.species.map(({ formula }) => formula)).toEqual(['H+', 'OH-']);
    expect(Math.abs(water.chargeImbalance)).toBeLessThanOrEqual(2 ** -52 * 1e-7);
  });

  test('has the pKw that it is given', () => {
    expect(pHOf(makeSolution({ contents: [] }), { pKw: 13 })).toBe(6.5);
  });
});

describe('an equilibrium', () => {
  const at = equilibrate(buffer);

  test('lists H+, OH-, every form of every protolyte and every strong ion', () => {
    expect(at.species.map(({ formula, charge, protolyteId }) => [formula, charge, protolyteId])).toEqual([
      ['H+', 1, null],
      ['OH-', -1, null],
      ['CH3COOH', 0, 'acetic'],
      ['CH3COO-', -1, 'acetic'],
      ['Na+', 1, null],
    ]);
  });

  test('has one entry for an acid that comes from two reagents', () => {
    const [acid, base] = at.species.slice(2);
    expect(Math.abs((acid?.molar ?? 0) + (base?.molar ?? 0) - 0.4)).toBeLessThanOrEqual(4 * 2 ** -53 * 0.4);
    expect(Math.abs((acid?.fraction ?? 0) + (base?.fraction ?? 0) - 1)).toBeLessThanOrEqual(2 * 2 ** -53);
  });

  test('obeys the law of mass action', () => {
    // pKa = pH + log10([HA]/[A-]); each factor is rounded a few times
    const ratio = molarOf(at, acids.acetic, 'CH3COOH') / molarOf(at, acids.acetic, 'CH3COO-');
    expect(Math.abs(at.pH + Math.log10(ratio) - (acids.acetic.steps[0]?.pKa ?? 0))).toBeLessThanOrEqual(
      1e-14,
    );
    const [h, oh] = at.species;
    expect(Math.abs(Math.log10((h?.molar ?? 0) * (oh?.molar ?? 0)) + waterAt25.pKw)).toBeLessThanOrEqual(
      1e-14,
    );
  });

  test('is ideal: activity is concentration, pcH is pH', () => {
    for (const { molar, activity } of at.species) expect(activity).toBe(molar);
    expect(at.pcH).toBe(at.pH);
  });

  test('has a buffer capacity of ln10·(h + Kw/h + C·α₀·α₁)', () => {
    const h = 10 ** -at.pH;
    const [a0 = 0, a1 = 0] = at.species.slice(2, 4).map(({ fraction }) => fraction ?? 0);
    const exact = Math.LN10 * (h + 10 ** -waterAt25.pKw / h + 0.4 * a0 * a1);
    expect(Math.abs(at.bufferCapacity / exact - 1)).toBeLessThanOrEqual(1e-14);
  });

  test('has the ionic strength ½Σc·z²: 0.1 mol/L of sodium carbonate makes less than 0.3', () => {
    const salt = equilibrate(makeSolution({ contents: [{ reagent: sodiumChloride, molar: 0.1 }] }));
    // 0.1 of each ion, and √Kw of H+ and OH-
    expect(Math.abs(salt.ionicStrength - 0.1 - 10 ** (-waterAt25.pKw / 2))).toBeLessThanOrEqual(1e-15);
    const carbonate = equilibrate(
      makeSolution({ contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
    );
    // hydrolysis turns x of CO3(2-) into HCO3- and OH-: I = ½(0.2 + 4(0.1 − x) + x + x + h) = 0.3 − x + …
    const x = molarOf(carbonate, acids.carbonic, 'HCO3-');
    expect(Math.abs(carbonate.ionicStrength - 0.3 + x)).toBeLessThanOrEqual(1e-7); // CO2, 2.2e-8 mol/L, counts 2·½
  });

  test('knows its solution and conditions, and survives JSON', () => {
    expect(at.solution).toEqual(buffer);
    expect(at.conditions).toEqual({ celsius: 25, pKw: waterAt25.pKw });
    const copy = throughJSON(at);
    expect(copy).toEqual(at);
    expect(equilibrate(copy.solution, copy.conditions)).toEqual(at);
    expect(molarOf(copy, acids.acetic, 'CH3COO-')).toBe(molarOf(at, acids.acetic, 'CH3COO-'));
  });

  test('passes on the note of a protolyte whose steps are out of order', () => {
    const { reagent } = acidWith('odd', 0, [6, 4]);
    const [note] = equilibrate(makeSolution({ contents: [{ reagent, molar: 0.1 }] })).notes;
    expect(note).toContain('odd: pKa 2 is below pKa 1');
    expect(at.notes).toEqual([]);
  });
});

describe('large charges that cancel', () => {
  test('a neutral salt leaves water at pKw/2, at any concentration', () => {
    for (const molar of [1e-12, 0.1, 5, 20]) {
      const { pH, chargeImbalance } = equilibrate(
        makeSolution({ contents: [{ reagent: sodiumChloride, molar }] }),
      );
      expect(Math.abs(pH - waterAt25.pKw / 2)).toBeLessThanOrEqual(4 * 2 ** -52 * 7);
      expect(Math.abs(chargeImbalance)).toBeLessThanOrEqual(2 ** -52 * 1e-7);
    }
  });

  test('1e-9 mol/L of acid is seen beside 20 mol/L of a salt', () => {
    const ions = [
      { reagent: strongIon('Na+', 1), molar: 20 },
      { reagent: strongIon('Cl-', -1), molar: 20 },
      { reagent: strongIon('NO3-', -1), molar: 1e-9 },
    ];
    const alone = pHOf(makeSolution({ contents: ions.slice(2) }));
    // 20 mol/L and 1e-9 mol/L are summed without loss: what is left is the rounding of 1e-9·1000 mL
    expect(Math.abs(pHOf(makeSolution({ contents: ions })) - alone)).toBeLessThanOrEqual(1e-14);
  });
});

describe('faults', () => {
  test('of solution and conditions are listed together', () => {
    const call = () =>
      equilibrate({ mL: -5, contents: [] }, { pKw: 3, temperature: 25 } as Parameters<typeof equilibrate>[1]);
    expect(listed(call)).toEqual([
      'out-of-range solution.mL',
      'unknown-key conditions.temperature',
      'out-of-range conditions.pKw',
    ]);
  });

  test('nothing to equilibrate', () => {
    expect(listed(() => equilibrate(undefined as unknown as Solution))).toEqual(['missing solution']);
    expect(listed(() => pHOf(null as unknown as Solution))).toEqual(['wrong-type solution']);
  });

  test('a solution made by hand is read as strictly as a recipe', () => {
    const { contents } = makeSolution({ contents: [{ reagent: sodiumHydrogenCarbonate, molar: 0.1 }] });
    const impure = { mL: 1000, contents: contents.map((content) => ({ ...content, purity: 0.9 })) };
    expect(listed(() => pHOf(impure))).toEqual(['unknown-key solution.contents[0].purity']);
  });
});
