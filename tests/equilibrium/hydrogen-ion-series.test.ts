import { describe, expect, test } from 'vitest';
import { balanceOf, chargeAt, emptyCharge, momentsAt } from '../../src/equilibrium/charge-balance.js';
import { familyOf } from '../../src/equilibrium/family.js';
import { emptyRoot, hydrogenIon } from '../../src/equilibrium/hydrogen-ion.js';
import { hydrogenIonSeriesOf, writeNextHydrogenIon } from '../../src/equilibrium/hydrogen-ion-series.js';
import { rootBetween } from '../../src/solver/root-between.js';
import { familyReagent } from '../reference/vectors.js';

/** Acids that lose several protons at once bend the charge balance most. */
const one = { z0: 4, pKa: ['9', '5', '1', '-3'], amount: 0.1 };
const two = { z0: 0, pKa: ['7', '3'], amount: 0.3 };
const three = { z0: -2, pKa: ['0', '-10'], amount: 1 };
const four = { z0: 2, pKa: ['0', '4.76', '0', '0', '0', '-10'], amount: 1 };

describe.each([
  { charge: -0.5, acids: [one, two] },
  { charge: 1, acids: [three, four] },
])('a step of Householder’s method', ({ charge, acids }) => {
  const families = acids.map((acid, i) => familyOf(familyReagent({ name: `${i}`, ...acid }).protolyte));
  const balance = balanceOf(1e-14, families);
  const column = { volume: 1, charge, amounts: acids.map(({ amount }) => amount) };
  // x ← x − u·(1 − u·F″/2F′)/…: nothing where u·F″ = 2F′, however far the root
  const flaw = (x: number) => {
    const { net, slope, bend } = chargeAt(balance, column, Math.exp(x), emptyCharge());
    return (net * bend) / (2 * slope * slope) - 1;
  };
  const grid = Array.from({ length: 4000 }, (_, k) => -38 + k / 100);
  const starts = grid
    .filter((x) => flaw(x) < 0 !== flaw(x + 0.01) < 0)
    .map((x) => rootBetween(flaw, x, x + 0.01))
    .flatMap((found) => (found.status === 'found' ? [Math.exp(found.x)] : []));
  const root = hydrogenIon(balance, column, 0, emptyRoot()).h;

  test('is nothing at some h, here far from the root', () => {
    expect(starts.some((h) => Math.abs(Math.log(h / root)) > 0.5)).toBe(true);
    expect(Math.abs(chargeAt(balance, column, root, emptyCharge()).net)).toBeLessThan(1e-15);
  });

  test('does not end the search there', () => {
    for (const h of starts)
      expect(Math.abs(hydrogenIon(balance, column, h, emptyRoot()).h / root - 1)).toBeLessThan(1e-14);
  });

  test('does not end it on the way along a curve', () => {
    for (const h of starts) {
      const series = hydrogenIonSeriesOf(balance);
      series.totals.set([column.volume, column.charge, ...column.amounts]);
      series.root.scratch.moments[0] = h;
      momentsAt(balance, series.root.scratch.moments);
      const out = new Float64Array(1);
      writeNextHydrogenIon(balance, series, out, 0);
      expect(Math.abs((out[0] as number) / root - 1)).toBeLessThan(1e-14);
    }
  });
});
