import { frozen } from './frozen.js';

/** The key under which Node.js looks for a text to print instead of an object's fields (util.inspect.custom). */
const inspect = Symbol.for('nodejs.util.inspect.custom');

/**
 * A frozen result that a console of Node.js prints as a few lines, and that is the same lines as a text: `${fit}`. JSON,
 * copies and comparisons are those of the plain data.
 *
 * @param view - gives the lines
 * @internal
 */
export const frozenWithView = <T extends object>(value: T, view: (value: T) => string): T =>
  frozen(withView(value, view));

/** The same, of a value that is frozen elsewhere. @internal */
export function withView<T extends object>(value: T, view: (value: T) => string): T {
  const lines = { value: () => view(value), configurable: true }; // a picture puts a text of its own in place before it is frozen
  return Object.defineProperties(value, { [inspect]: lines, toString: lines });
}
