// Runs the suite of the extension host in a desktop VS Code: the one named in VSCODE_EXECUTABLE, else a build that
// @vscode/test-electron downloads. `npm run build` first.
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundleHostSuite } from './setup/host-suite.mjs';
import { rootFolder, samplesFolder } from './setup/paths.mjs';
import { today } from './setup/today.mjs';

const { runTests } = createRequire(import.meta.url)('@vscode/test-electron');
const folder = mkdtempSync(join(tmpdir(), 'plimsoll-electron-'));
const workspace = join(folder, 'samples');
const suite = join(folder, 'host-suite.cjs');
try {
  cpSync(samplesFolder, workspace, { recursive: true });
  await bundleHostSuite(suite);
  await runTests({
    vscodeExecutablePath: process.env.VSCODE_EXECUTABLE || undefined,
    extensionDevelopmentPath: join(rootFolder, 'extension'),
    extensionTestsPath: suite,
    extensionTestsEnv: { PLIMSOLL_TODAY: today },
    launchArgs: [
      workspace,
      '--disable-extensions',
      '--disable-workspace-trust',
      '--user-data-dir',
      join(folder, 'data'),
    ],
  });
} catch (error) {
  console.error(
    `${error.message}\nIf no desktop build could be downloaded, name an installed VS Code in VSCODE_EXECUTABLE.`,
  );
  process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
}
