import { expect, inject, test } from 'vitest';
import { filesIn, root } from '../tree.js';
import { run } from './run.js';

const packed = () =>
  run('tar', ['-tzf', inject('tarball')], root)
    .trim()
    .split('\n');

test('the package holds the build, the licence, the pages to read and nothing else', () => {
  const isBuilt = (path: string) => /^package\/dist\/[\w-]+\.(js|cjs|d\.ts|d\.cts)$/.test(path);
  const pages = filesIn('docs/').filter((path) => /^docs\/(guides|derivations|pictures)\//.test(path));
  const others = ['CHANGELOG.md', 'DEVELOPERS.md', 'LICENSE', 'README.md', 'package.json', ...pages];
  expect(
    packed()
      .filter((path) => !isBuilt(path))
      .sort(),
  ).toEqual(others.map((file) => `package/${file}`).sort());
});

test('each file of the build is an entry, or belongs to one', () => {
  const paths = packed().map((path) => path.replace('package/', ''));
  const texts = new Map(
    paths.map((path) => [path, run('tar', ['-xzOf', inject('tarball'), `package/${path}`], root)]),
  );
  const named = (path: string) => {
    const name = path.replace('dist/', '').replace(/\.d\.(c?)ts$/, '.$1js');
    return [...texts].some(([other, text]) => other !== path && text.includes(name));
  };
  expect(paths.filter((path) => path.startsWith('dist/') && !named(path))).toEqual([]);
});
