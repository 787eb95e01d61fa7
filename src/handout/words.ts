import { frozen } from '../frozen.js';
import { at, type Faults } from '../input/faults.js';
import { type PlotWords, plotWords, readReplacement, readWords } from '../plot/words.js';
import { lastCaution } from '../safety/cautions-of.js';

/**
 * Every word of a handout but those of cautions, colours, steps and notes, which come with what they speak of. A name in
 * braces stands for what the handout puts there; a replacement may leave it out or move it.
 *
 * The checks before the start and the ways of working are common practice of teaching laboratories.
 */
export const handoutWords = /*#__PURE__*/ frozen({
  language: 'en',
  title: 'Titration of {analyte} with {titrant}',
  student: 'Worksheet',
  instructor: 'Instructor’s copy, with expected answers',
  name: 'Name',
  partner: 'Partner',
  date: 'Date',
  purposeHeading: 'Purpose',
  purpose:
    'Follow the pH of a solution of {analyte} while {titrant} is added. Find each equivalence point from your own readings, and compare it with the colour change of an indicator.',
  cautionsHeading: 'Before you touch anything',
  gasEscapes: 'A gas can escape, {gas}. {advice}',
  waste: 'Waste goes where you are shown; nothing goes down the drain unless your supervisor says so.',
  safetyFirst: lastCaution,
  fillHeading: 'Weigh and fill',
  weigh: 'Weigh about {grams} g of {sample} into the flask, and write down the mass: ________ g',
  dissolve: 'Dissolve it in {mL} mL of water, all of it, before you start.',
  pour: 'Put {mL} mL of the sample into the flask ({analyte}).',
  burette:
    'Fill the burette with {titrant}. Concentration by its label: ________ mol/L. First reading: ________ mL',
  weighedAs: 'Weighed as: {solids}. A hydrate takes another mass.',
  expectedSample: 'Expected in the flask: {contents}.',
  share: 'That is {percent} % of the sample by mass.',
  expectedTitrant: 'Planned in the burette: {contents}.',
  content: '{mmol} mmol of {reagent}',
  concentration: '{molar} mol/L {reagent}',
  checksHeading: 'Check the set-up',
  checks: [
    'The burette was filled away from the flask, through a funnel that has been taken out again.',
    'Its tip is full of liquid, without a bubble, and stays above the liquid in the flask.',
    'The probe is covered by the liquid and well clear of the stirrer.',
    'The wash bottle is freshly filled with pure water.',
    'The probe has been calibrated today in two standards.',
    'A reference tube stands ready for each colour that you have to recognise.',
    'You have read the label of every bottle. The colour of a stock solution proves nothing.',
  ],
  additionsHeading: 'Additions',
  additions:
    'Add {coarse} mL at a time. Where one addition changes the pH by more than {maxStep}, take smaller ones, down to a drop ({fine} mL). Go on well past the last steep part.',
  settle: 'Stir for about {settle} s before each reading.',
  settleUsual: 'Stir for 10 to 15 s before each reading.',
  writeDown: 'Write down what the burette shows, not what you meant to add.',
  plan: 'Plan: {readings} readings, about {minutes} min at the bench; the burette is filled {fillings}×.',
  indicatorsHeading: 'Indicators',
  stopAt: '{indicator}, {drops} drops: {from} at first. Stop when it stays {stop} while you swirl.',
  stopFading:
    '{indicator}, {drops} drops: {from} at first, and fading. Stop when it is as faint as in the reference tube ({stop}); without a tube, at the last trace of colour.',
  tooFar: 'When it is {to}, you have gone too far.',
  watch: '{indicator}, {drops} drops: watch for its change between {from} and {to}.',
  unsuitable:
    '{indicator}, {drops} drops: unsuitable here. Watch for its change between {from} and {to}, and take no result from it.',
  oneTooMany: 'One drop too many puts you off by ______ %.',
  expectedCall:
    '{indicator}: point at {point} mL, call at {call} mL, {error} %. One drop too many: {drop} % more, {colour}. Verdict: {verdict}.',
  flat: 'The curve is flat at {mL} mL: no indicator shows this point sharply.',
  neverCalled: '{indicator}: the curve does not get to its change. Verdict: {verdict}.',
  curveHeading: 'Your curve',
  expectedCurveHeading: 'Predicted curve',
  pointsHeading: 'Equivalence points',
  pointsHint: 'As many as your curve shows.',
  pointColumns: ['reaction', 'mL', 'pH'],
  halfEquivalence: 'half-equivalence',
  noPoints: 'The prediction has no equivalence point.',
  bufferHeading: 'Buffer part',
  buffer:
    'Calibrate the probe again. Put {mL} mL of the buffer in one beaker and as much pure water in another. Add {add} to each, drop by drop ({dropSize} mL), and read both.',
  bufferLines: ['drops', 'buffer, pH', 'water, pH'],
  bufferNote:
    'Real water has taken up carbon dioxide and reads 5.6 to 6 at first; a probe takes its time in it.',
  sheetHeading: 'Readings',
  sheetHint: 'Added: what the burette shows, less its first reading. Mark the line where the colour changes.',
  expectedSheetHint: 'The planned additions, and the pH predicted after each.',
  buretteColumn: 'burette',
  volumeColumn: 'added, mL',
  pHColumn: 'pH',
  notesHeading: 'What the prediction rests on',
  model: 'Activity: {activity}. Temperature: {celsius} °C.',
  picture: plotWords,
} as const);

/** Words to put in place of those of {@link handoutWords}; a list in place of a list. */
export type HandoutWords = {
  readonly [Key in keyof typeof handoutWords]: (typeof handoutWords)[Key] extends string
    ? string
    : (typeof handoutWords)[Key] extends readonly string[]
      ? readonly string[]
      : PlotWords;
};

/** The most characters of one text, and the most texts of one list. */
const most = { characters: 2000, texts: 30 } as const;

/** Reads words from a caller's value, noting every fault; those that are left out are the library's own. @internal */
export function readHandoutWords(value: unknown, path: string, faults: Faults): HandoutWords {
  if (value === undefined) return handoutWords;
  const keys = Object.keys(handoutWords) as (keyof HandoutWords)[];
  const unread = faults.object(value, path, 'words to replace', keys);
  const given = keys
    .filter((key) => unread[key] !== undefined)
    .map((key) => [key, readWord(unread[key], at(path, key), handoutWords[key], faults)]);
  return { ...handoutWords, ...Object.fromEntries(given) };
}

function readWord(value: unknown, path: string, ours: HandoutWords[keyof HandoutWords], faults: Faults) {
  if (typeof ours === 'object' && !('length' in ours)) return readWords(value, path, faults);
  if (typeof ours === 'string') return readReplacement(value, path, [ours], faults, most.characters);
  const isFixed = /(Columns|Lines)$/.test(path); // one for each column or line
  const [least, limit] = isFixed ? [ours.length, ours.length] : [0, most.texts];
  return faults
    .list(value, path, 'a list of texts', least, limit)
    .map((text, k) => readReplacement(text, `${path}[${k}]`, ours, faults, most.characters));
}
