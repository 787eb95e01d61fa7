import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const src = fileURLToPath(new URL('../src/', import.meta.url));

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    isolate: false, // one load of src for all test files: half the time; nothing in src keeps state that a test could leave behind
    testTimeout: 60_000, // for a busy machine: no test is about time
  },
  // Tests and the documentation's code import the package by its name and get the source, so no build comes first.
  resolve: {
    alias: [
      { find: /^protolysis$/, replacement: `${src}index.ts` },
      { find: /^protolysis\/(.*)$/, replacement: `${src}$1.ts` },
    ],
  },
});
