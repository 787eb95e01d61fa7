import { plainly } from './describe-value.js';

/** Limits of a number: `above` is an open end, `from` and `to` are closed ones. */
export interface Limits {
  readonly above?: number;
  readonly from?: number;
  readonly to?: number;
  readonly integer?: boolean;
}

/** Whether a number keeps limits; NaN keeps none. @internal */
export function isWithin(value: number, { above, from, to, integer }: Limits): boolean {
  if (above !== undefined && !(value > above)) return false;
  if (from !== undefined && !(value >= from)) return false;
  if (to !== undefined && !(value <= to)) return false;
  return !integer || Number.isInteger(value);
}

/** The limits in words, to stand after what they limit. @internal */
export function describeLimits({ above, from, to, integer }: Limits): string {
  const parts = [];
  if (from !== undefined && to !== undefined) parts.push(`from ${plainly(from)} to ${plainly(to)}`);
  else {
    if (above !== undefined) parts.push(`above ${plainly(above)}`);
    if (from !== undefined) parts.push(`${plainly(from)} or more`);
    if (to !== undefined) parts.push(`at most ${plainly(to)}`);
  }
  const words = [...(integer ? ['a whole number'] : []), ...(parts.length > 0 ? [parts.join(' and ')] : [])];
  return words.map((each, k) => (k === 0 ? `, ${each}` : ` ${each}`)).join('');
}
