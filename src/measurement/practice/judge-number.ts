import { fourDigits } from '../../print-number.js';

/** One question with the share of its points, from 0 to 1. @internal */
export interface Judged {
  readonly share: number;
  readonly words: string;
}

/** A number that is asked for. @internal */
export interface Wanted {
  readonly name: string;
  readonly unit: string;
  readonly expected: number;
  /** What the readings give as they stand. */
  readonly asRead: number | undefined;
  readonly tolerance: number;
}

/** How many tolerances off a number may be for half of its points. */
const near = 3;

/** What a number gets; undefined where there is no answer. @internal */
export function judgeNumber(
  { name, unit, expected, asRead, tolerance }: Wanted,
  given: number | undefined,
): Judged {
  const print = (value: number) => `${fourDigits(value)} ${unit}`;
  if (given === undefined) return { share: 0, words: `${name}: no answer; it is ${print(expected)}.` };
  const off = Math.abs(given - expected);
  const answer = `${name}: ${print(given)}`;
  if (off <= tolerance)
    return { share: 1, words: `${answer} is right within ${print(tolerance)} of ${print(expected)}.` };
  if (asRead !== undefined && Math.abs(given - asRead) <= tolerance)
    return {
      share: 0.5,
      words: `${answer} is what the readings give as they stand; corrected, it is ${print(expected)}. Half the points.`,
    };
  const missed = `${answer} is off ${print(expected)} by ${print(off)}`;
  return off <= near * tolerance
    ? {
        share: 0.5,
        words: `${missed}, within three times the tolerance of ${print(tolerance)}. Half the points.`,
      }
    : { share: 0, words: `${missed}, more than three times the tolerance of ${print(tolerance)}.` };
}

/** The best of several answers, the nearest of those that are as good. @internal */
export function bestOf(wanted: Wanted, answers: readonly number[]): Judged {
  const byDistance = [...answers].sort(
    (a, b) => Math.abs(a - wanted.expected) - Math.abs(b - wanted.expected),
  );
  return byDistance
    .map((answer) => judgeNumber(wanted, answer))
    .reduce((best, one) => (one.share > best.share ? one : best), judgeNumber(wanted, byDistance[0]));
}
