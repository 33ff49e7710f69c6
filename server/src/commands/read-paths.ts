import { stat } from 'node:fs/promises';
import { relative, resolve } from 'node:path';
import { createPractice } from '@plimsoll/language/create-practice';
import type { Practice } from '@plimsoll/language/practice/practice';
import { createSpelling, listPaths, readContentNow } from '../node-file-store.ts';
import { Misuse } from './misuse.ts';

export interface ReadLog {
  readonly uri: string;
  /** As it is shown: from the current folder. */
  readonly path: string;
  readonly text: string;
  /** Why it was not, or not wholly, read. */
  readonly complaint?: string;
}

/** Reads all logs that the paths name, files and folders, as one practice. */
export async function readPaths(
  paths: readonly string[],
  folder: string,
): Promise<{ readonly practice: Practice; readonly logs: readonly ReadLog[] }> {
  const practice = createPractice();
  const logs = await readTexts(paths, folder);
  for (const { uri, text } of logs) practice.setFile(uri, text);
  return { practice, logs };
}

/** The texts of all logs that the paths name, files and folders, in order of path. */
export async function readTexts(paths: readonly string[], folder: string): Promise<readonly ReadLog[]> {
  const found = await Promise.all((paths.length > 0 ? paths : ['.']).map((path) => expandPath(path, folder)));
  const whole = [...new Set(found.flat())].sort();
  const spell = createSpelling();
  return whole.flatMap((path) => {
    const content = readContentNow(path);
    return content ? [{ uri: spell(path), path: relative(folder, path), ...content }] : [];
  });
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
