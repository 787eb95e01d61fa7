import fc from 'fast-check';

const cyclic: Record<string, unknown> = { name: 'a ring' };
cyclic.self = cyclic;
cyclic.contents = [cyclic];
cyclic.species = cyclic;

/** Values that no caller should give and some will: not a number, not finite, not there, huge, in a ring, or in disguise. */
export const hostile: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(Number.NaN, Infinity, -Infinity, -1, -0, 1e308, 5e-324, 2 ** 53, 10n ** 400n),
  fc.constantFrom<unknown>(
    undefined,
    null,
    true,
    '',
    '1',
    'Na2CO3',
    '__proto__',
    'constructor',
    'x'.repeat(1e5),
  ),
  fc.constantFrom<unknown>(
    [],
    {},
    cyclic,
    [cyclic],
    new Array(1e6),
    Object.create(null),
    new Date(Number.NaN),
  ),
  fc.constantFrom<unknown>(Symbol('s'), () => 1, /x/, new Map(), new Float64Array(3), new Error('e')),
  fc.constantFrom<unknown>(JSON.parse('{"__proto__": {"id": "x"}}'), { toString: null }, { constructor: 1 }),
  fc.string(),
  fc.double(),
  fc.anything(),
);

/** Thrown by what throws when it is read; no library of ours may let it through. */
class Boom extends Error {}
const boom = (): never => {
  throw new Boom('read');
};

/** Says something else each time it is asked. */
function fickle(): unknown {
  let count = 0;
  const answers = [1, Number.NaN, 'text', null, undefined, [], {}];
  return {
    get mL() {
      count += 1;
      return answers[count % answers.length];
    },
  };
}

function revoked(target: object): unknown {
  const { proxy, revoke } = Proxy.revocable(target, {});
  revoke();
  return proxy;
}

/** What can only be made anew each time, or breaks whoever looks at it. */
const snares: readonly (() => unknown)[] = [
  () => revoked({}),
  () => revoked([]),
  () =>
    new Proxy(
      {},
      { get: boom, ownKeys: boom, has: boom, getPrototypeOf: boom, getOwnPropertyDescriptor: boom },
    ),
  () => new Proxy([1, 2], { get: boom }),
  () => new Proxy([1, 2], { get: (_, key) => (key === 'length' ? Symbol('length') : 1) }),
  () => new Proxy([1, 2], { get: (_, key) => (key === 'length' ? 2 ** 32 : undefined) }),
  () => Object.defineProperty({}, 'mL', { get: boom, enumerable: true }),
  () => Object.defineProperty([1, 2], 1, { get: boom, enumerable: true }),
  () => Object.assign([1, 2], { [Symbol.iterator]: boom }),
  () => ({ toString: boom, valueOf: boom, toJSON: boom, [Symbol.toPrimitive]: boom }),
  fickle,
  () => BigInt64Array.of(1n),
  () => new DataView(new ArrayBuffer(8)),
  () => new Array(2 ** 32 - 1),
  () => new Number(1),
  () => new String('1'),
  () => class {},
  () => new WeakMap(),
  () => Promise.resolve(1),
  () => structuredClone(cyclic),
];

const makers: fc.Arbitrary<() => unknown> = fc.oneof(
  { arbitrary: hostile.map((value) => () => value), weight: 3 },
  { arbitrary: fc.constantFrom(...snares), weight: 1 },
);

/** Any arguments at all, none to three of them. */
export const hostileArguments: fc.Arbitrary<() => readonly unknown[]> = fc
  .array(makers, { maxLength: 3 })
  .map((list) => () => list.map((make) => make()));

type Spoil = 'replace' | 'drop' | 'rename' | 'add' | 'getter' | 'proxy';

/** The same data with one value somewhere inside replaced, dropped, misnamed, added to, or hidden behind a getter or a proxy. */
export function spoiled<Data extends object>(data: Data): fc.Arbitrary<Data> {
  const paths = pathsOf(data);
  return fc
    .record({
      path: fc.constantFrom(...paths),
      make: makers,
      how: fc.constantFrom<Spoil>(
        'replace',
        'replace',
        'replace',
        'drop',
        'rename',
        'add',
        'getter',
        'proxy',
      ),
    })
    .map(({ path, make, how }) => {
      const copy = copyOf(data);
      const holder = valueAt(copy, path.slice(0, -1)) as Record<string, unknown>;
      const isArgument = path.length === 1 && (how === 'getter' || how === 'drop' || how === 'rename'); // a list of them is ours
      spoil(holder, path.at(-1) ?? '', isArgument ? 'replace' : how, make);
      return copy;
    });
}

function spoil(holder: Record<string, unknown>, key: string, how: Spoil, make: () => unknown): void {
  const value = holder[key];
  if (how === 'replace') holder[key] = make();
  if (how === 'add') holder[`${key}_`] = make();
  if (how === 'rename') holder[key.toUpperCase()] = value;
  if (how === 'rename' || how === 'drop') delete holder[key];
  if (how === 'getter') Object.defineProperty(holder, key, { get: boom, enumerable: true });
  if (how === 'proxy')
    holder[key] = typeof value === 'object' && value !== null ? new Proxy(value, { get: boom }) : make();
}

/** A copy that shares no object with the original. Functions, which cannot be copied, stay what they are. */
export function copyOf<Data>(value: Data): Data {
  if (typeof value !== 'object' || value === null) return value;
  if (ArrayBuffer.isView(value)) return structuredClone(value);
  const items = Object.entries(value).map(([key, item]) => [key, copyOf(item)]);
  return (Array.isArray(value) ? items.map(([, item]) => item) : Object.fromEntries(items)) as Data;
}

/** Where everything inside stands. */
export function pathsOf(value: object, path: readonly string[] = []): string[][] {
  return Object.entries(value).flatMap(([key, item]) => [
    [...path, key],
    ...(typeof item === 'object' && item !== null && !ArrayBuffer.isView(item)
      ? pathsOf(item, [...path, key])
      : []),
  ]);
}

export const valueAt = (value: unknown, path: readonly string[]): unknown =>
  path.reduce((holder, key) => (holder as Record<string, unknown>)[key], value);

interface Fault {
  readonly code: string;
  readonly path: string;
  readonly expected: string;
  readonly received: string;
}

/**
 * What a call did: it may answer, or throw an `InputError` whose message names every fault that it lists; anything else is
 * passed on and fails the test.
 */
export function answerOrInputError<Answer>(call: () => Answer): Answer | undefined {
  try {
    return call();
  } catch (error) {
    if (error instanceof RangeError && error.name === 'InputError' && 'issues' in error) {
      const issues = error.issues as readonly Fault[];
      if (issues.length > 0 && issues.every((issue) => isTold(issue, error.message))) return undefined;
    }
    throw error;
  }
}

const isTold = ({ code, path, expected, received }: Fault, message: string): boolean =>
  [code, path, expected, received].every((text) => typeof text === 'string' && text !== '') &&
  message.includes(`${path} is ${received}; give ${expected}.`);
