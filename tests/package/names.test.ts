import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesIn, read } from '../tree.js';

const files = filesIn('src/').filter((path) => path.endsWith('.ts') && !path.endsWith('.d.ts'));
/** A reagent may bear the name of its acid: each stands in a namespace of its own. An entry names again what it hands on. */
const code = files.filter((path) => !path.startsWith('src/catalogue/') && path.split('/').length > 2);

/** The declarations that a file exports. */
const exportedBy = (path: string): string[] =>
  [...read(path).matchAll(/^export (?:async )?(?:const|function|class|interface|type) (\w+)/gm)].map(
    ([, name]) => name as string,
  );

describe('the names of src', () => {
  test('are each exported from one file, so that an editor imports the right one', () => {
    const homes = new Map<string, Set<string>>();
    for (const path of code)
      for (const name of exportedBy(path)) homes.set(name, (homes.get(name) ?? new Set()).add(path));
    expect([...homes].filter(([, paths]) => paths.size > 1).map(([name]) => name)).toEqual([]);
  });

  // The entries are the plurals of what they hold; pKaAt, pKHAt and pKwAt are symbols of the field.
  test('of files are never one letter apart', () => {
    const symbols = ['pka-at', 'pkh-at', 'pkw-at'];
    const stems = [...new Set(code.map((path) => path.split('/').at(-1)?.replace('.ts', '') ?? ''))].filter(
      (stem) => !symbols.includes(stem),
    );
    const near = stems.flatMap((a, k) =>
      stems.slice(k + 1).flatMap((b) => (isOneApart(a, b) ? [[a, b]] : [])),
    );
    expect(near).toEqual([]);
  });
});

/** Whether one text is the other with a letter more, or with another letter in one place. */
function isOneApart(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (long.length - short.length > 1) return false;
  let k = 0;
  while (k < short.length && short[k] === long[k]) k += 1;
  return long.slice(k + 1) === short.slice(long.length === short.length ? k + 1 : k);
}

// Longer ones have their reason beside them, in the doc comment: a tuned loop, or one formula.
test('no function of src is longer than sixty lines, but for one', () => {
  const long = files.flatMap((path) => {
    const source = ts.createSourceFile(path, read(path), ts.ScriptTarget.ESNext, true);
    const found: string[] = [];
    const visit = (node: ts.Node) => {
      if (ts.isFunctionDeclaration(node)) {
        const [from, to] = [node.getStart(), node.end].map(
          (at) => source.getLineAndCharacterOfPosition(at).line,
        );
        if (Number(to) - Number(from) >= 60) found.push(`${node.name?.text}`);
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
    return found;
  });
  expect(long).toEqual(['ionMomentsAt']);
});
