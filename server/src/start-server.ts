import { forgetChecks } from '@plimsoll/language/checks/checked-entries';
import { createPractice } from '@plimsoll/language/create-practice';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import type { PracticeChange } from '@plimsoll/language/practice/practice';
import {
  CodeLensRefreshRequest,
  type Connection,
  DiagnosticRefreshRequest,
  DidChangeConfigurationNotification,
  type FileOperationRegistrationOptions,
  type InitializeParams,
  type InitializeResult,
  InlayHintRefreshRequest,
  SemanticTokensRefreshRequest,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { CommittedTexts } from './committed-texts.ts';
import { DiagnosticReports } from './diagnostic-reports.ts';
import { DiagnosticsPublisher } from './diagnostics-publisher.ts';
import { provideCodeActions } from './features/code-actions.ts';
import { findLensFile, provideCodeLenses, resolveCodeLens } from './features/code-lens.ts';
import { COMPLETION_OPTIONS, provideCompletion } from './features/completion.ts';
import type { FeatureContext } from './features/context.ts';
import { provideDiagnostics } from './features/diagnostics.ts';
import { provideExplanation } from './features/explain.ts';
import { FORMATTED_ON, provideFormatting, provideOnTypeFormatting } from './features/formatting.ts';
import { provideHover } from './features/hover.ts';
import { provideInlayHints } from './features/inlay-hints.ts';
import { NEXT_SESSION_KIND, provideNextSession, provideNextSessionActions } from './features/next-session.ts';
import { provideRevision } from './features/revision.ts';
import { provideRewrites, REWRITE_KINDS } from './features/rewrites.ts';
import type { FileStore } from './file-store.ts';
import { LoadingProgress } from './loading-progress.ts';
import {
  COMMITTED_TEXT,
  type CommittedTextParams,
  type ExplainParams,
  IN_SIGHT,
  type InitializationOptions,
  type InSightParams,
  type LensId,
  type NextSessionAnswer,
  type NextSessionParams,
  WEEKS_CHANGED,
} from './messages.ts';
import { NAVIGATION_CAPABILITIES, NAVIGATION_WORKSPACE, registerNavigation } from './navigation.ts';
import { prepareProblems } from './problems.ts';
import { complainOfSettings, DEFAULT_SETTINGS, readSettings, type Settings } from './settings.ts';
import { Sight } from './sight.ts';
import type { Clock } from './today.ts';
import { normalise, Workspace } from './workspace.ts';

export interface ServerSurroundings {
  readonly store: FileStore;
  readonly clock: Clock;
  /** How long typing must have paused before anything is underlined. */
  readonly quietMs?: number;
  /** Called when all files have been read, with what to do once the server has nothing else to do. */
  readonly loaded?: (atRest: () => void) => void;
}

/** A change of whole folders reaches no watcher of `*.plim`. */
const FOLDERS: FileOperationRegistrationOptions = {
  filters: [{ scheme: 'file', pattern: { glob: '**', matches: 'folder' } }],
};

/** Wires the practice to an editor. Every request is answered at once from what is known then. */
export function startServer(
  connection: Connection,
  { store, clock, quietMs = 150, loaded }: ServerSurroundings,
): void {
  const practice = createPractice();
  const works = new SessionWorks(practice);
  const committed = new CommittedTexts();
  const sight = new Sight();
  const settings = new Map<string, Promise<Settings>>();
  let client: InitializeParams['capabilities'] = {};
  let folders: readonly string[] = [];
  let pushedSettings = DEFAULT_SETTINGS;

  const progress = new LoadingProgress(() =>
    client.window?.workDoneProgress ? connection.window.createWorkDoneProgress() : undefined,
  );
  const workspace = new Workspace(practice, store, {
    fileChanged: (uri, change) => {
      if (workspace.complete) showProblems([uri, ...listAffected(change)]);
      else if (workspace.isOpen(uri)) showProblems([uri]);
      // The editor asks again for what it changed itself, and for nothing else.
      const others = workspace.openUris().some((open) => open !== uri);
      if (workspace.complete && others && (change.definitions || change.athletes.size > 0))
        refresh.schedule();
    },
    reading: (done, total) => progress.report(done, total),
    completed: () => {
      progress.done();
      showProblems([...practice.fileUris(), ...workspace.openUris()]);
      refresh.schedule();
      loaded?.(() => {
        practice.forgetReading();
        forgetChecks(practice);
      });
    },
    failed: (uri, error) => logFailure(`facts of ${uri}`, error),
  });
  const compute = (uri: string) =>
    guard('diagnostics', () => provideDiagnostics(contextWith(pushedSettings), uri)) ?? [];
  const prepare = (uri: string) =>
    prepareProblems(works, uri, { today: clock.today(), complete: workspace.complete });
  const publisher = new DiagnosticsPublisher({
    compute,
    prepare,
    send: (uri, diagnostics) => {
      const version = workspace.versionOf(uri);
      void connection.sendDiagnostics({
        uri: workspace.toClientUri(uri),
        ...(version !== undefined && { version }),
        diagnostics,
      });
    },
    listOpen: () => workspace.openUris(),
    quietMs,
  });
  const reports = new DiagnosticReports({
    compute,
    prepare,
    versionOf: (uri) => workspace.versionOf(uri),
    toClientUri: (uri) => workspace.toClientUri(uri),
    quietMs,
  });
  const refresh = new Refresh(quietMs * 2, () => {
    if (client.workspace?.codeLens?.refreshSupport) ask(connection.sendRequest(CodeLensRefreshRequest.type));
    if (client.workspace?.inlayHint?.refreshSupport)
      ask(connection.sendRequest(InlayHintRefreshRequest.type));
    ask(connection.sendNotification(WEEKS_CHANGED));
    if (client.workspace?.semanticTokens?.refreshSupport)
      ask(connection.sendRequest(SemanticTokensRefreshRequest.type));
    if (client.workspace?.diagnostics?.refreshSupport)
      ask(connection.sendRequest(DiagnosticRefreshRequest.type));
  });

  connection.onInitialize((params): InitializeResult => {
    client = params.capabilities;
    const options = params.initializationOptions as InitializationOptions | undefined;
    sight.isTold = options?.tellsSight === true && client.workspace?.codeLens?.refreshSupport === true;
    folders = params.workspaceFolders?.map(({ uri }) => uri) ?? (params.rootUri ? [params.rootUri] : []);
    return {
      serverInfo: { name: 'plimsoll' },
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        completionProvider: COMPLETION_OPTIONS,
        codeLensProvider: { resolveProvider: true },
        inlayHintProvider: true,
        codeActionProvider: { codeActionKinds: [...REWRITE_KINDS, NEXT_SESSION_KIND] },
        documentFormattingProvider: true,
        documentRangeFormattingProvider: true,
        documentOnTypeFormattingProvider: { firstTriggerCharacter: FORMATTED_ON },
        ...(asksForProblems() && {
          diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: true },
        }),
        ...NAVIGATION_CAPABILITIES,
        workspace: {
          ...NAVIGATION_WORKSPACE,
          workspaceFolders: { supported: true, changeNotifications: true },
          fileOperations: { didDelete: FOLDERS, didRename: FOLDERS },
        },
      },
    };
  });
  connection.onInitialized(() => {
    if (client.workspace?.didChangeConfiguration?.dynamicRegistration) {
      ask(connection.client.register(DidChangeConfigurationNotification.type, { section: 'plimsoll' }));
    }
    if (client.workspace?.workspaceFolders) {
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        const gone = new Set(removed.map(({ uri }) => uri));
        folders = [...folders.filter((uri) => !gone.has(uri)), ...added.map(({ uri }) => uri)];
        ask(workspace.setFolders(folders));
      });
    }
    if (client.workspace?.configuration) ask(pullSettings());
    ask(workspace.setFolders(folders));
  });

  connection.onDidOpenTextDocument(({ textDocument }) => workspace.open(textDocument));
  connection.onDidChangeTextDocument(({ textDocument, contentChanges }) =>
    workspace.change(textDocument.uri, textDocument.version, contentChanges),
  );
  connection.onDidCloseTextDocument(({ textDocument }) => {
    settings.delete(textDocument.uri);
    sight.forget(normalise(textDocument.uri));
    forgetTokens(normalise(textDocument.uri));
    committed.forget(normalise(textDocument.uri));
    ask(workspace.close(textDocument.uri));
  });
  connection.onDidChangeWatchedFiles(({ changes }) => ask(workspace.reread(changes.map(({ uri }) => uri))));
  connection.workspace.onDidDeleteFiles(() => ask(workspace.rescan()));
  connection.workspace.onDidRenameFiles(() => ask(workspace.rescan()));
  connection.onDidChangeConfiguration(({ settings: pushed }) => {
    settings.clear();
    if (client.workspace?.configuration) ask(pullSettings());
    else takeSettings((pushed as { plimsoll?: unknown } | null)?.plimsoll);
    refresh.schedule();
  });

  connection.onHover((params) =>
    answer('hover', params.textDocument.uri, (context, uri) => provideHover(context, uri, params.position)),
  );
  connection.onCompletion((params) =>
    answer('completion', params.textDocument.uri, (context, uri) =>
      provideCompletion(context, uri, params.position, params.context),
    ),
  );
  connection.onCodeLens(({ textDocument }) => answer('lenses', textDocument.uri, provideCodeLenses));
  connection.onCodeLensResolve(
    async (lens) =>
      (await answerLens('lens', lens.data, (context) => resolveCodeLens(context, lens))) ?? lens,
  );
  connection.languages.inlayHint.on((params) =>
    answer('hints', params.textDocument.uri, (context, uri) => provideInlayHints(context, uri, params.range)),
  );
  connection.onCodeAction((params) =>
    answer('fixes', params.textDocument.uri, (context, uri) => [
      ...provideCodeActions(context, uri, params),
      ...provideRewrites(context, uri, params),
      ...provideNextSessionActions(context, uri, params),
    ]),
  );
  connection.onDocumentFormatting(({ textDocument }) =>
    answer('formatting', textDocument.uri, (context, uri) => provideFormatting(context, uri)),
  );
  connection.onDocumentRangeFormatting(({ textDocument, range }) =>
    answer('formatting', textDocument.uri, (context, uri) => provideFormatting(context, uri, range)),
  );
  connection.onDocumentOnTypeFormatting(({ textDocument, position }) =>
    answer('formatting', textDocument.uri, (context, uri) => provideOnTypeFormatting(context, uri, position)),
  );
  connection.onRequest('plimsoll/explain', (params: ExplainParams) =>
    answerLens('explanation', params.lens, (context, uri) => provideExplanation(context, uri, params)),
  );
  connection.onRequest<NextSessionAnswer | null, unknown>(
    'plimsoll/nextSession',
    (params: NextSessionParams) =>
      answer('next session', params.uri, (context, uri) => provideNextSession(context, uri, params)),
  );
  connection.onRequest('plimsoll/revision', ({ uri }: { readonly uri: string }) =>
    answer('revision', uri, provideRevision),
  );
  connection.onNotification(COMMITTED_TEXT, (params: CommittedTextParams) => {
    if (committed.set(normalise(params.uri), params)) refresh.schedule();
  });
  const forgetTokens = registerNavigation(connection, {
    answer,
    answerForAll: (what, provide) => guard(what, () => provide(contextWith(pushedSettings))) ?? null,
    client: () => client,
  });
  connection.languages.diagnostics.on(({ textDocument, previousResultId }, token) =>
    reports.report(normalise(textDocument.uri), previousResultId, token),
  );
  connection.languages.diagnostics.onWorkspace(({ previousResultIds }, token) =>
    reports.reportAll(new Map(previousResultIds.map(({ uri, value }) => [normalise(uri), value])), token),
  );
  connection.onNotification(IN_SIGHT, ({ uri, first, last }: InSightParams) => {
    if (sight.tell(normalise(uri), { first, last }) && sight.isTold)
      ask(connection.sendRequest(CodeLensRefreshRequest.type));
  });
  const stopClock = clock.onNewDay(() => {
    showProblems(practice.fileUris());
    refresh.schedule();
  });
  connection.onShutdown(() => {
    stopClock();
    publisher.dispose();
    reports.dispose();
    refresh.dispose();
  });
  connection.listen();

  /** An editor that asks for problems is told none unasked. */
  function showProblems(uris: Iterable<string>): void {
    if (asksForProblems()) reports.schedule(uris);
    else publisher.schedule(uris);
  }

  function asksForProblems(): boolean {
    return client.textDocument?.diagnostic !== undefined;
  }

  function contextWith(chosen: Settings): FeatureContext {
    return { practice, works, workspace, committed, sight, settings: chosen, today: clock.today() };
  }

  async function answer<T>(
    what: string,
    uri: string,
    provide: (context: FeatureContext, uri: string) => T,
  ): Promise<T | null> {
    workspace.noteRequest();
    const chosen = await settingsFor(uri);
    const answered = guard(what, () => provide(contextWith(chosen), normalise(uri))) ?? null;
    // However long that took was no pause: the editor may go on to ask for what belongs to it.
    workspace.noteRequest();
    return answered;
  }

  /** About a lens, in whatever file it stands. */
  async function answerLens<T>(
    what: string,
    id: LensId | undefined,
    provide: (context: FeatureContext, uri: string) => T,
  ): Promise<T | null> {
    const uri = id && findLensFile(id);
    return uri === undefined ? null : answer(what, uri, provide);
  }

  /** A feature that fails answers nothing and says so in the log; the others go on. */
  function guard<T>(what: string, provide: () => T): T | undefined {
    try {
      return provide();
    } catch (error) {
      logFailure(what, error);
      return undefined;
    }
  }

  function logFailure(what: string, error: unknown): void {
    connection.console.error(`No ${what}: ${error instanceof Error ? error.stack : error}`);
  }

  function settingsFor(uri: string): Promise<Settings> {
    if (!client.workspace?.configuration) return Promise.resolve(pushedSettings);
    const known = settings.get(uri);
    if (known) return known;
    const asked = connection.workspace
      .getConfiguration({ scopeUri: uri, section: 'plimsoll' })
      .then(readSettings, () => {
        // The next request asks again.
        settings.delete(uri);
        return DEFAULT_SETTINGS;
      });
    settings.set(uri, asked);
    return asked;
  }

  /** Those of the window: what is not asked for one file alone is told by them. */
  async function pullSettings(): Promise<void> {
    takeSettings(await connection.workspace.getConfiguration({ section: 'plimsoll' }));
  }

  function takeSettings(section: unknown): void {
    const before = JSON.stringify(pushedSettings.severities);
    pushedSettings = readSettings(section);
    for (const complaint of complainOfSettings(section))
      connection.console.warn(`Setting plimsoll.checks.severity: ${complaint}`);
    if (JSON.stringify(pushedSettings.severities) === before) return;
    showProblems([...practice.fileUris(), ...workspace.openUris()]);
    if (client.workspace?.diagnostics?.refreshSupport)
      ask(connection.sendRequest(DiagnosticRefreshRequest.type));
  }

  /** Files whose problems may be others now: all that use a changed definition, and those of the same athletes. */
  function listAffected({ definitions, moved, athletes }: PracticeChange): Iterable<string> {
    if (definitions) return practice.fileUris();
    // It may be said of a definition on which line another of that name stands.
    const uris = new Set(moved ? practice.definingUris() : []);
    for (const athlete of athletes)
      for (const uri of practice.urisOf(practice.resolveAthlete(athlete))) uris.add(uri);
    return uris;
  }

  function ask(request: Promise<unknown>): void {
    request.catch((error) => logFailure('answer', error));
  }
}

/** Asks the editor for a fresh look, once for many changes. */
class Refresh {
  readonly #ms: number;
  readonly #run: () => void;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(ms: number, run: () => void) {
    this.#ms = ms;
    this.#run = run;
  }

  schedule(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#run, this.#ms);
  }

  dispose(): void {
    clearTimeout(this.#timer);
  }
}
