/**
 * What was read during a titration, as columns of equal length. Plain data: it survives JSON.
 *
 * `readReadings` makes it from what was typed, exported or pasted, and says what looks wrong there.
 */
export interface Readings {
  /** mL, running totals of titrant added. */
  readonly mL: readonly number[];
  /** As the probe showed it, or corrected. */
  readonly pH: readonly number[];
  /** s, when each was read, from one beginning. */
  readonly seconds?: readonly number[];
  readonly notes: readonly string[];
}
