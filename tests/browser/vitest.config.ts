import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** For `npm run test:browser`: what people look at, in Chromium. No part of `npm test`, which needs no browser. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/browser/**/*.browser.ts'],
    globalSetup: ['tests/browser/chromium.ts', 'tests/clients/pack.ts'],
    testTimeout: 300_000,
    hookTimeout: 300_000, // the site takes a minute to build
    maxWorkers: 1, // each has a browser of its own
  },
});
