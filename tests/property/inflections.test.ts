import fc from 'fast-check';
import { type Titration, titrate } from 'protolysis';
import { expect, test } from 'vitest';
import { titrations } from './compositions.js';

const grid = 4000;

/** Extremes of |dpH/dV| among neighbours on a grid of equal steps of pH from the analyte to the titrant. */
function extremesOf(titration: Titration): { kind: string; pH: number }[] {
  const [from, to] = [titration.pHAt(0), titration.pHAt(1e9)];
  const step = (to - from) / grid;
  const points = Array.from({ length: grid - 1 }, (_, k) => from + (k + 1) * step)
    .map((pH) => ({ pH, mL: titration.volumeAt(pH) ?? 0 }))
    .filter(({ mL }) => mL > 0 && mL < 1e8)
    .map(({ pH, mL }) => ({ pH, size: Math.log(Math.abs(titration.slopeAt(mL))) }));
  const found: { kind: string; pH: number }[] = [];
  for (let k = 1; k + 1 < points.length; k += 1) {
    const [a, b, c] = [points[k - 1], points[k], points[k + 1]].map((point) => point?.size ?? 0) as [
      number,
      number,
      number,
    ];
    const pH = points[k]?.pH ?? 0;
    if (b > a && b >= c) found.push({ kind: 'steepest', pH });
    if (b < a && b <= c) found.push({ kind: 'flattest', pH });
  }
  return found;
}

test('the inflections found are those of a search point by point', () => {
  let all = 0;
  fc.assert(
    fc.property(titrations, (setup) => {
      const titration = titrate(setup);
      const span = Math.abs(titration.pHAt(1e9) - titration.pHAt(0));
      fc.pre(span >= 0.1); // a flat curve has no inflection to find
      const cell = (2 * span) / grid;
      const searched = extremesOf(titration);
      const { inflectionPoints } = titration;
      for (const { kind, pH } of searched) {
        const near = inflectionPoints.filter(
          (point) => point.kind === kind && Math.abs(point.pH - pH) <= cell,
        );
        expect(near, `${kind} at pH ${pH}`).toHaveLength(1);
      }
      // what the search does not see is beyond its ends, or a pair between two points of its grid
      const unseen = inflectionPoints.filter(
        ({ kind, pH }) => !searched.some((one) => one.kind === kind && Math.abs(one.pH - pH) <= cell),
      );
      for (const { pH, kind } of unseen) {
        const atEnd = Math.min(Math.abs(pH - titration.pHAt(0)), Math.abs(pH - titration.pHAt(1e8))) <= cell;
        const paired = unseen.some((other) => other.kind !== kind && Math.abs(other.pH - pH) <= cell);
        expect(atEnd || paired, `${kind} at pH ${pH}`).toBe(true);
      }
      all += searched.length;
    }),
    { numRuns: 60 },
  );
  expect(all).toBeGreaterThan(60); // one each on average: the search has something to see
});
