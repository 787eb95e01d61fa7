/** Numbers drawn in turn from one seed. */
export interface Random {
  /** Uniform over [0, 1), a multiple of 2⁻⁵³. */
  uniform(): number;
  /** Normal, of mean 0 and standard deviation 1. */
  normal(): number;
}

/** A seed is a whole number that a double holds exactly. */
export const seedLimits = { from: 0, to: Number.MAX_SAFE_INTEGER, integer: true } as const;

/**
 * A generator of random numbers: the same numbers for a seed, to the last bit, on every machine.
 *
 * Only whole numbers, comparisons, sums and quotients are used, which every engine rounds alike; Math.log and Math.cos
 * are not, since engines differ in their last bits. So the normal deviates come from Karney's method, which compares
 * uniform ones.
 *
 * Bits: xoshiro128** of D. Blackman, S. Vigna, ACM Trans. Math. Softw. 47(4), 36 (2021), doi:10.1145/3460772, of period
 * 2¹²⁸ − 1. Good for simulation, not for secrets.
 *
 * @internal
 */
export function randomFrom(seed: number): Random {
  const bits = xoshiro128(stateFrom(seed));
  const uniform = (): number => ((bits() >>> 5) * 2 ** 26 + (bits() >>> 6)) / 2 ** 53;
  return { uniform, normal: () => normalFrom(uniform) };
}

type State = readonly [number, number, number, number];

/** 32 bits a call, as a whole number from 0: xoshiro128**, with the constants of the paper, section 3. */
function xoshiro128([s0, s1, s2, s3]: State): () => number {
  let [a, b, c, d] = [s0, s1, s2, s3];
  return () => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result;
  };
}

const rotated = (bits: number, by: number): number => (bits << by) | (bits >>> (32 - by));

/**
 * The four words of state from one seed, by two outputs of SplitMix64, as the authors of xoshiro advise: seeds that are
 * neighbours give states that have nothing in common. The outputs differ, so the state is never all zeros.
 *
 * G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014, fig. 17,
 * doi:10.1145/2660193.2660195
 */
function stateFrom(seed: number): State {
  const [first, second] = [1n, 2n].map((k) => mixed(BigInt(seed) + k * 0x9e3779b97f4a7c15n)) as [
    bigint,
    bigint,
  ];
  const [low, high] = [(word: bigint) => Number(word & 0xffffffffn), (word: bigint) => Number(word >> 32n)];
  return [low(first), high(first), low(second), high(second)];
}

function mixed(word: bigint): bigint {
  let z = BigInt.asUintN(64, word);
  z = BigInt.asUintN(64, (z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
  z = BigInt.asUintN(64, (z ^ (z >> 27n)) * 0x94d049bb133111ebn);
  return z ^ (z >> 31n);
}

/**
 * A normal deviate from uniform ones: x = ±(k + u), where whole number k and fraction u are kept with the probability
 *
 *   exp(−(k + u)²/2) = exp(−k/2) · exp(−k(k − 1)/2) · exp(−u(2k + u)/2)                                    (1)
 *
 * each factor by trials of a probability that is an exponential; the fraction's in k + 1 equal ones.
 * Ends        with probability 1: a pair (k, u) is kept about one time in two; some 17 uniform deviates in all.
 *
 * C. F. F. Karney, Sampling Exactly from the Normal Distribution, ACM Trans. Math. Softw. 42(1), 3 (2016), algorithm N,
 * doi:10.1145/2710016; here with fractions of 53 bits.
 */
function normalFrom(uniform: () => number): number {
  for (;;) {
    let k = 0;
    while (happens(uniform, 0.5, 1)) k += 1;
    if (!allHappen(k * (k - 1), () => happens(uniform, 0.5, 1))) continue;
    const u = uniform();
    if (!allHappen(k + 1, () => happens(uniform, u, (2 * k + u) / (2 * k + 2)))) continue;
    return uniform() < 0.5 ? k + u : -(k + u);
  }
}

function allHappen(times: number, trial: () => boolean): boolean {
  for (let n = 0; n < times; n += 1) if (!trial()) return false;
  return true;
}

/**
 * A trial that comes out true with the probability exp(−x·q), for x and q from 0 to 1. A run x > z₁ > z₂ > … of uniform
 * deviates, each kept with probability q, has n of them or more with the probability (x·q)ⁿ/n!; so n is even at its end
 * with Σ (−x·q)ⁿ/n!. J. von Neumann, Natl. Bur. Stand. Appl. Math. Ser. 12, 36–38 (1951).
 */
function happens(uniform: () => number, x: number, q: number): boolean {
  let [even, last] = [true, x];
  for (;;) {
    const next = uniform();
    if (!(next < last) || (q < 1 && !(uniform() < q))) return even;
    [even, last] = [!even, next];
  }
}
