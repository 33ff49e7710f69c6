import type { Practice, PracticeChange } from '@plimsoll/language/practice/practice';
import { Memo } from '@plimsoll/language/text/memo';
import type { TextDocumentContentChangeEvent, TextDocumentItem } from 'vscode-languageserver';
import { URI } from 'vscode-uri';
import { type FileStore, isSkippedFolder } from './file-store.ts';
import { letRequestsThrough, SLICE_IN_MS } from './let-through.ts';
import { OpenDocument } from './open-document.ts';

/** While the editor asks, files are read in pauses of this length alone: what is in sight comes first. */
const PATIENCE_IN_MS = 25;
/** An editor that never stops asking gets its files read all the same. */
const MOST_PAUSES = 10;
/** How many files are asked for at once. */
const AT_ONCE = 16;

export interface WorkspaceListener {
  /** A file's facts changed; `change` says what else may be stale. */
  fileChanged(uri: string, change: PracticeChange): void;
  /** Files are being read: how many of how many. */
  reading(done: number, total: number): void;
  /** All files are read. */
  completed(): void;
  /** A file could not be taken in; the facts from before stay. */
  failed(uri: string, error: unknown): void;
}

/**
 * Keeps the practice as the files are: an open document as it stands in the editor, any other as it was last read
 * from the store. Closed files are read in the background, in slices that let requests through.
 */
export class Workspace {
  readonly practice: Practice;
  /** Whether every file has been read: before, "the first time" and "no such athlete" are not known. */
  complete = false;

  readonly #store: FileStore;
  readonly #listener: WorkspaceListener;
  readonly #documents = new Map<string, OpenDocument>();
  /** Open documents whose facts are those of an older text, since one could not be taken in. */
  readonly #behind = new Set<string>();
  readonly #complaints = new Map<string, string>();
  readonly #schemes = new Set(['file', 'untitled']);
  readonly #waiting = new Set<string>();
  #folders: readonly string[] = [];
  #isDraining = false;
  #askedAt = Number.NEGATIVE_INFINITY;
  #readSinceIdle = 0;
  #isListing = 0;

  constructor(practice: Practice, store: FileStore, listener: WorkspaceListener) {
    this.practice = practice;
    this.#store = store;
    this.#listener = listener;
  }

  /** Reads all logs of these folders, and forgets those of folders that are no longer among them. */
  async setFolders(folders: readonly string[]): Promise<void> {
    const before = this.#folders;
    this.#folders = folders.map((folder) => normalise(folder).replace(/\/*$/, '/'));
    // What stands in a folder that comes later may change anything.
    if (this.#folders.some((folder) => !before.includes(folder))) this.complete = false;
    for (const folder of folders) this.#schemes.add(URI.parse(folder).scheme);
    await this.rescan();
  }

  /** Lists the folders again: for changes of whole folders, about which no event names a file. */
  async rescan(): Promise<void> {
    this.#isListing++;
    const listed = new Set(await this.#store.list(this.#folders));
    this.#isListing--;
    for (const uri of [...this.practice.fileUris()]) if (!listed.has(uri)) this.#waiting.add(uri);
    for (const uri of listed) if (!this.practice.file(uri)) this.#waiting.add(uri);
    await this.#drain();
  }

  /** The editor asks for something, or was just answered: what is read in the background waits a moment. */
  noteRequest(): void {
    this.#askedAt = performance.now();
  }

  open({ uri, version, text }: Omit<TextDocumentItem, 'languageId'>): void {
    const key = normalise(uri);
    // A file's older version beside it (`git:` in a comparison) would count everything twice.
    if (!this.#schemes.has(URI.parse(uri).scheme)) return;
    this.#documents.set(key, new OpenDocument(uri, version, text));
    this.#setText(key, text);
    this.noteRequest();
  }

  change(uri: string, version: number, changes: TextDocumentContentChangeEvent[]): void {
    const key = normalise(uri);
    const document = this.#documents.get(key);
    if (!document) return;
    const edit = document.update(changes, version);
    if (!edit || this.#behind.has(key)) this.#setText(key, document.text);
    else this.#takeIn(key, () => this.practice.editFile(key, edit));
  }

  /** From now on the file counts as it is in the store: what was not saved is gone. */
  async close(uri: string): Promise<void> {
    const key = normalise(uri);
    if (this.#documents.delete(key)) await this.reread([key]);
  }

  /** Reads files again that changed, came or went outside the editor. */
  async reread(uris: readonly string[]): Promise<void> {
    for (const uri of uris) this.#waiting.add(normalise(uri));
    await this.#drain();
  }

  isOpen(uri: string): boolean {
    return this.#documents.has(normalise(uri));
  }

  /** The version that the editor counts, for answers that hold for it alone. */
  versionOf(uri: string): number | undefined {
    return this.#documents.get(normalise(uri))?.version;
  }

  /** The text of an open document, line ends included. */
  textOf(uri: string): string | undefined {
    return this.#documents.get(normalise(uri))?.text;
  }

  /** The spelling of a URI under which the editor knows the file. */
  toClientUri(uri: string): string {
    return this.#documents.get(uri)?.uri ?? uri;
  }

  openUris(): readonly string[] {
    return [...this.#documents.keys()];
  }

  /** Why a file could not be read, or not wholly. */
  complaintAbout(uri: string): string | undefined {
    return this.#documents.has(uri) ? undefined : this.#complaints.get(uri);
  }

  #setText(uri: string, text: string): void {
    this.#takeIn(uri, () => this.practice.setFile(uri, text));
  }

  #takeIn(uri: string, take: () => PracticeChange): void {
    try {
      const change = take();
      this.#behind.delete(uri);
      this.#listener.fileChanged(uri, change);
    } catch (error) {
      this.#behind.add(uri);
      this.#listener.failed(uri, error);
    }
  }

  async #drain(): Promise<void> {
    if (this.#isDraining) return;
    this.#isDraining = true;
    let sliceStart = performance.now();
    while (this.#waiting.size > 0) {
      const uris = [...this.#waiting].slice(0, AT_ONCE);
      for (const uri of uris) this.#waiting.delete(uri);
      const contents = await Promise.all(uris.map(async (uri) => [uri, await this.#read(uri)] as const));
      for (const [uri, content] of contents) {
        if (this.#documents.has(uri)) continue;
        if (this.#isAsked() || performance.now() - sliceStart > SLICE_IN_MS) {
          await this.#letRequestsThrough();
          sliceStart = performance.now();
          // Opened meanwhile.
          if (this.#documents.has(uri)) continue;
        }
        this.#take(uri, content);
        this.#readSinceIdle++;
        this.#listener.reading(this.#readSinceIdle, this.#readSinceIdle + this.#waiting.size);
      }
    }
    this.#isDraining = false;
    if (this.#isListing > 0) return;
    this.#readSinceIdle = 0;
    const isFirst = !this.complete;
    this.complete = true;
    if (isFirst) this.#listener.completed();
  }

  async #letRequestsThrough(): Promise<void> {
    await letRequestsThrough();
    for (let pauses = 0; pauses < MOST_PAUSES && this.#isAsked(); pauses++)
      await new Promise((resolve) => setTimeout(resolve, PATIENCE_IN_MS));
  }

  #isAsked(): boolean {
    return performance.now() - this.#askedAt < PATIENCE_IN_MS;
  }

  /** A file from outside the folders, or from one that holds no logs, counts only while it is open. */
  async #read(uri: string) {
    const isRead = this.#folders.some(
      (folder) => uri.startsWith(folder) && !uri.slice(folder.length).split('/').some(isSkippedFolder),
    );
    return isRead ? this.#store.read(uri) : undefined;
  }

  #take(uri: string, content: Awaited<ReturnType<FileStore['read']>>): void {
    this.#complaints.delete(uri);
    if (content?.complaint) this.#complaints.set(uri, content.complaint);
    if (content) this.#setText(uri, content.text);
    else if (this.practice.file(uri)) this.#listener.fileChanged(uri, this.practice.removeFile(uri));
  }
}

/** How many spellings are remembered: a keystroke asks about the same few files again and again. */
const MOST_SPELLINGS = 1_000;
const normal = new Memo((uri) => URI.parse(uri).toString(), MOST_SPELLINGS);

/** One spelling for each file, whatever the editor escapes: `file:///c%3A/a` and `file:///C:/a`. */
export function normalise(uri: string): string {
  return normal.of(uri);
}
