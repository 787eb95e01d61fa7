import type { Source } from '../source.js';
import type { Solution } from './solution.js';

/** Water of a quality: one litre of it, to take an `aliquot` of and `mix` in, as ingredient or as wash water. */
export interface Water {
  readonly name: string;
  readonly solution: Solution;
  readonly source: Source;
}
