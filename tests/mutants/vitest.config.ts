import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import base from '../vitest.config.js';

const folder = process.env.MUTANTS ?? '{solver,equilibrium,buffer,indicator,titration}';

/** The files that end soonest come first: most mutants then die in no time. */
class QuickestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const known = (file: TestSpecification) =>
      this.ctx.cache.getFileTestResults(
        `${file.project.name}:${file.moduleId.slice(this.ctx.config.root.length + 1)}`,
      );
    const cost = (file: TestSpecification) => known(file)?.duration ?? 0;
    return [...files].sort((a, b) => cost(a) - cost(b));
  }
}

export default defineConfig((env) => {
  const usual = base(env);
  return {
    ...usual,
    test: {
      ...usual.test,
      include: [`tests/${folder}/**/*.test.ts`],
      setupFiles: ['tests/mutants/setup.ts'],
      sequence: { sequencer: QuickestFirst },
      testTimeout: 60_000,
    },
  };
});
