import { commands, type ExtensionContext, l10n, window, workspace } from 'vscode';
import { type ClientSurroundings, PlimsollClient } from './client.ts';
import { Explanations } from './explanations.ts';
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
  const surroundings = { context, log, files, explanations, tellFailure, refreshWeek };
  context.subscriptions.push(
    log,
    files,
    week,
    commands.registerCommand('plimsoll.newLog', newLog),
    commands.registerCommand('plimsoll.showLog', () => log.show()),
    commands.registerCommand('plimsoll.restartServer', () => restartClient(surroundings)),
    commands.registerCommand('plimsoll.explain', explanations.show, explanations),
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

/** A client that failed to start can be neither stopped nor started again, so there is a new one each time. */
async function restartClient(surroundings: ClientSurroundings): Promise<void> {
  await client?.dispose().catch((reason) => surroundings.log.warn(`The old server did not stop: ${reason}`));
  await startClient(surroundings);
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
