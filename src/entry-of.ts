/**
 * The entry of a table under a key that a caller brings; undefined where the table has none. Names that every object has, such as
 * `toString`, are no entries.
 *
 * @internal
 */
export const entryOf = <Entry>(table: Readonly<Record<string, Entry>>, key: string): Entry | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;
