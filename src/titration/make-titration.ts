import { notesOnCapacity } from '../equilibrium/activity/notes-on-strength.js';
import { constantsInUse } from '../equilibrium/constants-in-use.js';
import { type Equilibrium, equilibriumOf } from '../equilibrium/equilibrate.js';
import { noteOnSolid, type Precipitate, precipitatesOf } from '../equilibrium/precipitates.js';
import type { PH } from '../equilibrium/quantities.js';
import { type System, systemOf } from '../equilibrium/system.js';
import { Faults } from '../errors.js';
import { frozen } from '../frozen.js';
import { once } from '../once.js';
import { partOf } from '../solution/aliquot.js';
import { mixtureOf } from '../solution/mix.js';
import { totalsOf } from '../solution/totals.js';
import { printFormula } from '../substance/print-formula.js';
import type { CurveModel } from './model/curve-model.js';
import { mixtureModelOf } from './model/mixture-model.js';
import { joinSegments, pointsOfSegment, segmentsOf } from './model/segments.js';
import { whyNoPoint } from './points/why-no-point.js';
import type { ReadSetup } from './read-setup.js';
import { readAdditions, readVolume, readVolumes } from './sampling/curve.js';
import { jumpAt } from './sampling/jump-at.js';
import { sampleCurve } from './sampling/sample-curve.js';
import { usualLastVolume } from './sampling/usual-last-volume.js';
import type { Titration } from './titration.js';
import { titrationLimits } from './titration-limits.js';

/** The titration of a setup that has been read. @internal */
export function makeTitration({ analyte, titrant, inUse, boilOut }: ReadSetup): Titration {
  const system = systemOf([analyte, titrant], inUse);
  const segments = segmentsOf(mixtureModelOf(system), [analyte, titrant], boilOut);
  const curveModel = joinSegments(segments);
  const points = once(() => {
    const ofLegs = segments.map(pointsOfSegment);
    return frozen({
      equivalence: ofLegs.flatMap(({ equivalence }) => equivalence),
      halfEquivalence: ofLegs.flatMap(({ halfEquivalence }) => halfEquivalence),
      inflections: ofLegs.flatMap(({ inflections }) => inflections),
    });
  });
  const equilibriumAt = (mL: number): Equilibrium => {
    const mixed = mL > 0 ? mixtureOf([analyte, partOf(titrant, mL)]) : analyte;
    return frozen(equilibriumOf(system, curveModel.columnAt(mL), totalsOf(mixed), mixed));
  };
  const notes = once(() => {
    const { equivalence, halfEquivalence } = points();
    const volumes = [0, ...equivalence.map(({ mL }) => mL), usualLastVolume(equivalence, analyte)];
    const states = volumes.map(equilibriumAt);
    const strongest = states.reduce((most, one) => (one.ionicStrength > most.ionicStrength ? one : most));
    const ofOne = precipitatesOf(strongest).map((solid) => noteOnSolid(solid));
    const halfWay = halfEquivalence.map(({ mL }) => equilibriumAt(mL));
    const buffered = [...states.slice(0, 1), ...halfWay].map(({ bufferCapacity }) => bufferCapacity);
    return frozen([
      ...new Set([
        ...(equivalence.length === 0 ? [whyNoPoint(curveModel, inUse.pKw / 2)] : []),
        ...strongest.notes.filter((note) => !ofOne.includes(note)),
        ...notesOnCapacity(...buffered),
        ...notesOnSolids(volumes, states),
        ...notesOnGas(system),
      ]),
    ]);
  });
  return Object.freeze<Titration>({
    setup: frozen({ analyte, titrant, conditions: inUse.given, ...(boilOut ? { boilOut } : {}) }),
    constants: frozen(constantsInUse(system)),
    pHAt: (mL) => curveModel.pHAt(read('pHAt', mL)),
    slopeAt: (mL) => curveModel.pointAt(read('slopeAt', mL)).slope,
    jumpAt: (mL, options) => jumpAt(curveModel, mL, options),
    equilibriumAt: (mL) => equilibriumAt(read('equilibriumAt', mL)),
    volumeAt: (pH) => volumesAt(curveModel, pH, 'volumeAt')[0],
    volumesAt: (pH) => frozen(volumesAt(curveModel, pH, 'volumesAt')),
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
      return notes();
    },
    pHs: (volumes, out) => pHs(curveModel, volumes, out),
    curve: (additions) => frozen(sampleCurve(curveModel, readAdditions(additions))),
  });
}

/** Of every solid that may fall out at one of the volumes, a note on where it is most in excess. */
function notesOnSolids(volumes: readonly number[], states: readonly Equilibrium[]): string[] {
  const worst = new Map<string, { found: Precipitate; mL: number }>();
  for (const [k, state] of states.entries())
    for (const found of precipitatesOf(state)) {
      const before = worst.get(found.solid.name);
      if (!before || found.excess > before.found.excess)
        worst.set(found.solid.name, { found, mL: volumes[k] as number });
    }
  return [...worst.values()].map(({ found, mL }) => noteOnSolid(found, ` (here at ${mL.toFixed(2)} mL)`));
}

/** What the exchange of carbon dioxide means for the points of the curve. */
function notesOnGas({ gas, escape: leaving }: System): string[] {
  const [, ion] = (gas?.protolyte.species ?? []).map(({ formula }) => printFormula(formula));
  if (ion) return [`Open to carbon dioxide at a fixed pressure: points that rest on ${ion} do not exist.`];
  return leaving && leaving.share > 0
    ? ['Equivalence points count the carbon dioxide that has escaped as if it were still there.']
    : [];
}

function read(call: string, mL: unknown): number {
  const faults = new Faults(call);
  const checked = readVolume(mL, 'mL', faults);
  faults.done();
  return checked;
}

function volumesAt(curveModel: CurveModel, pH: PH, call: string): number[] {
  const faults = new Faults(call);
  const checked = faults.number(pH, 'pH', 'a pH', titrationLimits.pH);
  faults.done();
  return curveModel.volumesAt(checked);
}

function pHs(curveModel: CurveModel, volumes: ArrayLike<number>, out?: Float64Array): Float64Array {
  const faults = new Faults('pHs');
  const list = readVolumes(volumes, 'volumes', faults);
  if (out !== undefined && !(ArrayBuffer.isView(out) && out instanceof Float64Array))
    faults.add('wrong-type', 'out', 'a Float64Array', out);
  else if (out !== undefined && out.length < list.length)
    faults.add(
      'out-of-range',
      'out',
      `one with room for ${list.length} numbers`,
      out,
      `a Float64Array of ${out.length}`,
    );
  faults.done();

  const result = out ?? new Float64Array(list.length);
  curveModel.pHs(overlaps(list, result) ? Float64Array.from(list) : list, result);
  return result;
}

/** Whether writing a result may change a volume that is still to be read. */
const overlaps = (volumes: ArrayLike<number>, result: Float64Array): boolean =>
  ArrayBuffer.isView(volumes) && volumes.buffer === result.buffer;
