// Bundles the language server and the command line, each into one CommonJS file that Node 20 runs as it stands.
import { chmod, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

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

/** The language server, written to the given file. */
export const serverBundle = (outfile = server('out/server.cjs')) => ({
  ...common,
  entryPoints: [server('src/main.ts')],
  outfile,
});

const commandLineBundle = {
  ...common,
  entryPoints: [server('src/cli.ts')],
  outfile: server('out/plimsoll.cjs'),
  banner: { js: '#!/usr/bin/env node' },
};

/** `out/server.cjs  512 kB` */
export async function printSize(file) {
  const { size } = await stat(file);
  console.log(`${file.split('/').slice(-3).join('/')}  ${Math.round(size / 1000)} kB`);
  return size;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const bundle of [serverBundle(), commandLineBundle]) {
    await build(bundle);
    await printSize(bundle.outfile);
  }
  await chmod(commandLineBundle.outfile, 0o755);
}
