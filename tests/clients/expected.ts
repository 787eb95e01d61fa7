import { expect } from 'vitest';
import { read } from '../tree.js';

/** Of every entry that package.json builds, so that a program that leaves one out fails. */
const { entry: entries } = JSON.parse(read('package.json')).tsup;
const exports = Object.fromEntries(
  await Promise.all(
    Object.keys(entries).map(async (name) => [
      name,
      Object.keys(await import(`../../src/${name}.ts`)).sort(),
    ]),
  ),
);

interface Answers {
  readonly exports: Readonly<Record<string, readonly string[]>>;
  readonly [name: string]: unknown;
}

/** Holds what `programs/answers.js` printed to closed forms, and its lists of names to those of src. */
export function expectAnswers(printed: string): void {
  const answers: Answers = JSON.parse(printed);
  const names = Object.entries(answers.exports).map(([name, list]) => [name, list.toSorted()]);
  expect(Object.fromEntries(names)).toEqual(exports);
  // c = √Kw of a strong acid: h² − c·h − Kw = 0 gives h = φ·c; φ = (1 + √5)/2.
  expect(answers.pH).toBeCloseTo(7 - Math.log10((1 + Math.sqrt(5)) / 2), 14);
  expect(answers.exactPH).toBe('6.791012359750021266230727910762');
  // CIEDE2000: S_L is 1 at the mean lightness of 50, and grey has no chroma, so the difference is that of L*.
  expect(answers.blackToWhite).toBeCloseTo(100, 9);
  expect(answers.read).toEqual([3, 3.1, 3.3]);
  // Potentials proportional to 7 − pH: no offset.
  expect(answers.offsetAtSeven).toBeCloseTo(0, 9);
  expect(answers.ticks).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40]);
  expect(answers.hasCurve).toBe(true);
  expect(answers.toWeigh).toBe('Weigh about 0.20 g of powder');
}
