import type { EndpointMethod } from './endpoint-options.js';
import type { Estimate } from './estimate.js';

/** One end point. */
export interface Endpoint {
  /** Of titrant. */
  readonly mL: number;
  /** The volume with its uncertainty. */
  readonly estimate: Estimate;
  /** On the line between the two readings beside it; null where it lies outside them. */
  readonly pH: number | null;
  /** mL, first and last, and number, of the readings that it rests on. */
  readonly used: { readonly from: number; readonly to: number; readonly readings: number };
}

/** What a search for end points found. Plain data: it survives JSON. */
export interface Endpoints {
  readonly method: EndpointMethod;
  readonly status: 'found' | 'not-found';
  /** By volume. */
  readonly endpoints: readonly Endpoint[];
  readonly notes: readonly string[];
}
