import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * For `npm run test:notebooks`: the notebooks of docs/ in two real kernels, with the packed package. No part of `npm test`, since it
 * needs Jupyter and installs some 200 MB of kernels from the registry in use.
 */
export default defineConfig(({ mode }) => ({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/notebooks/**/*.kernel.ts'],
    globalSetup: ['tests/clients/pack.ts'],
    provide: { isWriting: mode === 'write' }, // npm run notebooks
    testTimeout: 300_000,
    hookTimeout: 300_000, // an install from an empty cache
  },
}));
