import { at, type Faults } from '../input/faults.js';
import { noteLength, readSource, type Source } from '../source.js';

/**
 * The hazard of a substance, and the concentrations from which it holds: a dilute solution needs other words than its
 * bottle.
 */
export interface Hazard {
  /** The highest first. The effect at a limit holds above it, up to the next limit. */
  readonly limits: readonly HazardLimit[];
  /** Further words on the bottle, and on any solution above the lowest limit. */
  readonly words: string;
  /** Of the limits. */
  readonly source: Source;
}

/** From which share on a substance has an effect. */
export interface HazardLimit {
  /** Percent by mass. */
  readonly percent: number;
  /** A word that stands before `from 25 % by mass`, such as `corrosive`. */
  readonly effect: string;
}

/** Reads a caution from a caller's value, in plain words or with its limits, noting every fault. @internal */
export function readHazard(value: unknown, path: string, faults: Faults): string | Hazard {
  if (typeof value !== 'object') return faults.text(value, path, 'a text', noteLength);
  const unread = faults.object(value, path, 'a hazard', ['limits', 'words', 'source']);
  const here = at(path, 'limits');
  let to = 100;
  const limits = faults.list(unread.limits, here, 'a list', 1, 10).map((item, index) => {
    const { percent, effect } = faults.object(item, `${here}[${index}]`, 'a limit', ['percent', 'effect']);
    const what = 'a percentage by mass, the highest first';
    to = faults.number(percent, `${here}[${index}].percent`, what, { above: 0, to });
    return { percent: to, effect: faults.text(effect, `${here}[${index}].effect`, 'a text') };
  });
  const words = faults.text(unread.words, at(path, 'words'), 'a text', noteLength);
  return { limits, words, source: readSource(unread.source, at(path, 'source'), faults) };
}
