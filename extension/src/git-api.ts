import type { Event, Uri } from 'vscode';

// What is used of the interface that VS Code's built-in Git extension offers to other extensions, version 1.

export interface GitExtension {
  readonly enabled: boolean;
  readonly onDidChangeEnablement: Event<boolean>;
  /** Throws where git is turned off or was not found. */
  getAPI(version: 1): GitApi;
}

export interface GitApi {
  readonly state: 'uninitialized' | 'initialized';
  readonly onDidChangeState: Event<unknown>;
  readonly onDidOpenRepository: Event<GitRepository>;
  readonly onDidCloseRepository: Event<GitRepository>;
  readonly repositories: readonly GitRepository[];
  getRepository(uri: Uri): GitRepository | null;
}

export interface GitRepository {
  readonly rootUri: Uri;
  readonly state: {
    readonly HEAD: { readonly commit?: string } | undefined;
    readonly onDidChange: Event<void>;
  };
  /** The text of a file in a commit; rejects where the commit has no such file. */
  show(ref: string, path: string): Promise<string>;
}
