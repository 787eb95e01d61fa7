import { expect, test } from 'vitest';
import { isBent } from '../../src/measurement/line-bend.js';
import { randomFrom } from '../../src/measurement/statistics/random.js';

const x = [1, 2, 3, 5, 8, 9, 12, 15];
const u = x.map((each) => 0.1 * each); // as in a Gran plot

/** How often points about f, of a scatter in units of u, are called bent. */
function shareOf(f: (x: number) => number, scatter: number, runs: number): number {
  const random = randomFrom(5);
  const draw = () => x.map((each, k) => f(each) + scatter * (u[k] as number) * random.normal());
  return Array.from({ length: runs }, draw).filter((column) => isBent(x, column, u)).length / runs;
}

// exact for normal errors, whatever their size beside u: 5 % of 4000 runs within three standard deviations
test.each([0.3, 1, 4])(
  'a straight line is called bent in one case of twenty, at a scatter of %d',
  (scatter) =>
    expect(Math.abs(shareOf((each) => 20 - 3 * each, scatter, 4000) - 0.05)).toBeLessThan(
      3 * Math.sqrt((0.05 * 0.95) / 4000),
    ),
);

test('a parabola is told from a line where it bends by far more than the scatter, to either side', () => {
  for (const bend of [0.05, -0.05])
    expect(shareOf((each) => 20 - 3 * each + bend * each ** 2, 0.2, 200)).toBe(1);
});

// two points of weight 1 each at −1, 0 and 1: a closed form
test('the quadratic term is held against Student’s t for n − 3 degrees of freedom', () => {
  const [at, one] = [
    [-1, -1, 0, 0, 1, 1],
    [1, 1, 1, 1, 1, 1],
  ];
  const d = 0.5; // scatter of each pair: S = 6·d², three degrees of freedom, so s = d·√2
  // ends raised by e: the mean e·2/3 goes to the height; |c|·√(Σ q²) = e·√(Σ (2/3, …)²) = e·√(4/3)
  const critical = (3.1824 * d * Math.SQRT2) / Math.sqrt(4 / 3); // t(0.975; 3) = 3.1824, of any table
  const pairs = (e: number) => at.map((each, k) => (each === 0 ? 0 : e) + (k % 2 === 0 ? d : -d));
  expect(isBent(at, pairs(0.999 * critical), one)).toBe(false);
  expect(isBent(at, pairs(1.001 * critical), one)).toBe(true);
});

test('what is nearer than a tenth of its uncertainty bends nothing, and three points have no scatter to tell', () => {
  expect(isBent([0, 1, 2, 3], [0, 1, 2, 3.001], [1, 1, 1, 1])).toBe(false);
  expect(isBent([0, 1, 2, 3], [0, 1, 4, 9], [1e-3, 1e-3, 1e-3, 1e-3])).toBe(true);
  expect(isBent([0, 1, 2], [0, 1, 4], [1e-3, 1e-3, 1e-3])).toBe(false);
});
