import type { PH } from '../../equilibrium/quantities.js';
import { isIdeal } from '../../equilibrium/system.js';
import type { Solution } from '../../solution/solution.js';
import { numberAt } from '../../solver/number-at.js';
import {
  type EquivalencePoint,
  equivalencePointsOf,
  halfEquivalencePointsOf,
} from '../points/equivalence-points.js';
import type { InflectionPoint } from '../points/inflection-points.js';
import { stepsPresent, stoichiometricVolumes } from '../points/stoichiometric-volumes.js';
import type { CurvePoint } from '../sampling/curve.js';
import { titrationLimits } from '../titration-limits.js';
import { type BoilOut, boiledOut } from './boil-out.js';
import type { CurveModel } from './curve-model.js';
import { idealModel } from './ideal-model.js';
import type { MixtureModel } from './mixture-model.js';
import { realModel } from './real-model.js';

/** A stretch of a titration without interruption: from one volume (exclusive, but for 0) to another. */
export interface Segment {
  readonly from: number;
  readonly upTo: number;
  /** Both count volumes from the start of the segment. */
  readonly mixture: MixtureModel;
  readonly curveModel: CurveModel;
  /** States (stoichiometric-volumes.ts) passed in earlier segments: a boil-out may bring their volumes back. */
  readonly passed: ReadonlySet<number>;
}

function segmentOf(
  mixture: MixtureModel,
  from: number,
  upTo: number,
  before: readonly Segment[] = [],
): Segment {
  const plain = isIdeal(mixture.system) && !mixture.system.escape;
  return {
    from,
    upTo,
    mixture,
    curveModel: plain ? idealModel(mixture) : realModel(mixture),
    passed: new Set(before.flatMap(statesWithin)),
  };
}

/** One segment, or two where the analyte is boiled out. @internal */
export function segmentsOf(
  mixture: MixtureModel,
  solutions: readonly Solution[],
  boilOut: Required<BoilOut> | null,
): Segment[] {
  const { mL: most } = titrationLimits;
  if (!boilOut) return [segmentOf(mixture, 0, most)];
  const first = segmentOf(mixture, 0, boilOut.mL);
  return [
    first,
    segmentOf(boiledOut(mixture, first.curveModel, solutions, boilOut), boilOut.mL, most, [first]),
  ];
}

const statesWithin = (segment: Segment): number[] =>
  stoichiometricVolumes(segment.mixture, stepsPresent(segment.mixture))
    .filter(({ mL }) => segment.from + mL <= segment.upTo)
    .flatMap(({ states }) => states);

/** The points of a segment, at volumes counted from the start of the titration. @internal */
export function pointsOfSegment(segment: Segment): {
  readonly equivalence: EquivalencePoint[];
  readonly halfEquivalence: CurvePoint[];
  readonly inflections: InflectionPoint[];
} {
  const { mixture, curveModel, from } = segment;
  const order = stepsPresent(mixture);
  const volumes = stoichiometricVolumes(mixture, order);
  const again = volumes.filter(({ states }) => states.every((state) => segment.passed.has(state)));
  const isNew = (point: CurvePoint) => !again.some(({ mL }) => mL === point.mL);
  const inflections = curveModel.inflections().filter(({ mL }) => reaches(segment, mL));
  const within = <Point extends CurvePoint>(points: readonly Point[]) =>
    points.filter(({ mL }) => reaches(segment, mL)).map((solved) => ({ ...solved, mL: solved.mL + from }));
  return {
    equivalence: within(
      equivalencePointsOf(mixture, curveModel, order, volumes, inflections).filter(isNew),
    ).map((point) => ({
      ...point,
      inflection: point.inflection && { ...point.inflection, mL: point.inflection.mL + from },
    })),
    halfEquivalence: within(halfEquivalencePointsOf(curveModel, volumes)),
    inflections: within(inflections),
  };
}

const reaches = ({ from, upTo }: Segment, mL: number) => mL > 0 && from + mL <= upTo;

/** The segments of a titration as one curve. @internal */
export function joinSegments(segments: readonly Segment[]): CurveModel {
  const [only] = segments;
  if (only && segments.length === 1) return only.curveModel;
  const at = <T>(mL: number, ask: (curveModel: CurveModel, own: number) => T): T => {
    const { curveModel, from } = segments.find(({ upTo }) => mL <= upTo) ?? (segments.at(-1) as Segment);
    return ask(curveModel, mL - from);
  };
  const pHAt = (mL: number): PH => at(mL, (curveModel, own) => curveModel.pHAt(own));
  return {
    pHAt,
    pHs(volumes, out) {
      for (let k = 0; k < volumes.length; k += 1) out[k] = pHAt(numberAt(volumes, k));
    },
    pointAt: (mL) => ({ ...at(mL, (curveModel, own) => curveModel.pointAt(own)), mL }),
    curveAt(mL) {
      const points = mL.map((volume) => at(volume, (curveModel, own) => curveModel.pointAt(own)));
      return { mL, pH: points.map(({ pH }) => pH), slope: points.map(({ slope }) => slope) };
    },
    volumesAt: (pH) =>
      segments.flatMap((segment) =>
        segment.curveModel
          .volumesAt(pH)
          .filter((mL) => reaches(segment, mL) || segment.from + mL === 0)
          .map((mL) => mL + segment.from),
      ),
    jumps: () =>
      segments.flatMap((segment) =>
        segment.curveModel
          .jumps()
          .filter(({ mL }) => reaches(segment, mL))
          .map((jump) => ({ ...jump, mL: jump.mL + segment.from })),
      ),
    inflections: () => segments.flatMap((segment) => pointsOfSegment(segment).inflections),
    curveUpTo(end, maxStep) {
      const curve = { mL: [] as number[], pH: [] as PH[], slope: [] as number[] };
      for (const { from, upTo, curveModel } of segments) {
        if (from >= end) break;
        const part = curveModel.curveUpTo(Math.min(end, upTo) - from, maxStep);
        const start = from === 0 ? 0 : 1; // where a segment begins, the one before it ends
        curve.mL.push(...part.mL.slice(start).map((mL) => mL + from));
        curve.pH.push(...part.pH.slice(start));
        curve.slope.push(...part.slope.slice(start));
      }
      return curve;
    },
    columnAt: (mL) => at(mL, (curveModel, own) => curveModel.columnAt(own)),
  };
}
