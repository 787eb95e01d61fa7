import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * For `npm run test:clients`: the packed package as others get it, in new projects outside the tree. No part of `npm test`, since
 * it installs some 600 MB of compilers, bundlers and runtimes from the registry in use.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/clients/**/*.client.ts'],
    globalSetup: ['tests/clients/pack.ts'],
    testTimeout: 1_000_000, // beyond the limit of one program in run.ts
    hookTimeout: 1_000_000, // an install from an empty cache
  },
});
