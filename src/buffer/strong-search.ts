import { hydrochloricAcid } from '../catalogue/reagents/strong-acids.js';
import { sodiumHydroxide } from '../catalogue/reagents/strong-bases.js';
import type { IonColumn } from '../equilibrium/activity/real-system.js';
import { afterEscape } from '../equilibrium/carbon-dioxide-escape.js';
import type { ConditionsInUse } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { realSystemOrNull, type SolvedSolution, solveSolution } from '../equilibrium/solve-solution.js';
import { systemOf } from '../equilibrium/system.js';
import { frozen } from '../frozen.js';
import { type Solution, solutionLimits } from '../solution/solution.js';
import { rootBetween } from '../solver/root-between.js';
import type { Reagent } from '../substance/reagent.js';
import { firstCrossing, offTarget } from './first-crossing.js';

/** A solution after an addition of strong acid or base. */
export interface StrongPoint {
  /** Hydrochloric acid or sodium hydroxide. */
  readonly reagent: Reagent;
  readonly mmol: number;
  /** Whether that is the pH asked for; if not, `mmol` is as much as a solution may hold. */
  readonly found: boolean;
  readonly pH: PH;
  /** mol/L per unit of pH. */
  readonly capacity: number;
}

/**
 * Sets a solution up once, and then answers for each pH which amount of strong acid or base brings it there at constant
 * volume.
 *
 * @param solution - one that has been read, with {@link eitherStrong}
 * @internal
 */
export function strongSearch(solution: Solution, inUse: ConditionsInUse): (target: PH) => StrongPoint {
  const acid = additionsOf(hydrochloricAcid, solution, inUse);
  const base = additionsOf(sodiumHydroxide, solution, inUse);
  const pHNow = pHAt(acid.pointAt(0));
  return (target) => {
    const { reagent, most, pointAt } = target < pHNow ? acid : base;
    const off = offTarget(target, (mmol) => pHAt(pointAt(mmol)));
    const bracket = firstCrossing(off, most);
    const root = bracket && rootBetween(off, ...bracket);
    const found = root?.status === 'found';
    const mmol = found ? root.x : most;
    const solved = pointAt(mmol);
    return { reagent, mmol, found, pH: pHAt(solved), capacity: solved.capacity };
  };
}

/** Read along with the solution, so that a reagent of the same id in it is known to be the same. @internal */
export const eitherStrong = /*#__PURE__*/ frozen({
  path: 'the strong acid or base added',
  value: {
    mL: 1,
    contents: [
      { reagent: hydrochloricAcid, mmol: 0 },
      { reagent: sodiumHydroxide, mmol: 0 },
    ],
  },
} as const);

interface StrongAdditions {
  readonly reagent: Reagent;
  /** mmol; with what is there already, as much as a solution may hold. */
  readonly most: number;
  readonly pointAt: (mmol: number) => SolvedSolution;
}

/** One strong acid or base, in any amount, in the same volume. */
function additionsOf(reagent: Reagent, solution: Solution, inUse: ConditionsInUse): StrongAdditions {
  const oneMmol = { mL: 1, contents: [{ reagent, mmol: 1 }] };
  const system = systemOf([solution, oneMmol], inUse);
  const [column, more] = system.columns as [IonColumn, IonColumn];
  const real = realSystemOrNull(system);
  const openSystem = system.escape && realSystemOrNull(system.escape.open);
  const columnWith = (mmol: number): IonColumn => ({
    ...column,
    charge: column.charge + mmol * more.charge,
    squares: column.squares + mmol * more.squares,
  });
  const present = solution.contents.find((held) => held.reagent.id === reagent.id)?.mmol ?? 0;
  return {
    reagent,
    most: Math.max(solutionLimits.molar * solution.mL - present, 0),
    pointAt: (mmol) => solveSolution(system, afterEscape(system, columnWith(mmol), openSystem), real),
  };
}

const pHAt = ({ activity }: SolvedSolution): PH => -Math.log10(activity);
