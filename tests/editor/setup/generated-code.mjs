import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { rootFolder } from './paths.mjs';

const workspaces = ['language', 'server', 'extension'];
/** Pages for users that are made from tables of the sources. */
const generatedPages = [join('language', 'measures.md'), join('language', 'checks.md')];

/**
 * Runs the generator and answers the files that it changed, added or removed, relative to the root. Compares
 * contents, not commits, so that it says the same before and after `git add`.
 */
export async function findChangesOfGenerated(generate) {
  const before = hashGeneratedFiles();
  await generate();
  const after = hashGeneratedFiles();
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((file) => before.get(file) !== after.get(file))
    .sort();
}

/** Generated code lives in folders named `generated`, and nothing else does. */
function hashGeneratedFiles() {
  const code = workspaces
    .map((workspace) => join(rootFolder, workspace, 'src'))
    .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && entry.parentPath.split(sep).includes('generated'))
    .map((entry) => join(entry.parentPath, entry.name));
  const pages = generatedPages.map((page) => join(rootFolder, page)).filter((page) => existsSync(page));
  return new Map(
    [...code, ...pages].map((file) => [
      relative(rootFolder, file),
      createHash('sha256').update(readFileSync(file)).digest('hex'),
    ]),
  );
}
