import { stat } from 'node:fs/promises';
import { relative, resolve } from 'node:path';
import { createPractice } from '@plimsoll/language/create-practice';
import type { Practice } from '@plimsoll/language/practice/practice';
import { URI } from 'vscode-uri';
import { listPaths, nodeFileStore } from '../node-file-store.ts';
import { Misuse } from './misuse.ts';

export interface ReadLog {
  readonly uri: string;
  /** As it is shown: from the current folder. */
  readonly path: string;
  /** Why it was not, or not wholly, read. */
  readonly complaint?: string;
}

/** Reads all logs that the paths name, files and folders, as one practice. */
export async function readPaths(
  paths: readonly string[],
  folder: string,
): Promise<{ readonly practice: Practice; readonly logs: readonly ReadLog[] }> {
  const found = await Promise.all((paths.length > 0 ? paths : ['.']).map((path) => expandPath(path, folder)));
  const practice = createPractice();
  const logs: ReadLog[] = [];
  for (const path of [...new Set(found.flat())].sort()) {
    const uri = URI.file(path).toString();
    const content = await nodeFileStore.read(uri);
    if (!content) continue;
    practice.setFile(uri, content.text);
    const { complaint } = content;
    logs.push({ uri, path: relative(folder, path), ...(complaint && { complaint }) });
  }
  return { practice, logs };
}

async function expandPath(path: string, folder: string): Promise<string[]> {
  const whole = resolve(folder, path);
  const status = await stat(whole).catch(() => undefined);
  if (!status) throw new Misuse(`There is no file or folder "${path}".`);
  if (!status.isDirectory()) return [whole];
  const paths = await listPaths(whole);
  if (paths.length === 0)
    throw new Misuse(`There is no log (*.plim) in ${path === '.' ? 'this folder' : `"${path}"`}.`);
  return paths;
}
