/** What the worker is to do, and where it counts the calls that it begins. */
export interface Order {
  readonly calls: number;
  readonly systems: number;
  readonly exact: number;
  readonly seed: number;
  readonly begun: Int32Array;
}

/** What the worker tells: what it works at, a line of counts, or a fault with all that is needed to see it again. */
export type Report =
  | { readonly kind: 'at'; readonly name: string }
  | { readonly kind: 'count' | 'fault'; readonly words: string };
