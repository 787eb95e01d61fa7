import { describeValue, kindKeyOf, shorten } from './describe-value.js';
import { InputError, type Issue, type IssueCode, mostIssues } from './input-error.js';
import { describeLimits, isWithin, type Limits } from './limits.js';
import { nearestName } from './nearest-name.js';
import { escaped, isOneLine } from './one-line.js';
import { fieldsOf, itemsOf, lengthOf, type Unread } from './safe-read.js';

/** The path of a key under a path; the arguments themselves have the empty path. @internal */
export const at = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** An object with more unknown keys than this, such as a whole catalogue, is taken for another thing altogether. */
const mostSlips = 8;

/** Units that keys name by their thousandth: mL, mmol, mV. */
const isUnit = /^(?:L|mol|V)$/;

/**
 * Gathers the faults of one call. Each `read…` notes what is wrong and returns a harmless value of the right type, so
 * that the reading goes on and finds the other faults. `done()` then throws once, with all of them.
 *
 * Objects and lists are copied as they are read, each value once. So the calculation uses the values that were checked,
 * and a caller who changes an object later changes no result.
 *
 * @internal
 */
export class Faults {
  readonly #call: string;
  readonly #issues: Issue[] = [];
  /** The paths at which an object is missing. Its keys are not reported as missing too. */
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
  add(code: IssueCode, path: string, expected: string, value: unknown, words = describeValue(value)): void {
    if (value === undefined && this.#absent.some((parent) => `${path}.`.startsWith(parent))) return;
    this.#issues.push({
      code,
      path: escaped(path || 'the argument'),
      expected: escaped(expected),
      received: escaped(words),
    });
    if (this.#issues.length === mostIssues) this.done();
  }

  /** Throws if there was any fault. */
  done(): void {
    if (this.any) throw new InputError(this.#call, this.#issues);
  }

  /** A finite number within limits; `what` names the quantity and its unit, such as `a volume in mL`. */
  number(value: unknown, path: string, what: string, limits: Limits = {}): number {
    if (typeof value === 'number' && Number.isFinite(value) && isWithin(value, limits)) return value;
    const allowed = `${what}${describeLimits(limits)}`;
    if (value === undefined) this.add('missing', path, allowed, value);
    else if (typeof value !== 'number') this.add('wrong-type', path, allowed, value);
    else this.add(Number.isFinite(value) ? 'out-of-range' : 'not-finite', path, allowed, value);
    return limits.from ?? limits.to ?? 1;
  }

  /** A column of such numbers, as a list or a typed array. Of bad numbers the first ten are reported. */
  numbers(value: unknown, path: string, what: string, limits: Limits, most: number): ArrayLike<number> {
    const typed = ArrayBuffer.isView(value) && !(value instanceof DataView);
    const column = typed
      ? (value as unknown as ArrayLike<unknown>)
      : this.list(value, path, `a list: ${what} each`);
    if (column.length > most) this.add('out-of-range', path, `at most ${most} numbers`, column.length);
    else
      for (let k = 0, bad = 0; k < column.length && bad < 10; k += 1) {
        const item = column[k];
        if (typeof item === 'number' && Number.isFinite(item) && isWithin(item, limits)) continue;
        this.number(item, `${path}[${k}]`, what, limits);
        bad += 1;
      }
    return column as ArrayLike<number>;
  }

  /** A text of one to `max` characters that can be printed in a line. */
  text(value: unknown, path: string, what: string, max = 200): string {
    if (value === undefined) this.add('missing', path, what, value);
    else if (typeof value !== 'string') this.add('wrong-type', path, what, value);
    else if (value.length === 0 || value.length > max)
      this.add('out-of-range', path, `${what} of 1 to ${max} characters`, value);
    else if (!isOneLine(value))
      this.add('wrong-type', path, `${what} in one line, without control characters`, value);
    else return value;
    return '?';
  }

  /** An object. With `keys`, any other key is a fault: a misspelt key would be lost otherwise. */
  object(value: unknown, path: string, what: string, keys?: readonly string[]): Unread {
    const unread = fieldsOf(value);
    if (value === undefined) this.add('missing', path, what, value);
    else if (unread === undefined) this.add('wrong-type', path, what, value);
    else {
      if (keys) {
        const kind = kindKeyOf(unread);
        const unknown = Object.keys(unread).filter((key) => !keys.includes(key));
        if ((kind && !keys.includes(kind)) || unknown.length > mostSlips) {
          this.add('wrong-type', path, what, value);
          this.#absent.push(at(path, ''));
          return {};
        }
        for (const key of unknown) this.#addUnknownKey(key, path, keys);
      }
      return unread;
    }
    this.#absent.push(at(path, ''));
    return {};
  }

  #addUnknownKey(key: string, path: string, keys: readonly string[]): void {
    const milli = isUnit.test(key) && keys.includes(`m${key}`) ? `m${key} (1000 for 1 ${key})` : undefined;
    const near = milli ?? nearestName(key, keys);
    const all = keys.length === 1 ? `${keys[0]} alone` : `one of ${keys.join(', ')}`;
    const wanted = near && keys.length > 1 ? `${near}, if that is meant, or ${all}` : all;
    this.add('unknown-key', at(path, shorten(key)), wanted, key, 'not a key');
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
