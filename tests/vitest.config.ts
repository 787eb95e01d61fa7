import { fileURLToPath } from 'node:url';
import { configDefaults, defineConfig } from 'vitest/config';

const src = fileURLToPath(new URL('../src/', import.meta.url));

/** Left out of `npm run fast`, which is for every save: thousands of inputs each, long numbers, and the documentation's code. */
const slow = [
  'tests/property/**',
  'tests/exact/**',
  'tests/reference/exact*',
  'tests/docs/**',
  'tests/plot/no-overlap*',
];

export default defineConfig(({ mode }) => ({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: [...configDefaults.exclude, ...(mode === 'fast' ? slow : [])],
    maxWorkers: '100%', // one core is left idle otherwise: half of the time on two
    setupFiles: ['tests/setup.ts'],
    isolate: false, // one load of src for all test files: half the time; nothing in src keeps state that a test could leave behind
    testTimeout: 300_000, // no test is about time: this ends what hangs, on a machine that does five other things too
  },
  // Tests and the documentation's code import the package by its name and get the source, so no build comes first.
  resolve: {
    alias: [
      { find: /^protolysis$/, replacement: `${src}index.ts` },
      { find: /^protolysis\/(.*)$/, replacement: `${src}$1.ts` },
    ],
  },
}));
