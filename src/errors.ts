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
 * Tell it by `name` (`'InputError'`) rather than by `instanceof`, which fails where two copies of the package are loaded.
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

/** The path of a key under a path; the arguments themselves have the empty path. @internal */
export const at = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** A copy of the caller's object, one level deep: nothing is known of its values yet. */
export type Unread = Readonly<Record<string, unknown>>;

/** Limits of a number: `above` and `below` are open ends, `from` and `to` closed ones. */
export interface Limits {
  readonly above?: number;
  readonly from?: number;
  readonly to?: number;
  readonly integer?: boolean;
}

/** The reading of a call ends with this many faults: a bad list of a million items is not worth a million lines. */
const mostIssues = 100;

/**
 * Gathers the faults of one call. Each `read…` notes what is wrong and returns a harmless value of the right type, so
 * that the reading can go on and find the other faults; `done()` then throws once, with all of them.
 *
 * Objects and lists are copied as they are read, each value once: what is calculated with is what was checked, whatever
 * a getter says the second time, and a caller who changes an object later changes no result.
 *
 * @internal
 */
export class Faults {
  readonly #call: string;
  readonly #issues: Issue[] = [];
  /** Where an object should stand and does not: that its keys are missing too goes without saying. */
  readonly #absent: string[] = [];

  constructor(call: string) {
    this.#call = call;
  }

  get count(): number {
    return this.#issues.length;
  }

  get any(): boolean {
    return this.count > 0;
  }

  /** @param words - what to say of the value, where the value itself would not read well after `path is` */
  add(code: IssueCode, path: string, expected: string, value: unknown, words = show(value)): void {
    if (value === undefined && this.#absent.some((parent) => `${path}.`.startsWith(parent))) return;
    this.#issues.push({ code, path: path || 'the argument', expected, received: words });
    if (this.#issues.length === mostIssues) this.done();
  }

  /** Throws if there was any fault. */
  done(): void {
    if (this.any) throw new InputError(this.#call, this.#issues);
  }

  /** A finite number within limits; `what` names the quantity and its unit, such as `a volume in mL`. */
  number(value: unknown, path: string, what: string, limits: Limits = {}): number {
    if (typeof value === 'number' && Number.isFinite(value) && within(value, limits)) return value;
    const allowed = `${what}${describe(limits)}`;
    if (value === undefined) this.add('missing', path, allowed, value);
    else if (typeof value !== 'number') this.add('wrong-type', path, allowed, value);
    else this.add(Number.isFinite(value) ? 'out-of-range' : 'not-finite', path, allowed, value);
    return limits.from ?? limits.to ?? 1;
  }

  /** A column of such numbers, as a list or a typed array, and of the bad ones the first ten. A good one costs a comparison. */
  numbers(value: unknown, path: string, what: string, limits: Limits, most: number): ArrayLike<number> {
    const typed = ArrayBuffer.isView(value) && !(value instanceof DataView);
    const column = typed
      ? (value as unknown as ArrayLike<unknown>)
      : this.list(value, path, `a list: ${what} each`);
    if (column.length > most) this.add('out-of-range', path, `at most ${most} numbers`, column.length);
    else
      for (let k = 0, bad = 0; k < column.length && bad < 10; k += 1) {
        const one = column[k];
        if (typeof one === 'number' && Number.isFinite(one) && within(one, limits)) continue;
        this.number(one, `${path}[${k}]`, what, limits);
        bad += 1;
      }
    return column as ArrayLike<number>;
  }

  /** A text of one to `max` characters. */
  text(value: unknown, path: string, what: string, max = 200): string {
    if (value === undefined) this.add('missing', path, what, value);
    else if (typeof value !== 'string') this.add('wrong-type', path, what, value);
    else if (value.length === 0 || value.length > max)
      this.add('out-of-range', path, `${what} of 1 to ${max} characters`, value);
    else return value;
    return '?';
  }

  /** An object. With `keys`, any other key is a fault: what is misspelt must not be lost. */
  object(value: unknown, path: string, what: string, keys?: readonly string[]): Unread {
    const unread = fieldsOf(value);
    if (value === undefined) this.add('missing', path, what, value);
    else if (unread === undefined) this.add('wrong-type', path, what, value);
    else {
      if (keys) {
        for (const key of Object.keys(unread))
          if (!keys.includes(key))
            this.add('unknown-key', at(path, shorten(key)), `only the keys ${keys.join(', ')}`, unread[key]);
      }
      return unread;
    }
    this.#absent.push(at(path, ''));
    return {};
  }

  /** An array of `min` to `max` items. */
  list(value: unknown, path: string, what: string, min = 0, max = 1e7): readonly unknown[] {
    const length = lengthOf(value);
    if (value === undefined) this.add('missing', path, what, value);
    else if (length === undefined) this.add('wrong-type', path, what, value);
    else if (length < min) this.add('out-of-range', path, `${what}, at least ${min} of them`, value);
    else if (length > max) this.add('out-of-range', path, `${what}, at most ${max} of them`, value);
    else {
      const items = itemsOf(value as readonly unknown[], length);
      if (items !== undefined) return items;
      this.add('wrong-type', path, what, value);
    }
    return [];
  }
}

/** A copy of an object, each value read once; undefined for anything else and for what throws when read. */
function fieldsOf(value: unknown): Unread | undefined {
  try {
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { ...value };
  } catch {} // a getter or a proxy
  return undefined;
}

/** Whether a value is an array: unlike `Array.isArray`, never throws. @internal */
export const isList = (value: unknown): boolean => lengthOf(value) !== undefined;

/** The length of an array; undefined for anything else. */
function lengthOf(value: unknown): number | undefined {
  try {
    if (Array.isArray(value) && Number.isInteger(value.length)) return value.length;
  } catch {} // a proxy
  return undefined;
}

/** A copy of an array, each item read once and holes as undefined; undefined for what throws when read. */
function itemsOf(value: readonly unknown[], length: number): readonly unknown[] | undefined {
  try {
    const items: unknown[] = [];
    for (let index = 0; index < length; index += 1) items.push(value[index]);
    return items;
  } catch {
    return undefined;
  }
}

function within(value: number, { above, from, to, integer }: Limits): boolean {
  if (above !== undefined && !(value > above)) return false;
  if (from !== undefined && !(value >= from)) return false;
  if (to !== undefined && !(value <= to)) return false;
  return !integer || Number.isInteger(value);
}

/** The limits in words, to stand after what they limit. @internal */
export function describe({ above, from, to, integer }: Limits): string {
  const parts = [];
  if (integer) parts.push('a whole number');
  if (from !== undefined && to !== undefined) parts.push(`from ${plainly(from)} to ${plainly(to)}`);
  else {
    if (above !== undefined) parts.push(`above ${plainly(above)}`);
    if (from !== undefined) parts.push(`${plainly(from)} or more`);
    if (to !== undefined) parts.push(`at most ${plainly(to)}`);
  }
  return parts.length === 0 ? '' : `, ${parts.join(' and ')}`;
}

/** A number as one reads it: 1e9 rather than nine zeros to count. @internal */
export const plainly = (value: number): string =>
  Math.abs(value) >= 1e6 && Number.isFinite(value)
    ? value.toExponential().replace('e+', 'e')
    : Object.is(value, -0)
      ? '-0'
      : String(value);

/** A short text of any value whatever: never throws, not even on cyclic or hostile objects. */
function show(value: unknown): string {
  if (value === undefined) return 'missing';
  if (typeof value === 'string') return `'${shorten(value)}'`;
  if (typeof value === 'bigint')
    return value > -(10n ** 20n) && value < 10n ** 20n ? `${value}n` : 'a bigint';
  if (typeof value === 'symbol' || typeof value === 'function') return `a ${typeof value}`;
  if (typeof value === 'number') return plainly(value);
  if (typeof value !== 'object' || value === null) return String(value);
  const length = lengthOf(value);
  return length === undefined ? 'an object' : `a list of ${length}`;
}

const shorten = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}…` : text);
