import type { Conditions } from '../equilibrium/conditions.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import type { Equilibrium } from '../equilibrium/equilibrium.js';
import type { PH } from '../equilibrium/quantities.js';
import type { SpeciesAt } from '../equilibrium/species-of.js';
import { stepsInOrder } from '../equilibrium/steps-in-order.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { readSolution } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import { totalsOf } from '../solution/totals.js';
import type { Protolyte } from '../substance/protolyte.js';
import { givenConditions } from './given-conditions.js';

/** The pH by pKa + log10([base]/[acid]) beside the exact one. */
export type LogRatioEstimate =
  | {
      readonly status: 'estimated';
      /** The protolyte and the step (from 1) whose two forms are both there as poured. */
      readonly protolyteId: string;
      readonly step: number;
      /** At 25 °C, as the estimate takes it. */
      readonly pKa: number;
      /** As poured, mol/L: whole reactions between what was poured, no ionisation. */
      readonly acid: Amount;
      readonly base: Amount;
      readonly pH: PH;
      readonly exact: PH;
      /** Estimate less exact. */
      readonly error: number;
      /** What the error is made of; the three add up to it. */
      readonly parts: {
        /** The forms are not there in the amounts poured: H+, OH− and neighbouring steps take their share. */
        readonly ratio: number;
        /** Activities stand in the exact law, concentrations in the estimate. */
        readonly activity: number;
        /** The pKa under the conditions is not the one at 25 °C. */
        readonly temperature: number;
      };
    }
  | { readonly status: 'no-pair'; readonly reason: string; readonly exact: PH };

/** A form and its concentration, mol/L. */
export interface Amount {
  readonly formula: string;
  readonly molar: number;
}

/**
 * The log-ratio approximation (Henderson–Hasselbalch) beside the exact pH, with its error and where that comes from.
 *
 *   pH ≈ pKa + log10([base]/[acid]),   both as poured                                                    (1)
 *
 * "As poured" means after whole reactions: strong acid or base turns the forms into each other, and nothing ionises.
 * Only one step can then be part way; its two forms are the pair. Where every step is either complete or not begun (an
 * acid alone, a salt alone, an excess of strong acid or base) there is no ratio, and (1) says nothing.
 *
 * The exact law is pH = pKa′ + log10(a_base/a_acid), so the error splits without a remainder:
 *
 *   error = log10(poured ratio / true ratio) − log10(γ_base/γ_acid) + (pKa − pKa′)                     (2)
 *
 * The first part grows where [H+] or [OH−] is no longer small beside the pair: dilute, far from the pKa, or a strong
 * acid.
 *
 * @throws InputError that lists every fault
 * @see L. J. Henderson, Am. J. Physiol. 21, 173 (1908); K. A. Hasselbalch, Biochem. Z. 78, 112 (1917)
 * @example
 * ```ts
 * import { estimateByLogRatio, makeSolution, reagents } from 'protolysis';
 *
 * const dilute = makeSolution({
 *   contents: [
 *     { reagent: reagents.aceticAcid, molar: 1e-4 },
 *     { reagent: reagents.sodiumAcetate, molar: 1e-4 },
 *   ],
 * });
 * const estimate = estimateByLogRatio(dilute);
 * estimate.exact; // => 4.873
 * estimate.status === 'estimated' ? estimate.pH : estimate.reason; // => 4.756
 * ```
 */
export function estimateByLogRatio(solution: Solution, conditions?: Conditions): LogRatioEstimate {
  const faults = new Faults('estimateByLogRatio');
  const read = readSolution(solution, 'solution', faults);
  const given = givenConditions(conditions, 'conditions', faults);
  faults.done();

  const equilibrium = equilibrate(read, given);
  const { pH: exact } = equilibrium;
  const pair = pairOf(read);
  if (pair === undefined)
    return frozen({
      status: 'no-pair',
      reason: 'as poured, no acid stands beside its own base: there is no ratio to take the logarithm of',
      exact,
    });
  const { protolyte, step, acid, base } = pair;
  const { pKa } = protolyte.steps[step] as (typeof protolyte.steps)[number];
  const pH = pKa + Math.log10(base.molar / acid.molar);
  const [trueAcid, trueBase] = [acid, base].map(({ formula }) =>
    speciesOf(equilibrium, protolyte, formula),
  ) as [SpeciesAt, SpeciesAt];
  const ratio = Math.log10(base.molar / acid.molar) - Math.log10(trueBase.molar / trueAcid.molar);
  const activity =
    Math.log10(trueBase.molar / trueAcid.molar) - Math.log10(trueBase.activity / trueAcid.activity);
  const error = pH - exact;
  const parts = { ratio, activity, temperature: error - ratio - activity };
  return frozen({
    status: 'estimated',
    protolyteId: protolyte.id,
    step: step + 1,
    pKa,
    acid,
    base,
    pH,
    exact,
    error,
    parts,
  });
}

/** The step that is part way when what was poured has reacted in whole steps, the greatest constant first. */
function pairOf(solution: Solution) {
  const { protolytes, charge } = totalsOf(solution);
  const order = stepsInOrder(protolytes.map(({ protolyte }) => protolyte.steps.map(({ pKa }) => 10 ** -pKa)));
  const scale = protolytes.reduce((all, { mmol }) => all + mmol, 0);
  let left = protolytes.reduce(
    (all, { protolyte, mmol }) => all + mmol * (protolyte.species[0]?.charge ?? 0),
    charge,
  );
  for (const { family, step } of order) {
    const { protolyte, mmol } = protolytes[family] as (typeof protolytes)[number];
    if (!(left > rounding * scale)) return undefined; // this step is not begun
    if (left < mmol * (1 - rounding)) {
      const [acid, base] = [mmol - left, left].map((amount, k) => ({
        formula: protolyte.species[step + k]?.formula ?? '',
        molar: amount / solution.mL,
      })) as [Amount, Amount];
      return { protolyte, step, acid, base };
    }
    left -= mmol;
  }
  return undefined;
}

/** Amounts that differ by this share, rounding alone, count as equal. */
const rounding = 1e-12;

const speciesOf = ({ species }: Equilibrium, { id }: Protolyte, formula: string) =>
  species.find((form) => form.protolyteId === id && form.formula === formula);
