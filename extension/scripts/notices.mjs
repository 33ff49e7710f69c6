import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';

const PACKAGE_FOLDER = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/;

/** The licences of every package whose code went into the bundles of these esbuild results, as one text. */
export async function writeNotices(results) {
  const files = results.flatMap((result) => Object.keys(result.metafile.inputs));
  const folders = new Set(files.map((file) => PACKAGE_FOLDER.exec(resolve(file))?.[0]).filter(Boolean));
  const notices = new Map();
  for (const folder of folders) {
    const { name, version, license } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
    notices.set(`${name} ${version} (${license})`, await readLicence(folder, name));
  }
  const parts = [...notices]
    .sort()
    .map(([title, text]) => `${title}\n${'='.repeat(title.length)}\n\n${text.trim()}\n`);
  return ['Plimsoll includes the following packages.\n', ...parts].join('\n');
}

async function readLicence(folder, name) {
  const file = (await readdir(folder)).find((entry) => /^licen[cs]e/i.test(entry));
  if (!file) {
    throw new Error(`${name} is bundled but has no licence file.`);
  }
  return readFile(join(folder, file), 'utf8');
}
