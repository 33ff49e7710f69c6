// Bundles the language server and the command line into CommonJS that Node 20 runs as it stands.
import { chmod, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { quickStart } from './quick-start.mjs';

const server = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** What every Node bundle of the project has in common; the library of movements travels inside as text. */
export const common = {
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  minify: true,
  legalComments: 'none',
  loader: { '.plim': 'text' },
  logLevel: 'warning',
};

/** A program and the small file that starts it, whose name is the program's without `-program`. */
function startable(entryPoint, starter, options = {}) {
  const program = starter.replace(/\.cjs$/, '-program.cjs');
  return [
    { ...common, entryPoints: [server(entryPoint)], outfile: program, plugins: [quickStart] },
    {
      ...common,
      entryPoints: [server('src/starter.ts')],
      outfile: starter,
      define: { PROGRAM: JSON.stringify(basename(program)) },
      ...options,
    },
  ];
}

/** The language server, written to the given file and one beside it. */
export const serverBundles = (outfile = server('out/server.cjs')) => startable('src/main.ts', outfile);

/** The command line, likewise. */
export const commandLineBundles = (outfile = server('out/plimsoll.cjs')) =>
  startable('src/cli.ts', outfile, { banner: { js: '#!/usr/bin/env node' } });

/** `out/server.cjs  512 kB` */
export async function printSize(file) {
  const { size } = await stat(file);
  console.log(`${file.split('/').slice(-3).join('/')}  ${Math.round(size / 1000)} kB`);
  return size;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const bundle of [...serverBundles(), ...commandLineBundles()]) {
    await build(bundle);
    await printSize(bundle.outfile);
  }
  await chmod(server('out/plimsoll.cjs'), 0o755);
}
