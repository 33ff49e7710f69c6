import { commands, type ExtensionContext, l10n, window, workspace } from 'vscode';
import { DidDeleteFilesNotification } from 'vscode-languageclient/node';
import { COMMITTED_TEXT, IN_SIGHT } from '../../server/src/messages.ts';
import { type ClientSurroundings, PlimsollClient } from './client.ts';
import { DeletedFolders } from './deleted-folders.ts';
import { Explanations } from './explanations.ts';
import { GitTexts } from './git-texts.ts';
import { writeNextSession } from './next-session.ts';
import { RevisionView } from './revision-view.ts';
import { Sight } from './sight.ts';
import { WeekStatus } from './week-status.ts';

let client: PlimsollClient | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  const log = window.createOutputChannel('Plimsoll', { log: true });
  const files = workspace.createFileSystemWatcher('**/*.plim');
  const explanations = new Explanations(
    async (params) => (await client?.ask('plimsoll/explain', params)) ?? null,
  );
  const week = new WeekStatus(async (params) => (await client?.ask('plimsoll/athleteWeek', params)) ?? null);
  const refreshWeek = () => week.refresh();
  const revisions = new RevisionView(
    async (uri) => (await client?.ask('plimsoll/revision', { uri })) ?? null,
  );
  const git = new GitTexts(async (params) => client?.sendNotification(COMMITTED_TEXT, params));
  git.onDidChange((uri) => revisions.refresh(uri));
  const sight = new Sight(async (params) => client?.sendNotification(IN_SIGHT, params));
  const deleted = new DeletedFolders(async (folders) =>
    client?.sendNotification(DidDeleteFilesNotification.type, {
      files: folders.map((uri) => ({ uri })),
    }),
  );
  const tellAnew = () => {
    sight.tellAll();
    return git.tellAll();
  };
  const surroundings = { context, log, files, explanations, tellFailure, refreshWeek, tellAnew };
  context.subscriptions.push(
    log,
    files,
    week,
    revisions,
    git,
    sight,
    deleted,
    commands.registerCommand('plimsoll.newLog', newLog),
    commands.registerCommand('plimsoll.showLog', () => log.show()),
    commands.registerCommand('plimsoll.restartServer', () => restartClient(surroundings)),
    commands.registerCommand('plimsoll.writeNextSession', () =>
      writeNextSession({
        ask: async (params) => (await client?.ask('plimsoll/nextSession', params)) ?? null,
        apply: async (edit) => (await client?.applyEdit(edit)) ?? false,
      }),
    ),
    commands.registerCommand('plimsoll.explain', explanations.show, explanations),
    commands.registerCommand('plimsoll.showRevision', (uri?: string) => revisions.show(uri)),
  );
  await startClient(surroundings);
}

export async function deactivate(): Promise<void> {
  await client?.dispose();
}

async function startClient(surroundings: ClientSurroundings): Promise<void> {
  client = new PlimsollClient(surroundings);
  await client.start().catch(() => undefined); // The client has told the coach and logged why.
}

let restarted = Promise.resolve();

/**
 * A client that failed to start can be neither stopped nor started again, so there is a new one each time; one after the
 * other, or two would run.
 */
function restartClient(surroundings: ClientSurroundings): Promise<void> {
  restarted = restarted.then(async () => {
    await client
      ?.dispose()
      .catch((reason) => surroundings.log.warn(`The old server did not stop: ${reason}`));
    await startClient(surroundings);
  });
  return restarted;
}

async function newLog(): Promise<void> {
  await window.showTextDocument(await workspace.openTextDocument({ language: 'plimsoll' }));
  await commands.executeCommand('editor.action.insertSnippet', { langId: 'plimsoll', name: 'First day' });
}

async function tellFailure(): Promise<void> {
  const showLog = l10n.t('Show Log');
  const sentence = l10n.t('Plimsoll has stopped, so its numbers are missing. The log says why.');
  if ((await window.showErrorMessage(sentence, showLog)) === showLog) {
    await commands.executeCommand('plimsoll.showLog');
  }
}
