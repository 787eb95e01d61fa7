/** A copy of the caller's object, one level deep: nothing is known of its values yet. */
export type Unread = Readonly<Record<string, unknown>>;

/**
 * A copy of a plain object, each value read once; undefined for anything else and for what throws when read.
 *
 * A date, a map, a promise or a boxed number is an object to JavaScript, but has no fields to read: it is refused by
 * its tag.
 *
 * @internal
 */
export function fieldsOf(value: unknown): Unread | undefined {
  try {
    if (typeof value === 'object' && value !== null && plainTags.includes(tagOf(value))) return { ...value };
  } catch {} // a getter or a proxy
  return undefined;
}

const plainTags = ['Object', 'Module'];

/**
 * What JavaScript calls the kind of an object: `Object`, `Array`, `Promise`, `Date`; throws where the object does.
 *
 * @internal
 */
export const tagOf = (value: object): string => Object.prototype.toString.call(value).slice(8, -1);

/** Whether a value is an array: unlike `Array.isArray`, never throws. @internal */
export const isList = (value: unknown): boolean => lengthOf(value) !== undefined;

/** The length of an array; undefined for anything else. @internal */
export function lengthOf(value: unknown): number | undefined {
  try {
    if (Array.isArray(value) && Number.isInteger(value.length)) return value.length;
  } catch {} // a proxy
  return undefined;
}

/** A copy of an array, each item read once and holes as undefined; undefined for what throws when read. @internal */
export function itemsOf(value: readonly unknown[], length: number): readonly unknown[] | undefined {
  try {
    const items: unknown[] = [];
    for (let index = 0; index < length; index += 1) items.push(value[index]);
    return items;
  } catch {
    return undefined;
  }
}
