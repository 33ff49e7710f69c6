import {
  type Disposable,
  EventEmitter,
  l10n,
  type TextDocumentContentProvider,
  Uri,
  ViewColumn,
  window,
  workspace,
} from 'vscode';

const SCHEME = 'plimsoll-revision';
/** How long typing must have paused before it is asked again what changed. */
const QUIET_IN_MS = 400;

/** What changed in a log since its last commit, as a document beside it that follows what is typed and committed. */
export class RevisionView implements TextDocumentContentProvider, Disposable {
  readonly #ask: (uri: string) => Promise<string | null>;
  readonly #changed = new EventEmitter<Uri>();
  readonly #subscriptions: readonly Disposable[];
  readonly #timers = new Map<string, ReturnType<typeof setTimeout>>();
  readonly onDidChange = this.#changed.event;

  constructor(ask: (uri: string) => Promise<string | null>) {
    this.#ask = ask;
    this.#subscriptions = [
      this.#changed,
      workspace.registerTextDocumentContentProvider(SCHEME, this),
      workspace.onDidChangeTextDocument(({ document }) => {
        if (document.languageId === 'plimsoll') this.refresh(document.uri.toString());
      }),
    ];
  }

  dispose(): void {
    for (const timer of this.#timers.values()) clearTimeout(timer);
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  /** Of the log that a lens stands in, else of the one in sight. */
  async show(log: string | undefined = window.activeTextEditor?.document.uri.toString()): Promise<void> {
    if (log === undefined) return;
    const uri = toViewUri(Uri.parse(log));
    // It may be open from before, with what was true then.
    this.#changed.fire(uri);
    const document = await workspace.openTextDocument(uri);
    await window.showTextDocument(document, {
      viewColumn: ViewColumn.Beside,
      preserveFocus: true,
      preview: true,
    });
  }

  /** Asks again what changed in a log, if that is on show. */
  refresh(log: string): void {
    const uri = toViewUri(Uri.parse(log));
    if (!workspace.textDocuments.some((document) => document.uri.toString() === uri.toString())) return;
    clearTimeout(this.#timers.get(log));
    this.#timers.set(
      log,
      setTimeout(() => this.#changed.fire(uri), QUIET_IN_MS),
    );
  }

  async provideTextDocumentContent({ query }: Uri): Promise<string> {
    return (await this.#ask(query)) ?? l10n.t('What changed is not known: the server does not answer.');
  }
}

/** Its name says whose changes it shows; the log itself goes along as the query. */
function toViewUri(log: Uri): Uri {
  const name = log.path
    .split('/')
    .at(-1)!
    .replace(/\.plim$/i, '');
  return Uri.from({ scheme: SCHEME, path: `/${name} since HEAD.md`, query: log.toString() });
}
