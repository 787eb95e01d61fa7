/** What is wrong with one value that a caller gave. */
export interface Issue {
  readonly code: IssueCode;
  /** Where it stands in the arguments, such as `contents[1].grams`. */
  readonly path: string;
  /** What is allowed there. */
  readonly expected: string;
  /** What was given, shortened. */
  readonly received: string;
}

/** The kinds of fault. */
export type IssueCode =
  | 'wrong-type' //         not a number, not an object, …
  | 'not-finite' //         NaN, Infinity
  | 'out-of-range' //       a number, but not one that makes sense here
  | 'missing' //            a required key is not there
  | 'unknown-key' //        a key that this call does not know: a typing slip would be lost in silence
  | 'conflict' //           two values that cannot both hold
  | 'unknown-substance' //  a protolyte, species or ion that is not part of this
  | 'bad-formula'; //       a chemical formula that cannot be read

/**
 * The caller's mistake: every fault found in one call, listed together.
 *
 * Tell it by `name` (`'InputError'`) rather than by `instanceof`, which fails where two copies of the package are
 * loaded.
 *
 * @example
 * ```ts
 * import { makeSolution, reagents } from 'protolysis';
 *
 * let message = '';
 * try {
 *   makeSolution({ mL: -20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
 * } catch (error) {
 *   message = (error as Error).message;
 * }
 * message; // => 'makeSolution: mL is -20; give a volume in mL, from 1e-9 to 1e9.'
 * ```
 */
export class InputError extends RangeError {
  declare name: 'InputError'; // a field with a value would cost the class its name in CommonJS
  readonly issues: readonly Issue[];

  constructor(call: string, issues: readonly Issue[]) {
    super(messageOf(call, issues));
    this.name = 'InputError';
    this.issues = issues;
  }
}

function messageOf(call: string, issues: readonly Issue[]): string {
  const lines = issues.map(({ path, expected, received }) => `${path} is ${received}; give ${expected}.`);
  if (lines.length === 1) return `${call}: ${lines[0]}`;
  const count = lines.length < mostIssues ? lines.length : `the first ${lines.length}`;
  return `${call}: ${count} faults\n${lines.map((line) => `- ${line}`).join('\n')}`;
}

/**
 * The reading of a call ends with this many faults, so that a bad list of a million items gives a message of readable
 * length.
 *
 * @internal
 */
export const mostIssues = 100;
