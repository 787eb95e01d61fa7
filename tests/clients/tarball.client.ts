import { expect, inject, test } from 'vitest';
import { root } from '../tree.js';
import { run } from './run.js';

const packed = () =>
  run('tar', ['-tzf', inject('tarball')], root)
    .trim()
    .split('\n');

test('the package holds the build, the licence, the changes and nothing else', () => {
  const others = packed().filter((path) => !/^package\/dist\/[\w-]+\.(js|cjs|d\.ts|d\.cts)$/.test(path));
  expect(others.sort()).toEqual(
    ['CHANGELOG.md', 'LICENSE', 'README.md', 'package.json'].map((file) => `package/${file}`),
  );
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
