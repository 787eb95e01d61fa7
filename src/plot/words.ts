import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';

/**
 * Every word that a picture writes. A name in braces stands for what the picture puts there; a replacement may leave it
 * out or move it.
 */
export const plotWords = /*#__PURE__*/ frozen({
  added: 'titrant added, mL',
  addedToBuffer: 'added, mL',
  pH: 'pH',
  slope: 'slope dpH/dV, per mL',
  fraction: 'fraction',
  capacity: 'capacity, mol/L per pH unit',
  shareOfVariance: 'share of the variance, %',
  residual: 'read less predicted, pH',
  titration: '{analyte} with {titrant}',
  comparison: 'Titration curves compared',
  species: 'Species of {protolyte} against pH',
  speciesAlong: 'Species of {protolyte} in the titration of {analyte} with {titrant}',
  buffer: 'Buffer and water under the same additions',
  budget: 'Where the uncertainty comes from',
  capacityOverPH: 'Buffer capacity over pH',
  equivalence: 'equivalence',
  equivalenceWithoutStep: 'equivalence, no step',
  halfEquivalence: 'half-equivalence',
  point: '{mL}\u00A0mL, pH\u00A0{pH}',
  volume: '{mL}\u00A0mL',
  atPH: 'pH\u00A0{pH}',
  keyToEquivalence: 'Filled diamond: equivalence.',
  keyToNoStep: 'Hollow diamond: equivalence without a step.',
  keyToHalfEquivalence: 'Ring: half-equivalence.',
  keyToPKa: 'Ring: pKa.',
  keyToPeak: 'Ring: peak.',
  pKa: 'pKa\u00A0{pKa}',
  plainPH: 'pH {pH}',
  plainVolume: '{mL} mL',
  difference: 'pH less that of {name}',
  additions: 'Dots: pH after each of {count} additions.',
  readings: 'read',
  predicted: 'predicted',
  fitted: 'fitted',
  distance: 'distance, standard uncertainties',
  band: '{percent} % confidence',
  aboutBand: 'Area: {percent} % confidence of the curve at each volume, from the covariance of the fit.',
  noBand: 'No area of confidence: it would reach amounts below zero.',
  noBandFor: 'No area of confidence: the readings leave this open or at the end of its range: {parameter}.',
  withoutBench: 'The readings stand without what the fit found of: {parameters}.',
  caption: '{indicator}: {start} to {end}',
  captionAlike: '{indicator}: {start} throughout',
  change: 'changes {from} to {to} mL',
  changeFromStart: 'changing until {to} mL',
  changeUnfinished: 'changing from {from} mL, not complete',
  changeThroughout: 'changing throughout',
  neverInRange: 'pH stays outside of its range, {from} to {to}',
  approximate: 'Colours in the flask are approximate.',
  bufferName: 'buffer',
  waterName: 'water',
  besideName: 'liquid {number}',
  peak: 'peak\u00A0{capacity}',
  useful: 'Dashed: useful about pH {pH} from {from} to {to}.',
  usefulFrom: 'Dashed: useful about pH {pH} from {from} up.',
  usefulTo: 'Dashed: useful about pH {pH} up to {to}.',
  usefulThroughout: 'Dashed: useful about pH {pH} throughout.',
  share: '{input}: {percent}\u00A0%',
  otherInputs: '{count} other inputs',
  noRoom: 'No room above for: {text}.',
  describeCurve: 'pH runs from {start} to {end} over {mL} mL.',
  describeEquivalence: 'Equivalence at {mL} mL, pH {pH}: {reaction}.',
  describeHalfEquivalence: 'Half-equivalence at {mL} mL, pH {pH}.',
  describeLine: '{name}: from {from} to {to}.',
  describeResiduals: '{count} readings; the largest difference from the prediction is {pH} pH at {mL} mL.',
  describeDistances:
    '{count} readings; the largest distance from the curve is {distance} standard uncertainties at {mL} mL.',
  describeSpecies: '{species}: largest fraction {fraction} at {at}.',
  describeBudget: 'Shares of the variance: {shares}.',
  describePeak: 'Peak of {capacity} mol/L per pH unit at pH {pH}.',
} as const);

/** Words to put in place of those of {@link plotWords}. */
export type PlotWords = { readonly [Key in keyof typeof plotWords]: string };

/** Puts values into the braces of a text. @internal */
export const say = (text: string, values: Readonly<Record<string, string | number>> = {}): string =>
  text.replace(/\{(\w+)\}/g, (whole, key: string) =>
    Object.hasOwn(values, key) ? String(values[key]) : whole,
  );

/**
 * Reads a text that takes the place of one of ours, or of a list of them, noting every fault. A name in braces that ours
 * does not have would be printed as it stands.
 *
 * @internal
 */
export function readReplacement(
  value: unknown,
  path: string,
  ours: readonly string[],
  faults: Faults,
  most?: number,
): string {
  const text = faults.text(value, path, 'a text', most);
  const known = ours.flatMap(bracesIn);
  const stray = bracesIn(text).find((name) => !known.includes(name));
  if (stray !== undefined)
    faults.add(
      'unknown-key',
      path,
      known.length === 0 ? 'a text without a name in braces' : `names in braces out of ${known.join(', ')}`,
      `{${stray}}`,
    );
  return text;
}

const bracesIn = (text: string): string[] => Array.from(text.matchAll(/\{(\w+)\}/g), ([, name = '']) => name);

/** Reads words from a caller's value, noting every fault; those that are left out are the library's own. @internal */
export function readWords(value: unknown, path: string, faults: Faults): PlotWords {
  const keys = Object.keys(plotWords) as (keyof PlotWords)[];
  const unread = value === undefined ? {} : faults.object(value, path, 'words to replace', keys);
  const given = keys
    .filter((key) => unread[key] !== undefined)
    .map((key) => [key, readReplacement(unread[key], `${path}.${key}`, [plotWords[key]], faults)]);
  return { ...plotWords, ...Object.fromEntries(given) };
}
