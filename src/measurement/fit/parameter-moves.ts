import type { Content } from '../../solution/solution.js';
import type { FreeParameter } from './free-parameter.js';

/** What changes with a parameter. @internal */
type Moves =
  /** The flask, or one mL of titrant, holds these contents more for each unit. */
  | { readonly what: 'flask' | 'titrant'; readonly contents: readonly Content[] }
  | { readonly what: 'pKa'; readonly protolyte: string; readonly step: number }
  | { readonly what: BenchParameter }
  | { readonly what: 'airBubble'; readonly after: number };

/** What a parameter of the bench alters. @internal */
export type BenchParameter = 'probeOffset' | 'probeSlope' | 'probeDrift' | 'readTooSoon' | 'initialReading';

/** A free parameter in the light of a set-up. @internal */
export interface FitParameter {
  readonly free: FreeParameter;
  readonly name: string;
  readonly unit: 'mmol' | 'mol/L' | 'pH' | 'mL' | '%' | '';
  /** As the set-up has it: where the search starts. */
  readonly start: number;
  readonly from: number;
  readonly to: number;
  readonly moves: Moves;
}
