/** The pH after a volume of titrant, and what moves it. @internal */
export interface Response {
  pH: number;
  /** dpH/dV, per mL. */
  slope: number;
  /** dpH per unit of each parameter of the chemistry, in the order of the parameters; zero for those of the bench. */
  readonly moves: Float64Array;
}

/** Room for a response, to be written again and again. @internal */
export const emptyResponse = (parameters: number): Response => ({
  pH: 7,
  slope: 0,
  moves: new Float64Array(parameters),
});

/** Writes the response after so many mL of titrant, zero or more; `moves` only where they are asked for. @internal */
export type Respond = (mL: number, out: Response, withMoves: boolean) => void;
