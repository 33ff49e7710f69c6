// `npm test`: installs what is missing, then every check from the cheapest to the real editor, up to the first
// that fails. Needs nothing but Node and npm. `--fast` leaves the real editor out.
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { endCommandsOnSignal, runCommand } from './editor/setup/command.mjs';
import { findChangesOfGenerated } from './editor/setup/generated-code.mjs';
import { installDependencies } from './editor/setup/install-dependencies.mjs';
import { cacheFolder, npmCommand, projectNode, rootFolder } from './editor/setup/paths.mjs';
import { addCounts, noCounts, readCounts } from './editor/setup/test-counts.mjs';

const npmRun = (...args) => runCommand(npmCommand, ['run', ...args]);

/** In order. A step with tests answers their counts; a step fails by throwing. */
const steps = [
  { name: 'packages', run: installDependencies },
  { name: 'lint', run: () => npmRun('lint') },
  { name: 'types', run: () => npmRun('typecheck') },
  { name: 'generated code', run: checkGeneratedCode },
  { name: 'unit tests', run: () => runTests('tests/vitest.config.ts') },
  { name: 'build', run: () => npmRun('build') },
  {
    name: 'benchmark smoke',
    run: () => runCommand(projectNode, [join(rootFolder, 'tests', 'bench', 'run.ts'), '--smoke']),
  },
  { name: 'package', run: () => npmRun('package', '--workspace', 'extension') },
  { name: 'real editor', run: () => runTests('tests/editor/vitest.config.ts'), slow: true },
];

const fast = process.argv.includes('--fast');
endCommandsOnSignal();

let counts = noCounts;
const summary = [];
for (const step of steps.filter(({ slow }) => !(fast && slow))) {
  console.log(`\n── ${step.name}`);
  const start = performance.now();
  const problem = await run(step);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  summary.push(`${problem ? 'failed' : 'passed'}  ${step.name}, ${seconds} s`);
  if (problem) {
    console.error(`\n${problem.message}`);
    process.exitCode = 1;
    break;
  }
}
console.log(`\n${summary.join('\n')}`);
if (fast) {
  console.log('left out  real editor (--fast)');
}
if (process.exitCode) {
  console.log(`The first failure ended the run: ${summary.at(-1).replace(/^failed {2}/, '')}`);
}
console.log(
  `\n${counts.passed} passed, ${counts.failed} failed${counts.skipped ? `, ${counts.skipped} skipped` : ''}`,
);

async function run(step) {
  try {
    await step.run();
    return undefined;
  } catch (error) {
    // A step without tests that fails, or one whose tests could not even start, must not count as nothing failed.
    counts = counts.failed === 0 ? addCounts(counts, { ...noCounts, failed: 1 }) : counts;
    return error;
  }
}

async function runTests(config) {
  const report = join(cacheFolder, 'report.json');
  rmSync(report, { force: true });
  const vitest = join(rootFolder, 'node_modules', 'vitest', 'vitest.mjs');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  try {
    await runCommand(projectNode, [vitest, 'run', '--config', config, ...reporters]);
  } finally {
    counts = addCounts(counts, readCounts(report));
  }
}

async function checkGeneratedCode() {
  const changes = await findChangesOfGenerated(() => npmRun('generate'));
  if (changes.length > 0) {
    throw new Error(
      `The generated code was not what the grammar gives; "npm run generate" changed:\n  ${changes.join('\n  ')}\n` +
        'Commit these files with the grammar.',
    );
  }
}
