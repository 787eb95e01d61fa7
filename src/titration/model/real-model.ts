import { once } from '../../once.js';
import { realInflections } from '../points/real-inflections.js';
import type { CurvePoint } from '../sampling/curve.js';
import type { CurveModel } from './curve-model.js';
import type { MixtureModel } from './mixture-model.js';
import {
  crossingBetween,
  jumpsOf,
  type MonotonePieces,
  monotonePiecesOf,
  passagesOf,
  refinedVolumes,
} from './monotone-pieces.js';
import {
  bentPointAt,
  newSearch,
  type RealMixture,
  realColumnAt,
  realMixtureOf,
  realPHAt,
  realPointAt,
  solveInTurn,
} from './real-point.js';

/**
 * The curve with coefficients of activity, or with CO2 that escapes. Each answer depends on its arguments alone.
 *
 * @internal
 */
export function realModel(mixtureModel: MixtureModel): CurveModel {
  const mixture = realMixtureOf(mixtureModel);
  const analyte = mixtureModel.analyte.volume;
  const pieces = once(() => monotonePiecesOf(pointsFrom(mixture), analyte));
  const curveAt = (mL: readonly number[]) => {
    const points: CurvePoint[] = [];
    solveInTurn(mL, (volume, _, search) => void points.push(realPointAt(mixture, volume, search)));
    return { mL, pH: points.map(({ pH }) => pH), slope: points.map(({ slope }) => slope) };
  };
  return {
    pHAt: (mL) => realPHAt(mixture, mL, newSearch()),
    pHs(volumes, out) {
      solveInTurn(volumes, (mL, k, search) => {
        out[k] = realPHAt(mixture, mL, search);
      });
    },
    pointAt: (mL) => realPointAt(mixture, mL, newSearch()),
    curveAt,
    volumesAt: (pH) => volumesAt(mixture, pieces(), pH),
    jumps: () => jumpsOf(pieces()),
    inflections() {
      const search = newSearch();
      return realInflections((mL) => bentPointAt(mixture, mL, search), analyte);
    },
    curveUpTo: (upTo, maxStep) => curveAt(refinedVolumes(pieces(), pointsFrom(mixture), upTo, maxStep)),
    columnAt: (mL) => realColumnAt(mixture, mL),
  };
}

/** Points of one search after another. */
function pointsFrom(mixture: RealMixture): (mL: number) => CurvePoint {
  const search = newSearch();
  return (mL) => realPointAt(mixture, mL, search);
}

/** All volumes at which the curve has a pH, mL, in ascending order. */
function volumesAt(mixture: RealMixture, pieces: MonotonePieces, pH: number): number[] {
  const search = newSearch();
  const excess = (mL: number) => realPHAt(mixture, mL, search) - pH;
  const found = passagesOf(pieces, pH).map(([low, high]) =>
    low === high ? low : crossingBetween(excess, low, high),
  );
  return [...new Set(found)];
}
