import { type Conditions, readConditions, readGas, type Settled } from '../equilibrium/conditions.js';
import { type Equilibrium, equilibriumOf } from '../equilibrium/equilibrate.js';
import type { PH } from '../equilibrium/quantities.js';
import { type Setting, settingOf } from '../equilibrium/setting.js';
import { at, Faults } from '../errors.js';
import { partOf } from '../solution/aliquot.js';
import { mixtureOf } from '../solution/mix.js';
import { readSolutions } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import { totalsOf } from '../solution/totals.js';
import { printFormula } from '../substance/print-formula.js';
import { type BoilOut, boiledOut, readBoilOut } from './boil-out.js';
import type { Course } from './course.js';
import {
  type Additions,
  type Curve,
  type CurvePoint,
  readAdditions,
  readVolume,
  readVolumes,
} from './curve.js';
import { curveOf } from './curve-of.js';
import { type Engine, engineOf } from './engine.js';
import type { EquivalencePoint } from './equivalence-points.js';
import type { InflectionPoint } from './inflection-points.js';
import { joined, type Leg, legOf, pointsOf } from './leg.js';
import { titrationLimits } from './limits.js';
import { usualEnd } from './usual-end.js';

/** What is titrated with what. */
export interface TitrationSetup {
  /** In the beaker; its volume counts. */
  readonly analyte: Solution;
  /** In the burette; its volume sets no limit. */
  readonly titrant: Solution;
  readonly conditions?: Conditions;
  /** The analyte is boiled after a volume of titrant, and CO2 leaves it: a step in the curve there. */
  readonly boilOut?: BoilOut;
}

/** A titration that has been set up: ask it for any volume or pH. Volumes are mL of titrant added in all. */
export interface Titration {
  readonly setup: TitrationSetup;
  /** pH after `mL` of titrant. */
  pHAt(mL: number): PH;
  /** dpH/dV after `mL` of titrant, per mL, dilution included. */
  slopeAt(mL: number): number;
  /** pH at `mL + within` less pH at `mL − within` (0.05 mL by default): what one drop to either side makes of it. */
  jumpAt(mL: number, options?: { readonly within?: number }): number;
  /** Every species after `mL` of titrant. */
  equilibriumAt(mL: number): Equilibrium;
  /** The volume at which the curve has this pH, mL; undefined where it never has. */
  volumeAt(pH: PH): number | undefined;
  /** All volumes at which the curve has this pH. */
  volumesAt(pH: PH): number[];
  /** Stoichiometric points in order of volume. */
  readonly equivalencePoints: readonly EquivalencePoint[];
  /** Half-way between stoichiometric points, where the two forms of a pair balance. */
  readonly halfEquivalencePoints: readonly CurvePoint[];
  /** Every point where the curve changes from bending one way to the other, in order of volume. */
  readonly inflectionPoints: readonly InflectionPoint[];
  /** What is uncertain, or what a reader of the curve should know. */
  readonly notes: readonly string[];
  /** pH at many volumes, into `out` where it is given. */
  pHs(volumes: ArrayLike<number>, out?: Float64Array): Float64Array;
  /** The curve as columns. */
  curve(additions: Additions): Curve;
}

/** What `titrate` takes for granted: `within`, mL, to either side of a jump (a drop of a burette). */
export const titrationDefaults = { within: 0.05 } as const;

/**
 * Sets up a titration: the whole predicted curve of any mixture of acids, bases and their salts with any other.
 *
 *   F(h, V) = A(h) + V·T(h) = 0                                                                        (1)
 *   V(pH) = −A/T,   dpH/dV = T / (β·(V₀ + V))                                                          (2)
 *
 * with A and T the net charge of the analyte and of one mL of titrant at one pH. pH at a volume is found by
 * iteration, volume at a pH is explicit: by default the solution is ideal, at 25 °C and closed to the air. With a model of
 * activity, or with CO2 that escapes, the curve may turn and both are found by iteration. Volumes are additive.
 *
 * @throws InputError that lists every fault, here and from each of the methods
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * titration.equivalencePoints.map(({ reaction }) => reaction); // => ['CO₃²⁻ + H⁺ → HCO₃⁻', 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O']
 * titration.pHAt(10); // => 8.34
 * ```
 */
export function titrate(setup: TitrationSetup): Titration {
  const faults = new Faults('titrate');
  const read = readSetup(setup, '', faults);
  faults.done();
  return titrationOf(read);
}

/** A setup that has been read. */
export interface ReadSetup {
  readonly analyte: Solution;
  readonly titrant: Solution;
  readonly settled: Settled;
  readonly boilOut: Required<BoilOut> | null;
}

/** Reads a setup from a caller's value, noting every fault. @internal */
export function readSetup(value: unknown, path: string, faults: Faults): ReadSetup {
  const unread = faults.object(value, path, 'a setup { analyte, titrant }', [
    'analyte',
    'titrant',
    'conditions',
    'boilOut',
  ]);
  const [analyte, titrant] = readSolutions(
    [
      { value: unread.analyte, path: at(path, 'analyte') },
      { value: unread.titrant, path: at(path, 'titrant') },
    ],
    faults,
  ) as [Solution, Solution];
  const settled = readConditions(unread.conditions, at(path, 'conditions'), faults);
  const boilOut = readBoilOut(unread.boilOut, at(path, 'boilOut'), faults);
  readBoilOutUnder(settled, boilOut, at(path, 'boilOut'), faults);
  readGas([analyte, titrant], settled, at(path, 'conditions'), faults);
  return { analyte, titrant, settled, boilOut };
}

/** Notes a fault where a beaker that is open to the air is boiled out. @internal */
export function readBoilOutUnder(
  { carbonDioxide }: Settled,
  boilOut: BoilOut | null,
  path: string,
  faults: Faults,
): void {
  if (boilOut && carbonDioxide && carbonDioxide.escape === undefined)
    faults.add('conflict', path, 'no boil-out beside an analyte that is open to the air', boilOut);
}

/** The titration of a setup that has been read. @internal */
export function titrationOf({ analyte, titrant, settled, boilOut }: ReadSetup): Titration {
  const setting = settingOf([analyte, titrant], settled);
  const legs = legsOf(engineOf(setting), [analyte, titrant], boilOut);
  const course = joined(legs);
  const points = once(() => {
    const ofLegs = legs.map(pointsOf);
    return {
      equivalence: ofLegs.flatMap(({ equivalence }) => equivalence),
      halfEquivalence: ofLegs.flatMap(({ halfEquivalence }) => halfEquivalence),
      inflections: ofLegs.flatMap(({ inflections }) => inflections),
    };
  });
  const equilibriumAt = (mL: number): Equilibrium => {
    const mixed = mL > 0 ? mixtureOf([analyte, partOf(titrant, mL)]) : analyte;
    return equilibriumOf(setting, course.columnAt(mL), totalsOf(mixed), mixed);
  };
  const titration: Titration = {
    setup: { analyte, titrant, conditions: settled.conditions, ...(boilOut ? { boilOut } : {}) },
    pHAt: (mL) => course.pHAt(read('pHAt', mL)),
    slopeAt: (mL) => course.pointAt(read('slopeAt', mL)).slope,
    jumpAt: (mL, options) => jumpAt(course, mL, options),
    equilibriumAt: (mL) => equilibriumAt(read('equilibriumAt', mL)),
    volumeAt: (pH) => volumesAt(course, pH, 'volumeAt')[0],
    volumesAt: (pH) => volumesAt(course, pH, 'volumesAt'),
    get equivalencePoints() {
      return points().equivalence;
    },
    get halfEquivalencePoints() {
      return points().halfEquivalence;
    },
    get inflectionPoints() {
      return points().inflections;
    },
    get notes() {
      const { equivalence } = points();
      const volumes = [0, ...equivalence.map(({ mL }) => mL), usualEnd(equivalence, analyte)];
      const strongest = volumes
        .map(equilibriumAt)
        .reduce((most, one) => (one.ionicStrength > most.ionicStrength ? one : most));
      return [...strongest.notes, ...notesOnGas(setting)];
    },
    pHs: (volumes, out) => pHs(course, volumes, out),
    curve: (additions) => curveOf(course, readAdditions(additions)),
  };
  return titration;
}

function legsOf(engine: Engine, solutions: readonly Solution[], boilOut: Required<BoilOut> | null): Leg[] {
  const { mL: most } = titrationLimits;
  if (!boilOut) return [legOf(engine, 0, most)];
  const first = legOf(engine, 0, boilOut.mL);
  return [first, legOf(boiledOut(engine, first.course, solutions, boilOut), boilOut.mL, most, [first])];
}

/** What the exchange of carbon dioxide means for the points of the curve. */
function notesOnGas({ gas, escape: leaving }: Setting): string[] {
  const [, ion] = (gas?.protolyte.species ?? []).map(({ formula }) => printFormula(formula));
  if (ion) return [`Open to carbon dioxide at a fixed pressure: points that rest on ${ion} do not exist.`];
  return leaving && leaving.share > 0
    ? ['Equivalence points count the carbon dioxide that has escaped as if it were still there.']
    : [];
}

/** Worked out when first asked for. */
function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function read(call: string, mL: unknown): number {
  const faults = new Faults(call);
  const checked = readVolume(mL, 'mL', faults);
  faults.done();
  return checked;
}

function jumpAt(course: Course, mL: number, options?: { readonly within?: number }): number {
  const faults = new Faults('jumpAt');
  const middle = readVolume(mL, 'mL', faults);
  const unread =
    options === undefined ? {} : faults.object(options, 'options', 'options { within }', ['within']);
  const within =
    unread.within === undefined
      ? titrationDefaults.within
      : faults.number(unread.within, 'options.within', 'a volume in mL', {
          above: 0,
          to: titrationLimits.mL,
        });
  if (!faults.any && middle - within < 0)
    faults.add(
      'out-of-range',
      'mL',
      `a volume of at least ${within} mL, so that there is a point before it`,
      mL,
    );
  if (!faults.any) readVolume(middle + within, 'mL + within', faults);
  faults.done();
  return course.pHAt(middle + within) - course.pHAt(middle - within);
}

function volumesAt(course: Course, pH: PH, call: string): number[] {
  const faults = new Faults(call);
  const checked = faults.number(pH, 'pH', 'a pH', titrationLimits.pH);
  faults.done();
  return course.volumesAt(checked);
}

function pHs(course: Course, volumes: ArrayLike<number>, out?: Float64Array): Float64Array {
  const faults = new Faults('pHs');
  const list = readVolumes(volumes, 'volumes', faults);
  if (out !== undefined && !(ArrayBuffer.isView(out) && out instanceof Float64Array))
    faults.add('wrong-type', 'out', 'a Float64Array', out);
  else if (out !== undefined && out.length < list.length)
    faults.add('out-of-range', 'out', `room for ${list.length} numbers`, out, `room for ${out.length}`);
  faults.done();

  const result = out ?? new Float64Array(list.length);
  course.pHs(list, result);
  return result;
}
