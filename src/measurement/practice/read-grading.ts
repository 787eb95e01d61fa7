import { shorten } from '../../input/describe-value.js';
import type { Faults } from '../../input/faults.js';
import type { BenchFaultKind } from './bench-fault.js';
import { practiceDefaults } from './practice-options.js';
import { readFaultKind } from './read-bench-faults.js';

/** Numbers of an answer or of a key. */
interface Numbers {
  readonly endpoints: readonly number[];
  /** By the id of the reagent. */
  readonly mmol: ReadonlyMap<string, number>;
}

/** What grading takes of a key. @internal */
export interface KeyRead {
  readonly expected: Numbers & { readonly faults: readonly BenchFaultKind[] };
  readonly uncorrected: Numbers;
  /** Of the reagents in the flask, by their ids; none where a key was written without a flask. */
  readonly names: ReadonlyMap<string, string>;
}

/** An answer that has been read; null where nothing was said of faults. @internal */
export type AnswerRead = Numbers & { readonly faults: readonly BenchFaultKind[] | null };

/** Options of grading that have been read. @internal */
export interface GradingInUse {
  readonly tolerance: { readonly mL: number; readonly percent: number };
  readonly points: { readonly endpoints: number; readonly mmol: number; readonly faults: number };
}

const mostItems = 1000;

/** Reads a key. @internal */
export function readKey(value: unknown, faults: Faults): KeyRead {
  const key = faults.object(value, 'key', 'a key, as from simulateReadings');
  const expected = faults.object(key.expected, 'key.expected', 'the expected answer', answerKeys);
  const uncorrected = faults.object(key.uncorrected, 'key.uncorrected', 'the answer without corrections', [
    'endpoints',
    'mmol',
  ]);
  return {
    expected: {
      ...readNumbers(expected, 'key.expected', faults),
      faults: readKinds(expected.faults, 'key.expected.faults', faults),
    },
    uncorrected: readNumbers(uncorrected, 'key.uncorrected', faults),
    names: key.flask === undefined ? new Map() : readNames(key.flask, 'key.flask', faults),
  };
}

function readNames(value: unknown, path: string, faults: Faults): ReadonlyMap<string, string> {
  const { contents } = faults.object(value, path, 'the solution in the flask');
  const read = faults.list(contents, `${path}.contents`, 'a list of contents', 0, mostItems);
  return new Map(
    read.map((content, k) => {
      const at = `${path}.contents[${k}]`;
      const { reagent } = faults.object(content, at, 'a content { reagent, mmol }');
      const { id, name } = faults.object(reagent, `${at}.reagent`, 'a reagent');
      return [
        faults.text(id, `${at}.reagent.id`, 'an id'),
        faults.text(name, `${at}.reagent.name`, 'a name'),
      ];
    }),
  );
}

const answerKeys = ['endpoints', 'mmol', 'faults'];

/** Reads an answer to what a key asks. @internal */
export function readAnswer(value: unknown, { expected }: KeyRead, faults: Faults): AnswerRead {
  const unread = faults.object(value, 'answer', 'an answer { endpoints, mmol, faults }', answerKeys);
  const { endpoints = [], mmol = {} } = unread;
  return {
    ...readNumbers({ endpoints, mmol }, 'answer', faults, [...expected.mmol.keys()]),
    faults: unread.faults === undefined ? null : readKinds(unread.faults, 'answer.faults', faults),
  };
}

function readNumbers(
  { endpoints, mmol }: Readonly<Record<string, unknown>>,
  path: string,
  faults: Faults,
  ids?: readonly string[],
): Numbers {
  const volumes = faults.numbers(endpoints, `${path}.endpoints`, 'a volume in mL', mLLimits, mostItems);
  const what = 'amounts in mmol by the id of the reagent';
  const amounts = Object.entries(faults.object(mmol, `${path}.mmol`, what, ids));
  if (amounts.length > mostItems)
    faults.add('out-of-range', `${path}.mmol`, `at most ${mostItems} amounts`, amounts.length);
  return {
    endpoints: Array.from(volumes),
    mmol: new Map(
      amounts.map(([id, amount]) => [
        id,
        faults.number(amount, `${path}.mmol.${shorten(id)}`, 'an amount in mmol', mmolLimits),
      ]),
    ),
  };
}

const mLLimits = { from: 0, to: 1e6 };
const mmolLimits = { from: 0, to: 1e12 };

function readKinds(value: unknown, path: string, faults: Faults): readonly BenchFaultKind[] {
  const named = faults.list(value, path, 'a list of names of faults', 0, mostItems);
  return [...new Set(named.map((kind, k) => readFaultKind(kind, `${path}[${k}]`, faults)))];
}

/** Reads how an answer is graded. @internal */
export function readGradeOptions(value: unknown, faults: Faults): GradingInUse {
  const keys = ['tolerance', 'points'];
  const { tolerance = {}, points = {} } = faults.object(
    value,
    'options',
    'options { tolerance, points }',
    keys,
  );
  return {
    tolerance: readPart(tolerance, 'options.tolerance', practiceDefaults.tolerance, faults),
    points: readPart(points, 'options.points', practiceDefaults.points, faults),
  };
}

/** Numbers under the keys of their defaults, which stand in for what is left out. */
function readPart<Part extends object>(value: unknown, path: string, defaults: Part, faults: Faults) {
  const keys = Object.keys(defaults);
  const unread = faults.object(value, path, `numbers { ${keys.join(', ')} }`, keys);
  const numbers = Object.entries(defaults).map(([key, usual]) => [
    key,
    unread[key] === undefined
      ? usual
      : faults.number(unread[key], `${path}.${key}`, 'a number', { from: 0, to: 1e6 }),
  ]);
  return Object.fromEntries(numbers) as { readonly [Key in keyof Part]: number };
}
