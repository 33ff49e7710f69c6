// A test runner for Stryker that loads the code once and runs the tests of each mutant in the same process: some
// milliseconds a mutant instead of the second that a fresh worker takes to start and to build the parser.
// What the code remembers in weak maps is forgotten before each mutant. Should a mutant leave anything else behind, a test
// that failed does not pass without it: then everything is loaded anew and the mutant is tried again.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { commonTokens, declareFactoryPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { build } from 'esbuild';

const COLLECTOR = pathToFileURL(join(import.meta.dirname, 'collect-tests.mjs')).href;

/** For esbuild: tests are noted down, not run, and a test that reads a file beside it finds it where it was. */
function prepareTests({ onResolve, onLoad }) {
  onResolve({ filter: /^vitest$/ }, () => ({ path: COLLECTOR, external: true }));
  onLoad({ filter: /\.test\.ts$/ }, ({ path }) => ({
    contents: readFileSync(path, 'utf8').replaceAll(
      'import.meta.url',
      JSON.stringify(pathToFileURL(path).href),
    ),
    loader: 'ts',
  }));
}

/** Counted up to make all weak maps of the code under test forget. */
let generation = 0;

globalThis.ForgetfulWeakMap = class {
  #made = -1;
  #known;
  get #current() {
    if (this.#made !== generation) [this.#made, this.#known] = [generation, new WeakMap()];
    return this.#known;
  }
  get(key) {
    return this.#current.get(key);
  }
  set(key, value) {
    this.#current.set(key, value);
    return this;
  }
  has(key) {
    return this.#current.has(key);
  }
  delete(key) {
    return this.#current.delete(key);
  }
};

export const strykerPlugins = [
  declareFactoryPlugin(
    PluginKind.TestRunner,
    'in-process',
    Object.assign(createRunner, {
      inject: tokens(commonTokens.options),
    }),
  ),
];

function createRunner({ inProcess }) {
  const folder = resolve(inProcess.testFolder);
  // Instrumented code counts and asks in here.
  globalThis.__stryker__ ??= {};
  const state = globalThis.__stryker__;
  let [loads, runs, output] = [0, 0, ''];

  const listFiles = () =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.test.ts'))
      .filter((name) => !inProcess.leaveOut.includes(name))
      .map((name) => basename(name, '.ts'));

  async function load() {
    output = resolve(`mutation-bundle-${++loads}`);
    const { metafile } = await build({
      entryPoints: listFiles().map((name) => join(folder, `${name}.ts`)),
      outdir: output,
      outExtension: { '.js': '.mjs' },
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      packages: 'external',
      loader: { '.plim': 'text' },
      define: { WeakMap: 'globalThis.ForgetfulWeakMap' },
      metafile: true,
      absWorkingDir: process.cwd(),
      logLevel: 'error',
      plugins: [{ name: 'tests', setup: prepareTests }],
    });
    const shared = Object.entries(metafile.outputs).filter(([, { entryPoint }]) => entryPoint === undefined);
    for (const [path] of shared) await import(pathToFileURL(resolve(path)).href);
  }

  /** The tests of a file as if nothing had run before: its own statements run again, the code under test stays loaded. */
  async function collect(file) {
    const { takeTests } = await import(COLLECTOR);
    // What a file noted down that then failed is none of this one's.
    takeTests(file);
    await import(`${pathToFileURL(join(output, `${file}.mjs`)).href}?run=${++runs}`);
    return takeTests(file);
  }

  /** A file that a mutant does not even let begin fails with the first of its tests. */
  async function collectOrFail(file, ids) {
    try {
      return await collect(file);
    } catch (error) {
      const id = ids.find((each) => each.startsWith(`${file}#`));
      return [{ id, name: file, run: () => Promise.reject(error) }];
    }
  }

  async function attempt({ id, name, run }) {
    const start = performance.now();
    const outcome = (failure) => ({
      id,
      name,
      timeSpentMs: Math.round(performance.now() - start),
      ...(failure === undefined
        ? { status: TestStatus.Success }
        : { status: TestStatus.Failed, failureMessage: failure }),
    });
    try {
      await run();
      return outcome();
    } catch (error) {
      return outcome(String(error?.message ?? error));
    }
  }

  /** What a file's own statements reach is reached by each of its tests: they run again for every mutant. */
  async function dryRun() {
    state.activeMutant = undefined;
    const tests = [];
    state.mutantCoverage ??= { static: {}, perTest: {} };
    const coverage = state.mutantCoverage;
    for (const file of listFiles()) {
      const loaded = { ...coverage.static };
      const found = await collect(file);
      const reached = Object.keys(coverage.static).filter((id) => coverage.static[id] !== loaded[id]);
      const counts = reached.map((id) => [id, coverage.static[id] - (loaded[id] ?? 0)]);
      coverage.static = loaded;
      for (const test of found) {
        state.currentTestId = test.id;
        tests.push(await attempt(test));
        state.currentTestId = undefined;
        const own = coverage.perTest[test.id] ?? {};
        coverage.perTest[test.id] = own;
        for (const [id, count] of counts) own[id] = (own[id] ?? 0) + count;
      }
    }
    return { status: DryRunStatus.Complete, tests, mutantCoverage: coverage };
  }

  /**
   * Up to the first that fails, the file of the same name first; a mutant that so much time of tests does not notice is
   * taken to survive.
   */
  async function runTests(ids, mutant, mirror) {
    const tests = [];
    const files = [...new Set(ids.map((id) => id.split('#')[0]))];
    const start = process.cpuUsage();
    generation++;
    for (const file of files.sort((a, b) => Number(b === mirror) - Number(a === mirror))) {
      state.activeMutant = mutant;
      for (const test of await collectOrFail(file, ids)) {
        if (!ids.includes(test.id)) continue;
        const result = await attempt(test);
        tests.push(result);
        const used = process.cpuUsage(start);
        const isLate = file !== mirror && used.user + used.system > inProcess.mostSeconds * 1e6;
        if (result.status === TestStatus.Failed || isLate) {
          state.activeMutant = undefined;
          return tests;
        }
      }
      state.activeMutant = undefined;
    }
    return tests;
  }

  async function mutantRun({ activeMutant, testFilter, hitLimit }) {
    const ids = testFilter ?? [];
    const mirror = `${basename(activeMutant.fileName, '.ts')}.test`;
    for (let again = 0; ; again++) {
      state.hitCount = 0;
      state.hitLimit = hitLimit;
      const tests = await runTests(ids, activeMutant.id, mirror);
      const timeout = determineHitLimitReached(state.hitCount, hitLimit);
      state.hitLimit = undefined;
      const failed = tests.find(({ status }) => status === TestStatus.Failed);
      const isClean = !failed || (await runTests([failed.id], undefined))[0]?.status === TestStatus.Success;
      if (isClean || again > 0) {
        if (!isClean) throw new Error(`${failed.name} fails without a mutant: ${failed.failureMessage}`);
        return timeout ?? toMutantRunResult({ status: DryRunStatus.Complete, tests });
      }
      await load();
    }
  }

  return { capabilities: () => ({ reloadEnvironment: false }), init: load, dryRun, mutantRun };
}
