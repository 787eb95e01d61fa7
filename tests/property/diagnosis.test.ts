import { expect, test } from 'vitest';
import { confusion } from '../measurement/diagnosis/confusion.js';

// The whole table is in docs/guides/diagnosis.md. Of 60 seeded runs, ninety in a hundred are to be told; the ones that are
// not are small bubbles.
test('of five runs of each fault, nine in ten are told, and sound readings are called sound', () => {
  const tried = confusion(5);
  const right = tried.filter(({ fault, likely }) => likely.includes(fault));
  expect(right.length / tried.length).toBeGreaterThan(0.9);
  expect(tried.filter(({ fault, likely }) => fault === 'sound' && likely[0] !== 'sound')).toEqual([]);
});
