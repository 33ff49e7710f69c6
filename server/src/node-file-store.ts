import fs from 'node:fs';
import { basename, dirname, join, sep } from 'node:path';
import { promisify } from 'node:util';
import { URI } from 'vscode-uri';
import { type FileContent, type FileStore, isSkippedFolder } from './file-store.ts';

export const LARGEST_IN_BYTES = 20_000_000;

// `node:fs/promises` gives the same, and loading it is a noticeable part of a start.
const [readdir, readFile, stat] = [promisify(fs.readdir), promisify(fs.readFile), promisify(fs.stat)];

/** Files on the disk. */
export const nodeFileStore: FileStore = {
  async list(folders) {
    const paths = await Promise.all(folders.map((folder) => listPaths(toPath(folder))));
    return [...new Set(paths.flat())].sort().map(createSpelling());
  },
  async read(uri) {
    const path = toPath(uri);
    return path === undefined ? undefined : readContent(path);
  },
};

/** Names that stand in a URI as they are. */
const PLAIN = /^[A-Za-z0-9_.-]+$/;

/** From paths to URIs; the folder's part, which takes most of the time, once for all of its files. */
export function createSpelling(): (path: string) => string {
  const folders = new Map<string, string>();
  return (path) => {
    const name = basename(path);
    if (!PLAIN.test(name)) return URI.file(path).toString();
    const folder = dirname(path);
    const spelled = folders.get(folder) ?? URI.file(folder).toString().replace(/\/$/, '');
    folders.set(folder, spelled);
    return `${spelled}/${name}`;
  };
}

/** All `.plim` files of a folder, as paths. Links to folders are not followed, so that none is entered twice. */
export async function listPaths(folder: string | undefined): Promise<string[]> {
  if (folder === undefined) return [];
  const children = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const inside = join(folder, sep);
  const found = await Promise.all(
    children.map((child) => {
      const path = inside + child.name;
      if (child.isDirectory()) return isSkippedFolder(child.name) ? [] : listPaths(path);
      return child.name.toLowerCase().endsWith('.plim') ? [path] : [];
    }),
  );
  return found.flat();
}

/** What is given of a larger one. */
export const TOO_LARGE = {
  text: '',
  complaint: 'The file is larger than 20 MB and was not read: split it, for example by year',
} as const satisfies FileContent;

async function readContent(path: string): Promise<FileContent | undefined> {
  try {
    const status = await stat(path);
    if (!status.isFile()) return undefined;
    return status.size > LARGEST_IN_BYTES ? TOO_LARGE : decode(await readFile(path));
  } catch (error) {
    return explain(error as NodeJS.ErrnoException);
  }
}

/** The content of a path, for whoever has nothing else to do until it has come: that is several times as fast. */
export function readContentNow(path: string): FileContent | undefined {
  try {
    const status = fs.statSync(path);
    if (!status.isFile()) return undefined;
    return status.size > LARGEST_IN_BYTES ? TOO_LARGE : decode(fs.readFileSync(path));
  } catch (error) {
    return explain(error as NodeJS.ErrnoException);
  }
}

function explain({ code }: NodeJS.ErrnoException): FileContent | undefined {
  return code === 'ENOENT'
    ? undefined
    : { text: '', complaint: 'The file could not be opened: its access rights may forbid it' };
}

/** UTF-8 is meant; UTF-16 is known by its byte-order mark. */
export function decode(bytes: Uint8Array): FileContent {
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? 'utf-16le'
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? 'utf-16be'
        : 'utf-8';
  if (encoding === 'utf-8' && bytes.includes(0)) {
    return { text: '', complaint: 'The file holds something else than text and was not read' };
  }
  const text = new TextDecoder(encoding).decode(bytes);
  const isWhole = encoding !== 'utf-8' || !text.includes('\ufffd') || isUtf8(bytes);
  return isWhole
    ? { text }
    : { text, complaint: 'Some letters could not be read: save the file in the encoding UTF-8' };
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function toPath(uri: string): string | undefined {
  const parsed = URI.parse(uri);
  return parsed.scheme === 'file' ? parsed.fsPath : undefined;
}
