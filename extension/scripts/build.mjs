// Bundles the extension and, beside it, the server that it starts; with --watch, again at every change.
import { rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build, context } from 'esbuild';
import { common, printSize, serverBundles } from '../../server/scripts/build.mjs';
import { writeNotices } from './notices.mjs';

const extension = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

const bundles = [
  {
    ...common,
    entryPoints: [extension('src/extension.ts')],
    outfile: extension('out/extension.cjs'),
    external: ['vscode'],
  },
  ...serverBundles(extension('out/server.cjs')),
];

if (process.argv.includes('--watch')) {
  for (const bundle of bundles) {
    const watched = await context({ ...bundle, minify: false, sourcemap: true, logLevel: 'info' });
    await watched.watch();
  }
} else {
  await rm(extension('out'), { recursive: true, force: true });
  const results = [];
  for (const bundle of bundles) {
    results.push(await build({ ...bundle, metafile: true }));
    await printSize(bundle.outfile);
  }
  await writeFile(extension('out/THIRD-PARTY-NOTICES.txt'), await writeNotices(results));
}
