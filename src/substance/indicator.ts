import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** A range of pH over which an indicator changes, as a work prints it. */
export interface Transition {
  readonly from: number;
  readonly to: number;
}

/** A band in the spectrum of one form: a Gaussian of wavelength. */
export interface Band {
  /** Where it absorbs most, nm. */
  readonly nm: number;
  /** Full width at half height, nm. */
  readonly width: number;
  /** Absorbance at its top in the flask, at the usual amount of indicator and with all of it in this form. */
  readonly absorbance: number;
}

/** The spectra of the two forms, for predicting colours. An empty list is a colourless form. */
export interface Bands {
  readonly acid: readonly Band[];
  readonly base: readonly Band[];
  readonly source: Source;
}

/** The pH at which a titration with this indicator is called. */
export interface TitrationExponent {
  readonly pH: number;
  readonly source: Source;
}

/** One indicator of a mixture: how much of it, 1 for the usual amount. */
export interface Part {
  readonly indicator: Indicator;
  readonly amount: number;
}

/** The values of other works, kept beside those in use. */
export interface IndicatorAlternatives {
  readonly transitions?: readonly (Transition & { readonly source: Source })[];
  readonly pKIns?: readonly { readonly pKIn: number; readonly source: Source; readonly note?: string }[];
}

/** An acid–base indicator. */
export interface Indicator {
  readonly id: string;
  readonly name: string;
  /** The range of pH over which it changes. */
  readonly transition: Transition;
  /** −log10 of its acidity constant; left out, colours take the middle of the transition. */
  readonly pKIn?: number;
  /** Of pKIn, where it differs from `source`. */
  readonly pKInSource?: Source;
  /** In plain words, such as `yellow` or `blue-violet`; `colourless` on one side makes it a one-colour indicator. */
  readonly acidColour: string;
  readonly baseColour: string;
  /** Of the transition. */
  readonly source: Source;
  /** Where a two-colour indicator is not called in the middle of its range. */
  readonly titrationExponent?: TitrationExponent;
  /** For predicting colours; left out, the bands follow from `parts` or from the names of the colours. */
  readonly bands?: Bands;
  /** What a mixed indicator is mixed from, for its colours; the transition is that of the mixture. */
  readonly parts?: readonly Part[];
  /** How the solution in the dropping bottle is made. */
  readonly stock?: { readonly text: string; readonly source: Source };
  readonly alternatives?: IndicatorAlternatives;
  /** The usual cautions, in plain words; the safety data sheet of the bottle comes first. */
  readonly hazard?: string;
  /** Of its place on the candidate list of substances of very high concern (REACH); left out where it is not on it. */
  readonly veryHighConcern?: Source;
  /** Why it is not to be used for end points. Rankings leave it out unless `include` names it. */
  readonly notForUse?: { readonly reason: string; readonly source: Source };
  readonly notes?: readonly string[];
}

/** Limits of an indicator: pH of its range and pKIn, the depth of its colours, the parts of a mixture. */
export const indicatorLimits = /*#__PURE__*/ frozen({
  pH: [-2, 16],
  nm: [200, 900],
  absorbance: 10,
  parts: 10,
} as const);

/** The word for a form without colour. */
export const colourless = 'colourless';

/** Which form of an indicator has no colour; undefined where both have one. @internal */
export function colourlessForm({ acidColour, baseColour }: Indicator): 'acid' | 'base' | undefined {
  if (acidColour === colourless) return 'acid';
  return baseColour === colourless ? 'base' : undefined;
}
