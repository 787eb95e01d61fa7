import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { read } from '../tree.js';

const manifest = JSON.parse(read('package.json'));
const { typedocOptions } = JSON.parse(read('tsconfig.json'));
const entries = Object.entries<string>(manifest.tsup.entry);

describe('every entry', () => {
  test('is built, exported in both formats with its types, and documented', () => {
    const exported = entries.map(([name]) => [
      name === 'index' ? '.' : `./${name}`,
      {
        import: { types: `./dist/${name}.d.ts`, default: `./dist/${name}.js` },
        require: { types: `./dist/${name}.d.cts`, default: `./dist/${name}.cjs` },
      },
    ]);
    expect(manifest.exports).toEqual({
      ...Object.fromEntries(exported),
      './package.json': './package.json',
    });
    expect(typedocOptions.entryPoints).toEqual(entries.map(([, path]) => path));
  });

  test('is named after its file in src', () => {
    for (const [name, path] of entries) expect(path).toBe(`src/${name}.ts`);
  });

  test('is found by compilers that do not read exports', () => {
    const others = entries.filter(([name]) => name !== 'index');
    const paths = Object.fromEntries(others.map(([name]) => [name, [`./dist/${name}.d.cts`]]));
    expect(manifest.typesVersions?.['*'] ?? {}).toEqual(paths);
  });
});

test('the main entry imports no package, directly or through its own files', () => {
  const seen = new Set<string>();
  const packages: string[] = [];
  const follow = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    for (const { fileName } of ts.preProcessFile(read(path)).importedFiles) {
      if (!fileName.startsWith('.')) packages.push(`${path} imports ${fileName}`);
      else follow(new URL(fileName.replace(/\.js$/, '.ts'), `file:///${path}`).pathname.slice(1));
    }
  };
  follow('src/index.ts');
  expect(packages).toEqual([]);
  expect(seen.size).toBeGreaterThan(1);
});
