import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const src = fileURLToPath(new URL('../src/', import.meta.url));

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
  },
  // Tests and the documentation's code import the package by its name and get the source, so no build comes first.
  resolve: {
    alias: [
      { find: /^protolysis$/, replacement: `${src}index.ts` },
      { find: /^protolysis\/(.*)$/, replacement: `${src}$1.ts` },
    ],
  },
});
