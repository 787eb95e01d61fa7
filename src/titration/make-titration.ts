import { constantsInUse } from '../equilibrium/constants-in-use.js';
import { equilibriumAndSolids, equilibriumOf } from '../equilibrium/equilibrate.js';
import type { PH } from '../equilibrium/quantities.js';
import { systemOf } from '../equilibrium/system.js';
import { frozen } from '../frozen.js';
import { withView } from '../frozen-with-view.js';
import { Faults } from '../input/faults.js';
import { once } from '../once.js';
import { partOf } from '../solution/aliquot.js';
import { mixtureOf } from '../solution/mix.js';
import { totalsOf } from '../solution/totals.js';
import type { CurveModel } from './model/curve-model.js';
import { mixtureModelOf } from './model/mixture-model.js';
import { joinSegments, pointsOfSegment, segmentsOf } from './model/segments.js';
import type { ReadSetup } from './read-setup.js';
import { type Additions, type Curve, readAdditions, readVolume, readVolumes } from './sampling/curve.js';
import { jumpAt } from './sampling/jump-at.js';
import { sampleCurve } from './sampling/sample-curve.js';
import type { Titration } from './titration.js';
import { titrationLimits } from './titration-limits.js';
import { titrationNotes } from './titration-notes.js';
import { viewTitration } from './view-titration.js';

/** The titration of a setup that has been read. @internal */
export function makeTitration({ analyte, titrant, inUse, boilOut }: ReadSetup): Titration {
  const system = systemOf([analyte, titrant], inUse);
  const segments = segmentsOf(mixtureModelOf(system), [analyte, titrant], boilOut);
  const curveModel = joinSegments(segments);
  const points = once(() => {
    const ofSegments = segments.map(pointsOfSegment);
    return frozen({
      equivalence: ofSegments.flatMap(({ equivalence }) => equivalence),
      halfEquivalence: ofSegments.flatMap(({ halfEquivalence }) => halfEquivalence),
      inflections: ofSegments.flatMap(({ inflections }) => inflections),
    });
  });
  const contentsAt = (mL: number) => {
    const mixed = mL > 0 ? mixtureOf([analyte, partOf(titrant, mL)]) : analyte;
    return [system, curveModel.columnAt(mL), totalsOf(mixed), mixed] as const;
  };
  const notes = once(() =>
    frozen(
      titrationNotes({ system, curveModel, analyte }, points(), (mL) =>
        equilibriumAndSolids(...contentsAt(mL)),
      ),
    ),
  );
  const titration: Titration = {
    setup: frozen({ analyte, titrant, conditions: inUse.given, ...(boilOut ? { boilOut } : {}) }),
    constants: frozen(constantsInUse(system)),
    pHAt: (mL) => curveModel.pHAt(read('pHAt', mL)),
    slopeAt: (mL) => curveModel.pointAt(read('slopeAt', mL)).slope,
    jumpAt: (mL, options) => jumpAt(curveModel, mL, options),
    equilibriumAt: (mL) => equilibriumOf(...contentsAt(read('equilibriumAt', mL))),
    volumeAt: (pH) => volumesAt(curveModel, pH, 'volumeAt')[0] ?? null,
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
    curve: (additions) => frozenColumns(curve(curveModel, additions)),
  };
  return Object.freeze(withView(titration, viewTitration));
}

function curve(curveModel: CurveModel, additions: Additions): Curve {
  const faults = new Faults('curve');
  const read = readAdditions(additions, faults);
  faults.done();
  return sampleCurve(curveModel, read);
}

/** A curve made unchangeable: its columns hold numbers, which need no look. */
function frozenColumns(curve: Curve): Curve {
  for (const column of Object.values(curve)) Object.freeze(column);
  return Object.freeze(curve);
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
      `a Float64Array with room for ${list.length} numbers`,
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
