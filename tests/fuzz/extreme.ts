import fc from 'fast-check';
import { copyOf, pathsOf, valueAt } from '../property/hostile.js';

const numbers = fc.oneof(
  fc.constantFrom(0, -0, 5e-324, 2.3e-308, 1e-300, 1e-16, 2 ** -52, 1e-7, 1, 2 ** 31, 2 ** 53, 1e15),
  fc.constantFrom(1e100, 1e300, Number.MAX_VALUE, -1e-300, -1, -(2 ** 53), -1e300, -Number.MAX_VALUE),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);

/** Texts that are read as numbers, dates, formulas or tables by careless code, up to lengths where slow patterns show. */
const long = 30_000;
const texts = fc.oneof(
  fc.constantFrom('0', '-0', '1e400', '1e-400', '1/3', '1/0', '0x10', '\u0661', '1,5', '1e9999999999', 'NaN'),
  fc.constantFrom('__proto__', 'constructor', 'toString', 'hasOwnProperty', '\u0000', '\ud800', '\ufeff'),
  fc
    .constantFrom(...'0 1, 1. 1e ( ) - · a Na H2O ² 1; "'.split(' '), ' ', '\t', '\n', '\r\n')
    .chain((piece) => fc.constantFrom('', '!', 'x', '(', '1').map((end) => piece.repeat(long) + end)),
);

/** The same arguments with one to all of their numbers and texts at the ends of what a type allows. */
export function extreme(values: readonly unknown[]): fc.Arbitrary<readonly unknown[]> {
  const kinds = ['number', 'string'];
  const leaves = pathsOf(values).filter((path) => kinds.includes(typeof valueAt(values, path)));
  if (leaves.length === 0) return fc.constant(values);
  const changed = fc.oneof(
    fc.constantFrom(...leaves).map((path) => [path]),
    fc.subarray(leaves, { minLength: 1 }),
  );
  return changed.chain((paths) =>
    fc
      .tuple(...paths.map((path) => (typeof valueAt(values, path) === 'number' ? numbers : texts)))
      .map((replacements) => {
        const copy = copyOf(values);
        paths.forEach((path, k) => {
          const holder = valueAt(copy, path.slice(0, -1)) as Record<string, unknown>;
          holder[path.at(-1) ?? ''] = replacements[k];
        });
        return copy;
      }),
  );
}

/** The same arguments as JSON would bring them from an enemy: keys that reach for prototypes in every object. */
export function poisoned(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) return value.map(poisoned);
  const inside = Object.entries(value).map(([key, item]) => [key, poisoned(item)]);
  const copy = Object.fromEntries(inside);
  for (const key of ['__proto__', 'constructor', 'prototype'])
    Object.defineProperty(copy, key, {
      value: { polluted: 'yes', prototype: { polluted: 'yes' } },
      enumerable: true,
      configurable: true,
      writable: true,
    });
  return copy;
}
