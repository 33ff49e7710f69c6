import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join, sep } from 'node:path';
import { URI } from 'vscode-uri';
import type { FileContent, FileStore } from './file-store.ts';

const LARGEST_IN_BYTES = 20_000_000;

/** Folders that hold no logs of the coach's own. */
const SKIPPED = new Set(['node_modules', '.git']);

/** Files on the disk. */
export const nodeFileStore: FileStore = {
  async list(folders) {
    const paths = await Promise.all(folders.map((folder) => listPaths(toPath(folder))));
    return [...new Set(paths.flat())].sort().map(createSpelling());
  },
  async read(uri) {
    const path = toPath(uri);
    const isSkipped = path === undefined || path.split(sep).some((part) => SKIPPED.has(part));
    return isSkipped ? undefined : readContent(path);
  },
};

/** Names that stand in a URI as they are. */
const PLAIN = /^[A-Za-z0-9_.-]+$/;

/** From paths to URIs; the folder's part, which takes most of the time, once for all of its files. */
function createSpelling(): (path: string) => string {
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
  const found = await Promise.all(
    children.map((child) => {
      const path = join(folder, child.name);
      if (child.isDirectory()) return SKIPPED.has(child.name) ? [] : listPaths(path);
      return child.name.toLowerCase().endsWith('.plim') ? [path] : [];
    }),
  );
  return found.flat();
}

async function readContent(path: string): Promise<FileContent | undefined> {
  try {
    const status = await stat(path);
    if (!status.isFile()) return undefined;
    if (status.size > LARGEST_IN_BYTES) {
      return {
        text: '',
        complaint: 'The file is larger than 20 MB and was not read: split it, for example by year',
      };
    }
    return decode(await readFile(path));
  } catch (error) {
    const isGone = (error as NodeJS.ErrnoException).code === 'ENOENT';
    return isGone
      ? undefined
      : { text: '', complaint: 'The file could not be opened: its access rights may forbid it' };
  }
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
