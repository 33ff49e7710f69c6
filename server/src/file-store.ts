/** What reading a file gave. What could not be read is empty and says why. */
export interface FileContent {
  readonly text: string;
  /** Why the text is not, or not wholly, what is in the file; a sentence for the coach. */
  readonly complaint?: string;
}

/** Folders that hold no logs of the coach's own. */
const SKIPPED = new Set(['node_modules', '.git']);

export function isSkippedFolder(name: string): boolean {
  return SKIPPED.has(name);
}

/** Where closed files come from: a disk, or whatever else an editor's workspace stands on. Never throws. */
export interface FileStore {
  /** The URIs of all logs in these folders (URIs too) and below them, each spelled as `URI.toString` spells it. */
  list(folders: readonly string[]): Promise<readonly string[]>;
  /** The content now; undefined where there is no such file, or one that is not for reading. */
  read(uri: string): Promise<FileContent | undefined>;
}
