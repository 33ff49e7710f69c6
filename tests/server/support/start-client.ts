import { PassThrough } from 'node:stream';
import type { IsoDate } from '@plimsoll/language/calendar/iso-date';
import { type Explanation, type LensId, WEEKS_CHANGED } from '@plimsoll/server/messages';
import { startServer } from '@plimsoll/server/start-server';
import type { Clock } from '@plimsoll/server/today';
import {
  type ClientCapabilities,
  type CodeAction,
  CodeActionRequest,
  CodeLensRefreshRequest,
  CodeLensRequest,
  CodeLensResolveRequest,
  ConfigurationRequest,
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  DiagnosticRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  FileChangeType,
  type FileEvent,
  HoverRequest,
  InitializedNotification,
  InitializeRequest,
  InlayHintRefreshRequest,
  InlayHintRequest,
  LogMessageNotification,
  ProposedFeatures,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  type Range,
  RegistrationRequest,
  SemanticTokensRefreshRequest,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { MemoryStore } from './memory-store.ts';

export const FOLDER = 'file:///practice/';

/** A clock that a test moves. */
class TestClock implements Clock {
  day: IsoDate;
  #callback: (() => void) | undefined;

  constructor(day: IsoDate) {
    this.day = day;
  }

  today(): IsoDate {
    return this.day;
  }

  onNewDay(callback: () => void): () => void {
    this.#callback = callback;
    return () => undefined;
  }

  begin(day: IsoDate): void {
    this.day = day;
    this.#callback?.();
  }
}

const CAPABILITIES: ClientCapabilities = {
  workspace: {
    configuration: true,
    workspaceFolders: true,
    didChangeConfiguration: { dynamicRegistration: true },
    codeLens: { refreshSupport: true },
    inlayHint: { refreshSupport: true },
  },
};

export interface ClientOptions {
  readonly files?: Readonly<Record<string, string>>;
  readonly today?: IsoDate;
  readonly capabilities?: ClientCapabilities;
  /** What the extension says of itself beside. */
  readonly tellsSight?: boolean;
}

/** An editor as far as the server can see, over a real connection in memory. Paths are those under FOLDER. */
export class TestClient {
  readonly store = new MemoryStore();
  readonly clock: TestClock;
  /** The section `plimsoll` of the settings. */
  settings: Record<string, unknown> = {};
  /** How often the server asked for a fresh look. */
  refreshes = { lenses: 0, hints: 0 };
  /** How often the server told that something other than the text in sight may have changed problems, colours, weeks. */
  told = { problems: 0, colours: 0, weeks: 0 };
  readonly log: string[] = [];

  readonly #connection: ProtocolConnection;
  readonly #diagnostics = new Map<string, Diagnostic[]>();
  readonly #texts = new Map<string, { text: string; version: number }>();
  readonly #streams: readonly PassThrough[];

  private constructor({ files = {}, today = '2026-11-24' }: ClientOptions) {
    for (const [path, text] of Object.entries(files)) this.store.files.set(FOLDER + path, text);
    this.clock = new TestClock(today);
    const [up, down] = [new PassThrough(), new PassThrough()];
    this.#streams = [up, down];
    const server = createConnection(
      ProposedFeatures.all,
      new StreamMessageReader(up),
      new StreamMessageWriter(down),
    );
    startServer(server, { store: this.store, clock: this.clock, quietMs: 0 });
    this.#connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
    this.#answerServer();
    this.#connection.listen();
  }

  static async start(options: ClientOptions = {}): Promise<TestClient> {
    const client = new TestClient(options);
    await client.#connection.sendRequest(InitializeRequest.type, {
      processId: null,
      rootUri: null,
      capabilities: options.capabilities ?? CAPABILITIES,
      initializationOptions: { tellsSight: options.tellsSight },
      workspaceFolders: [{ uri: FOLDER.replace(/\/$/, ''), name: 'practice' }],
    });
    await client.#connection.sendNotification(InitializedNotification.type, {});
    return client;
  }

  async stop(): Promise<void> {
    await this.#connection.sendRequest(ShutdownRequest.type);
    this.#connection.dispose();
    for (const stream of this.#streams) stream.destroy();
  }

  async open(
    path: string,
    text = this.store.files.get(FOLDER + path) ?? '',
    uri = FOLDER + path,
  ): Promise<void> {
    this.#texts.set(path, { text, version: 1 });
    await this.#connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri, languageId: 'plimsoll', version: 1, text },
    });
  }

  /** Types over the first occurrence of a text, as one incremental change. */
  async type(path: string, over: string, newText: string): Promise<void> {
    const { text, version } = this.#texts.get(path)!;
    const offset = text.indexOf(over);
    if (offset < 0) throw new Error(`${path} does not hold ${JSON.stringify(over)}`);
    const range = { start: positionAt(text, offset), end: positionAt(text, offset + over.length) };
    this.#texts.set(path, {
      text: text.slice(0, offset) + newText + text.slice(offset + over.length),
      version: version + 1,
    });
    await this.#connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: FOLDER + path, version: version + 1 },
      contentChanges: [{ range, text: newText }],
    });
  }

  async close(path: string): Promise<void> {
    this.#texts.delete(path);
    await this.#connection.sendNotification(DidCloseTextDocumentNotification.type, {
      textDocument: { uri: FOLDER + path },
    });
  }

  /** Changes files beside the editor and tells of it, as its file watcher does; undefined deletes. */
  async changeFiles(files: Readonly<Record<string, string | undefined>>): Promise<void> {
    for (const [path, text] of Object.entries(files)) {
      if (text === undefined) this.store.files.delete(FOLDER + path);
      else this.store.files.set(FOLDER + path, text);
    }
    await this.#connection.sendNotification(DidChangeWatchedFilesNotification.type, {
      changes: Object.entries(files).map(
        ([path, text]): FileEvent => ({
          uri: FOLDER + path,
          type: text === undefined ? FileChangeType.Deleted : FileChangeType.Changed,
        }),
      ),
    });
  }

  async set(settings: Record<string, unknown>): Promise<void> {
    this.settings = settings;
    await this.#connection.sendNotification(DidChangeConfigurationNotification.type, { settings: null });
  }

  /** `4 block 3 rounds 9:07 · …`: each lens with its line from 1 and its kind. */
  async lenses(path: string): Promise<string[]> {
    const lenses = await this.#connection.sendRequest(CodeLensRequest.type, this.#document(path));
    const resolved = await Promise.all(
      (lenses ?? []).map((lens) =>
        lens.command ? lens : this.#connection.sendRequest(CodeLensResolveRequest.type, lens),
      ),
    );
    return resolved.map(
      ({ range, command }) => `${range.start.line + 1} ${command!.arguments![0].lens?.[2]} ${command!.title}`,
    );
  }

  /** What a click on the lens over that line (from 1) of that kind shows. */
  async explain(path: string, line: number, kind: string): Promise<string | null> {
    const lenses = (await this.#connection.sendRequest(CodeLensRequest.type, this.#document(path))) ?? [];
    // Any lens of the file tells the number that stands for it.
    const [file] = (lenses[0]!.data ?? lenses[0]!.command!.arguments![0].lens) as LensId;
    const lens: LensId = [file, line - 1, kind, 0];
    return (await this.request<Explanation>('plimsoll/explain', { lens })).markdown;
  }

  async hints(path: string): Promise<string[]> {
    const range = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };
    const hints = await this.#connection.sendRequest(InlayHintRequest.type, {
      ...this.#document(path),
      range,
    });
    return (hints ?? []).map(
      ({ position, label }) => `${position.line + 1}:${position.character + 1} ${label}`,
    );
  }

  async hover(path: string, line: number, column: number): Promise<string | undefined> {
    const position = { line: line - 1, character: column - 1 };
    const hover = await this.#connection.sendRequest(HoverRequest.type, {
      ...this.#document(path),
      position,
    });
    return (hover?.contents as { value: string } | undefined)?.value;
  }

  async actions(path: string, text: string, only?: string[]): Promise<CodeAction[]> {
    const whole = this.#texts.get(path)!.text;
    const offset = whole.indexOf(text);
    const range: Range = { start: positionAt(whole, offset), end: positionAt(whole, offset + text.length) };
    const found = await this.#connection.sendRequest(CodeActionRequest.type, {
      ...this.#document(path),
      range,
      context: { diagnostics: [], ...(only && { only }) },
    });
    return (found ?? []) as CodeAction[];
  }

  /** `3:12 unknown-movement`: what the server last told about a file. */
  problems(path: string): string[] {
    return (this.#diagnostics.get(FOLDER + path) ?? []).map(
      ({ range: { start }, code }) => `${start.line + 1}:${start.character + 1} ${code}`,
    );
  }

  diagnostics(path: string): Diagnostic[] {
    return this.#diagnostics.get(FOLDER + path) ?? [];
  }

  request<T>(method: string, params: unknown): Promise<T> {
    return this.#connection.sendRequest(method, params);
  }

  notify(method: string, params: unknown): Promise<void> {
    return this.#connection.sendNotification(method, params);
  }

  #document(path: string) {
    return { textDocument: { uri: path.includes(':') ? path : FOLDER + path } };
  }

  #answerServer(): void {
    const connection = this.#connection;
    connection.onNotification(PublishDiagnosticsNotification.type, ({ uri, diagnostics }) => {
      this.#diagnostics.set(uri, diagnostics);
    });
    connection.onNotification(LogMessageNotification.type, ({ message }) => {
      this.log.push(message);
    });
    connection.onRequest(ConfigurationRequest.type, ({ items }) => items.map(() => this.settings));
    connection.onRequest(RegistrationRequest.type, () => undefined);
    connection.onRequest(CodeLensRefreshRequest.type, () => {
      this.refreshes.lenses++;
    });
    connection.onRequest(InlayHintRefreshRequest.type, () => {
      this.refreshes.hints++;
    });
    connection.onRequest(DiagnosticRefreshRequest.type, () => {
      this.told.problems++;
    });
    connection.onRequest(SemanticTokensRefreshRequest.type, () => {
      this.told.colours++;
    });
    connection.onNotification(WEEKS_CHANGED, () => {
      this.told.weeks++;
    });
  }
}

function positionAt(text: string, offset: number): { line: number; character: number } {
  const lines = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: lines.length - 1, character: lines.at(-1)!.length };
}
