import { Faults, type Unread } from '../errors.js';
import type { CurvePoint } from '../titration/curve.js';
import type { EquivalencePoint } from '../titration/equivalence-points.js';
import type { InflectionPoint } from '../titration/inflection-points.js';
import { titrationLimits } from '../titration/limits.js';
import type { Titration } from '../titration/titrate.js';

/** What an indicator's judgement asks of a titration. @internal */
export interface Asked extends Pick<Titration, 'pHAt' | 'slopeAt' | 'volumesAt'> {
  readonly equivalencePoints: readonly EquivalencePoint[];
}

const what = 'a titration as titrate returns it';

/**
 * Reads a titration from a caller's value: it must have its methods, which a copy that came through JSON has not. Each of
 * their answers is read in turn.
 *
 * @internal
 */
export function readTitration(value: unknown, faults: Faults): Asked {
  const unread = faults.object(value, 'titration', what);
  const method = <T>(key: string, read: (answer: unknown, path: string, faults: Faults) => T) => {
    const own = unread[key];
    if (typeof own !== 'function')
      faults.add(own === undefined ? 'missing' : 'wrong-type', `titration.${key}`, what, own);
    return (argument: number): T =>
      answerOf(`titration.${key}(${argument})`, () => (own as (given: number) => unknown)(argument), read);
  };
  return {
    pHAt: method('pHAt', (answer, path, wrong) => wrong.number(answer, path, 'a pH', titrationLimits.pH)),
    slopeAt: method('slopeAt', (answer, path, wrong) => wrong.number(answer, path, 'a slope')),
    volumesAt: method('volumesAt', (answer, path, wrong) =>
      wrong
        .list(answer, path, 'a list of volumes in mL')
        .map((mL, k) =>
          wrong.number(mL, `${path}[${k}]`, 'a volume in mL', { from: 0, to: titrationLimits.mL }),
        ),
    ),
    equivalencePoints: faults
      .list(unread.equivalencePoints, 'titration.equivalencePoints', what)
      .map((point, k) => readPoint(point, `titration.equivalencePoints[${k}]`, faults)),
  };
}

/** Calls a function that the caller brought, and reads its answer. @internal */
export function answerOf<T>(
  path: string,
  ask: () => unknown,
  read: (answer: unknown, path: string, faults: Faults) => T,
): T {
  const faults = new Faults(path.replace(/\(.*/, ''));
  let answer: unknown;
  try {
    answer = ask();
  } catch (error) {
    if (error instanceof Error && error.name === 'InputError') throw error;
    const thrown = error instanceof Error ? error.message : error;
    faults.add('wrong-type', path, 'an answer instead of an error', thrown);
    faults.done();
  }
  const checked = read(answer, path, faults);
  faults.done();
  return checked;
}

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
  return {
    mL: faults.number(unread.mL, `${path}.mL`, 'a volume in mL', { from: least, to: titrationLimits.mL }),
    pH: faults.number(unread.pH, `${path}.pH`, 'a pH', titrationLimits.pH),
    slope: faults.number(unread.slope, `${path}.slope`, 'a slope of pH per mL'),
  };
}

/** An error in percent of a smaller volume could leave the range of doubles. */
const least = 1e-200;
