import { hydrochloricAcid } from '../catalogue/reagents/strong-acids.js';
import { sodiumHydroxide } from '../catalogue/reagents/strong-bases.js';
import type { Conditions } from '../equilibrium/conditions.js';
import { pHOf } from '../equilibrium/ph-of.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { readSolutions } from '../solution/read-solution.js';
import type { PouredSolution, Solution } from '../solution/solution.js';
import { titrate } from '../titration/titrate.js';
import { bufferDefaults } from './buffer-defaults.js';
import { readDropSize } from './buffer-response.js';
import { givenConditions } from './given-conditions.js';

/** The additions, and the change of pH to look for. */
export interface ReserveOptions {
  /** Added to lower the pH; 1 mol/L HCl if left out. */
  readonly acid?: Solution;
  /** Added to raise it; 1 mol/L NaOH if left out. */
  readonly base?: Solution;
  /** By how much the pH may move; 1 if left out. */
  readonly change?: number;
  /** mL of a drop; 0.05 if left out. */
  readonly dropSize?: number;
  readonly conditions?: Conditions;
}

/** How much has been added at some point, and the pH there. */
export interface ReservePoint {
  readonly mL: number;
  /** The same in drops, parts of a drop included. */
  readonly drops: number;
  readonly pH: PH;
}

/** The amount of one addition that a buffer takes. */
export interface Reserve {
  /** Until the pH has moved by `change`; null where this addition never moves it so far. */
  readonly untilChange: ReservePoint | null;
  /** Until the buffer is exhausted, and the reaction that is then complete; null where there is no such point. */
  readonly untilExhausted: (ReservePoint & { readonly reaction: string }) | null;
}

/**
 * The amount of acid and of base that a solution takes until its pH has moved by a given amount, and until it is
 * exhausted.
 *
 * Exhausted means the next equivalence point: as much strong acid as there is of the base that takes it up, as much
 * strong base as there is of the acid. There the pair that held the pH is used up, and the capacity passes through a
 * low. A second pair, as in a phosphate or a carbonate, may take over beyond it.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents, reserveOf } from 'protolysis';
 *
 * const buffer = makeSolution({
 *   mL: 50,
 *   contents: [
 *     { reagent: reagents.aceticAcid, molar: 0.1 },
 *     { reagent: reagents.sodiumAcetate, molar: 0.05 },
 *   ],
 * });
 * const { acid, base } = reserveOf(buffer);
 * acid.untilExhausted?.mL; // => 2.50
 * base.untilExhausted?.mL; // => 5.00
 * base.untilChange?.mL; // => 3.75
 * ```
 */
export function reserveOf(
  solution: PouredSolution,
  options: ReserveOptions = {},
): { readonly pH: PH; readonly acid: Reserve; readonly base: Reserve } {
  const faults = new Faults('reserveOf');
  const keys = ['acid', 'base', 'change', 'dropSize', 'conditions'];
  const unread = faults.object(options, 'options', 'options { acid, base, change }', keys);
  const { acid: givenAcid = oneMolarAcid, base: givenBase = oneMolarBase } = unread;
  const [buffer, acid, base] = readSolutions(
    [
      { value: solution, path: 'solution', isPoured: true },
      { value: givenAcid, path: 'acid' },
      { value: givenBase, path: 'base' },
    ],
    faults,
  ) as [Solution, Solution, Solution];
  const { change = bufferDefaults.change } = unread;
  const by = faults.number(change, 'change', 'a change of pH', { above: 0, to: 10 });
  const dropSize = readDropSize(unread.dropSize, faults);
  const conditions = givenConditions(unread.conditions, 'conditions', faults);
  faults.done();

  const pH = pHOf(buffer, conditions);
  const reserve = (titrant: Solution, to: PH): Reserve => {
    const titration = titrate({ analyte: buffer, titrant, conditions });
    const moved = titration.volumeAt(to);
    const end = titration.equivalencePoints.find(({ mL }) => mL > rounding * buffer.mL);
    return {
      untilChange: moved === null ? null : { mL: moved, drops: moved / dropSize, pH: to },
      untilExhausted:
        end === undefined
          ? null
          : { mL: end.mL, drops: end.mL / dropSize, pH: end.pH, reaction: end.reaction },
    };
  };
  return frozen({ pH, acid: reserve(acid, pH - by), base: reserve(base, pH + by) });
}

const oneMolarAcid: Solution = { mL: 1000, contents: [{ reagent: hydrochloricAcid, mmol: 1000 }] };
const oneMolarBase: Solution = { mL: 1000, contents: [{ reagent: sodiumHydroxide, mmol: 1000 }] };

/** A solution that stands at an equivalence point already, but for rounding, is exhausted at the next one. */
const rounding = 1e-12;
