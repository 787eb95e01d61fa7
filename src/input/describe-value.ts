import { fieldsOf, lengthOf, tagOf } from './safe-read.js';

/** A short text of any value whatever: never throws, not even on cyclic or hostile objects. @internal */
export function describeValue(value: unknown): string {
  if (value === undefined) return 'missing';
  if (typeof value === 'string') return `'${shorten(value)}'`;
  if (typeof value === 'bigint')
    return value > -(10n ** 20n) && value < 10n ** 20n ? `${value}n` : 'a bigint';
  if (typeof value === 'symbol' || typeof value === 'function') return `a ${typeof value}`;
  if (typeof value === 'number') return plainly(value);
  if (typeof value !== 'object' || value === null) return String(value);
  const length = lengthOf(value);
  return length === undefined ? (kindOf(value) ?? objectName(value)) : `a list of ${length}`;
}

/** A key that tells each kind of value of this package, and what it is called: of the keys that a value has, the first. */
const kinds = {
  waterToMakeUp: 'a recipe',
  because: 'a refusal with its reason',
  steps: 'the protolyte',
  ions: 'the reagent',
  transition: 'the indicator',
  contents: 'a solution',
  equivalencePoints: 'a titration',
  log10Gamma: 'the law of activity',
  bufferCapacity: 'an equilibrium',
  ranking: 'a ranking',
  analyte: 'a setup',
} as const;

/** The key that tells what a value of this package is; undefined for any other value. @internal */
export const kindKeyOf = (fields: Readonly<Record<string, unknown>>): string | undefined =>
  Object.keys(kinds).find((key) => Object.hasOwn(fields, key));

/** What a value of this package is called, such as `the protolyte 'acetic acid'`. */
function kindOf(value: object): string | undefined {
  const fields = fieldsOf(value);
  const key = fields && kindKeyOf(fields);
  if (!key) return undefined;
  const kind = kinds[key as keyof typeof kinds];
  return kind.startsWith('the ') && typeof fields.name === 'string'
    ? `${kind} '${shorten(fields.name)}'`
    : kind.replace('the ', 'a ');
}

function objectName(value: object): string {
  try {
    const tag = tagOf(value);
    if (tag === 'Promise') return 'a promise that was not awaited';
    if (tag === 'Module') return 'a module';
    return tag === 'Object' || !/^[A-Z]\w{1,30}$/.test(tag)
      ? 'an object'
      : `${/^[AEIOU]/.test(tag) ? 'an' : 'a'} ${tag}`;
  } catch {
    return 'an object'; // a proxy
  }
}

/** A number as one reads it: 1e9 rather than nine zeros to count. @internal */
export const plainly = (value: number): string =>
  Math.abs(value) >= 1e6 && Number.isFinite(value)
    ? value.toExponential().replace('e+', 'e')
    : Object.is(value, -0)
      ? '-0'
      : String(value);

/** A text as a message quotes it: its first 37 characters, where it has more than 40. @internal */
export const shorten = (text: string): string => (text.length > 40 ? `${text.slice(0, 37)}…` : text);
