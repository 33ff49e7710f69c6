import {
  chmodSync,
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { delimiter, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createBrotliDecompress } from 'node:zlib';
import { runCommand } from './command.mjs';
import { installOnce } from './install-once.mjs';
import { npmCommand } from './paths.mjs';

const version = '153.0.0';
const commandNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const usualPlaces = {
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
    .filter((folder) => folder !== undefined)
    .map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe')),
};

/**
 * Answers a Chrome or Chromium as `{ executable, environment }`: the one named in CHROME_EXECUTABLE, else one
 * installed on the machine, else (Linux x64) a headless Chromium from the npm package `@sparticuz/chromium`.
 */
export async function findBrowser() {
  const installed = findInstalledBrowser();
  if (installed !== undefined) {
    return { executable: installed, environment: {} };
  }
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error(
      'No Chrome or Chromium was found, and one can be fetched for Linux x64 only. ' +
        'Install Chrome, or set CHROME_EXECUTABLE to its program file.',
    );
  }
  const folder = await installOnce(`chromium-${version}`, unpackBrowser);
  const libraries = [join(folder, 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter);
  const fonts = existsSync('/usr/share/fonts') ? {} : { FONTCONFIG_PATH: folder };
  return { executable: join(folder, 'chromium'), environment: { LD_LIBRARY_PATH: libraries, ...fonts } };
}

function findInstalledBrowser() {
  const named = process.env.CHROME_EXECUTABLE;
  if (named) {
    if (!existsSync(named)) {
      throw new Error(`CHROME_EXECUTABLE names ${named}, which does not exist.`);
    }
    return named;
  }
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => commandNames.map((name) => join(folder, name)));
  return [...onPath, ...(usualPlaces[process.platform] ?? [])].find((file) => existsSync(file));
}

/** The package holds the program and what it loads as compressed archives; its own script unpacks to /tmp. */
async function unpackBrowser(target) {
  console.log(`Installing a headless Chromium (@sparticuz/chromium ${version}, once) …`);
  const download = join(target, 'download');
  mkdirSync(download);
  writeFileSync(
    join(download, 'package.json'),
    JSON.stringify({ private: true, dependencies: { '@sparticuz/chromium': version } }),
  );
  try {
    const args = ['install', '--ignore-scripts', '--omit=dev', '--no-audit', '--no-fund', '--loglevel=error'];
    await runCommand(npmCommand, args, { cwd: download, quiet: true });
  } catch (error) {
    throw new Error(
      `@sparticuz/chromium ${version} could not be had from the npm registry. Check the connection (npm ping), ` +
        `or install Chrome or Chromium (Debian: apt-get install chromium).\n${error.message}`,
    );
  }
  const archives = join(download, 'node_modules', '@sparticuz', 'chromium', 'bin');
  const inflate = (name, file) =>
    pipeline(createReadStream(join(archives, name)), createBrotliDecompress(), createWriteStream(file));
  await inflate('chromium.br', join(target, 'chromium'));
  chmodSync(join(target, 'chromium'), 0o755);
  for (const name of ['al2023', 'fonts', 'swiftshader']) {
    const archive = join(download, `${name}.tar`);
    await inflate(`${name}.tar.br`, archive);
    await runCommand('tar', ['-xf', archive, '-C', target], { quiet: true });
  }
  rmSync(download, { recursive: true, force: true });
}
