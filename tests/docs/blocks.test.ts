import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { format } from 'node:util';
import ts from 'typescript';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { filesIn, read, root } from '../tree.js';
import { blocksOf, docLinesOf, moduleOf } from './blocks.js';
import { expectThrow, shown } from './shown.js';

const folder = 'coverage/doc-blocks';
const sources = filesIn('src/').filter((file) => file.endsWith('.ts'));
const documents = ['README.md', 'DEVELOPERS.md', ...filesIn('docs/').filter((file) => file.endsWith('.md'))];

rmSync(root + folder, { recursive: true, force: true });
mkdirSync(root + folder, { recursive: true });
const modules = [...documents, ...sources]
  .flatMap((file) => blocksOf(file, read(file)))
  .filter(({ run }) => run)
  .map((block) => {
    const path = `${root}${folder}/${block.file.replaceAll('/', '-')}.${block.line}.${block.language}`;
    writeFileSync(path, moduleOf(block, '../../tests/docs/shown.js'));
    return { block, path };
  });

afterEach(() => vi.restoreAllMocks());

describe('a block of code in the documentation does what it says', () => {
  test.each(modules.map(({ block, path }) => [`${block.file}:${block.line}`, block, path] as const))(
    '%s',
    async (_, { printed }, path) => {
      const lines: string[] = [];
      vi.spyOn(console, 'log').mockImplementation((...values) => void lines.push(format(...values)));
      await import(path);
      if (printed !== undefined) expect(lines.join('\n')).toBe(printed);
    },
  );
});

test('every block of code in the documentation compiles', () => {
  const config = ts.getParsedCommandLineOfConfigFile(`${root}tests/tsconfig.json`, undefined, {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: ({ messageText }) => expect.unreachable(String(messageText)),
  });
  const program = ts.createProgram(
    modules.map(({ path }) => path),
    { ...config?.options, noEmit: true },
  );
  const faults = modules.flatMap(({ block, path }) => {
    const file = program.getSourceFile(path);
    return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)].map(
      (fault) => {
        const { line } = ts.getLineAndCharacterOfPosition(file as ts.SourceFile, fault.start ?? 0);
        return `${block.file}:${block.line + line} ${ts.flattenDiagnosticMessageText(fault.messageText, '\n')}`;
      },
    );
  });
  expect(faults).toEqual([]);
}, 60_000);

test('every @example is fenced, so that it runs', () => {
  const bare = sources.flatMap((file) => {
    const lines = docLinesOf(read(file));
    return lines.flatMap((line, i) => {
      if (!line.startsWith('@example')) return [];
      const next = lines.slice(i + 1).find((text) => text.trim() !== '');
      return /^```(ts|js)\b/.test(next ?? '') ? [] : [`${file}:${i + 1}`];
    });
  });
  expect(bare).toEqual([]);
});

describe('the checks on blocks', () => {
  const markdown = [
    'text',
    '```ts',
    'f(',
    '  1,',
    '); // => 2.50',
    '```',
    '',
    '```text',
    'out',
    '```',
    '```ts no-run',
    '```',
  ];

  test('find code, its line, its output and the mark not to run it', () => {
    expect(blocksOf('x.md', markdown.join('\n'))).toEqual([
      {
        file: 'x.md',
        line: 3,
        language: 'ts',
        code: 'f(\n  1,\n); // => 2.50',
        run: true,
        printed: 'out',
      },
      { file: 'x.md', line: 12, language: 'ts', code: '', run: false },
    ]);
  });

  test('find the same code at the same line in a doc comment', () => {
    const comment = ['/**', ...markdown.map((line) => ` * ${line}`), ' */', 'export const x = 1;'].join('\n');
    expect(blocksOf('x.ts', comment)[0]).toMatchObject({
      line: 4,
      code: 'f(\n  1,\n); // => 2.50',
      printed: 'out',
    });
  });

  test.each([
    ['f(1); // => 2.50', "__expect(f(1)).toEqual((__docs.shown('2.50')));"],
    ['const a = f(1); // => 7', 'const a = f(1);__expect(a).toEqual((7));'],
    ["g; // => { x: [-1.5, 2], y: '3.1' }", "toEqual(({ x: [__docs.shown('-1.5'), 2], y: '3.1' }));"],
    ['f(0); // => throws InputError: f', '__docs.expectThrow(() => f(0), "InputError: f");'],
  ])('turn %j into an assertion', (code, assertion) =>
    expect(moduleOf({ file: 'x.md', line: 1, language: 'ts', code, run: true }, './shown.js')).toContain(
      assertion,
    ),
  );

  test('refuse a value that belongs to no statement', () =>
    expect(() =>
      moduleOf({ file: 'x.md', line: 9, language: 'ts', code: 'f(1);\n// => 2', run: true }, ''),
    ).toThrow('x.md:9'));

  test.each([
    ['8.31', 8.3149, true],
    ['8.31', 8.3151, false],
    ['-1.30e-3', -0.0013049, true],
    ['-1.30e-3', -0.001306, false],
    ['0.5', Number.NaN, false],
  ])('hold a number shown as %s: %d is it %s', (text, actual, expected) =>
    expect(shown(text).asymmetricMatch(actual)).toBe(expected),
  );

  test('want an error where one is promised, and that one', () => {
    const throwing = () => {
      throw new RangeError('mL: below zero');
    };
    expectThrow(throwing, 'RangeError: mL');
    expect(() => expectThrow(throwing, 'RangeError: grams')).toThrow();
    expect(() => expectThrow(() => 1, 'RangeError')).toThrow();
  });
});
