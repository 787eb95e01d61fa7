import { numberAt } from './number-at.js';

/** The result of a quadrature. */
export interface Integral {
  readonly value: number;
  /** An upper estimate of how far `value` may be off. */
  readonly error: number;
}

/**
 * ∫ f between the first and the last of the breaks, by the Gauss–Kronrod pair of 7 and 15 points: the piece with the
 * greatest error is halved until the sum of errors is small enough.
 *
 *   K = ½(b − a) Σ wₖ·f(xₖ),   error ≈ |K − G|                                                           (1)
 *
 * Breaks      kinks and jumps of f belong here: between them the rule is exact for polynomials up to degree 22.
 * Good to     (1), summed over the pieces. It is the error of the 7-point rule, so that of the value, which is the
 *             15-point rule's, is far smaller wherever f is smooth.
 * Ends        when the sum is at most `tolerance`, or after `mostPieces`; `error` then says what was reached.
 * Source      R. Piessens, E. de Doncker-Kapenga, C. W. Überhuber, D. K. Kahaner, QUADPACK, Springer (1983), routine
 *             QAG and the nodes and weights of QK15, doi:10.1007/978-3-642-61786-7
 *
 * @param breaks - in ascending order; equal neighbours add nothing
 * @internal
 */
export function integral(f: (x: number) => number, breaks: readonly number[], tolerance: number): Integral {
  const pieces = breaks.slice(1).map((to, k) => pieceOf(f, numberAt(breaks, k), to));
  while (pieces.length < mostPieces) {
    if (total(pieces, 'error') <= tolerance) break;
    const worst = pieces.reduce(
      (most, piece, k) => (piece.error > (pieces[most] as Piece).error ? k : most),
      0,
    );
    const { from, to } = pieces[worst] as Piece;
    const middle = from + (to - from) / 2;
    if (!(middle > from && middle < to)) break;
    pieces.splice(worst, 1, pieceOf(f, from, middle), pieceOf(f, middle, to));
  }
  return { value: total(pieces, 'value'), error: total(pieces, 'error') };
}

interface Piece extends Integral {
  readonly from: number;
  readonly to: number;
}

const mostPieces = 500;

const total = (pieces: readonly Piece[], key: 'value' | 'error') =>
  pieces.reduce((all, piece) => all + piece[key], 0);

function pieceOf(f: (x: number) => number, from: number, to: number): Piece {
  const half = (to - from) / 2;
  const middle = from + half;
  let kronrod = 0;
  let gauss = 0;
  for (const { node, weight, inner } of rule) {
    const y = node === 0 ? f(middle) : f(middle - half * node) + f(middle + half * node);
    kronrod += weight * y;
    gauss += inner * y;
  }
  return { from, to, value: half * kronrod, error: Math.abs(half * (kronrod - gauss)) };
}

/** Half of the symmetric rule: nodes, weights of the 15 points, and of the 7 among them. */
const rule = [
  { node: 0.9914553711208126, weight: 0.022935322010529224, inner: 0 },
  { node: 0.9491079123427585, weight: 0.06309209262997854, inner: 0.1294849661688697 },
  { node: 0.8648644233597691, weight: 0.10479001032225017, inner: 0 },
  { node: 0.7415311855993945, weight: 0.14065325971552592, inner: 0.27970539148927664 },
  { node: 0.5860872354676911, weight: 0.1690047266392679, inner: 0 },
  { node: 0.4058451513773972, weight: 0.19035057806478542, inner: 0.3818300505051189 },
  { node: 0.20778495500789848, weight: 0.20443294007529889, inner: 0 },
  { node: 0, weight: 0.20948214108472782, inner: 0.4179591836734694 },
] as const;
