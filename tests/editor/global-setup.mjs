import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { bundleHostSuite, packageDriver } from './setup/host-suite.mjs';
import { findBrowser } from './setup/install-browser.mjs';
import { extensionPackage, failuresFolder, samplesFolder } from './setup/paths.mjs';
import { startEditor } from './setup/start-editor.mjs';
import { today } from './setup/today.mjs';

/** Starts the editor once, with the packed extension and the driver in it; ends it when all tests are done. */
export default async function setup(project) {
  rmSync(failuresFolder, { recursive: true, force: true });
  if (!existsSync(extensionPackage)) {
    throw new Error('The extension is not packed yet: run "npm run package --workspace extension".');
  }
  const browser = await findBrowser();
  const editor = await startEditor({
    prepare: async (folder) => [extensionPackage, await packageDriver(folder)],
    environment: { PLIMSOLL_TODAY: today },
  });
  try {
    const hostSuite = join(editor.folder, 'host-suite.cjs');
    await bundleHostSuite(hostSuite);
    project.provide('editor', {
      url: editor.url,
      folder: editor.folder,
      hostSuite,
      browser,
      samplesFolder,
      failuresFolder,
    });
  } catch (error) {
    await editor.stop();
    throw error;
  }
  return () => editor.stop();
}
