import { type Balance, type Column, momentsAt, momentsIn } from './charge-balance.js';
import { emptyRoot, hydrogenIon, type Root } from './hydrogen-ion.js';

/** One solution after another over one set of protolytes. */
export interface HydrogenIonSeries {
  /**
   * The solution in question: volume, charge of the strong ions, amounts (charge-balance.ts); to be filled before each
   * call.
   */
  readonly totals: Float64Array;
  /** The same as a column. */
  readonly column: Column;
  /** The last evaluation, with the count of all. */
  readonly root: Root;
}

/** A series that has solved nothing yet. @internal */
export function hydrogenIonSeriesOf(balance: Balance): HydrogenIonSeries {
  const totals = new Float64Array(2 + balance.families.length);
  const root = emptyRoot();
  root.scratch.moments = new Float64Array(momentsIn(balance)).fill(Number.NaN); // no step starts from there
  const column = {
    get volume() {
      return totals[0] as number;
    },
    get charge() {
      return totals[1] as number;
    },
    amounts: totals.subarray(2),
  };
  return { totals, column, root };
}

/**
 * The hydrogen-ion concentration of a solution that is much like the one before: the next point of a curve, the next
 * row of a table. By Householder's method (hydrogen-ion.ts) from where the charge balance was last evaluated.
 *
 * The charge balance is linear in the amounts, so its value and derivatives there are known for the new totals too, and
 * the first step costs no evaluation: it is a prediction of third order.
 *
 *   s = rise/run,   rise = −F·(F′² − F·F″/2),   run = F′·(F′² − F·F″) + F²·F‴/6                          (1)
 *   h·e^s = h·(1 + y + y²/3)/(1 − y + y²/3),   y = s/2,   but for s⁵/720: less than (1) leaves              (2)
 *
 * Bracket     the signs met; before the first, every h > 0.
 * Ends        as in hydrogen-ion.ts: where Newton's step is 1e-4 or less, one more step is the last.
 * Falls back  on `hydrogenIon` and its bracket where a step is long, leaves the bracket, or is not the last of four.
 * Speed       a copy of `chargeOf` with its sums in local variables, one division a step and no allocation. Constants
 *             stand inside the function, where the compiler sees them.
 *
 * @param out - its element `at` is overwritten with h
 * @internal
 */
export function writeNextHydrogenIon(
  balance: Balance,
  { totals, column, root }: HydrogenIonSeries,
  out: Float64Array,
  at: number,
): void {
  const last = 1e-4; // Newton's step in ln h, as in hydrogen-ion.ts
  const long = 0.75; // half a step beyond which the first guess of a cold start is nearer
  const { moments } = root.scratch;
  let low = 0;
  let high = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < 4; pass += 1) {
    const h = moments[0] as number;
    const volume = totals[0] as number;
    let whole = totals[1] as number;
    let net = volume * (moments[1] as number);
    let slope = volume * (moments[2] as number);
    let bend = volume * (moments[3] as number);
    let twist = volume * (moments[4] as number);
    for (let i = 2, from = 5; i < totals.length; i += 1, from += 5) {
      const amount = totals[i] as number;
      whole += amount * (moments[from] as number);
      net -= amount * (moments[from + 1] as number);
      slope += amount * (moments[from + 2] as number);
      bend -= amount * (moments[from + 3] as number);
      twist += amount * (moments[from + 4] as number);
    }
    net += whole;

    const square = slope * slope;
    const product = net * bend;
    const halfRise = 0.25 * net * (product - 2 * square);
    const run = slope * (square - product) + net * net * (twist * (1 / 6));
    if (Math.abs(net) <= last * slope) {
      const step = (2 * halfRise) / run;
      out[at] = h + h * step * (1 + step * (0.5 + step * (1 / 6)));
      return;
    }
    if (!(Math.abs(halfRise) < long * run)) break; // NaN leaves here too
    if (net < 0) low = h;
    else high = h;
    const even = run * run + halfRise * halfRise * (1 / 3);
    const odd = run * halfRise;
    const next = (h * (even + odd)) / (even - odd);
    if (!(next > low && next < high)) break;
    moments[0] = next;
    momentsAt(balance, moments);
    root.evaluations += 1;
  }
  out[at] = hydrogenIon(balance, column, 0, root).h;
}

/**
 * h to pH, in place. A loop of its own, since the call of a logarithm would make the loop above spill its registers.
 *
 * @internal
 */
export function toPH(column: Float64Array, length: number): void {
  for (let k = 0; k < length; k += 1) column[k] = -Math.log10(column[k] as number);
}
