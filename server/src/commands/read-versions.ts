import { realpath, stat } from 'node:fs/promises';
import { isAbsolute, join, relative, resolve, sep } from 'node:path';
import { createPractice } from '@plimsoll/language/create-practice';
import type { Version } from '@plimsoll/language/revisions/describe-revision';
import { URI } from 'vscode-uri';
import type { FileContent } from '../file-store.ts';
import { listPaths, nodeFileStore } from '../node-file-store.ts';
import { findCommit, type Repository, readCommit } from './git.ts';
import { Misuse } from './misuse.ts';

/** Two versions of logs, and what to tell of them. */
export interface Comparison {
  readonly before: Version;
  readonly after: Version;
  readonly since: string;
  /** Which files to tell of. */
  readonly isShown: (path: string) => boolean;
  readonly complaints: readonly string[];
}

/** A revision as it was typed, and the commit that it is. */
export interface NamedCommit {
  readonly name: string;
  readonly commit: string;
}

/** Files by path: those of a whole repository or folder, so that names find their definitions. */
class Files {
  readonly practice = createPractice();
  readonly paths: string[] = [];
  readonly complaints: string[] = [];

  add(path: string, { text, complaint }: FileContent): void {
    this.practice.setFile(path, text);
    this.paths.push(path);
    if (complaint) this.complaints.push(`${path}: ${complaint}.`);
  }
}

export async function compareRevisions(
  repository: Repository,
  revisions: readonly NamedCommit[],
  paths: readonly string[],
): Promise<Comparison> {
  const [first, second] = revisions;
  const base = first ?? { name: 'HEAD', commit: await findCommit(repository, 'HEAD') };
  if (base.commit === undefined)
    throw new Misuse('This repository has no commit yet, so there is nothing to compare with.');
  // Paths are shown as seen from the current folder, and are the same on both sides.
  const toShown = (path: string): string =>
    toSlashes(relative(join(repository.root, repository.prefix), join(repository.root, path)));
  const fromCommit = async (commit: string): Promise<Files> => {
    const files = new Files();
    for (const { path, content } of await readCommit(repository, commit)) files.add(toShown(path), content);
    return files;
  };
  const before = await fromCommit(base.commit);
  const after = second ? await fromCommit(second.commit) : await readFolder(repository.root, toShown);
  const wanted = await Promise.all(paths.map((path) => toWanted(path, repository, toShown)));
  const isShown = (path: string): boolean =>
    wanted.length === 0
      ? !path.startsWith('../')
      : wanted.some((one) => one === '' || path === one || path.startsWith(`${one}/`));
  for (const [index, path] of paths.entries()) {
    const isKnown = [...before.paths, ...after.paths].some(
      (known) => wanted[index] === '' || known === wanted[index] || known.startsWith(`${wanted[index]}/`),
    );
    if (!isKnown) throw new Misuse(`There is no log at "${path}", neither before nor after.`);
  }
  return {
    before,
    after,
    since: base.name,
    isShown,
    complaints: [...before.complaints, ...after.complaints],
  };
}

async function readFolder(root: string, toName: (path: string) => string): Promise<Files> {
  const files = new Files();
  for (const path of (await listPaths(root)).sort()) {
    const content = await nodeFileStore.read(URI.file(path).toString());
    if (content) files.add(toName(toSlashes(relative(root, path))), content);
  }
  return files;
}

/** A path that was given, as paths are shown; it need not be there any more. */
async function toWanted(
  path: string,
  { root, prefix }: Repository,
  toShown: (path: string) => string,
): Promise<string> {
  const whole = isAbsolute(path) ? await realpath(path).catch(() => path) : join(root, prefix, path);
  const inside = relative(root, whole);
  if (inside.startsWith('..') || isAbsolute(inside)) throw new Misuse(`"${path}" is outside the repository.`);
  return toShown(toSlashes(inside)).replace(/\/$/, '');
}

/** Two files, or two folders; a file has the second one's name on both sides. */
export async function comparePaths(first: string, second: string, folder: string): Promise<Comparison> {
  const [before, after] = await Promise.all([first, second].map((path) => readPath(path, second, folder)));
  return {
    before: before!,
    after: after!,
    since: first,
    isShown: () => true,
    complaints: [...before!.complaints, ...after!.complaints],
  };
}

async function readPath(path: string, name: string, folder: string): Promise<Files> {
  const whole = resolve(folder, path);
  if ((await stat(whole)).isDirectory()) return readFolder(whole, (inside) => inside);
  const files = new Files();
  const content = await nodeFileStore.read(URI.file(whole).toString());
  if (content) files.add(toSlashes(name), content);
  return files;
}

function toSlashes(path: string): string {
  return sep === '/' ? path : path.replaceAll(sep, '/');
}
