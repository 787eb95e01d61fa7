import { expect, test } from 'vitest';
import { read } from '../tree.js';
import { spreads, tableOf } from './endpoint-table.js';

const coarse = spreads(1, 200);
const fine = spreads(0.1, 100);
const smooth = spreads(0.1, 100, { smoothing: 7, flasks: ['Na2CO3'] });

test('the tables in the guide are those that the simulation gives', () => {
  const guide = read('docs/guides/readings.md');
  for (const rows of [coarse, fine, smooth]) expect(guide).toContain(`\`\`\`text\n${tableOf(rows)}\n\`\`\``);
});

// A mean of n runs scatters by spread/√n: four of these, beside 0.02 mL for what Gran's lines leave out.
test('no method is biased by more than it scatters, but for what it leaves out', () => {
  for (const { method, bias, spread, runs } of [...coarse, ...fine.filter(({ found }) => found > 0.5)])
    expect([method, Math.abs(bias) < 0.02 + (4 * spread) / Math.sqrt(runs)]).toEqual([method, true]);
});

// 200 runs know a spread to 5 %, 100 to 7 %; the scatter about a line of few points is known worse.
test('the standard uncertainty of an end point by Gran or by a fit is its scatter within a quarter', () => {
  for (const { method, given, spread } of [...coarse, ...fine])
    if (method.startsWith('gran') || method === 'fit')
      expect([method, Math.abs(given / spread - 1) < 0.25]).toEqual([method, true]);
});

test('unsmoothed noise is not taken for a second end point', () => {
  const second = fine.filter(({ flask, method }) => flask === 'Na2CO3' && method === 'steepestSlope');
  expect(second.every(({ found }) => found < 0.05)).toBe(true);
});
