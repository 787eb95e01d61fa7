import {
  estimateWithin,
  propagateDistributions,
  uncertaintyBudget,
  validateBudget,
} from 'protolysis/measurement';
import { describe, expect, test } from 'vitest';

const normal = (value: number, standardUncertainty: number, degreesOfFreedom: number | null = null) => ({
  value,
  standardUncertainty,
  degreesOfFreedom,
});
type X = { readonly x: number };
const itself = ({ x }: X) => x;
const draws = 100_000;

/** Of a mean over so many draws; five of them is one honest seed in a million. */
const standardError = (deviation: number) => deviation / Math.sqrt(draws);

describe('propagateDistributions', () => {
  test.each([
    ['normal', normal(3, 2), 1.95996],
    [
      'rectangular',
      estimateWithin(3, { limit: 2 * Math.sqrt(3), distribution: 'rectangular' }),
      0.95 * Math.sqrt(3),
    ],
    [
      'triangular',
      estimateWithin(3, { limit: 2 * Math.sqrt(6), distribution: 'triangular' }),
      Math.sqrt(6) * (1 - Math.sqrt(0.05)),
    ],
  ] as const)('gives mean, deviation and interval of a %s input', async (_, x, halfWidth) => {
    const { value, standardUncertainty, interval } = await propagateDistributions({ x }, itself, { draws });
    expect(Math.abs(value - 3)).toBeLessThan(5 * standardError(2));
    expect(Math.abs(standardUncertainty - 2)).toBeLessThan(5 * standardError(2)); // that of s is s/√(2n), and less for the others
    // a quantile's is √(p(1 − p)/n)/density: 0.027·2/√n·… at most 3 standard deviations over √n here
    expect(Math.abs(interval.to - (3 + 2 * halfWidth))).toBeLessThan(15 * standardError(2));
    expect(Math.abs(interval.from - (3 - 2 * halfWidth))).toBeLessThan(15 * standardError(2));
  });

  test('a normal input with few degrees of freedom is drawn as Student’s t', async () => {
    const { interval, notes } = await propagateDistributions({ x: normal(0, 1, 4) }, itself, { draws });
    expect(interval.to).toBeCloseTo(2.776, 1);
    expect(notes).toEqual([]);
    const few = await propagateDistributions({ x: normal(0, 1, 2) }, itself, { draws: 1000 });
    expect(few.notes[0]).toContain('x has 2 degrees of freedom');
  });

  test('is the same for the same seed, and another for another', async () => {
    const run = (seed: number) =>
      propagateDistributions({ x: normal(1, 0.1) }, itself, { draws: 1000, seed });
    expect(await run(5)).toEqual(await run(5));
    expect((await run(5)).value).not.toBe((await run(6)).value);
  });

  test('keeps the digits of a result that hardly varies', async () => {
    const x = normal(1e9, 1e-3);
    const { standardUncertainty } = await propagateDistributions({ x }, itself, { draws });
    expect(standardUncertainty * 1e3).toBeCloseTo(1, 1.5);
  });

  test('tells its progress up to 1, and stops where it is told to', async () => {
    const told: number[] = [];
    await propagateDistributions({ x: normal(1, 0.1) }, itself, {
      draws: 1000,
      onProgress: (done) => told.push(done),
    });
    expect(told.at(-1)).toBe(1);
    expect(told).toEqual([...told].sort((a, b) => a - b));

    const stop = new AbortController();
    const reason = new Error('enough');
    const onProgress = () => stop.abort(reason);
    const running = propagateDistributions({ x: normal(1, 0.1) }, itself, {
      draws: 1e7,
      onProgress,
      signal: stop.signal,
    });
    await expect(running).rejects.toBe(reason);
  });

  test('lets others have their turn', async () => {
    let ticks = 0;
    const ticking = setInterval(() => (ticks += 1), 1);
    await propagateDistributions({ x: normal(1, 0.1) }, itself, { draws: 300_000 });
    clearInterval(ticking);
    expect(ticks).toBeGreaterThan(0);
  });

  test('refuses a model that breaks where it is drawn', async () => {
    const running = propagateDistributions({ x: normal(1, 1) }, ({ x }) => Math.sqrt(x), { draws: 1000 });
    await expect(running).rejects.toMatchObject({ name: 'InputError', issues: [{ path: 'model' }] });
  });
});

describe('validateBudget', () => {
  test('bears out the budget of a straight model', async () => {
    const inputs = { x: normal(10, 0.1), y: normal(3, 0.1) };
    const model = ({ x, y }: X & { readonly y: number }) => x - y;
    const verdict = validateBudget(
      uncertaintyBudget(inputs, model),
      await propagateDistributions(inputs, model),
    );
    expect(verdict).toMatchObject({ agrees: true, tolerance: 0.005 }); // u = 0.14
  });

  // as in JCGM 101:2008, 9.4 (from memory): a square about zero has no slope, and the budget knows no second-order term
  test('does not bear out that of a bent one', async () => {
    const inputs = { x: normal(0, 1) };
    const model = ({ x }: X) => x * x + 0.01 * x;
    const verdict = validateBudget(
      uncertaintyBudget(inputs, model),
      await propagateDistributions(inputs, model, { draws }),
    );
    expect(verdict.agrees).toBe(false);
    expect(verdict.reason).toContain('differ');
  });
});
