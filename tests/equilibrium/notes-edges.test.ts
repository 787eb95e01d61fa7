import { acids, davies, guntelberg, type Protolyte, type Source, type Step } from 'protolysis';
import { describe, expect, test } from 'vitest';
import {
  atZeroStrength,
  isOfMedium,
  notesOnMedium,
} from '../../src/equilibrium/activity/at-zero-strength.js';
import { compensatingChange } from '../../src/equilibrium/activity/compensating-change.js';
import { notesOnCapacity, notesOnStrength } from '../../src/equilibrium/activity/notes-on-strength.js';
import type { ConditionsInUse } from '../../src/equilibrium/conditions.js';

const source: Source = { kind: 'commonPractice', note: 'an invented step' };
const byDavies = { activity: davies } as ConditionsInUse;
const unlimited = { activity: { name: 'own', log10Gamma: () => 0, source } } as unknown as ConditionsInUse;

describe('the notes on ionic strength begin just above a limit', () => {
  // Sums of concentrations round: 1e-9 of a limit counts as the limit.
  test('of the law', () => {
    const limit = 0.5 * (1 + 1e-9);
    expect(notesOnStrength(byDavies, limit)).toEqual([]);
    expect(notesOnStrength(byDavies, limit + 1e-15)).toEqual([
      'Davies (0.3 I): ionic strength 0.5 mol/L is beyond its range, up to 0.5 mol/L.',
    ]);
    expect(notesOnStrength(unlimited, 0.9)).toEqual([]);
  });

  test('of any law, 1 mol/L', () => {
    const limit = 1 + 1e-9;
    for (const strength of [1, limit]) expect(notesOnStrength(unlimited, strength)).toEqual([]);
    expect(notesOnStrength(unlimited, 1.00001).join()).toMatch(
      /^Do not use this pH as a number: .* strength 1 mol/,
    );
  });

  test('from which coefficients are held, 100 mol/L or less', () => {
    const held = (at: number) =>
      `Activity coefficients are held at what they are at ionic strength ${at} mol/L.`;
    expect(notesOnStrength(unlimited, 0.3, 0.3)).toEqual([]);
    expect(notesOnStrength(unlimited, 0.3 + 1e-12, 0.3)).toEqual([held(0.3)]);
    expect(notesOnStrength(unlimited, 100)).toHaveLength(1);
    expect(notesOnStrength(unlimited, 100.1)).toContain(held(100));
  });
});

test('a capacity is noted where any is not above zero', () => {
  for (const fine of [[], [1], [1e-300, 2]]) expect(notesOnCapacity(...fine)).toEqual([]);
  for (const odd of [[0], [-1], [Number.NaN], [1, -1], [-1, 1]])
    expect(notesOnCapacity(...odd).join()).toMatch(/^The buffer capacity is not above zero/);
});

/** Acetic acid, its constant measured in a medium, and phosphoric acid with its second one alone measured so. */
const inMedium = (acid: Protolyte, step: number, ionicStrength: number): Protolyte => ({
  ...acid,
  steps: acid.steps.map((own: Step, k) => (k === step ? { ...own, ionicStrength } : own)),
});

describe('constants of a medium', () => {
  const phosphoric = inMedium(acids.phosphoric, 1, 0.1);

  test('are those with an ionic strength above zero', () => {
    expect(isOfMedium({ pKa: 4, source })).toBe(false);
    expect(isOfMedium({ pKa: 4, ionicStrength: 0, source })).toBe(false);
    expect(isOfMedium({ pKa: 4, ionicStrength: 1e-9, source })).toBe(true);
  });

  test('alone are moved; a protolyte without one is left as it is', () => {
    expect(atZeroStrength(acids.phosphoric, davies)).toBe(acids.phosphoric);
    const [first, second, third] = atZeroStrength(phosphoric, davies).steps.map(({ pKa }) => pKa);
    expect([first, third]).toEqual([acids.phosphoric.steps[0]?.pKa, acids.phosphoric.steps[2]?.pKa]);
    // pK° = pK′ − log10 γ(HPO4²⁻) + log10 γ(H2PO4⁻) − log10 γ(H): with z², −4 + 1 − 1 = −4 times that of a single charge.
    expect(second).toBeCloseTo((acids.phosphoric.steps[1]?.pKa ?? 0) - 4 * davies.log10Gamma(1, 0.1, 25), 12);
  });

  test('alone are noted, and where their medium is beyond the range of the law', () => {
    expect(notesOnMedium([acids.phosphoric], guntelberg)).toEqual([]);
    const note = (beyond: string, strength: number) =>
      `phosphoric acid: the constant of step 2 was measured at ionic strength ${strength} mol/L and brought to zero ionic strength by Güntelberg${beyond}.`;
    expect(notesOnMedium([phosphoric], guntelberg)).toEqual([note('', 0.1)]);
    expect(notesOnMedium([inMedium(acids.phosphoric, 1, 0.11)], guntelberg)).toEqual([
      note(', beyond the range of that law', 0.11),
    ]);
  });
});

test('a compensating change takes both errors away, to first order', () => {
  const moments = { net: 0, strength: 0, zz: 0.7, zs: -0.2, zl: 0.11, sl: -0.05 };
  const [volume, net, strength] = [20, 0.3, 0.4];
  const to = compensatingChange(moments, volume, net, strength);
  // ∂net/∂ln a = zz, ∂net/∂I = −ln10·zl, ∂strength/∂ln a = zs/2, ∂strength/∂I = −ln10·sl/2 − V (ion-moments.ts)
  expect(moments.zz * to.activity - Math.LN10 * moments.zl * to.strength).toBeCloseTo(-net, 14);
  expect((moments.zs / 2) * to.activity + (-(Math.LN10 / 2) * moments.sl - volume) * to.strength).toBeCloseTo(
    -strength,
    14,
  );
});
