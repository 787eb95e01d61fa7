import type { TitrationSetup } from '../../titration/titration.js';
import type { Estimate } from '../estimate.js';
import type { FreeParameter } from './free-parameter.js';
import type { RunsTest } from './runs-test.js';

/** A parameter as a fit found it. */
export interface FittedParameter {
  readonly free: FreeParameter;
  readonly name: string;
  /** Of `expected`, `value` and `estimate`. */
  readonly unit: 'mmol' | 'mol/L' | 'pH' | 'mL' | '%' | '';
  /** As the titration was meant. */
  readonly expected: number;
  readonly value: number;
  /** The value with its uncertainty; null where these readings do not determine it. */
  readonly estimate: Estimate | null;
  /** Whether it stands at the end of its range, as an amount of carbon dioxide at zero. */
  readonly atLimit: boolean;
}

/** Where a fit puts an equivalence point. */
export interface FittedEquivalencePoint {
  readonly reaction: string;
  /**
   * As a running total of the readings, with the faults of the burette in it: subtract the `initialReading` and the air
   * bubble found for what had run into the flask.
   */
  readonly mL: number;
  /** The volume with its uncertainty; null where these readings do not determine it. */
  readonly estimate: Estimate | null;
}

/** A fit of the whole charge balance to readings. Plain data: it survives JSON. */
export interface TitrationFit {
  /** `converged`; or why the search ended before: no step lowered the sum of squares, or there were too many of them. */
  readonly status: 'converged' | 'no-descent' | 'too-many-steps';
  /** In the order in which they were set free. */
  readonly parameters: readonly FittedParameter[];
  /** Of the parameters, in their order: 1 on the diagonal. */
  readonly correlation: readonly (readonly number[])[];
  /** Names of parameters that these readings cannot tell apart, group by group. */
  readonly inseparable: readonly (readonly string[])[];
  /** Greatest condition index of the parameters; from 30 on some can hardly be told apart. */
  readonly condition: number;
  /** Each reading: totals in mL, the pH read, the pH of the curve where it most probably belongs, and its distance. */
  readonly fitted: {
    readonly mL: readonly number[];
    readonly pH: readonly number[];
    readonly onCurve: readonly number[];
    /** From the curve, in standard uncertainties of the reading; positive where it lies above. */
    readonly distance: readonly number[];
  };
  /** Root mean square of the distances, by the degrees of freedom: about 1 where the uncertainties are right. */
  readonly scatter: number;
  /** Readings less parameters. */
  readonly degreesOfFreedom: number;
  readonly runs: RunsTest;
  readonly equivalencePoints: readonly FittedEquivalencePoint[];
  /**
   * With the amounts and constants found: `titrate(fit.setup)` is the fitted curve, but for the faults of the bench. To
   * lay readings over it, take these out of them: subtract the `initialReading` found from each volume, the
   * `probeOffset` from each pH.
   */
  readonly setup: TitrationSetup;
  readonly notes: readonly string[];
}
