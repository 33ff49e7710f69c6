import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from './command.mjs';
import { npmCommand, projectNode, rootFolder } from './paths.mjs';

const oldestNode = 20;

/** Runs `npm ci` when `node_modules` is missing or is not what `package-lock.json` says; else does nothing. */
export async function installDependencies() {
  const major = Number(process.versions.node.split('.')[0]);
  if (major < oldestNode) {
    throw new Error(
      `Node ${process.versions.node} is too old: install Node ${oldestNode} or newer from nodejs.org.`,
    );
  }
  if (isInstalled()) {
    return;
  }
  console.log('Installing the packages of package-lock.json …');
  try {
    await runCommand(npmCommand, ['ci', '--no-audit', '--no-fund']);
  } catch (error) {
    throw new Error(
      `The packages could not be installed. Check that the npm registry is reached (npm ping).\n${error.message}`,
    );
  }
  if (!existsSync(projectNode)) {
    throw new Error(
      `npm ci did not install the package "node" whole (${projectNode} is missing): ` +
        'allow install scripts (npm config set ignore-scripts false) and run the command again.',
    );
  }
}

/** npm keeps beside the packages a list of what it put there; it is written last, so it tells a whole install. */
function isInstalled() {
  const wanted = readPackages(join(rootFolder, 'package-lock.json'));
  const present = readPackages(join(rootFolder, 'node_modules', '.package-lock.json'));
  if (present === undefined || !existsSync(projectNode)) {
    return false;
  }
  return Object.entries(wanted ?? {})
    .filter(([path, entry]) => path.includes('node_modules/') && !entry.link)
    .every(([path, entry]) =>
      present[path] === undefined ? entry.optional === true : present[path].version === entry.version,
    );
}

function readPackages(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : undefined;
}
