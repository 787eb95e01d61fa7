import { readdirSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/**
 * The tests of what is mutated, and all of src, in one file. Vitest loads its files anew for each mutant: one file is loaded ten
 * times as fast as three hundred. A test file begins when the runner calls it.
 */
const folders = [
  'solver',
  'equilibrium',
  'buffer',
  'indicator',
  'titration',
  'display',
  'property',
  'published',
  'reference',
];
/** Tests of entries that hold nothing that is mutated, or much else. */
const elsewhere =
  /reference.exact|published.(nist|gran|results|preparations)|property.(diagnosis|fit|preparation|frozen|hostile)/;
const tests = folders
  .flatMap((folder) =>
    readdirSync(`tests/${folder}`, { recursive: true }).map((name) => `tests/${folder}/${name}`),
  )
  .concat('tests/frozen-with-view.test.ts')
  .filter((path) => path.endsWith('.test.ts') && !elsewhere.test(path));

/** @type {(path: string, text: string) => string} */
const told = (path, text) => (path.endsWith('.test.ts') ? `importsAreRead();\n${text}` : text);

await build({
  stdin: {
    contents: tests.map((path) => `exports['${path}'] = () => require('./${path}');`).join('\n'),
    resolveDir: '.',
  },
  outfile: 'tests/mutants/bundle.cjs',
  bundle: true,
  ignoreAnnotations: true, // or the tests, which export nothing, fall away: package.json says that no file has side effects
  format: 'cjs',
  platform: 'node',
  target: 'node20',
  packages: 'external',
  logLevel: 'error',
  plugins: [
    {
      name: 'protolysis',
      setup: ({ onResolve, onLoad }) => {
        onResolve({ filter: /^protolysis(\/|$)/ }, ({ path }) => ({
          path: `${process.cwd()}/src/${path.slice('protolysis/'.length) || 'index'}.ts`,
        }));
        // tests find their vectors beside them, and the runner is told whose code is running
        onLoad({ filter: /[\\/]tests[\\/].*\.ts$/ }, ({ path }) => ({
          contents: told(
            path,
            readFileSync(path, 'utf8').replaceAll(
              'import.meta.url',
              JSON.stringify(pathToFileURL(path).href),
            ),
          ),
          loader: 'ts',
        }));
      },
    },
  ],
});
