import { keeping } from '../catalogue/keeping.js';
import { standardisation } from '../catalogue/standardisation.js';
import { entryOf } from '../entry-of.js';
import { inWords } from '../in-words.js';
import type { FlaskAmounts } from './amounts-of.js';
import type { Standardisation } from './preparation.js';
import type { ReadPreparation } from './read-preparation.js';

/** A titrant is a standard once it has been standardised itself. */
const standardInWords = (id: string): string =>
  entryOf(standardisation, id) ? `standardised ${inWords(id)}` : inWords(id);

/** The last steps of a recipe: what to standardise it against, how to keep it, and its label. @internal */
export function checksBeforeUse(
  known: Standardisation | null,
  { reagent: { id }, ingredient }: ReadPreparation,
): string[] {
  const bottle = entryOf(keeping, id)?.bottle;
  const what = ingredient.stock ? 'it or its stock' : 'it';
  return [
    ...(known?.kind === 'needed'
      ? [
          `Standardise ${what} before use against ${known.against.map(standardInWords).join(' or ')}, since ${known.reason}.`,
        ]
      : []),
    ...(bottle ? [bottle] : []),
    'Label it with its contents, concentration, hazard and date.',
  ];
}

/** g of a solid for each mL of water, above which a recipe asks whether it dissolves (common practice). */
const much = 0.2;

/** What a reader of the recipe should know. @internal */
export function preparationNotes(
  { glass, mL, ingredient }: ReadPreparation,
  { parts, waterToMakeUp, dilutions, contributions }: FlaskAmounts,
  batches: number,
  known: Standardisation | null,
): string[] {
  const [part] = parts;
  const weighing = contributions.find(({ of }) => of === 'weighing')?.percent ?? 0;
  const vessels = dilutions.length > 0 ? 'pipettes by ISO 648 and flasks by ISO 1042' : 'flasks by ISO 1042';
  return [
    ...(batches > 1
      ? [`Make ${batches} flasks of it for the ${Number(mL.toPrecision(12))} mL: the recipe is for one.`]
      : []),
    ...(known?.kind === 'primary' && !ingredient.stock
      ? [`A primary standard for ${known.standardises}: ${known.treatment}.`]
      : []),
    ...(known?.kind === 'needed'
      ? [
          'The stated uncertainty is that of vessels and weighing alone; until it is standardised, the solution is known less well.',
        ]
      : []),
    ...(weighing > 1
      ? [
          `The mass is small: the weighing alone costs ${weighing.toFixed(1)} %. A stronger stock, diluted, is better.`,
        ]
      : []),
    ...(part.kind === 'weighed' && (part.grams ?? 0) / waterToMakeUp > much
      ? ['Whether so much dissolves is not checked for this reagent: try it, or look it up.']
      : []),
    `Limits of error: ${vessels}, class ${glass}, at 20 °C, quoted from memory.`,
  ];
}
