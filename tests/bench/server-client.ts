import { type ChildProcess, fork } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import {
  type CodeLens,
  CodeLensRefreshRequest,
  CodeLensRequest,
  CodeLensResolveRequest,
  CompletionRequest,
  ConfigurationRequest,
  createProtocolConnection,
  DidChangeTextDocumentNotification,
  type DidChangeTextDocumentParams,
  DidOpenTextDocumentNotification,
  InitializedNotification,
  InitializeRequest,
  InlayHintRefreshRequest,
  IPCMessageReader,
  IPCMessageWriter,
  type Position,
  type ProtocolConnection,
  type ServerCapabilities,
  WorkDoneProgressCreateRequest,
} from 'vscode-languageserver/node';
import { IN_SIGHT } from '../../server/src/messages.ts';
import { TODAY } from './generate-practice.ts';
import { serverBundle } from './paths.ts';
import { wait, waitUntilIdle } from './processes.ts';

/** An editor shows about as many lines; the lenses on them are what it resolves. */
const LINES_SEEN = 60;
const PATIENCE_IN_MS = 600_000;

/** The built language server in a process of its own, spoken to over Node's IPC as the extension does. */
export class ServerClient {
  /** When the process was started, by `performance.now()`. */
  readonly startedAt: number;
  capabilities: ServerCapabilities = {};
  readonly #process: ChildProcess;
  readonly #connection: ProtocolConnection;
  readonly #documents = new Map<string, { text: string; version: number }>();
  #refreshes = 0;
  #isDead = false;
  #inSight = '';

  private constructor() {
    this.startedAt = performance.now();
    this.#process = fork(serverBundle, ['--node-ipc'], {
      env: { ...process.env, PLIMSOLL_TODAY: TODAY },
      execArgv: [],
      silent: true,
    });
    this.#process.once('exit', () => {
      this.#isDead = true;
    });
    this.#process.stderr?.on('data', (chunk) => process.stderr.write(chunk));
    this.#connection = createProtocolConnection(
      new IPCMessageReader(this.#process),
      new IPCMessageWriter(this.#process),
    );
    const count = () => {
      this.#refreshes++;
    };
    this.#connection.onRequest(CodeLensRefreshRequest.type, count);
    this.#connection.onRequest(InlayHintRefreshRequest.type, () => undefined);
    this.#connection.onRequest(WorkDoneProgressCreateRequest.type, () => undefined);
    this.#connection.onRequest(ConfigurationRequest.type, ({ items }) => items.map(() => ({})));
    this.#connection.onUnhandledNotification(() => undefined);
    this.#connection.listen();
  }

  /** Starts the server on a folder, up to its answer that it is there. */
  static async start(folder: string): Promise<ServerClient> {
    const client = new ServerClient();
    const { capabilities } = await client.#connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      rootUri: null,
      initializationOptions: { tellsSight: true },
      capabilities: {
        window: { workDoneProgress: true },
        workspace: {
          configuration: true,
          workspaceFolders: true,
          codeLens: { refreshSupport: true },
          inlayHint: { refreshSupport: true },
        },
      },
      workspaceFolders: [{ uri: pathToFileURL(folder).toString(), name: 'practice' }],
    });
    client.capabilities = capabilities;
    await client.#connection.sendNotification(InitializedNotification.type, {});
    return client;
  }

  get pid(): number {
    return this.#process.pid!;
  }

  text(path: string): string {
    return this.#documents.get(path)!.text;
  }

  /** Waits until all files are read (the server then asks for a fresh look) and nothing is left to do. */
  async settle(): Promise<void> {
    const start = performance.now();
    while (this.#refreshes === 0) {
      if (this.#isDead) throw new Error('The server ended while it read the practice');
      if (performance.now() - start > PATIENCE_IN_MS) throw new Error('The server has not read all files');
      await wait(20);
    }
    await waitUntilIdle(this.pid);
  }

  async open(path: string): Promise<void> {
    const text = readFileSync(path, 'utf8');
    this.#documents.set(path, { text, version: 1 });
    await this.#connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri: toUri(path), languageId: 'plimsoll', version: 1, text },
    });
  }

  /**
   * Replaces a stretch of the text, as one incremental change. An editor knows the place before the key comes up: it is
   * worked out here, and the change is sent by what is given back.
   */
  prepareEdit(path: string, offset: number, length: number, newText: string): () => Promise<void> {
    const document = this.#documents.get(path)!;
    const { text } = document;
    const range = { start: positionAt(text, offset), end: positionAt(text, offset + length) };
    document.text = text.slice(0, offset) + newText + text.slice(offset + length);
    const params: DidChangeTextDocumentParams = {
      textDocument: { uri: toUri(path), version: ++document.version },
      contentChanges: [{ range, text: newText }],
    };
    return () => this.#connection.sendNotification(DidChangeTextDocumentNotification.type, params);
  }

  /** Scrolls so that a line is in the middle; the server is told what is in sight. */
  async #look(path: string, line: number): Promise<void> {
    if (this.#inSight === `${path}:${line}`) return;
    this.#inSight = `${path}:${line}`;
    const first = Math.max(0, line - LINES_SEEN / 2);
    await this.#connection.sendNotification(IN_SIGHT, {
      uri: toUri(path),
      first,
      last: line + LINES_SEEN / 2,
    });
  }

  /** The lenses that an editor shows around a line: it asks for those of the file, and resolves what it shows if it must. */
  async lenses(path: string, line: number): Promise<string[]> {
    await this.#look(path, line);
    const all = await this.#connection.sendRequest(CodeLensRequest.type, {
      textDocument: { uri: toUri(path) },
    });
    const seen = (all ?? []).filter(({ range }) => Math.abs(range.start.line - line) <= LINES_SEEN / 2);
    const resolved = await Promise.all(seen.map((lens) => this.#resolve(lens)));
    return resolved.map(({ range, command }) => `${range.start.line} ${command?.title}`);
  }

  async #resolve(lens: CodeLens): Promise<CodeLens> {
    return lens.command ? lens : this.#connection.sendRequest(CodeLensResolveRequest.type, lens);
  }

  /** How many completions are offered at a place. */
  async countCompletions(path: string, position: Position): Promise<number> {
    const answer = await this.#connection.sendRequest(CompletionRequest.type, {
      textDocument: { uri: toUri(path) },
      position,
    });
    return Array.isArray(answer) ? answer.length : (answer?.items.length ?? 0);
  }

  async stop(): Promise<void> {
    const ended = new Promise((resolve) => this.#process.once('exit', resolve));
    this.#connection.dispose();
    if (!this.#isDead) {
      this.#process.kill('SIGKILL');
      await ended;
    }
  }
}

function toUri(path: string): string {
  return pathToFileURL(path).toString();
}

export function positionAt(text: string, offset: number): Position {
  let line = 0;
  let start = 0;
  for (let at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', at + 1)) {
    line++;
    start = at + 1;
  }
  return { line, character: offset - start };
}
