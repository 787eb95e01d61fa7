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

/** The same data with one value somewhere inside replaced, dropped or added. */
export function spoiled(data: object): fc.Arbitrary<unknown> {
  const paths = pathsOf(data);
  return fc.record({ path: fc.constantFrom(...paths), value: hostile, drop: fc.boolean() }).map((spoil) => {
    const copy = structuredClone(data);
    let holder = copy as Record<string, unknown>;
    for (const key of spoil.path.slice(0, -1)) holder = holder[key] as Record<string, unknown>;
    const key = spoil.path.at(-1) ?? '';
    if (spoil.drop) delete holder[key];
    else holder[key] = spoil.value;
    return copy;
  });
}

function pathsOf(value: object, path: readonly string[] = []): string[][] {
  return Object.entries(value).flatMap(([key, item]) => [
    [...path, key],
    ...(typeof item === 'object' && item !== null ? pathsOf(item, [...path, key]) : []),
  ]);
}

/** What a call did: it may answer, or throw an `InputError` with its faults; anything else is passed on and fails the test. */
export function answerOrInputError<Answer>(call: () => Answer): Answer | undefined {
  try {
    return call();
  } catch (error) {
    if (error instanceof Error && error.name === 'InputError' && 'issues' in error) {
      const issues = error.issues as { code: string; path: string; expected: string; received: string }[];
      if (
        issues.length > 0 &&
        issues.every((issue) => issue.code && issue.path && issue.expected && issue.received)
      )
        return undefined;
    }
    throw error;
  }
}
