import type { Work } from '../bibliography.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Indicator } from './indicator.js';
import { readIndicator } from './read-indicator.js';

/**
 * The same indicator with the transition range that one work prints. Handbooks differ by up to a unit of pH.
 *
 * The range that was in use moves to the alternatives. A titration exponent that lies outside the new range is dropped.
 *
 * @param choice - `work`: a key of `works`, one of those the indicator cites
 * @throws InputError where that work gives no range for this indicator; it names those that do
 * @example
 * ```ts
 * import { chooseTransition, indicators } from 'protolysis';
 *
 * indicators.methylRed.transition; // => { from: 4.4, to: 6.2 }
 * chooseTransition(indicators.methylRed, { work: 'crc-handbook' }).transition; // => { from: 4.8, to: 6.0 }
 * ```
 */
export function chooseTransition(indicator: Indicator, choice: { readonly work: Work }): Indicator {
  const faults = new Faults('chooseTransition');
  const before = readIndicator(indicator, 'indicator', faults);
  const { work } = faults.object(choice, 'choice', 'a choice { work }', ['work']);
  faults.text(work, 'work', 'the key of a work');
  faults.done();

  const current = { ...before.transition, source: before.source };
  const known = [current, ...(before.alternatives?.transitions ?? [])];
  const chosen = known.find(({ source }) => 'work' in source && source.work === work);
  if (chosen === undefined) {
    const cited = known.flatMap(({ source }) => ('work' in source && source.work ? [source.work] : []));
    faults.add(
      'missing',
      'work',
      `a work with a range of ${before.name}: ${cited.join(', ') || 'there is none'}`,
      work,
    );
  }
  faults.done();
  if (chosen === undefined || chosen === current) return frozen(before);

  const { from, to, source } = chosen;
  const { titrationExponent, ...rest } = before;
  const keep = titrationExponent && titrationExponent.pH >= from && titrationExponent.pH <= to;
  return frozen({
    ...rest,
    ...(keep ? { titrationExponent } : {}),
    ...(before.pKIn === undefined ? {} : { pKInSource: before.pKInSource ?? before.source }),
    transition: { from, to },
    source,
    alternatives: {
      ...before.alternatives,
      transitions: known.filter((transition) => transition !== chosen),
    },
  });
}
