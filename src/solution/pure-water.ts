import type { Source } from '../source.js';
import type { Solution } from './solution.js';

/**
 * Water of a quality: a solution of one litre, to take an `aliquot` of and `mix` in, as ingredient or as wash water.
 */
export interface Water extends Solution {
  readonly name: string;
  readonly source: Source;
}
