import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { cacheFolder } from './paths.mjs';

/**
 * Answers the cache folder of a tool (`code-server-4.139.1`), filling it by `install(folder)` on first use.
 *
 * The tool is put together in a folder of its own and moved to its place when it is whole, so that a folder
 * under the final name is always complete: an interrupted install leaves a partial one, which the next run
 * removes, and two runs at once end with the same folder.
 */
export async function installOnce(name, install, cache = cacheFolder) {
  const folder = join(cache, name);
  if (existsSync(folder)) {
    return folder;
  }
  mkdirSync(cache, { recursive: true });
  removeLeftOvers(cache, name);
  const partial = `${folder}.partial-${process.pid}`;
  mkdirSync(partial);
  try {
    await install(partial);
    renameSync(partial, folder);
  } catch (error) {
    rmSync(partial, { recursive: true, force: true });
    if (!existsSync(folder)) {
      throw error;
    }
  }
  return folder;
}

function removeLeftOvers(cache, name) {
  for (const entry of readdirSync(cache)) {
    const [owner, processId] = entry.split('.partial-');
    if (owner === name && processId !== undefined && !isRunning(Number(processId))) {
      rmSync(join(cache, entry), { recursive: true, force: true });
    }
  }
}

function isRunning(processId) {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}
