import { capitalised } from '../capitalised.js';
import { carbonic } from '../catalogue/acids/inorganic.js';
import { bariumHydroxide, calciumHydroxide, potassiumPerchlorate } from '../catalogue/sparingly-soluble.js';
import { fixed } from '../print-number.js';
import type { Solution } from '../solution/solution.js';
import type { SparinglySoluble } from '../substance/sparingly-soluble.js';
import type { Conditions } from './conditions.js';

/** The properties of a form in solution that are needed here. */
interface Form {
  readonly formula: string;
  /** mol/L. */
  readonly molar: number;
  /** mol/L. */
  readonly activity: number;
}

/** The properties of an equilibrium that are needed here. */
interface State {
  readonly solution: Solution;
  readonly conditions: Conditions;
  readonly species: readonly Form[];
}

/** A solid that may precipitate. */
export interface Precipitate {
  readonly solid: SparinglySoluble;
  /** log10 of how many times the product in its saturated solution is exceeded. */
  readonly excess: number;
}

/**
 * The solids of its protolytes and strong ions with which a solution is more than saturated, by the product of the
 * activities or concentrations of their forms. A warning: everything still counts as dissolved.
 *
 * @internal
 */
export function precipitatesOf({ solution, conditions, species }: State): Precipitate[] {
  const found = new Map(species.map((form) => [form.formula, form]));
  const { carbonDioxide } = conditions;
  const protolytes = solution.contents.flatMap(({ reagent }) =>
    reagent.protolytes.map(({ protolyte }) => protolyte),
  );
  const all = carbonDioxide ? [...protolytes, carbonDioxide.protolyte ?? carbonic] : protolytes;
  const solids = [...ofStrongIons, ...all.flatMap((protolyte) => protolyte.solids ?? [])];
  const once = new Map(solids.map((solid) => [solid.name, solid]));
  return [...once.values()].flatMap((solid) => {
    const excess = excessOf(solid, found);
    return excess > rounding ? [{ solid, excess }] : [];
  });
}

/** Solids without a protolyte. */
const ofStrongIons: readonly SparinglySoluble[] = [calciumHydroxide, bariumHydroxide, potassiumPerchlorate];

/** The products have three decimals, so a saturated solution may exceed them by this much. */
const rounding = 2e-3;

function excessOf({ forms, log10K, of }: SparinglySoluble, found: ReadonlyMap<string, Form>): number {
  let log10 = -log10K;
  for (const label in forms) {
    const form = found.get(label);
    if (form === undefined) return Number.NEGATIVE_INFINITY;
    log10 += (forms[label] ?? 0) * Math.log10(of === 'activities' ? form.activity : form.molar);
  }
  return log10;
}

/** One sentence on a solid. @internal */
export function noteOnSolid({ solid: { name }, excess }: Precipitate, where = ''): string {
  const times = excess < 3 ? Number((10 ** excess).toPrecision(2)) : `10^${fixed(excess, 0)}`;
  return `${capitalised(name)} may precipitate${where}: its ions multiply to ${times} times what they do where it is saturated, at 25 °C. All of it counts as dissolved here.`;
}
