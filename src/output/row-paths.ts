import { fieldsOf, itemsOf, lengthOf } from '../input/safe-read.js';

/** At most as many columns are found in rows. @internal */
export const mostColumns = 200;

/** The paths of what can be printed, as far down as `ColumnPath` goes. @internal */
export function pathsIn(value: object, depth = 1): string[] {
  const length = lengthOf(value);
  const inner =
    length === undefined
      ? fieldsOf(value)
      : itemsOf(value as readonly unknown[], Math.min(length, mostColumns + 1));
  return Object.entries(inner ?? {}).flatMap(([key, item]) => {
    if (typeof item === 'number' || typeof item === 'string') return [key];
    return depth < 3 && typeof item === 'object' && item !== null
      ? pathsIn(item, depth + 1).map((path) => `${key}.${path}`)
      : [];
  });
}

/**
 * The value at a path of a row, or under a key with dots in it; null where a key of the path holds nothing, undefined
 * where there is no such key.
 *
 * @internal
 */
export function valueAt(row: object, path: string): unknown {
  let value: unknown = row;
  try {
    if (Object.hasOwn(row, path)) return (row as Readonly<Record<string, unknown>>)[path] ?? null;
    for (const key of path.split('.')) {
      if (value === null) return null;
      if (typeof value !== 'object' || !Object.hasOwn(value, key)) return undefined;
      value = (value as Readonly<Record<string, unknown>>)[key] ?? null;
    }
    return value;
  } catch {
    return undefined; // a getter or a proxy
  }
}
