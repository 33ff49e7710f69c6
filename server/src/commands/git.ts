import { spawn } from 'node:child_process';
import type { FileContent } from '../file-store.ts';
import { decode, LARGEST_IN_BYTES, TOO_LARGE } from '../node-file-store.ts';
import { Misuse } from './misuse.ts';

/** A repository as it is read: objects alone, so that nothing which it brings along is run. */
export interface Repository {
  /** Its top folder, links resolved. */
  readonly root: string;
  /** Where in it the folder is that it was found from: `logs/`, or nothing at the top. */
  readonly prefix: string;
}

/** A log in a commit, by its path from the top. */
export interface CommittedLog {
  readonly path: string;
  readonly content: FileContent;
}

/**
 * A repository's own settings could name programs: hooks, a file watcher, filters, a diff or merge driver, a transport.
 * None is run: only `rev-parse`, `ls-tree` and `cat-file` are asked, which give stored bytes, with these set aside.
 */
const SET_ASIDE = [
  '--no-pager',
  '-c',
  'core.hooksPath=/dev/null',
  '-c',
  'core.fsmonitor=false',
  '-c',
  'protocol.allow=never',
];
const ENVIRONMENT = {
  GIT_OPTIONAL_LOCKS: '0',
  GIT_TERMINAL_PROMPT: '0',
  GIT_NO_LAZY_FETCH: '1',
};

export class NoGit extends Misuse {}

/** The repository that a folder is in. */
export async function findRepository(folder: string): Promise<Repository> {
  const found = await runGit(folder, ['rev-parse', '--show-toplevel', '--show-prefix']);
  if (found.code !== 0) {
    const isUnsafe = found.error.includes('safe.directory');
    throw new NoGit(
      isUnsafe
        ? 'The repository belongs to somebody else, so git does not read it: see safe.directory in "git help config".'
        : 'This folder is in no git repository: name two files or folders to compare.',
    );
  }
  const [root, prefix = ''] = found.output.toString().split('\n');
  return { root: root!, prefix };
}

/** The commit that a revision names (`HEAD~2`, a branch, a tag), if there is one. */
export async function findCommit({ root }: Repository, revision: string): Promise<string | undefined> {
  if (revision.startsWith('-')) return undefined;
  const found = await runGit(root, [
    'rev-parse',
    '--verify',
    '--quiet',
    '--end-of-options',
    `${revision}^{commit}`,
  ]);
  return found.code === 0 ? found.output.toString().trim() : undefined;
}

/** All logs of a commit, as they are stored. */
export async function readCommit(repository: Repository, commit: string): Promise<CommittedLog[]> {
  const { root } = repository;
  const tree = await runGit(root, ['ls-tree', '-r', '-z', '-l', '--full-tree', commit]);
  if (tree.code !== 0)
    throw new Misuse(`git could not list the files of ${commit}: ${firstLine(tree.error)}`);
  const blobs = tree.output
    .toString()
    .split('\0')
    .flatMap((record) => {
      const [, object, size, path] = /^100\d{3} blob ([0-9a-f]+) +(\d+)\t(.+)$/s.exec(record) ?? [];
      return path?.toLowerCase().endsWith('.plim') ? [{ object: object!, size: Number(size), path }] : [];
    });
  const small = blobs.filter(({ size }) => size <= LARGEST_IN_BYTES);
  const contents = await readObjects(
    root,
    small.map(({ object }) => object),
  );
  const byPath = new Map(small.map(({ path }, index) => [path, contents[index]!]));
  return blobs.map(({ path }) => {
    const bytes = byPath.get(path);
    return { path, content: bytes ? decode(bytes) : TOO_LARGE };
  });
}

/** One process for all objects: `<object> blob <size>`, the bytes, a line end, for each. */
async function readObjects(root: string, objects: readonly string[]): Promise<Buffer[]> {
  if (objects.length === 0) return [];
  const { code, output, error } = await runGit(root, ['cat-file', '--batch'], `${objects.join('\n')}\n`);
  if (code !== 0) throw new Misuse(`git could not read the files: ${firstLine(error)}`);
  const contents: Buffer[] = [];
  let at = 0;
  for (const object of objects) {
    const end = output.indexOf('\n', at);
    const [, size] = /^\S+ blob (\d+)$/.exec(output.toString('utf8', at, end)) ?? [];
    if (size === undefined)
      throw new Misuse(`git does not have the contents of ${object}: fetch them first.`);
    contents.push(output.subarray(end + 1, end + 1 + Number(size)));
    at = end + 1 + Number(size) + 1;
  }
  return contents;
}

interface GitAnswer {
  readonly code: number;
  readonly output: Buffer;
  readonly error: string;
}

function runGit(folder: string, args: readonly string[], input = ''): Promise<GitAnswer> {
  return new Promise((resolve, reject) => {
    const git = spawn('git', [...SET_ASIDE, ...args], {
      cwd: folder,
      env: { ...process.env, ...ENVIRONMENT },
      windowsHide: true,
    });
    const [output, error]: [Buffer[], Buffer[]] = [[], []];
    git.stdout.on('data', (part: Buffer) => output.push(part));
    git.stderr.on('data', (part: Buffer) => error.push(part));
    git.on('error', (reason: NodeJS.ErrnoException) => {
      const isMissing = reason.code === 'ENOENT';
      reject(
        isMissing
          ? new NoGit('git was not found: install it, or name two files or folders to compare.')
          : reason,
      );
    });
    git.on('close', (code) =>
      resolve({ code: code ?? 1, output: Buffer.concat(output), error: Buffer.concat(error).toString() }),
    );
    // It may end before it has read everything.
    git.stdin.on('error', () => undefined);
    git.stdin.end(input);
  });
}

function firstLine(text: string): string {
  return text.trim().split('\n')[0] ?? '';
}
