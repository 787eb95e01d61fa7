import type { Faults } from '../input/faults.js';
import { noteLength } from '../source.js';
import type { EquivalencePoint } from '../titration/points/equivalence-points.js';
import { noPoint } from '../titration/points/why-no-point.js';
import { type ReadSetup, readSetup } from '../titration/read-setup.js';
import type { Titration } from '../titration/titration.js';
import { titrationLimits } from '../titration/titration-limits.js';
import { answerOf } from './answer-of.js';
import { readPoint } from './read-score-point.js';

/** What an indicator's judgement asks of a titration. @internal */
export interface Asked extends Pick<Titration, 'pHAt' | 'slopeAt' | 'volumesAt'> {
  readonly equivalencePoints: readonly EquivalencePoint[];
  /** Null for a titration of the caller's own making that has none. */
  readonly setup: ReadSetup | null;
  /** Where there is no equivalence point, the note that says why. */
  readonly whyNoPoint?: string | undefined;
}

const what = 'a titration as titrate returns it';

/**
 * Reads a titration from a caller's value: it must have its methods, which a copy that came through JSON has not. Each
 * of their answers is read in turn.
 *
 * @internal
 */
export function readTitration(value: unknown, faults: Faults): Asked {
  const unread = faults.object(value, 'titration', what);
  const method = <T>(key: string, read: (answer: unknown, path: string, faults: Faults) => T) => {
    const given = unread[key];
    if (typeof given !== 'function')
      faults.add(given === undefined ? 'missing' : 'wrong-type', `titration.${key}`, what, given);
    return (argument: number): T =>
      answerOf(`titration.${key}(${argument})`, () => (given as (given: number) => unknown)(argument), read);
  };
  const equivalencePoints = faults
    .list(unread.equivalencePoints, 'titration.equivalencePoints', what)
    .map((point, k) => readPoint(point, `titration.equivalencePoints[${k}]`, faults));
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
    equivalencePoints,
    setup: unread.setup === undefined ? null : readSetup(unread.setup, 'titration.setup', faults),
    ...(equivalencePoints.length === 0 ? { whyNoPoint: readWhyNoPoint(unread.notes, faults) } : {}),
  };
}

function readWhyNoPoint(notes: unknown, faults: Faults): string | undefined {
  if (notes === undefined) return undefined;
  return faults
    .list(notes, 'titration.notes', 'a list of notes')
    .map((note, k) => faults.text(note, `titration.notes[${k}]`, 'a note', noteLength))
    .find((note) => note.startsWith(noPoint));
}
