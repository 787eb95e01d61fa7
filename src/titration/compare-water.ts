import { readGas } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { partOf } from '../solution/aliquot.js';
import { readConflicts } from '../solution/conflicting-constants.js';
import { mixtureOf } from '../solution/mix.js';
import { readSolution } from '../solution/read-solution.js';
import { type Solution, solutionLimits } from '../solution/solution.js';
import { makeTitration } from './make-titration.js';
import { readSetup } from './read-setup.js';
import type { Titration, TitrationSetup } from './titration.js';
import { titrationLimits } from './titration-limits.js';

/** How a volume moves from a titration with good water to one with the water and titrant given. */
export interface Shift {
  /** mL with good water; null where there is no such point. */
  readonly good: number | null;
  /** mL with what was given; null where there is no such point. */
  readonly given: number | null;
  /** `given` less `good`, mL, and in percent of `good`; null where either is missing. */
  readonly mL: number | null;
  readonly percent: number | null;
}

/** The effect of bad water, or of a titrant that has aged, on a titration. */
export interface WaterComparison {
  readonly good: Titration;
  readonly given: Titration;
  /** By reaction. */
  readonly equivalencePoints: readonly (Shift & { readonly reaction: string })[];
  /** Of the pH values asked for. */
  readonly endpoints: readonly (Shift & { readonly pH: PH })[];
}

/** What to compare with. */
export interface WaterInUse {
  /**
   * The water that dilutes the analyte and rinses it down, such as `waters.tapLike`. Its composition counts, not its
   * volume.
   */
  readonly water: Solution;
  /** How much of it gets into the beaker in all, mL. */
  readonly mL: number;
  /** The titrant in use, where it differs from the one of the setup: see `absorbCarbonDioxide`. */
  readonly titrant?: Solution;
  /** The pH values at which the titration is stopped. */
  readonly endpoints?: readonly PH[];
}

/**
 * A titration with good water beside the same with the water, or the titrant, in use: by how much each equivalence
 * point and each end point moves.
 *
 * Good water adds nothing but its volume, which moves no equivalence point. An end point is where the curve first has
 * its pH.
 *
 * @param setup - the analyte before any water is added
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { compareWater, makeSolution, reagents, waters } from 'protolysis';
 *
 * const { endpoints } = compareWater(
 *   {
 *     analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *     titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 *   },
 *   { water: waters.tapLike, mL: 50, endpoints: [8.3] },
 * );
 * endpoints[0]?.mL; // => 0.0980
 * endpoints[0]?.percent; // => 0.490
 * ```
 */
export function compareWater(setup: TitrationSetup, use: WaterInUse): WaterComparison {
  const faults = new Faults('compareWater');
  const read = readSetup(setup, 'setup', faults);
  const unread = faults.object(use, 'use', 'water in use { water, mL }', [
    'water',
    'mL',
    'titrant',
    'endpoints',
  ]);
  const water = readSolution(unread.water, 'use.water', faults);
  const { leastML, mL: most } = solutionLimits;
  const mL = faults.number(unread.mL, 'use.mL', 'a volume in mL', { from: leastML, to: most / 2 });
  const titrant =
    unread.titrant === undefined ? read.titrant : readSolution(unread.titrant, 'use.titrant', faults);
  const endpoints =
    unread.endpoints === undefined
      ? []
      : faults
          .list(unread.endpoints, 'use.endpoints', 'a list of pH values', 0, 100)
          .map((pH, k) => faults.number(pH, `use.endpoints[${k}]`, 'a pH', titrationLimits.pH));
  if (!faults.any) {
    const all = { 'setup.analyte': read.analyte, 'use.water': water, 'use.titrant': titrant };
    readConflicts(
      Object.entries(all).flatMap(([path, { contents }]) =>
        contents.map(({ reagent }) => ({ reagent, path })),
      ),
      faults,
    );
    readGas([read.analyte, water, titrant], read.inUse, 'setup.conditions', faults);
    if (read.analyte.mL + mL > most)
      faults.add('out-of-range', 'use.mL', `no more than ${most} mL with the analyte`, mL);
  }
  faults.done();

  const { analyte } = read;
  const good = makeTitration({ ...read, analyte: { ...analyte, mL: analyte.mL + mL } });
  const given = makeTitration({ ...read, analyte: mixtureOf([analyte, partOf(water, mL)]), titrant });
  return frozen({
    good,
    given,
    equivalencePoints: reactionsOf(good, given).map((reaction) => ({
      reaction,
      ...volumeShift(volumeOf(good, reaction), volumeOf(given, reaction)),
    })),
    endpoints: endpoints.map((pH) => ({
      pH,
      ...volumeShift(good.volumeAt(pH), given.volumeAt(pH)),
    })),
  });
}

const reactionsOf = (...titrations: readonly Titration[]): string[] => [
  ...new Set(
    titrations.flatMap(({ equivalencePoints }) => equivalencePoints.map(({ reaction }) => reaction)),
  ),
];

const volumeOf = ({ equivalencePoints }: Titration, reaction: string): number | null =>
  equivalencePoints.find((point) => point.reaction === reaction)?.mL ?? null;

/** How a volume moves; null where one of the two is missing. @internal */
export function volumeShift(good: number | null, given: number | null): Shift {
  if (good === null || given === null) return { good, given, mL: null, percent: null };
  return { good, given, mL: given - good, percent: good > 0 ? (100 * (given - good)) / good : null };
}
