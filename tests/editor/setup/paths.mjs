import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const onWindows = process.platform === 'win32';

/** Where things stand in the repository; every script here starts from these. */
export const rootFolder = resolve(here, '../../..');
export const cacheFolder = join(rootFolder, 'tests', '.cache');
export const samplesFolder = join(rootFolder, 'samples');
export const failuresFolder = join(rootFolder, 'tests', 'editor', 'failures');
export const extensionPackage = join(rootFolder, 'extension', 'out', 'plimsoll.vsix');
export const commandLine = join(rootFolder, 'server', 'out', 'plimsoll.cjs');

/** The Node that `npm ci` puts beside the other tools: the editor wants 24, the machine may have 20. */
export const projectNode = join(rootFolder, 'node_modules', 'node', 'bin', onWindows ? 'node.exe' : 'node');

/** npm as a command: `npm` is a shell script on Windows. */
export const npmCommand = onWindows ? 'npm.cmd' : 'npm';
