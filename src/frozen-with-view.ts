import { frozen } from './frozen.js';

/** The key under which Node.js looks for a text to print instead of an object's fields (util.inspect.custom). */
const inspect = Symbol.for('nodejs.util.inspect.custom');

/**
 * A frozen result that a console of Node.js prints as a few lines. JSON, copies and comparisons are those of the plain
 * data.
 *
 * @param view - gives the lines
 * @internal
 */
export const frozenWithView = <T extends object>(value: T, view: (value: T) => string): T =>
  frozen(withView(value, view));

/** The same, of a value that is frozen elsewhere. @internal */
export const withView = <T extends object>(value: T, view: (value: T) => string): T =>
  Object.defineProperty(value, inspect, { value: () => view(value) });
