/** What a ranking leaves out, and why. */
export interface LeftOut {
  readonly id: string;
  readonly name: string;
  readonly reason: string;
}
