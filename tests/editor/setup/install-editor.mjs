import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from './command.mjs';
import { installOnce } from './install-once.mjs';
import { npmCommand } from './paths.mjs';

const version = '4.139.1';
const installArguments = [
  'install',
  '--ignore-scripts',
  '--omit=dev',
  '--no-audit',
  '--no-fund',
  '--loglevel=error',
];

/**
 * Answers the script that starts a real VS Code for the browser, from the npm package `code-server`,
 * installing it on first use (0.5 GB). Its own install scripts want a compiler and are not needed:
 * without its native modules it does all that these tests ask of it.
 */
export async function installEditor() {
  if (process.platform === 'win32') {
    throw new Error(
      'The VS Code for the browser (code-server) does not run on Windows. ' +
        'Install desktop VS Code, put "code" on the PATH and try again.',
    );
  }
  const folder = await installOnce(`code-server-${version}`, async (target) => {
    console.log(`Installing VS Code for the browser (code-server ${version}, 0.5 GB, once) …`);
    writeFileSync(
      join(target, 'package.json'),
      JSON.stringify({ private: true, dependencies: { 'code-server': version } }),
    );
    const quietly = (cwd) => runCommand(npmCommand, installArguments, { cwd, quiet: true });
    try {
      await quietly(target);
      await quietly(join(target, 'node_modules', 'code-server', 'lib', 'vscode'));
    } catch (error) {
      throw new Error(
        `code-server ${version} could not be had from the npm registry. Check the connection ` +
          `(npm ping) and run the command again; nothing half-installed was kept.\n${error.message}`,
      );
    }
  });
  return join(folder, 'node_modules', 'code-server', 'out', 'node', 'entry.js');
}
