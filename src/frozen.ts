/**
 * A value with all the plain data in it made unchangeable: what a caller does to it later changes no answer.
 *
 * Getters are not called, and functions and typed arrays stay as they are: a typed array cannot be frozen, so those that are
 * handed out are copies. What is frozen already is not looked into again.
 *
 * @internal
 */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value) || ArrayBuffer.isView(value))
    return value;
  Object.freeze(value);
  for (const { value: inside } of Object.values(Object.getOwnPropertyDescriptors(value))) frozen(inside);
  return value;
}
