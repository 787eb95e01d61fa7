import type { Source } from '../source.js';
import type { Solution } from './solution.js';

/** One litre of water of a given quality: take an `aliquot` of it, and `mix`. */
export interface Water extends Solution {
  readonly name: string;
  readonly source: Source;
}
