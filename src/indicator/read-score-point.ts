import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import type { InflectionPoint } from '../titration/points/inflection-points.js';
import type { CurvePoint } from '../titration/sampling/curve.js';
import { titrationLimits } from '../titration/titration-limits.js';

/** Reads an equivalence point from a caller's value, noting every fault. @internal */
export function readPoint(value: unknown, path: string, faults: Faults): EquivalencePoint {
  const keys = ['mL', 'pH', 'slope', 'reaction', 'inflection'];
  const unread = faults.object(value, path, 'an equivalence point of a titration', keys);
  return {
    ...readCurvePoint(unread, path, faults),
    reaction: faults.text(unread.reaction, `${path}.reaction`, 'a reaction', 1000),
    inflection:
      unread.inflection === null ? null : readInflection(unread.inflection, `${path}.inflection`, faults),
  };
}

function readInflection(value: unknown, path: string, faults: Faults): InflectionPoint {
  const unread = faults.object(value, path, 'an inflection point, or null', ['mL', 'pH', 'slope', 'kind']);
  const { kind } = unread;
  if (kind !== 'steepest' && kind !== 'flattest')
    faults.add(
      kind === undefined ? 'missing' : 'wrong-type',
      `${path}.kind`,
      "'steepest' or 'flattest'",
      kind,
    );
  return { ...readCurvePoint(unread, path, faults), kind: kind as InflectionPoint['kind'] };
}

function readCurvePoint(unread: Unread, path: string, faults: Faults): CurvePoint {
  const { leastML, mL: most } = titrationLimits;
  return {
    mL: faults.number(unread.mL, `${path}.mL`, 'a volume in mL', { from: leastML, to: most }),
    pH: faults.number(unread.pH, `${path}.pH`, 'a pH', titrationLimits.pH),
    slope: faults.number(unread.slope, `${path}.slope`, 'a slope of pH per mL'),
  };
}
