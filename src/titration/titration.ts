import type { Conditions } from '../equilibrium/conditions.js';
import type { ConstantInUse } from '../equilibrium/constants-in-use.js';
import type { Equilibrium } from '../equilibrium/equilibrium.js';
import type { PH } from '../equilibrium/quantities.js';
import type { PouredSolution, Solution } from '../solution/solution.js';
import type { BoilOut } from './model/boil-out.js';
import type { EquivalencePoint } from './points/equivalence-points.js';
import type { InflectionPoint } from './points/inflection-points.js';
import type { Additions, Curve, CurvePoint } from './sampling/curve.js';

/** What is titrated with what. */
export interface TitrationSetup {
  /** In the beaker; its volume counts. */
  readonly analyte: PouredSolution;
  /** In the burette; its volume sets no limit. */
  readonly titrant: Solution;
  readonly conditions?: Conditions;
  /** The analyte is boiled after a volume of titrant, and CO2 leaves it: a step in the curve there. */
  readonly boilOut?: BoilOut;
}

/** A titration that has been set up. Each volume is mL of titrant added in all. */
export interface Titration {
  readonly setup: TitrationSetup;
  /** pH after `mL` of titrant. */
  pHAt(mL: number): PH;
  /** dpH/dV after `mL` of titrant, per mL, dilution included. */
  slopeAt(mL: number): number;
  /**
   * pH at `mL + within` less pH at `mL − within`: the effect of one drop to either side. `within` is 0.05 mL by
   * default.
   */
  jumpAt(mL: number, options?: { readonly within?: number }): number;
  /** Every species after `mL` of titrant. */
  equilibriumAt(mL: number): Equilibrium;
  /** The volume at which the curve first has this pH, mL; null where it never has. A jump past it is in the `notes`. */
  volumeAt(pH: PH): number | null;
  /** All volumes at which the curve has this pH. */
  volumesAt(pH: PH): number[];
  /** In order of volume, as far as a titration goes (`titrationLimits`). */
  readonly equivalencePoints: readonly EquivalencePoint[];
  /** Half-way between the volumes of neighbouring steps, where the two forms of a pair balance. */
  readonly halfEquivalencePoints: readonly CurvePoint[];
  /** Every point where the curve changes from bending one way to the other, in order of volume. */
  readonly inflectionPoints: readonly InflectionPoint[];
  /** The constants it rests on beside those of the substances. `sourcesOf(titration)` finds the sources of all. */
  readonly constants: readonly ConstantInUse[];
  /** What is uncertain, or what a reader of the curve should know. */
  readonly notes: readonly string[];
  /** pH at many volumes, into `out` where it is given. */
  pHs(volumes: ArrayLike<number>, out?: Float64Array): Float64Array;
  /** The curve as columns. */
  curve(additions: Additions): Curve;
}
