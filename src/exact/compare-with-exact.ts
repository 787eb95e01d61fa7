import type { Decimal } from 'decimal.js';
import { balanceOf } from '../equilibrium/charge-balance.js';
import { familyOf, fractionsOf } from '../equilibrium/family.js';
import { pHOf } from '../equilibrium/ph-of.js';
import { Faults } from '../errors.js';
import type { Solution } from '../solution/solution.js';
import type { ColumnOf } from './charge-balance.js';
import { conditionKeys, type ExactConditions, type ReadConditions, readConditions } from './conditions.js';
import { decimals } from './decimals.js';
import { exactPH } from './exact-ph.js';
import type { Ratio } from './ratio.js';
import { type ExactSolution, type ReadSolution, readExactSolution, written } from './solution.js';
import { systemOf } from './system.js';

/** A pH in doubles against the exact one. */
export interface Comparison {
  /** What `pHOf` gives. */
  readonly pH: number;
  readonly exact: Decimal;
  /** |pH − exact|. */
  readonly error: number;
  /** The conditioning limit: what no solver in doubles can promise to better. */
  readonly limit: number;
  /** error/limit. */
  readonly inLimits: number;
}

/**
 * A pH in doubles against the exact one, in units of the conditioning limit: what the rounding of the input alone can do
 * to the answer.
 *
 *   limit = 2⁻⁵² · Σ |x·∂pH/∂x| + 2.3e-16 · max(1, |pH|)
 *
 * over all numbers x that go in (amounts, pKa, pKw), each off by its last bit with the worst choice of signs, and the
 * rounding of the pH itself. A pKa near 0 counts with the last bit of its K, which is then the coarser. A pH may be four limits off (the accuracy this package promises), and is mostly well below one.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { reagents } from 'protolysis';
 * import { compareWithExact, makeSolution } from 'protolysis/exact';
 *
 * const brine = makeSolution({ contents: [{ reagent: reagents.sodiumChloride, molar: '5' }] });
 * const { pH, inLimits } = compareWithExact(brine);
 * pH; // => 6.9975
 * inLimits <= 4; // => true
 * ```
 */
export function compareWithExact(solution: ExactSolution, conditions: ExactConditions = {}): Comparison {
  const faults = new Faults('compareWithExact');
  const read = readExactSolution(solution, 'solution', faults);
  const unread = faults.object(conditions, 'conditions', 'conditions { pKw }', conditionKeys);
  const settled = readConditions(unread, 'conditions', faults);
  faults.done();

  const { ofRatio } = decimals(40);
  const number = (ratio: Ratio) => ofRatio(ratio).toNumber();
  const inDoubles: Solution = {
    mL: number(read.mL),
    contents: read.contents.map(({ reagent, mmol }) => ({ reagent, mmol: number(mmol) })),
  };
  const pH = pHOf(inDoubles, { pKw: number(settled.pKw) });
  const { pH: exact } = exactPH(written(read), { ...conditions, digits: 30 });
  const error = exact.minus(pH).abs().toNumber();
  const limit = limitOf(inDoubles, read, settled, exact.toNumber(), number);
  return { pH, exact, error, limit, inLimits: error / limit };
}

/** With F(ln h, x) = 0, |∂pH/∂x| = |∂F/∂x| / (ln10 · ∂F/∂ln h). */
function limitOf(
  { mL, contents }: Solution,
  read: ReadSolution,
  settled: ReadConditions,
  pH: number,
  number: (ratio: Ratio) => number,
): number {
  const { protolytes, columns, pKw } = systemOf([read], settled);
  const { kw, families } = balanceOf(10 ** -number(pKw), protolytes.map(familyOf));
  const h = 10 ** -pH;
  const hydroxide = (mL * kw) / h;
  let slope = mL * h + hydroxide;
  let shift = number(pKw) * Math.LN10 * hydroxide;

  const chargeOf = new Map<string, number>(); // mean charge of each protolyte
  for (const [i, family] of families.entries()) {
    const shares = fractionsOf(family, h);
    const amount = number((columns[0] as ColumnOf<Ratio>).amounts[i] as Ratio);
    const mean = shares.reduce((sum, share, lost) => sum + share * lost, 0);
    slope += amount * shares.reduce((sum, share, lost) => sum + share * (lost - mean) ** 2, 0);
    chargeOf.set(protolytes[i]?.id ?? '', family.topCharge - mean);
    for (const [step, { pKa }] of (protolytes[i]?.steps ?? []).entries()) {
      // the covariance of the protons lost with this step being done
      const moved = shares.reduce((sum, share, lost) => (lost > step ? sum + share * (lost - mean) : sum), 0);
      shift += Math.max(Math.abs(pKa) * Math.LN10, 1) * amount * Math.abs(moved);
    }
  }
  for (const { reagent, mmol } of contents) {
    const ions = reagent.ions.reduce((sum, { ion, count }) => sum + ion.charge * count, 0);
    const charge = reagent.protolytes.reduce(
      (sum, { protolyte, count }) => sum + count * (chargeOf.get(protolyte.id) ?? 0),
      ions,
    );
    shift += Math.abs(mmol * charge);
  }
  return (2 ** -52 * shift) / (Math.LN10 * slope) + 2.3e-16 * Math.max(1, Math.abs(pH));
}
