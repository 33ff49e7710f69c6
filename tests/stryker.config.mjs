// `npm run mutation --workspace tests`: how many small changes of the measures the tests notice. Takes long, so it is
// outside `npm test` and CI. One file: `… -- --mutate language/src/measures/pace.ts`.

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'in-process',
  plugins: ['./tests/mutation/in-process-runner.mjs'],
  // The measures' own tests must notice: others would, by the way, and slowly. The one left out tries random sessions,
  // each many times over, and what it would notice depends on chance.
  inProcess: { testFolder: 'tests/language/measures', leaveOut: ['metamorphic.test.ts'], mostSeconds: 1 },
  warnings: { unknownOptions: false },
  mutate: ['language/src/measures/**/*.ts'],
  // Tables are read when a file is loaded; each change there would mean a run of all tests.
  ignoreStatic: true,
  // Only what the tests of the measures read is copied for a run.
  ignorePatterns: ['extension', 'tests/editor', 'tests/bench', 'tests/.cache'],
  // Stryker would rewrite the paths in tsconfig.json by an interface that TypeScript 7 no longer has. It needs none here.
  tsconfigFile: 'no-tsconfig.json',
  tempDirName: 'tests/.cache/mutation/work',
  cleanTempDir: 'always',
  reporters: ['clear-text', 'progress', 'html'],
  htmlReporter: { fileName: 'tests/.cache/mutation/report.html' },
  clearTextReporter: { allowColor: false, logTests: false },
  thresholds: { high: 90, low: 85, break: 85 },
  // On a busy machine slow is not endless: what takes too long counts as noticed.
  timeoutMS: 30_000,
  concurrency: 2,
};
