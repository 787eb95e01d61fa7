import { readdirSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/**
 * The tests of a folder, those against published values and reference vectors, and all of src in one file. Vitest loads its
 * files anew for each mutant: one file is loaded ten times as fast as three hundred. A test file begins when the runner calls it.
 */
/** Tests of entries that hold none of these folders. */
const elsewhere = /reference.exact|published.(nist|gran|results|preparations)/;
const folders = process.env.MUTANTS
  ? [process.env.MUTANTS]
  : ['solver', 'equilibrium', 'buffer', 'indicator', 'titration'];
const tests = [...folders, 'published', 'reference']
  .flatMap((folder) =>
    readdirSync(`tests/${folder}`, { recursive: true }).map((name) => `tests/${folder}/${name}`),
  )
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
