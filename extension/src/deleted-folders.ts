import { type Disposable, workspace } from 'vscode';

/** A folder's files go one by one where they go at all; told once for all that goes at the same time. */
const REST_IN_MS = 500;
/** What has an ending is a file, and a log is watched already. */
const HAS_ENDING = /\.[^./]+$/;

/**
 * Folders that are deleted or moved outside the editor: their logs go with them, and no watcher of `*.plim` hears of it.
 */
export class DeletedFolders implements Disposable {
  readonly #watcher = workspace.createFileSystemWatcher('**/*', true, true, false);
  readonly #gone = new Set<string>();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(tell: (folders: readonly string[]) => Promise<unknown>) {
    this.#watcher.onDidDelete((uri) => {
      if (HAS_ENDING.test(uri.path)) return;
      this.#gone.add(uri.toString());
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => {
        const folders = [...this.#gone];
        this.#gone.clear();
        tell(folders).catch(() => undefined); // A server that is not there reads all when it comes.
      }, REST_IN_MS);
    });
  }

  dispose(): void {
    clearTimeout(this.#timer);
    this.#watcher.dispose();
  }
}
