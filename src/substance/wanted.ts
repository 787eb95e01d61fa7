import { kindKeyOf, shorten } from '../input/describe-value.js';
import { fieldsOf } from '../input/safe-read.js';

/**
 * What to give where an entry of a catalogue is wanted: for a text, how to find the entry; for an acid in the place of a
 * reagent, how to find one that holds it.
 *
 * @internal
 */
export function wanted(given: unknown, what: string, catalogue: string, example: string): string {
  if (typeof given === 'string') return `${what}, as findById(${catalogue}, id) finds it`;
  const fields = fieldsOf(given) ?? {};
  if (catalogue === 'reagents' && kindKeyOf(fields) === 'steps' && typeof fields.name === 'string')
    return `${what} that holds it: findById(reagents, '${shorten(fields.name)}') finds one or names several`;
  return `${what}, such as ${catalogue}.${example}`;
}
