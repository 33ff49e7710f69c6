import type { ExtensionContext, FileSystemWatcher, LogOutputChannel } from 'vscode';
import { workspace } from 'vscode';
import {
  LanguageClient,
  type LanguageClientOptions,
  RevealOutputChannelOn,
  type ServerOptions,
  State,
  TransportKind,
  type WorkspaceEdit,
} from 'vscode-languageclient/node';
import { type CustomRequests, type InitializationOptions, WEEKS_CHANGED } from '../../server/src/messages.ts';
import type { Explanations } from './explanations.ts';

/** What a client needs of the extension; it outlives the client, which is made anew for every restart. */
export interface ClientSurroundings {
  readonly context: ExtensionContext;
  readonly log: LogOutputChannel;
  readonly files: FileSystemWatcher;
  readonly explanations: Explanations;
  readonly tellFailure: () => void;
  readonly refreshWeek: () => void;
  /** A new server knows nothing of what is in sight, nor of commits. */
  readonly tellAnew: () => Promise<void>;
}

/** The server bundle in a process of its own, spoken to over Node's IPC. Settings reach it when it asks for them. */
export class PlimsollClient extends LanguageClient {
  readonly #tellFailure: () => void;
  #told = false;

  constructor(surroundings: ClientSurroundings) {
    super('plimsoll', 'Plimsoll', serverOptions(surroundings), clientOptions(surroundings));
    this.#tellFailure = surroundings.tellFailure;
    this.onNotification(WEEKS_CHANGED, surroundings.refreshWeek);
    this.onDidChangeState(({ newState }) => {
      if (newState !== State.Running) return;
      this.#told = false;
      // Also one that came up again by itself.
      void surroundings.tellAnew();
    });
  }

  /** The base class tells one failed start in up to three notifications, in its own terms; the coach is told once. */
  override error(message: string, data?: unknown, showNotification?: boolean | 'force'): void {
    super.error(message, data, false);
    if (showNotification === 'force' && !this.#told) {
      this.#told = true;
      this.#tellFailure();
    }
  }

  /** Makes a change that the server worked out; one undo takes it back. */
  async applyEdit(edit: WorkspaceEdit): Promise<boolean> {
    return workspace.applyEdit(await this.protocol2CodeConverter.asWorkspaceEdit(edit));
  }

  ask<Method extends keyof CustomRequests & string>(
    method: Method,
    params: CustomRequests[Method]['params'],
  ): Promise<CustomRequests[Method]['result']> {
    return this.sendRequest(method, params);
  }
}

function serverOptions({ context }: ClientSurroundings): ServerOptions {
  const run = { module: context.asAbsolutePath('out/server.cjs'), transport: TransportKind.ipc };
  return { run, debug: { ...run, options: { execArgv: ['--nolazy', '--inspect=6009'] } } };
}

function clientOptions({ log, files, explanations }: ClientSurroundings): LanguageClientOptions {
  return {
    documentSelector: [{ language: 'plimsoll' }],
    synchronize: { fileEvents: files },
    initializationOptions: { tellsSight: true } satisfies InitializationOptions,
    diagnosticCollectionName: 'plimsoll',
    // Otherwise what is wrong would be asked for on opening alone.
    diagnosticPullOptions: { onChange: true },
    outputChannel: log,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    middleware: {
      provideHover: (document, position, token, next) =>
        explanations.takeHover(document, position) ?? next(document, position, token),
    },
    // Without it the base class would show the raw error of its own accord.
    initializationFailedHandler: () => false,
  };
}
