import { kindKeyOf } from '../input/describe-value.js';
import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
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
  if (isOther(unread, value, faults)) return nothing;
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

const methods = ['pHAt', 'slopeAt', 'volumesAt'];

/** Whether a value is plainly no titration, or one that has lost its methods. Notes that, once. */
function isOther(unread: Unread, value: unknown, faults: Faults): boolean {
  const kind = kindKeyOf(unread);
  if (kind === undefined || methods.some((key) => typeof unread[key] === 'function')) return false;
  if (kind === 'analyte') faults.add('wrong-type', 'titration', 'titrate(setup)', value);
  else if (kind !== 'equivalencePoints') faults.add('wrong-type', 'titration', what, value);
  else {
    const again = 'titrate(titration.setup), since JSON and copies keep none';
    faults.add('wrong-type', 'titration', again, value, 'without its methods');
  }
  return true;
}

/** Takes the place of a value that is no titration, until the faults are thrown. */
const nothing: Asked = {
  pHAt: () => 7,
  slopeAt: () => 0,
  volumesAt: () => [],
  equivalencePoints: [],
  setup: null,
};

function readWhyNoPoint(notes: unknown, faults: Faults): string | undefined {
  if (notes === undefined) return undefined;
  return faults
    .list(notes, 'titration.notes', 'a list of notes')
    .map((note, k) => faults.text(note, `titration.notes[${k}]`, 'a note', noteLength))
    .find((note) => note.startsWith(noPoint));
}
