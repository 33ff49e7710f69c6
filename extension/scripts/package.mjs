// Makes out/plimsoll.vsix, which holds what .vscodeignore lists and nothing else, and keeps it small.
import { fileURLToPath } from 'node:url';
import { createVSIX } from '@vscode/vsce';
import { printSize } from '../../server/scripts/build.mjs';

const LIMIT_IN_BYTES = 1_200_000;

const cwd = fileURLToPath(new URL('..', import.meta.url));
const packagePath = fileURLToPath(new URL('../out/plimsoll.vsix', import.meta.url));

// Builds first, by the manifest's `vscode:prepublish`. The repository has no public address to ask for yet.
await createVSIX({ cwd, packagePath, dependencies: false, allowMissingRepository: true });
const size = await printSize(packagePath);
if (size > LIMIT_IN_BYTES) {
  console.error(`The package is larger than ${LIMIT_IN_BYTES / 1000} kB.`);
  process.exitCode = 1;
}
