import { type Conditions, readConditions } from '../equilibrium/conditions.js';
import { type Equilibrium, equilibriumOf } from '../equilibrium/equilibrate.js';
import type { PH } from '../equilibrium/quantities.js';
import { settingOf } from '../equilibrium/setting.js';
import { Faults } from '../errors.js';
import { partOf } from '../solution/aliquot.js';
import { mixtureOf } from '../solution/mix.js';
import { readSolutions } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import {
  type Additions,
  type Curve,
  type CurvePoint,
  readAdditions,
  readVolume,
  readVolumes,
} from './curve.js';
import { curveOf } from './curve-of.js';
import { type Engine, engineOf, hAt, slopeAt, volumeAt } from './engine.js';
import { type EquivalencePoint, equivalencePointsOf, halfEquivalencePointsOf } from './equivalence-points.js';
import { type InflectionPoint, inflectionsOf } from './inflection-points.js';
import { titrationLimits } from './limits.js';
import { writePHs } from './p-hs.js';
import { stateVolumes, stepsPresent } from './state-volumes.js';

/** What is titrated with what. */
export interface TitrationSetup {
  /** In the beaker; its volume counts. */
  readonly analyte: Solution;
  /** In the burette; its volume sets no limit. */
  readonly titrant: Solution;
  readonly conditions?: Conditions;
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
 * iteration, volume at a pH is explicit. Assumes an ideal solution at 25 °C, closed to the air, with additive volumes.
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
 * titration.equivalencePoints.map(({ reaction }) => reaction); // => ['CO₃²⁻ + H⁺ → HCO₃⁻', 'HCO₃⁻ + H⁺ → CO₂(aq)']
 * titration.pHAt(10); // => 8.34
 * ```
 */
export function titrate(setup: TitrationSetup): Titration {
  const faults = new Faults('titrate');
  const unread = faults.object(setup, '', 'a setup { analyte, titrant }', [
    'analyte',
    'titrant',
    'conditions',
  ]);
  const [analyte, titrant] = readSolutions(
    [
      { value: unread.analyte, path: 'analyte' },
      { value: unread.titrant, path: 'titrant' },
    ],
    faults,
  ) as [Solution, Solution];
  const conditions = readConditions(unread.conditions, 'conditions', faults);
  faults.done();

  const engine = engineOf(settingOf([analyte, titrant], conditions));
  const start = once(() => -Math.log10(hAt(engine, 0)));
  const points = once(() => pointsOf(engine));
  return {
    setup: { analyte, titrant, conditions },
    pHAt: (mL) => -Math.log10(hAt(engine, read('pHAt', mL))),
    slopeAt: (mL) => slopeAt(engine, read('slopeAt', mL), hAt(engine, mL)),
    jumpAt: (mL, options) => jumpAt(engine, mL, options),
    equilibriumAt: (mL) => equilibriumOf(solutionAt(analyte, titrant, read('equilibriumAt', mL)), conditions),
    volumeAt: (pH) => volumesAt(engine, start(), pH, 'volumeAt')[0],
    volumesAt: (pH) => volumesAt(engine, start(), pH, 'volumesAt'),
    get equivalencePoints() {
      return points().equivalence;
    },
    get halfEquivalencePoints() {
      return points().halfEquivalence;
    },
    get inflectionPoints() {
      return points().inflections;
    },
    pHs: (volumes, out) => pHs(engine, volumes, out),
    curve: (additions) => curveOf(engine, readAdditions(additions)),
  };
}

/** What is in the beaker after `mL` of titrant. */
const solutionAt = (analyte: Solution, titrant: Solution, mL: number): Solution =>
  mixtureOf(mL > 0 ? [analyte, partOf(titrant, mL)] : [analyte]);

/** Worked out when first asked for. */
function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function pointsOf(engine: Engine) {
  const order = stepsPresent(engine);
  const volumes = stateVolumes(engine, order);
  const inflections = inflectionsOf(engine);
  return {
    equivalence: equivalencePointsOf(engine, order, volumes, inflections),
    halfEquivalence: halfEquivalencePointsOf(engine, volumes),
    inflections,
  };
}

function read(call: string, mL: unknown): number {
  const faults = new Faults(call);
  const checked = readVolume(mL, 'mL', faults);
  faults.done();
  return checked;
}

function jumpAt(engine: Engine, mL: number, options?: { readonly within?: number }): number {
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
  return Math.log10(hAt(engine, middle - within)) - Math.log10(hAt(engine, middle + within));
}

function volumesAt(engine: Engine, start: PH, pH: PH, call: string): number[] {
  const faults = new Faults(call);
  const checked = faults.number(pH, 'pH', 'a pH', titrationLimits.pH);
  faults.done();
  if (checked === start) return [0]; // where A is zero but for rounding
  const mL = volumeAt(engine, 10 ** -checked);
  return mL >= 0 && mL <= titrationLimits.mL ? [mL] : [];
}

function pHs(engine: Engine, volumes: ArrayLike<number>, out?: Float64Array): Float64Array {
  const faults = new Faults('pHs');
  const list = readVolumes(volumes, 'volumes', faults);
  if (out !== undefined && !(ArrayBuffer.isView(out) && out instanceof Float64Array))
    faults.add('wrong-type', 'out', 'a Float64Array', out);
  else if (out !== undefined && out.length < list.length)
    faults.add('out-of-range', 'out', `room for ${list.length} numbers`, out.length);
  faults.done();

  return writePHs(engine, list, out ?? new Float64Array(list.length));
}
