import type { Faults } from '../input/faults.js';
import { toDigits } from '../print-number.js';
import type { Solution } from '../solution/solution.js';
import { sum } from '../solver/sum.js';
import type { HandoutSample } from './handout-options.js';

/** Of the whole sample, what the flask holds by the titration; null where a reagent has no molar mass. @internal */
export function sampleShare({ contents }: Solution, { grams }: HandoutSample): number | null {
  const held = contents.map(({ reagent, mmol }) => (mmol * (reagent.molarMass ?? Number.NaN)) / 1000);
  const share = sum(held) / grams;
  return Number.isNaN(share) ? null : share;
}

/** Room for the rounding of masses to amounts and back. */
const rounding = 1e-9;

/** Notes a sample that weighs less than what it is to bring into the flask. @internal */
export function checkSample(analyte: Solution, sample: HandoutSample, faults: Faults): void {
  const share = sampleShare(analyte, sample);
  if (share === null || share <= 1 + rounding) return;
  const held = toDigits(share * sample.grams, 4);
  faults.add(
    'conflict',
    'options.sample.grams',
    `no less than the flask holds by the titration, ${held} g`,
    sample.grams,
  );
}
