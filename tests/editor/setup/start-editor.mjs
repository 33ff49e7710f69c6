import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runCommand } from './command.mjs';
import { installEditor } from './install-editor.mjs';
import { projectNode } from './paths.mjs';

const guard = fileURLToPath(new URL('guard.mjs', import.meta.url));

/** Nothing that moves, asks, phones or covers the text. */
const settings = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.enableExperiments': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'chat.disableAIFeatures': true,
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.showReleaseNotes': false,
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'editor.minimap.enabled': false,
  'git.openRepositoryInParentFolders': 'never',
};

const serveFlags = ['--disable-telemetry', '--disable-update-check', '--disable-workspace-trust'];

/** Writes the settings of an editor that nobody's own settings reach. */
export function writeSettings(userData) {
  mkdirSync(join(userData, 'User'), { recursive: true });
  writeFileSync(join(userData, 'User', 'settings.json'), JSON.stringify(settings, undefined, 2));
}

/**
 * Starts a real VS Code for the browser on a free loopback port, with all it writes in a temporary folder.
 * `prepare(folder)` answers the packages (`.vsix`) to install in it; `workspace` is what its address opens when
 * it names no folder; with a `password` it asks for that, for it gives whoever reaches it a terminal. Answers `{ url, folder, stop(), ended }`; `folder` goes when it stops.
 */
export async function startEditor({ prepare, workspace, environment = {}, password }) {
  const entry = await installEditor();
  const folder = mkdtempSync(join(tmpdir(), 'plimsoll-editor-'));
  try {
    const userData = join(folder, 'user-data');
    writeSettings(userData);
    const env = {
      ...makeEnvironment(join(folder, 'config')),
      ...environment,
      ...(password !== undefined && { PASSWORD: password }),
    };
    const folders = ['--extensions-dir', join(folder, 'extensions'), '--user-data-dir', userData];
    for (const file of await prepare(folder)) {
      await runCommand(projectNode, [entry, ...folders, '--install-extension', file], { env, quiet: true });
    }
    const port = await findFreePort();
    const url = `http://127.0.0.1:${port}`;
    const args = [
      ...folders,
      '--bind-addr',
      `127.0.0.1:${port}`,
      '--auth',
      password === undefined ? 'none' : 'password',
      ...serveFlags,
      ...(workspace ? [workspace] : []),
    ];
    const { stop, ended } = await serve(url, [folder, entry, ...args], env);
    return { url, folder, stop, ended };
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }
}

/** Started from a terminal inside VS Code, the editor must not take itself for a part of that one. */
function makeEnvironment(configFolder) {
  const own = Object.entries(process.env).filter(([name]) => !name.startsWith('VSCODE_'));
  // No gallery: the editor asks nothing of the network.
  return { ...Object.fromEntries(own), XDG_CONFIG_HOME: configFolder, EXTENSIONS_GALLERY: '{}' };
}

/** Starts the editor under its guard and waits until it serves. */
async function serve(url, args, env) {
  const child = spawn(projectNode, [guard, ...args], { env, detached: true, stdio: 'pipe' });
  let log = '';
  const keepLog = (chunk) => {
    log = (log + chunk).slice(-20_000);
  };
  child.stdout.on('data', keepLog);
  child.stderr.on('data', keepLog);
  const ended = new Promise((resolve) => child.on('exit', resolve).on('error', resolve));
  const stop = async () => {
    child.stdin.end();
    await ended;
  };
  child.stdin.on('error', () => {}); // It has ended already.
  try {
    await waitUntilServing(url, child);
  } catch (error) {
    await stop();
    throw new Error(`${error.message}\n${log}`);
  }
  return { stop, ended };
}

function findFreePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

async function waitUntilServing(url, child, seconds = 60) {
  const deadline = Date.now() + seconds * 1000;
  while (Date.now() < deadline) {
    if (child.exitCode !== null) {
      throw new Error(`The editor ended at once with exit code ${child.exitCode}:`);
    }
    const response = await fetch(`${url}/healthz`).catch(() => undefined);
    if (response?.ok) {
      return;
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`The editor did not answer on ${url} within ${seconds} s:`);
}
