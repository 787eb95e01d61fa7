import { format } from 'node:util';
import { afterEach, expect, test, vi } from 'vitest';
import { read, root } from '../tree.js';

const path = 'docs/examples/demo.mjs';

afterEach(() => vi.restoreAllMocks());

test('the demo is under 30 lines', () => {
  expect(read(path).trimEnd().split('\n').length).toBeLessThan(30);
});

test('the demo prints inputs, constants with sources, the curve and its points', async () => {
  const lines: string[] = [];
  vi.spyOn(console, 'log').mockImplementation((...values) => void lines.push(format(...values)));
  await import(root + path);
  const printed = lines.join('\n').split('\n');

  expect(printed[0]).toContain(
    '0.2000 g of an invented pool pH-raiser powder, 95 % sodium carbonate, in 50 mL',
  );
  expect(printed[1]).toContain('0.1000 mol/L hydrochloric acid');
  // 2 · 0.2 g · 0.95 / 105.9875 g/mol / 0.1 mol/L = 35.853 mL, the first point half-way; additions of 0.5 mL go beyond it
  const curve = printed
    .filter((line) => /^ *\d+\.[05]0 /.test(line))
    .map((line) => Number(line.trim().split(' ')[0]));
  expect(curve).toEqual(Array.from({ length: 85 }, (_, k) => k / 2));
  expect(printed).toContainEqual(expect.stringMatching(/^17\.927 .*CO₃²⁻ \+ H⁺ → HCO₃⁻$/));
  expect(printed).toContainEqual(expect.stringMatching(/^35\.853 .*HCO₃⁻ \+ H⁺ → CO₂\(aq\) \+ H₂O$/));
  expect(printed).toContainEqual(expect.stringMatching(/^26\.890 /));
  expect(printed).toContainEqual(expect.stringMatching(/^35\.852 .*steepest$/));
  expect(printed).toContain('Na2CO3 105.9875 g/mol, carbonic acid pKa 6.351 and 10.329, pKw 13.995');
  expect(printed).toContainEqual(expect.stringMatching(/^- carbonic acid: step 1: R\. N\. Goldberg/));
  expect(printed).toContainEqual(expect.stringMatching(/^- ion product of water, pKw: IAPWS/));
  expect(printed).toContainEqual(expect.stringMatching(/^- Wear eye protection\./));
});
