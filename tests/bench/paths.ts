import { join, resolve } from 'node:path';

export const rootFolder = resolve(import.meta.dirname, '../..');
/** Everything the benchmark makes is here, and git ignores it. */
export const benchFolder = join(rootFolder, 'tests', '.cache', 'bench');
export const commandLine = join(rootFolder, 'server', 'out', 'plimsoll.cjs');
export const serverBundle = join(rootFolder, 'server', 'out', 'server.cjs');
