/**
 * A value with all the plain data in it made unchangeable: what a caller does to it later changes no answer.
 *
 * Functions, typed arrays and numbers of decimal.js stay as they are: a typed array cannot be frozen, so those that are
 * handed out are copies. A value that is frozen already is taken as frozen throughout. The data have no getters: of an
 * object with getters, freeze the parts.
 *
 * @internal
 */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value) || ArrayBuffer.isView(value))
    return value;
  if (Array.isArray(value)) {
    Object.freeze(value);
    for (const item of value) if (typeof item === 'object') frozen(item); // by items: `for … in` would make a text of every index
    return value;
  }
  if (!isPlain(value)) return value;
  Object.freeze(value);
  for (const key in value) {
    const inside = value[key];
    if (typeof inside === 'object') frozen(inside);
  }
  return value;
}

/** Whether a value is an object of fields, not the instance of a class. */
function isPlain(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null; // of whatever realm
}
