import type { FileStore } from '@plimsoll/server/file-store';

/** Files that are in no folder of a disk; a test changes them as `git` would, beside the editor. */
export class MemoryStore implements FileStore {
  readonly files = new Map<string, string>();
  /** A test that sets it lets files wait to be read until it is settled. */
  gate: Promise<void> = Promise.resolve();

  async list(folders: readonly string[]): Promise<readonly string[]> {
    return [...this.files.keys()].filter((uri) => folders.some((folder) => uri.startsWith(folder)));
  }

  async read(uri: string) {
    await this.gate;
    const text = this.files.get(uri);
    return text === undefined ? undefined : { text };
  }
}
