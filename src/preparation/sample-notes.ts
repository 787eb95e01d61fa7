import { fourDigits, toDigits } from '../print-number.js';
import type { ReadSample } from './read-sample.js';
import { type SamplePlan, sampleDefaults } from './sample-plan.js';

/** A mass below so many times its uncertainty is small: the weighing alone costs half a percent (common practice). */
const small = 200;

/** What a reader of a plan should know. @internal */
export function sampleNotes(
  { burette, buretteVessel, weighing, sample }: ReadSample,
  { grams, points, point, water }: Pick<SamplePlan, 'grams' | 'points' | 'point' | 'water'>,
): string[] {
  const beyond = points.filter(({ mL }) => mL > burette);
  const early = points.slice(0, point - 1).filter(({ jump }) => jump < sampleDefaults.sharp);
  const isSmall = 1000 * grams < small * weighing * Math.SQRT2;
  return [
    ...(beyond.length > 0
      ? [
          `${beyond.length} later point${beyond.length > 1 ? 's lie' : ' lies'} beyond the burette of ${burette} mL.`,
        ]
      : []),
    ...(early.length > 0
      ? [`Not sharp: ${early.map(({ mL }) => `the point at ${mL.toFixed(2)} mL`).join(', ')}.`]
      : []),
    ...(isSmall && !sample.aliquot
      ? [
          'The mass is small beside the uncertainty of the weighing: weigh more, dissolve it to a mark and take an aliquot.',
        ]
      : []),
    ...(isSmall && sample.aliquot
      ? [
          'The mass is small beside the uncertainty of the weighing: take a larger flask or a smaller pipette.',
        ]
      : []),
    ...(buretteVessel
      ? []
      : [`The limits of error of a burette of ${burette} mL are not known: they are not counted.`]),
    waterNote(water),
  ];
}

function waterNote({ name, mL, endpoints }: SamplePlan['water']): string {
  const shifts = endpoints.map(({ pH, mL: shift, percent }) =>
    shift === null || percent === null
      ? `pH ${pH.toFixed(2)} is never reached`
      : `the volume at pH ${pH.toFixed(2)} ${movesBy(shift, percent)}`,
  );
  return `The volume of water moves no equivalence point. With what is dissolved in ${fourDigits(mL)} mL of ${name}, ${shifts.join(', and ')}.`;
}

/** mL below which a shift is not worth its digits: a twentieth of what a burette is read to. */
const unseen = 0.001;

const movesBy = (mL: number, percent: number): string =>
  Math.abs(mL) < unseen
    ? `moves by less than ${unseen} mL`
    : `is ${toDigits(Math.abs(mL), 2)} mL (${toDigits(Math.abs(percent), 2)} %) ${mL > 0 ? 'more' : 'less'}`;
