import type { Matrix } from 'ml-matrix';
import { Faults } from '../../input/faults.js';
import { rectangularHalfWidth } from '../../solver/half-widths.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import { fitParameters } from '../fit/fit-parameters.js';
import type { FreeParameter } from '../fit/free-parameter.js';
import type { FitParameter } from '../fit/parameter-moves.js';

/** How far a sound bench may be from what is stated. @internal */
export interface Tolerance {
  /** As a share. */
  readonly sampleAmount: number;
  /** In pH. */
  readonly probeOffset: number;
  /** In % of the ideal slope. */
  readonly probeSlope: number;
}

/** What a sound bench leaves free, but for the one that is the fault. @internal */
export function parametersWithin(
  setup: ReadSetup,
  { sampleAmount, probeOffset, probeSlope }: Tolerance,
  fault: FreeParameter | undefined,
): readonly FitParameter[] {
  const holdsSample = setup.analyte.contents.some(({ mmol }) => mmol > 0);
  const free = [
    { kind: 'sampleAmount', most: holdsSample ? sampleAmount : 0 },
    { kind: 'probeOffset', most: probeOffset },
    { kind: 'probeSlope', most: probeSlope },
  ] as const;
  return free
    .filter(({ kind, most }) => most > 0 && kind !== fault)
    .flatMap(({ kind, most }) =>
      parametersOf([kind], setup).map((parameter) => {
        const width = kind === 'sampleAmount' ? most * parameter.start : most;
        return { ...parameter, from: parameter.start - width, to: parameter.start + width };
      }),
    );
}

/**
 * What is free within a tolerance is known by that alone already: ±w, each value as likely, is a standard uncertainty of w/√3
 * (GUM, 4.3.7), and counts as one more reading of that parameter.
 *
 * @param from - the first of the parameters that are free within a tolerance
 * @internal
 */
export function withTolerances(jacobian: Matrix, parameters: readonly FitParameter[], from: number): Matrix {
  const all = jacobian.clone();
  for (const [j, parameter] of parameters.entries()) {
    if (j < from) continue;
    const halfWidth = (parameter.to - parameter.from) / 2;
    all.addRow(parameters.map((_, k) => (k === j ? rectangularHalfWidth / halfWidth : 0)));
  }
  return all;
}

/** Parameters of a fit of a titration that has been read. @internal */
export function parametersOf(free: readonly FreeParameter[], setup: ReadSetup): readonly FitParameter[] {
  const faults = new Faults('diagnose');
  const parameters = fitParameters(free, setup, 'titration', faults);
  faults.done();
  return parameters;
}
