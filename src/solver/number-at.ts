/**
 * The number at an index that is known to be inside of the column: a loop over its length, or an index of a search.
 *
 * @internal
 */
export const numberAt = (column: ArrayLike<number>, index: number): number => column[index] as number;
