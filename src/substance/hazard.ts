import { at, type Faults } from '../errors.js';
import { noteLength, readSource, type Source } from '../source.js';

/**
 * What a substance does to who handles it, and from which concentration on: a dilute solution needs other words than
 * its bottle.
 */
export interface Hazard {
  /** The highest first. What stands at a limit holds above it, up to the next. */
  readonly limits: readonly HazardLimit[];
  /** What else to say of the bottle, and of any solution above the lowest limit. */
  readonly words: string;
  /** Of the limits. */
  readonly source: Source;
}

/** From which share on a substance has an effect. */
export interface HazardLimit {
  /** Percent by mass. */
  readonly percent: number;
  /** Fit to stand before `from 25 % by mass`, such as `corrosive`. */
  readonly effect: string;
}

/** Reads a caution from a caller's value, in plain words or with its limits, noting every fault. @internal */
export function readHazard(value: unknown, path: string, faults: Faults): string | Hazard {
  if (typeof value !== 'object' || value === null) return faults.text(value, path, 'a text', noteLength);
  const unread = faults.object(value, path, 'a hazard { limits, words, source }', [
    'limits',
    'words',
    'source',
  ]);
  let above = 100;
  const limits = faults
    .list(unread.limits, at(path, 'limits'), 'a list of { percent, effect }', 1, 10)
    .map((item, index) => {
      const here = `${at(path, 'limits')}[${index}]`;
      const limit = faults.object(item, here, 'a limit { percent, effect }', ['percent', 'effect']);
      const what = 'a percentage by mass, the highest first';
      const percent = faults.number(limit.percent, `${here}.percent`, what, { above: 0, to: above });
      above = percent;
      return { percent, effect: faults.text(limit.effect, `${here}.effect`, 'an effect', noteLength) };
    });
  return {
    limits,
    words: faults.text(unread.words, at(path, 'words'), 'a text', noteLength),
    source: readSource(unread.source, at(path, 'source'), faults),
  };
}
