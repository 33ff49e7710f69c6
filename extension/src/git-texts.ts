import { Disposable, EventEmitter, extensions, RelativePattern, type TextDocument, workspace } from 'vscode';
import type { CommittedTextParams } from '../../server/src/messages.ts';
import type { GitApi, GitExtension, GitRepository } from './git-api.ts';

/** A file without a plan is not asked for: only plans say what a revision costs. */
const PLAN = /^\s*plan\b/im;

/** Git appends a line here whenever HEAD is another commit. In a linked work tree it lies elsewhere. */
const HEAD_LOG = '.git/logs/HEAD';

/**
 * Tells the server how open logs were last committed, so that it can say what changed since: when one is opened or saved,
 * and when the repository's HEAD is another. All of it goes through the built-in Git extension, which runs in trusted
 * folders only.
 */
export class GitTexts implements Disposable {
  readonly #send: (params: CommittedTextParams) => Promise<void>;
  readonly #changed = new EventEmitter<string>();
  readonly #subscriptions: Disposable[];
  #watched: Disposable | undefined;
  #api: GitApi | undefined;
  readonly #heads = new WeakMap<GitRepository, string | undefined>();
  /** The newest question about each log: an answer to an earlier one comes too late. */
  readonly #asked = new WeakMap<TextDocument, symbol>();

  /** A log, by its URI, may differ from its last commit otherwise than before. */
  readonly onDidChange = this.#changed.event;

  constructor(send: (params: CommittedTextParams) => Promise<void>) {
    this.#send = send;
    const look = () => void this.#findGit();
    this.#subscriptions = [
      this.#changed,
      workspace.onDidOpenTextDocument((document) => void this.#tell(document)),
      workspace.onDidSaveTextDocument((document) => void this.#tell(document)),
      workspace.onDidGrantWorkspaceTrust(look),
      extensions.onDidChange(() => {
        if (!this.#api) look();
      }),
    ];
    look();
  }

  dispose(): void {
    this.#watched?.dispose();
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  /** For a server that knows nothing yet. */
  async tellAll(): Promise<void> {
    await Promise.all(workspace.textDocuments.map((document) => this.#tell(document)));
  }

  async #findGit(): Promise<void> {
    this.#watched?.dispose();
    this.#watched = undefined;
    this.#api = undefined;
    const found = workspace.isTrusted ? extensions.getExtension<GitExtension>('vscode.git') : undefined;
    try {
      const git = await found?.activate();
      if (git) {
        const watched = [git.onDidChangeEnablement(() => void this.#findGit())];
        this.#watched = Disposable.from(...watched);
        if (git.enabled) this.#watchApi(git.getAPI(1), watched[0]!);
      }
    } catch {
      // Git is turned off or was not found; that is what the hover says.
    }
    await this.tellAll();
  }

  #watchApi(api: GitApi, enablement: Disposable): void {
    this.#api = api;
    const repositories: Disposable[] = [];
    const watch = (repository: GitRepository): void => {
      this.#heads.set(repository, repository.state.HEAD?.commit);
      // The Git extension passes over what changes while it is busy, so the commits are watched as well.
      const log = workspace.createFileSystemWatcher(new RelativePattern(repository.rootUri, HEAD_LOG));
      const tell = () => void this.tellAll();
      repositories.push(
        repository.state.onDidChange(() => this.#lookAtHead(repository)),
        log,
        log.onDidChange(tell),
        log.onDidCreate(tell),
      );
    };
    for (const repository of api.repositories) watch(repository);
    const subscriptions = [
      api.onDidOpenRepository((repository) => {
        watch(repository);
        void this.tellAll();
      }),
      api.onDidCloseRepository(() => void this.tellAll()),
      api.onDidChangeState(() => void this.tellAll()),
    ];
    this.#watched = Disposable.from(enablement, ...subscriptions, {
      dispose: () => {
        for (const repository of repositories) repository.dispose();
      },
    });
  }

  /** The state of a repository changes with every save; only another commit matters. */
  #lookAtHead(repository: GitRepository): void {
    const head = repository.state.HEAD?.commit;
    if (this.#heads.get(repository) === head) return;
    this.#heads.set(repository, head);
    void this.tellAll();
  }

  async #tell(document: TextDocument): Promise<void> {
    const { languageId, uri } = document;
    if (languageId !== 'plimsoll' || uri.scheme !== 'file' || !PLAN.test(document.getText())) return;
    const question = Symbol();
    this.#asked.set(document, question);
    const answer = await this.#read(document);
    if (this.#asked.get(document) !== question) return;
    await this.#send(answer).catch(() => undefined); // Without a server nobody asks.
    this.#changed.fire(uri.toString());
  }

  async #read({ uri }: TextDocument): Promise<CommittedTextParams> {
    const base = { uri: uri.toString() };
    if (!workspace.isTrusted) return { ...base, missing: 'restricted' };
    if (!this.#api) return { ...base, missing: 'no git' };
    const repository = this.#api.getRepository(uri);
    if (!repository) return { ...base, missing: 'no repository' };
    try {
      return { ...base, text: await repository.show('HEAD', uri.fsPath) };
    } catch {
      return { ...base, missing: 'not committed' };
    }
  }
}
