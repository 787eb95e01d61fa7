/**
 * Mutation tests of one folder of src, or of the files given: `npm run test:mutants -- --mutate 'src/solver/*.ts'`.
 *
 * Left out, and why: string literals, which are words for people or the names of a status, and those the compiler knows; and
 * static mutants, run once when a file is loaded: constants of a table, each of which would need all tests anew.
 */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tests/mutants/vitest.config.ts', related: false },
  mutate: [`src/${process.env.MUTANTS}/**/*.ts`],
  mutator: { excludedMutations: ['StringLiteral'] },
  ignoreStatic: true,
  coverageAnalysis: 'perTest',
  concurrency: 1,
  timeoutMS: 20_000,
  timeoutFactor: 4,
  disableTypeChecks: false,
  tempDirName: 'coverage/.mutants',
  incremental: true,
  incrementalFile: `coverage/mutants/${process.env.MUTANTS ?? 'all'}.json`,
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: `coverage/mutants/${process.env.MUTANTS ?? 'all'}-report.json` },
  clearTextReporter: { logTests: false, reportTests: false, allowColor: false, allowEmojis: false },
};
