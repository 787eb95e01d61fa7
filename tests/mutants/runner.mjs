import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { performance } from 'node:perf_hooks';
import vm from 'node:vm';
import { expect } from 'vitest';

/**
 * Runs the tests in `bundle.cjs`, as far as they use describe, test, each and expect, in the process of the runner. The bundle is
 * evaluated anew for each mutant, so that no value made under another stays in a cache; it takes a tenth of the time that a
 * run of Vitest takes to begin.
 */
class BundleRunner {
  /** Where the mutated code looks up which mutant is on, and counts. */
  state = globalThis.__stryker__ ?? {};
  cost = new Map();
  files = new Map();
  file = undefined;

  capabilities = () => ({ reloadEnvironment: true });

  async init() {
    globalThis.__stryker__ = this.state;
    const require = createRequire(`${process.cwd()}/`);
    // the same inputs for every mutant, and few: a property that needs thousands to notice a fault is too dull
    require('fast-check').configureGlobal({
      seed: 20240917,
      numRuns: 25,
      interruptAfterTimeLimit: 300,
      endOnFailure: true,
    });
    const text = `(function (require, exports, module, beginOfFile, endOfFile) {${readFileSync('tests/mutants/bundle.cjs', 'utf8')}\n})`;
    const script = new vm.Script(text, { filename: 'bundle.cjs' });
    this.load = () => {
      const tests = new Map();
      const vitest = { expect, ...registering(tests, () => this.file) };
      const from = (name) => (name === 'vitest' ? vitest : require(name));
      const beginOfFile = (path) => this.enter(`file ${path}`);
      script.runInThisContext()(from, {}, { exports: {} }, beginOfFile, () => this.enter(undefined));
      return tests;
    };
  }

  /** What a file computes for its tests outside of them counts for each of them. */
  enter(file) {
    this.file = file;
    this.state.currentTestId = file;
  }

  async dryRun() {
    this.state.activeMutant = undefined;
    const results = [];
    for (const [id, { run, file }] of this.load()) {
      this.files.set(id, file);
      this.state.currentTestId = id;
      const begun = performance.now();
      const failureMessage = await failureOf(run);
      const timeSpentMs = performance.now() - begun;
      this.cost.set(id, timeSpentMs);
      const status = failureMessage === undefined ? 0 : 1;
      results.push({ id, name: id, timeSpentMs, status, failureMessage });
    }
    this.state.currentTestId = undefined;
    return { status: 'complete', tests: results, mutantCoverage: this.coverage() };
  }

  /** Of each test, with what its file had computed before. */
  coverage() {
    const { perTest } = this.state.mutantCoverage;
    const of = (id) => Object.entries(perTest[id] ?? {});
    return {
      ...this.state.mutantCoverage,
      perTest: Object.fromEntries(
        [...this.files].map(([id, file]) => [id, Object.fromEntries([...of(file), ...of(id)])]),
      ),
    };
  }

  /** The quickest tests come first: most mutants then die in no time. */
  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    if (lot(activeMutant) >= share) return { status: 'error', errorMessage: 'not drawn' };
    Object.assign(this.state, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
    const ids = [...testFilter].sort((a, b) => (this.cost.get(a) ?? 0) - (this.cost.get(b) ?? 0));
    let tests = new Map();
    const unloaded = await failureOf(() => {
      tests = this.load();
    });
    for (const [k, id] of ids.entries()) {
      const failureMessage = unloaded ?? (await failureOf(tests.get(id)?.run));
      if (this.state.hitCount > hitLimit) return { status: 'timeout', reason: 'an endless loop' };
      if (failureMessage !== undefined)
        return { status: 'killed', killedBy: [id], failureMessage, nrOfTests: k + 1 };
    }
    return { status: 'survived', nrOfTests: ids.length };
  }
}

/** describe and test as Vitest has them, which note each test and its file in a map under its name. */
function registering(tests, fileNow) {
  const path = [];
  const describe = (name, body) => {
    path.push(name);
    body();
    path.pop();
  };
  const test = (name, body) => {
    const id = [...path, name].join(' ');
    tests.set(tests.has(id) ? `${id} (${tests.size})` : id, { run: body, file: fileNow() });
  };
  const each = (once) => (rows) => (name, body) => {
    for (const [k, row] of rows.entries())
      once(`${name} #${k}`, () => body(...(Array.isArray(row) ? row : [row])));
  };
  return {
    describe: Object.assign(describe, { each: each(describe) }),
    test: Object.assign(test, { each: each(test) }),
  };
}

/** What a test throws, or a promise of it. */
async function failureOf(run) {
  try {
    await run();
    return undefined;
  } catch (error) {
    return String(error);
  }
}

const share = Number(process.env.SHARE ?? 1);

/** A number between 0 and 1 for each mutant, the same in every run. */
function lot({ fileName, location, replacement }) {
  const { start, end } = location;
  const file = fileName.replaceAll('\\', '/').split('/src/').pop();
  const name = [file, start.line, start.column, end.line, end.column, replacement].join(' ');
  return createHash('sha256').update(name).digest().readUInt32BE() / 2 ** 32;
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'bundle', injectableClass: BundleRunner }];
