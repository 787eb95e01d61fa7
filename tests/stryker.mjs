import { fileURLToPath } from 'node:url';

const folder = process.env.MUTANTS ?? '{solver,equilibrium,buffer,indicator,titration}';
const { SHARE: share = '1' } = process.env;
const report = `coverage/mutants/${process.env.MUTANTS ?? 'all'}-${share}`;

/**
 * Mutation tests of one folder of src: `MUTANTS=solver npm run test:mutants`, or of one file by `-- --mutate src/solver/sum.ts` after
 * that; `SHARE=0.1` takes a tenth of the mutants, drawn at random. Survivors, and why each is let live, are in tests/mutants/survivors.md.
 */
export default {
  testRunner: 'bundle',
  plugins: [fileURLToPath(new URL('./mutants/runner.mjs', import.meta.url))],
  buildCommand: 'node tests/mutants/bundle.mjs',
  mutate: [`src/${folder}/**/*.ts`],
  ignorePatterns: ['**', '!src/**', '!tests/**', '!package.json', '!tsconfig.json'],
  // words for people change no number, and the compiler knows the names of codes and statuses
  mutator: { excludedMutations: ['StringLiteral'] },
  // what runs once, when a file is loaded, is data: tests of each value compare it with its source
  ignoreStatic: true,
  coverageAnalysis: 'perTest',
  concurrency: 1,
  timeoutMS: 15_000,
  timeoutFactor: 2,
  dryRunTimeoutMinutes: 20,
  disableTypeChecks: false,
  tempDirName: 'coverage/.mutants',
  incremental: true, // a second run tries again only what changed, or what a new test covers
  incrementalFile: `${report}.json`,
  reporters: ['progress-append-only', 'clear-text', 'json'],
  jsonReporter: { fileName: `${report}-report.json` },
  clearTextReporter: { logTests: false, reportTests: false, allowColor: false, allowEmojis: false },
};
