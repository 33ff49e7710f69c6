import { cpSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runCommand } from './command.mjs';
import { projectNode, rootFolder } from './paths.mjs';

const suite = fileURLToPath(new URL('../host-suite.ts', import.meta.url));
const driver = fileURLToPath(new URL('../driver', import.meta.url));
const require = createRequire(import.meta.url);

/** Writes the suite as one CommonJS file that any extension host can load. */
export async function bundleHostSuite(target) {
  const { build } = require('esbuild');
  await build({
    entryPoints: [suite],
    outfile: target,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    external: ['vscode'],
    logLevel: 'warning',
  });
}

/** Packs the driver extension into the folder; answers the `.vsix`. */
export async function packageDriver(folder) {
  const source = join(folder, 'driver');
  const target = join(folder, 'driver.vsix');
  cpSync(driver, source, { recursive: true });
  const vsce = join(rootFolder, 'node_modules', '@vscode', 'vsce', 'vsce');
  const flags = ['--no-dependencies', '--allow-missing-repository', '--skip-license'];
  await runCommand(projectNode, [vsce, 'package', ...flags, '--out', target], { cwd: source, quiet: true });
  return target;
}
