import type { Random } from '../statistics/random.js';

/** Standard deviations of the errors that are drawn: of one pH, and of one volume in mL. */
export interface ReadingNoise {
  readonly pH: number;
  readonly mL: number;
}

/** Errors of each reading: one of the volume, one of the pH. */
interface Errors {
  readonly mL: readonly number[];
  readonly pH: readonly number[];
}

/** Errors in the order in which they are drawn: mL and pH of the first reading, of the second, and so on. @internal */
export function errorsOf(count: number, noise: ReadingNoise, random: Random): Errors {
  const drawn = Array.from(
    { length: count },
    () => [noise.mL * random.normal(), noise.pH * random.normal()] as const,
  );
  return { mL: drawn.map(([mL]) => mL), pH: drawn.map(([, pH]) => pH) };
}

/**
 * What runs into the flask when so much is read, mL. A burette that shows 0 has let out nothing; none runs backwards, so
 * the volumes are put in order, and one below zero is taken to the other side.
 *
 * @internal
 */
export const deliveredWith = (errors: readonly number[], mL: readonly number[]): readonly number[] =>
  mL.map((each, k) => (each === 0 ? 0 : Math.abs(each + (errors[k] as number)))).sort((a, b) => a - b);
