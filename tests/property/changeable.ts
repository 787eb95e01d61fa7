/** The paths of all objects that could be changed; getters are called, functions, typed arrays and numbers of decimal.js are not data. */
export function changeable(value: unknown, path: string, seen = new Set<object>()): string[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  if (ArrayBuffer.isView(value) || 'toDecimalPlaces' in value) return [];
  seen.add(value);
  const own =
    Object.isFrozen(value) || Object.prototype.toString.call(value) === '[object Module]' ? [] : [path];
  return [
    ...own,
    ...Object.entries(value).flatMap(([key, inside]) => changeable(inside, `${path}.${key}`, seen)),
  ];
}
