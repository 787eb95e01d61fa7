import type { PH } from '../equilibrium/quantities.js';
import { isIdeal } from '../equilibrium/setting.js';
import type { Solution } from '../solution/solution.js';
import { type BoilOut, boiledOut } from './boil-out.js';
import type { Course } from './course.js';
import type { CurvePoint } from './curve.js';
import type { Engine } from './engine.js';
import { type EquivalencePoint, equivalencePointsOf, halfEquivalencePointsOf } from './equivalence-points.js';
import { idealCourse } from './ideal-course.js';
import type { InflectionPoint } from './inflection-points.js';
import { titrationLimits } from './limits.js';
import { realCourse } from './real-course.js';
import { stateVolumes, stepsPresent } from './state-volumes.js';

/** A stretch of a titration without interruption: from one volume (exclusive, but for 0) to another. */
export interface Leg {
  readonly from: number;
  readonly upTo: number;
  /** Both count volumes from the start of the leg. */
  readonly engine: Engine;
  readonly course: Course;
  /** States (state-volumes.ts) that the legs before have passed: a boil-out may bring their volumes back. */
  readonly passed: ReadonlySet<number>;
}

function legOf(engine: Engine, from: number, upTo: number, before: readonly Leg[] = []): Leg {
  const plain = isIdeal(engine.setting) && !engine.setting.escape;
  return {
    from,
    upTo,
    engine,
    course: plain ? idealCourse(engine) : realCourse(engine),
    passed: new Set(before.flatMap(statesWithin)),
  };
}

/** One leg, or two where the analyte is boiled out. @internal */
export function legsOf(
  engine: Engine,
  solutions: readonly Solution[],
  boilOut: Required<BoilOut> | null,
): Leg[] {
  const { mL: most } = titrationLimits;
  if (!boilOut) return [legOf(engine, 0, most)];
  const first = legOf(engine, 0, boilOut.mL);
  return [first, legOf(boiledOut(engine, first.course, solutions, boilOut), boilOut.mL, most, [first])];
}

const statesWithin = (leg: Leg): number[] =>
  stateVolumes(leg.engine, stepsPresent(leg.engine))
    .filter(({ mL }) => leg.from + mL <= leg.upTo)
    .flatMap(({ states }) => states);

/** The points of a leg, at volumes counted from the start of the titration. @internal */
export function pointsOf(leg: Leg): {
  readonly equivalence: EquivalencePoint[];
  readonly halfEquivalence: CurvePoint[];
  readonly inflections: InflectionPoint[];
} {
  const { engine, course, from } = leg;
  const order = stepsPresent(engine);
  const volumes = stateVolumes(engine, order);
  const again = volumes.filter(({ states }) => states.every((state) => leg.passed.has(state)));
  const isNew = (point: CurvePoint) => !again.some(({ mL }) => mL === point.mL);
  const inflections = course.inflections().filter(({ mL }) => reaches(leg, mL));
  const within = <Point extends CurvePoint>(points: readonly Point[]) =>
    points.filter(({ mL }) => reaches(leg, mL)).map((point) => ({ ...point, mL: point.mL + from }));
  return {
    equivalence: within(equivalencePointsOf(engine, course, order, volumes, inflections).filter(isNew)).map(
      (point) => ({
        ...point,
        inflection: point.inflection && { ...point.inflection, mL: point.inflection.mL + from },
      }),
    ),
    halfEquivalence: within(halfEquivalencePointsOf(course, volumes)),
    inflections: within(inflections),
  };
}

const reaches = ({ from, upTo }: Leg, mL: number) => mL > 0 && from + mL <= upTo;

/** The legs of a titration as one curve. @internal */
export function joined(legs: readonly Leg[]): Course {
  const [only] = legs;
  if (only && legs.length === 1) return only.course;
  const at = <T>(mL: number, ask: (course: Course, own: number) => T): T => {
    const { course, from } = legs.find(({ upTo }) => mL <= upTo) ?? (legs.at(-1) as Leg);
    return ask(course, mL - from);
  };
  const pHAt = (mL: number): PH => at(mL, (course, own) => course.pHAt(own));
  return {
    pHAt,
    pHs(volumes, out) {
      for (let k = 0; k < volumes.length; k += 1) out[k] = pHAt(volumes[k] as number);
    },
    pointAt: (mL) => ({ ...at(mL, (course, own) => course.pointAt(own)), mL }),
    curveAt(mL) {
      const points = mL.map((volume) => at(volume, (course, own) => course.pointAt(own)));
      return { mL, pH: points.map(({ pH }) => pH), slope: points.map(({ slope }) => slope) };
    },
    volumesAt: (pH) =>
      legs.flatMap((leg) =>
        leg.course
          .volumesAt(pH)
          .filter((mL) => reaches(leg, mL) || leg.from + mL === 0)
          .map((mL) => mL + leg.from),
      ),
    inflections: () => legs.flatMap((leg) => pointsOf(leg).inflections),
    curveUpTo(end, maxStep) {
      const curve = { mL: [] as number[], pH: [] as PH[], slope: [] as number[] };
      for (const { from, upTo, course } of legs) {
        if (from >= end) break;
        const own = course.curveUpTo(Math.min(end, upTo) - from, maxStep);
        const start = from === 0 ? 0 : 1; // where a leg begins, the one before it ends
        curve.mL.push(...own.mL.slice(start).map((mL) => mL + from));
        curve.pH.push(...own.pH.slice(start));
        curve.slope.push(...own.slope.slice(start));
      }
      return curve;
    },
    columnAt: (mL) => at(mL, (course, own) => course.columnAt(own)),
  };
}
