import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { performance } from 'node:perf_hooks';
import vm from 'node:vm';
import { expect } from 'vitest';

/**
 * Runs the tests in `bundle.cjs`, as far as they use describe, test, each and expect, in the process of the runner. The bundle is
 * evaluated anew for each mutant, so that no value made under another stays in a cache; of its test files only those begin that
 * run the mutated code.
 */
class BundleRunner {
  /** Where the mutated code looks up which mutant is on, and counts. */
  state = globalThis.__stryker__ ?? {};
  /** Of each test of the dry run: its file, its name, and the milliseconds that it takes. */
  seen = {};
  /** Milliseconds that a file takes to begin. */
  beginning = {};

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
    const text = `(function (require, exports, module, importsAreRead) {${readFileSync('tests/mutants/bundle.cjs', 'utf8')}\n})`;
    const script = new vm.Script(text, { filename: 'bundle.cjs' });
    // after a mutant that never ends a new runner takes over, which has had no dry run
    if (existsSync(timesFile)) Object.assign(this, JSON.parse(readFileSync(timesFile, 'utf8')));
    this.bundle = () => {
      const [files, tests] = [{}, new Map()];
      const vitest = { expect, ...registering(tests) };
      const from = (name) => (name === 'vitest' ? vitest : require(name));
      script.runInThisContext()(from, files, {}, () => {
        this.state.currentTestId = this.file;
      });
      return { files, tests };
    };
  }

  /** Has a test file note its tests. What it computes for them meanwhile counts for each of them. */
  begin({ files, tests }, file) {
    tests.clear();
    this.file = `file ${file}`;
    files[file]();
    this.state.currentTestId = undefined;
    return new Map(tests);
  }

  async dryRun() {
    this.state.activeMutant = undefined;
    const bundle = this.bundle();
    const results = [];
    for (const file of Object.keys(bundle.files)) {
      let tests = new Map();
      this.beginning[file] = await msOf(() => {
        tests = this.begin(bundle, file);
      });
      for (const [name, run] of tests) {
        const id = `${file} ${name}`;
        this.state.currentTestId = id;
        let failureMessage;
        const timeSpentMs = await msOf(async () => {
          failureMessage = await failureOf(run);
        });
        // a property that counts what it has drawn fails with so few
        if (failureMessage !== undefined) console.warn(`left out: ${id}: ${failureMessage}`);
        else {
          this.seen[id] = { file, name, timeSpentMs };
          results.push({ id, name: id, timeSpentMs, status: 0 });
        }
      }
      this.state.currentTestId = undefined;
    }
    const { seen, beginning } = this;
    writeFileSync(timesFile, JSON.stringify({ seen, beginning }));
    return { status: 'complete', tests: results, mutantCoverage: this.coverage() };
  }

  /** Of each test, with what its file had computed before. */
  coverage() {
    const { perTest } = this.state.mutantCoverage;
    const of = (id) => Object.entries(perTest[id] ?? {});
    return {
      ...this.state.mutantCoverage,
      perTest: Object.fromEntries(
        Object.entries(this.seen).map(([id, { file }]) => [
          id,
          Object.fromEntries([...of(`file ${file}`), ...of(id)]),
        ]),
      ),
    };
  }

  /** The quickest tests come first: most mutants then die in no time. */
  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    if (lot(activeMutant) >= share) return { status: 'error', errorMessage: 'not drawn' };
    Object.assign(this.state, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
    const bundle = this.bundle();
    const begun = new Map();
    const until = performance.now() + patienceMs;
    let nrOfTests = 0;
    for (const id of testFilter.toSorted((a, b) => this.costOf(a) - this.costOf(b))) {
      if (performance.now() > until) break;
      nrOfTests += 1;
      const { file, name } = this.seen[id];
      const failureMessage = await failureOf(async () => {
        if (!begun.has(file)) begun.set(file, this.begin(bundle, file));
        await begun.get(file).get(name)?.(); // a test that a mutant takes out of a table kills nothing
      });
      if (this.state.hitCount > hitLimit) return { status: 'timeout', reason: 'an endless loop' };
      if (failureMessage !== undefined)
        return { status: 'killed', killedBy: [id], failureMessage, nrOfTests };
    }
    return { status: 'survived', nrOfTests };
  }

  /** Milliseconds. */
  costOf(id) {
    const { file, timeSpentMs } = this.seen[id];
    return timeSpentMs + this.beginning[file];
  }
}

/** describe and test as Vitest has them, which note each test in a map under its name. */
function registering(tests) {
  const path = [];
  const describe = (name, body) => {
    path.push(name);
    body();
    path.pop();
  };
  const test = (name, body) => {
    const id = [...path, name].join(' ');
    tests.set(tests.has(id) ? `${id} (${tests.size})` : id, body);
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

/** Milliseconds that a call takes. */
async function msOf(call) {
  const begun = performance.now();
  await call();
  return performance.now() - begun;
}

/**
 * A mutant that still lives after this time counts as alive, so that a score is a lower bound: each survivor would otherwise wait for
 * every test there is.
 */
const patienceMs = Number(process.env.PATIENCE ?? 5000);

const timesFile = 'tests/mutants/times.json';

const share = Number(process.env.SHARE ?? 1);

/** A number between 0 and 1 for each mutant, the same in every run. */
function lot({ fileName, location, replacement }) {
  const { start, end } = location;
  const file = fileName.replaceAll('\\', '/').split('/src/').pop();
  const name = [file, start.line, start.column, end.line, end.column, replacement].join(' ');
  return createHash('sha256').update(name).digest().readUInt32BE() / 2 ** 32;
}

export const strykerPlugins = [{ kind: 'TestRunner', name: 'bundle', injectableClass: BundleRunner }];
