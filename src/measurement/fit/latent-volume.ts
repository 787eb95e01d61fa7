import type { ReadingUncertainty } from '../reading-uncertainty.js';

/** What the probe shows after a volume of titrant. @internal */
export interface Shown {
  readonly pH: number;
  /** Per mL. */
  readonly slope: number;
}

/** Where a reading lies beside a curve. @internal */
export interface Nearest {
  /** mL delivered, most probably. */
  readonly mL: number;
  /** Shown there. */
  readonly pH: number;
  /** Signed distance of the reading from the curve, in standard uncertainties; positive where it lies above. */
  readonly distance: number;
  /** By how much the distance falls where the curve rises by one pH, and where the volume read rises by one mL. */
  readonly perPH: number;
  readonly perML: number;
}

/**
 * The volume t ≥ 0 that was most probably delivered when (x, y) was read, both uncertain: the t of least
 *
 *   φ(t) = (y − f(t))²/u_pH² + (x − t)²/u_mL²                                                        (1)
 *
 * by the method of Gauss and Newton, each step halved until φ falls. The distance is √φ with a sign. Where t > 0,
 *
 *   r = (y − f(t) − f′(t)·(x − t)) / √(u_pH² + f′(t)²·u_mL²)                                         (2)
 *
 * which is √φ at the least φ, and off by the square of what is left of t. Where f is straight across u_mL, (2) is the
 * effective variance of J. Orear, Am. J. Phys. 50, 912–916 (1982), doi:10.1119/1.12972; where it bends, near an
 * equivalence point, only the least φ itself will do: P. T. Boggs, R. H. Byrd, R. B. Schnabel, SIAM J. Sci. Stat. Comput.
 * 8, 1052–1078 (1987), doi:10.1137/0908085.
 *
 * φ at its least does not change with t, so its derivatives are those at fixed t.
 *
 * @internal
 */
export function nearestOn(
  f: (mL: number) => Shown,
  { mL: x, pH: y }: { readonly mL: number; readonly pH: number },
  u: ReadingUncertainty,
): Nearest {
  let t = Math.max(x, 0);
  let at = f(t);
  let phi = phiOf(y - at.pH, x - t, u);
  const ratio = (u.mL / u.pH) ** 2;
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const wanted = ((y - at.pH) * at.slope * ratio + (x - t)) / (1 + at.slope ** 2 * ratio);
    let step = Math.max(wanted, -t);
    if (!(Math.abs(step) > lastStep * u.mL)) break;
    let next = f(t + step);
    let nextPhi = phiOf(y - next.pH, x - t - step, u);
    for (let halved = 0; !(nextPhi <= phi) && halved < mostHalvings; halved += 1) {
      step /= 2;
      next = f(t + step);
      nextPhi = phiOf(y - next.pH, x - t - step, u);
    }
    if (!(nextPhi <= phi)) break;
    t += step;
    at = next;
    phi = nextPhi;
  }
  return t === 0 ? atStart(at, x, y, u) : onCurve(at, t, x, y, u);
}

function onCurve({ pH, slope }: Shown, t: number, x: number, y: number, u: ReadingUncertainty): Nearest {
  const width = Math.hypot(u.pH, slope * u.mL);
  return { mL: t, pH, distance: (y - pH - slope * (x - t)) / width, perPH: 1 / width, perML: slope / width };
}

/** Before the first drop nothing can have been delivered: both parts of φ stay. */
function atStart({ pH }: Shown, x: number, y: number, u: ReadingUncertainty): Nearest {
  const sign = y < pH ? -1 : 1;
  const size = Math.sqrt(phiOf(y - pH, x, u));
  if (size === 0) return { mL: 0, pH, distance: 0, perPH: 1 / u.pH, perML: 0 };
  return {
    mL: 0,
    pH,
    distance: sign * size,
    perPH: Math.abs(y - pH) / (u.pH ** 2 * size),
    perML: (-sign * x) / (u.mL ** 2 * size),
  };
}

/** A reading before the first drop: its volume is zero and sure, so only its pH is uncertain. @internal */
export function beforeFirstDrop({ pH }: Shown, y: number, u: ReadingUncertainty): Nearest {
  return { mL: 0, pH, distance: (y - pH) / u.pH, perPH: 1 / u.pH, perML: 0 };
}

const phiOf = (dpH: number, dmL: number, u: ReadingUncertainty) => (dpH / u.pH) ** 2 + (dmL / u.mL) ** 2;

/** Of u_mL: what is left changes φ by its square. */
const lastStep = 1e-6;

const mostPasses = 50;
const mostHalvings = 20;
