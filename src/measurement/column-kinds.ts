import { frozen } from '../frozen.js';

/** What a column of readings holds. */
export type ColumnKind = 'mL' | 'pH' | 'seconds' | 'skip';

/** The order of columns without headings. @internal */
export const usualOrder: readonly ColumnKind[] = /*#__PURE__*/ frozen(['mL', 'pH', 'seconds']);

const words: readonly (readonly [ColumnKind, RegExp])[] = [
  ['pH', /\bph\b/i],
  ['seconds', /\b(?:s|sec|secs|seconds?)\b/i],
  ['mL', /\b(?:ml|cm3|volume|vol|v|burette|titrant|added)\b|cm³/i],
];

/** What each column holds, by its heading; a kind that stands there twice is the first of the two. @internal */
export function kindsOf(headings: readonly string[]): readonly ColumnKind[] {
  const kinds: ColumnKind[] = [];
  for (const heading of headings) {
    const kind = kindNamed(heading);
    kinds.push(kinds.includes(kind) ? 'skip' : kind);
  }
  return kinds;
}

/** What a heading names; `skip` where that is nothing to do with readings. @internal */
export const kindNamed = (heading: string): ColumnKind =>
  words.find(([, pattern]) => pattern.test(heading))?.[0] ?? 'skip';

/** Whether a heading names a volume in another unit than mL: µL, cL, dL, L, dm³, m³ or mm³, or drops. @internal */
export const isOtherVolume = (heading: string): boolean =>
  !/(?:ml|cm[3³])(?![\p{L}\p{N}])/iu.test(heading) &&
  /(?<![\p{L}\p{N}])(?:[µμucd]?l|[µμu]?litres?|liters?|d?m[3³]|mm[3³]|drops?)(?![\p{L}\p{N}])/iu.test(
    heading,
  );
