import { rectangularHalfWidth, triangularHalfWidth } from '../../solver/half-widths.js';
import type { Random } from '../statistics/random.js';
import type { InputQuantity } from './input-quantity.js';

/** From so many degrees of freedom on, Student's t is drawn as normal: its deviation is 1 % more at most. */
const nearlyNormal = 100;

/**
 * Draws a value of an input, JCGM 101:2008 (GUM supplement 1), 6.4:
 *
 *   rectangular   x + a·(2r − 1),        a = √3·u
 *   triangular    x + a·(r₁ + r₂ − 1),   a = √6·u
 *   normal        x + u·z; with ν degrees of freedom x + u·z/√(χ²/ν), a scaled Student's t (6.4.9)
 *
 * χ² is a sum of squares of normal deviates, so ν is taken down to a whole number, as GUM G.4.1 allows.
 *
 * @internal
 */
export function drawOf(input: InputQuantity, random: Random): () => number {
  const { value, standardUncertainty: u, degreesOfFreedom, distribution } = input;
  if (u === 0) return () => value;
  if (distribution === 'rectangular')
    return () => value + rectangularHalfWidth * u * (2 * random.uniform() - 1);
  if (distribution === 'triangular')
    return () => value + triangularHalfWidth * u * (random.uniform() + random.uniform() - 1);
  if (degreesOfFreedom === null || degreesOfFreedom >= nearlyNormal) return () => value + u * random.normal();
  const freedom = Math.floor(degreesOfFreedom);
  return () => {
    const z = random.normal();
    let squares = 0;
    for (let k = 0; k < freedom; k += 1) squares += random.normal() ** 2;
    return value + u * z * Math.sqrt(freedom / squares);
  };
}
