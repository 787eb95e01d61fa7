/** A quantity found from data, with what is known of its uncertainty (GUM). Plain data: it survives JSON. */
export interface Estimate {
  /** In the unit that the key holding this estimate names. */
  readonly value: number;
  /** One standard deviation, in the unit of the value. */
  readonly standardUncertainty: number;
  /** Of the standard uncertainty; null where it is taken as known, that is, infinitely many. */
  readonly degreesOfFreedom: number | null;
}
