import { describe, expect, test } from 'vitest';
import { entriesIn, filesIn, read } from '../tree.js';

const topLevel = [
  'CHANGELOG.md',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'bench',
  'docs',
  'package-lock.json',
  'package.json',
  'src',
  'tests',
  'tsconfig.json',
];

// A path of somebody's machine, and a host that packages are fetched from.
const machinePath = /(?<![\w.:/~-])\/(?:home|root|Users|work|tmp|var|opt|mnt)\/\w|\b[A-Z]:\\Users/;
const registryHost = /\b(?:registry\.npm\w*|npmjs|yarnpkg|npmmirror)\.\w/;

describe('the tree', () => {
  test('has the fixed top level and nothing beside it but dotfiles', () => {
    const names = entriesIn('').map(({ path }) => path);
    expect(names.filter((name) => !name.startsWith('.')).sort()).toEqual(topLevel);
  });

  test('is drawn in DEVELOPERS.md with every folder of src', () => {
    const drawn = /\n## The tree\n.*?\n```\n\n/s.exec(read('DEVELOPERS.md'))?.[0] ?? '';
    const foldersIn = (folder: string): string[] =>
      entriesIn(folder)
        .filter(({ isFolder }) => isFolder)
        .flatMap(({ path }) => [path, ...foldersIn(`${path}/`)]);
    const missing = foldersIn('src/').filter((path) => !drawn.includes(` ${path.split('/').at(-1)}/`));
    expect(missing).toEqual([]);
  });

  test('names no path of a machine and no registry host', () => {
    const faults = filesIn('').flatMap((path) =>
      read(path)
        .split('\n')
        .flatMap((line, i) =>
          machinePath.test(line) || registryHost.test(line) ? [`${path}:${i + 1}`] : [],
        ),
    );
    expect(faults).toEqual([]);
  });

  // In pieces, so that this file passes the test above.
  test.each([
    ['', 'home', 'someone'].join('/'),
    `see ${['', 'tmp', 'x'].join('/')}`,
    ['C:', 'Users', 'someone'].join('\\'),
  ])('would take %j for a path of a machine', (text) => expect(text).toMatch(machinePath));

  test.each(['../tests/reference/x', 'https://example.org/home/x', 'mol/L'])(
    'would not take %j for one',
    (text) => expect(text).not.toMatch(machinePath),
  );
});
