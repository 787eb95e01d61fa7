import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import type { TitrationFit } from '../measurement/fit/titration-fit.js';
import type { UncertaintyBudget } from '../measurement/uncertainty/budget.js';
import { printResult } from '../measurement/uncertainty/print-estimate.js';
import { valueInLine } from '../measurement/uncertainty/value-in-line.js';
import { drawBudget, readShares } from '../plot/draw-budget.js';
import { drawFit } from '../plot/draw-fit.js';
import { readFit } from '../plot/read-fit.js';
import { toDigits } from '../print-number.js';
import { notesOf, objectsAt, type Pieces, textAt } from './pieces.js';

const numbers = { from: -1e100, to: 1e100 };
const sizes = { from: 0, to: 1e100 };

/** The result, and what each input adds to its uncertainty. @internal */
export const budgetPieces: Pieces = (fields, faults) => {
  faults.number(fields.value, 'result.value', 'a value', numbers);
  faults.number(fields.expandedUncertainty, 'result.expandedUncertainty', 'an uncertainty', sizes);
  faults.number(fields.coverageFactor, 'result.coverageFactor', 'a factor', sizes);
  faults.number(fields.level, 'result.level', 'a share', { from: 0, to: 1 });
  const shares = readShares(fields, faults);
  const rows = objectsAt(fields.contributions, 'result.contributions', faults).map((one, k) => {
    const path = `result.contributions[${k}]`;
    const value = faults.number(one.value, `${path}.value`, 'a value', numbers);
    const { input = '', percent = 0 } = shares[k] ?? {};
    return {
      input,
      value: valueInLine(value, readSpread(one.standardUncertainty, path, faults), ''),
      'share of the variance, %': percent,
    };
  });
  const budget = fields as unknown as UncertaintyBudget; // all of it that is used has been read
  return [
    () => [
      { kind: 'text', text: `Result: ${printResult(budget)}` },
      { kind: 'picture', picture: drawBudget(budget) },
    ],
    { kind: 'table', rows },
    notesOf(fields, faults),
  ];
};

/** The readings over the curve, what was fitted, and where the equivalence points lie. @internal */
export const fitPieces: Pieces = (fields, faults) => {
  const read = readFit(fields, faults);
  const parameters = objectsAt(fields.parameters, 'result.parameters', faults).map((one, k) => {
    const path = `result.parameters[${k}]`;
    const unit = one.unit === '' ? '' : textAt(one, 'unit', path, faults);
    const expected = faults.number(one.expected, `${path}.expected`, 'a number', numbers);
    const { name = '', value = 0, standardUncertainty = null } = read.parameters[k] ?? {};
    return { parameter: name, found: valueInLine(value, standardUncertainty ?? 0, unit), expected };
  });
  const points = objectsAt(fields.equivalencePoints, 'result.equivalencePoints', faults).map((one, k) => {
    const path = `result.equivalencePoints[${k}]`;
    const equivalence = textAt(one, 'reaction', path, faults);
    const mL = faults.number(one.mL, `${path}.mL`, 'a volume in mL', numbers);
    const what = 'an estimate or null';
    const { standardUncertainty: u } = faults.object(one.estimate ?? {}, `${path}.estimate`, what);
    const spread = u === undefined ? 0 : readSpread(u, `${path}.estimate`, faults);
    return { equivalence, found: valueInLine(mL, spread, 'mL') };
  });
  return [
    () => [{ kind: 'picture', picture: drawFit(fields as unknown as TitrationFit) }], // read above
    { kind: 'table', rows: parameters },
    { kind: 'table', rows: points },
    notesOf(fields, faults),
  ];
};

const readSpread = (u: unknown, path: string, faults: Faults): number =>
  faults.number(u, `${path}.standardUncertainty`, 'a standard uncertainty', sizes);

/** The verdict, how the end point was called, what is likely with what to do, and all that was tried. @internal */
export const diagnosisPieces: Pieces = (fields, faults) => [
  { kind: 'text', text: textAt(fields, 'sentence', 'result', faults) },
  { kind: 'text', text: scatterIn(fields, faults) },
  { kind: 'list', items: calledIn(fields, faults) },
  {
    kind: 'table',
    rows: explanationsAt(fields, 'likely', ['sentence', 'check', 'remedy'], faults),
    caption: 'Likely',
  },
  {
    kind: 'table',
    rows: explanationsAt(fields, 'explanations', ['words'], faults).map(({ words, evidence }) => ({
      fault: words,
      evidence,
    })),
    caption: 'All that was tried, by the evidence over a sound bench',
  },
  notesOf(fields, faults),
];

const scatterIn = (fields: Unread, faults: Faults): string => {
  const scatter = faults.number(fields.scatter, 'result.scatter', 'a scatter', sizes);
  return `Scatter: ${toDigits(scatter, 3)} times what the uncertainty of the readings lets expect.`;
};

/** Nothing where no end point was called. */
function calledIn({ endpoint }: Unread, faults: Faults): readonly string[] {
  if (endpoint === undefined || endpoint === null) return [];
  const called = faults.object(endpoint, 'result.endpoint', 'an end point as diagnose judges it');
  const sentence = textAt(called, 'sentence', 'result.endpoint', faults);
  return [
    called.remedy === '' ? sentence : `${sentence} ${textAt(called, 'remedy', 'result.endpoint', faults)}`,
  ];
}

const explanationsAt = (
  fields: Unread,
  key: string,
  texts: readonly string[],
  faults: Faults,
): readonly Readonly<Record<string, string | number>>[] =>
  objectsAt(fields[key], `result.${key}`, faults).map((one, k) => {
    const path = `result.${key}[${k}]`;
    return {
      ...Object.fromEntries(texts.map((name) => [name, textAt(one, name, path, faults)])),
      evidence: faults.number(one.evidence, `${path}.evidence`, 'a number', numbers),
    };
  });
