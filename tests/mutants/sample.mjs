import { createHash } from 'node:crypto';
import { strykerPlugins as vitest } from '@stryker-mutator/vitest-runner';

const share = Number(process.env.SHARE ?? 1);

/** A number between 0 and 1 for each mutant, the same in every run. */
function lot({ fileName, location, replacement }) {
  const { start, end } = location;
  const file = fileName.replaceAll('\\', '/').split('/src/').pop();
  const name = [file, start.line, start.column, end.line, end.column, replacement].join(' ');
  return createHash('sha256').update(name).digest().readUInt32BE() / 2 ** 32;
}

const [{ factory }] = vitest;

/**
 * The runner of Vitest for a random share of the mutants, `SHARE=0.1` of them; the others are reported as errors, which count for
 * nothing.
 */
function sampled(injector) {
  const runner = factory(injector);
  const run = runner.mutantRun.bind(runner);
  runner.mutantRun = async (options) =>
    lot(options.activeMutant) < share ? run(options) : { status: 'error', errorMessage: 'not drawn' };
  return runner;
}
sampled.inject = factory.inject;

export const strykerPlugins = [{ kind: 'TestRunner', name: 'vitest', factory: sampled }];
export { strykerValidationSchema } from '@stryker-mutator/vitest-runner';
