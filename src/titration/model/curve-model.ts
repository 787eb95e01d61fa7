import type { IonColumn } from '../../equilibrium/activity/real-system.js';
import type { PH } from '../../equilibrium/quantities.js';
import type { InflectionPoint } from '../points/inflection-points.js';
import type { Curve, CurvePoint } from '../sampling/curve.js';

/** Where a curve goes from one pH to another within the rounding of a volume. */
export interface CurveJump {
  readonly mL: number;
  readonly before: PH;
  readonly after: PH;
}

/** The curve of a titration. Volumes are mL of titrant, already read. */
export interface CurveModel {
  pHAt(mL: number): PH;
  /** pH at many volumes. */
  pHs(volumes: ArrayLike<number>, out: Float64Array): void;
  pointAt(mL: number): CurvePoint;
  /** pH and slope at many volumes; each answer depends on these volumes alone. */
  curveAt(volumes: readonly number[]): Curve;
  /** All volumes at which the curve has a pH, in ascending order. */
  volumesAt(pH: PH): number[];
  /** Where the curve jumps: the pH between are those of no volume. */
  jumps(): CurveJump[];
  inflections(): InflectionPoint[];
  /** From 0 to `upTo` mL, with as many points as make neighbours differ by at most `maxStep` in pH. */
  curveUpTo(upTo: number, maxStep: number): Curve;
  /** What is in the beaker, after any escape of CO2. */
  columnAt(mL: number): IonColumn;
}
