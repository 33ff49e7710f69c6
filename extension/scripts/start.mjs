// `npm start`: installs what is missing, builds, prints the report on the samples and opens them in VS Code with
// the extension in it. Needs nothing but Node and npm. `--no-open` opens no editor; `--browser` serves one to the
// browser though there is one on the desktop.
import { randomBytes } from 'node:crypto';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { endCommandsOnSignal, runCommand } from '../../tests/editor/setup/command.mjs';
import { installDependencies } from '../../tests/editor/setup/install-dependencies.mjs';
import {
  commandLine,
  extensionPackage,
  npmCommand,
  projectNode,
  samplesFolder,
} from '../../tests/editor/setup/paths.mjs';
import { startEditor, writeSettings } from '../../tests/editor/setup/start-editor.mjs';

const oneDay = 24 * 60;
const releaseSignals = endCommandsOnSignal();
try {
  await installDependencies();
  console.log('Building …');
  await runCommand(npmCommand, ['run', 'build', '--workspace', 'server'], { quiet: true });
  await runCommand(npmCommand, ['run', 'package', '--workspace', 'extension'], { quiet: true });
  if (process.argv.includes('--no-open')) {
    await printReport();
  } else {
    await openSamples();
  }
} catch (error) {
  console.error(`\n${error.message}`);
  process.exitCode = 1;
}

async function openSamples() {
  const desktop = process.argv.includes('--browser') ? undefined : findDesktopEditor();
  if (desktop !== undefined) {
    await openOnDesktop(desktop);
  } else {
    console.log('\nStarting a VS Code for the browser (a desktop one would be a "code" on the PATH) …');
    await openInBrowser();
  }
}

async function printReport() {
  console.log('\nThe report on the samples (plimsoll report samples):\n');
  await runCommand(projectNode, [commandLine, 'report', 'samples']);
}

/** A `code` on the PATH; not the one of a remote terminal, which would open a window of the editor in use. */
function findDesktopEditor() {
  if (process.env.VSCODE_IPC_HOOK_CLI) {
    return undefined;
  }
  const name = process.platform === 'win32' ? 'code.cmd' : 'code';
  return (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((file) => existsSync(file));
}

/** Extension and settings go to folders of their own that are thrown away: the user's profile is not touched. */
async function openOnDesktop(code) {
  const folder = mkdtempSync(join(tmpdir(), 'plimsoll-start-'));
  const userData = join(folder, 'user-data');
  const folders = ['--extensions-dir', join(folder, 'extensions'), '--user-data-dir', userData];
  writeSettings(userData);
  try {
    await runCommand(code, [...folders, '--install-extension', extensionPackage], { quiet: true });
    const window = runCommand(
      code,
      [...folders, '--disable-workspace-trust', '--new-window', '--wait', samplesFolder],
      { quiet: true, minutes: oneDay },
    );
    await Promise.all([
      window,
      printReport().then(() => console.log('\nVS Code is open on the samples. This ends when you close it.')),
    ]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function openInBrowser() {
  // Others on this machine can reach the address too.
  const password = randomBytes(6).toString('hex');
  const editor = await startEditor({ prepare: () => [extensionPackage], workspace: samplesFolder, password });
  releaseSignals();
  const told = new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
      process.once(signal, resolve);
    }
  });
  try {
    await printReport();
    console.log(
      `\nVS Code with the samples: ${editor.url}\nIts password: ${password}\nOpen first-day.plim there. Ctrl+C here ends it.`,
    );
    await Promise.race([told, editor.ended]);
  } finally {
    await editor.stop();
  }
}
