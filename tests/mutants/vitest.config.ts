import { defineConfig } from 'vitest/config';
import base from '../vitest.config.js';

export default defineConfig((env) => {
  const usual = base(env);
  return {
    ...usual,
    test: {
      ...usual.test,
      include: ['tests/mutants/bundle.test.js'],
      setupFiles: ['tests/mutants/setup.ts'],
      testTimeout: 60_000,
    },
  };
});
