/**
 * What may go wrong at the bench, each with its size. Plain data: it survives JSON.
 *
 * `ratio` is the true value over the stated one, where a fit gives the value itself, in mmol or mol/L. A fit sets the same
 * faults free under the same names (`FreeParameter`). What each does to a run stands in bench-effects.ts.
 */
export type BenchFault =
  /** The flask holds `ratio` times the sample that is stated: everything in it, at the same volume. */
  | { readonly kind: 'sampleAmount'; readonly ratio: number }
  /** The titrant is `ratio` times as strong as its label says. */
  | { readonly kind: 'titrantConcentration'; readonly ratio: number }
  /** Carbon dioxide in the water of the flask, mol/L, beside what is stated. */
  | { readonly kind: 'carbonDioxideInFlask'; readonly molar: number }
  /** Carbon dioxide that the titrant took up, mol/L: in a solution of NaOH it is carbonate. */
  | { readonly kind: 'carbonDioxideInTitrant'; readonly molar: number }
  /** One addition ends `mL` beyond the last end point: the readings in between are not there. */
  | { readonly kind: 'overshoot'; readonly mL: number }
  /**
   * Each reading is taken `wait` time constants of the probe after its addition, before it has settled: of each change the
   * share exp(−wait) is still to come, which is what a fit gives.
   */
  | { readonly kind: 'readTooSoon'; readonly wait: number }
  /** The probe has `percent` of the ideal slope, about pH 7. */
  | { readonly kind: 'probeSlope'; readonly percent: number }
  /** The probe shows `pH` too much throughout. */
  | { readonly kind: 'probeOffset'; readonly pH: number }
  /** What the probe shows moves by `pH` from the first reading to the last, evenly by number of reading. */
  | { readonly kind: 'probeDrift'; readonly pH: number }
  /** A bubble of `mL` leaves the burette tip after `after` mL have run out: read from there on, never poured. */
  | { readonly kind: 'airBubble'; readonly mL: number; readonly after: number }
  /** The burette stood at `mL` at the start, and this was not subtracted. */
  | { readonly kind: 'initialReading'; readonly mL: number }
  /** What was added each time is written down as if it were the total. */
  | { readonly kind: 'incrementsAsTotals' };

/** The name of a fault at the bench. */
export type BenchFaultKind = BenchFault['kind'];

/** The fault of one kind. @internal */
export type FaultOf<Kind extends BenchFaultKind> = Extract<BenchFault, { readonly kind: Kind }>;
