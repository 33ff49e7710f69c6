import { l10n, Position, Range, Selection, TextEditorRevealType, Uri, window, workspace } from 'vscode';
import type { WorkspaceEdit } from 'vscode-languageclient';
import type { NextSessionAnswer, NextSessionParams } from '../../server/src/messages.ts';

interface Server {
  ask(params: NextSessionParams): Promise<NextSessionAnswer | null>;
  apply(edit: WorkspaceEdit): Promise<boolean>;
}

/** Writes the next session of the athlete at the cursor, or of one chosen, and shows it; one undo takes it back. */
export async function writeNextSession(server: Server): Promise<void> {
  const editor = window.activeTextEditor;
  const log = editor?.document.languageId === 'plimsoll' ? editor : undefined;
  const uri = log?.document.uri ?? workspace.workspaceFolders?.[0]?.uri;
  if (!uri) return tell(l10n.t('Open a log or a folder with logs first.'));
  const here: NextSessionParams = {
    uri: uri.toString(),
    ...(log && { position: { line: log.selection.active.line, character: log.selection.active.character } }),
  };
  let answer = await server.ask(here);
  if (answer?.kind === 'choose') {
    const athlete = await window.showQuickPick(answer.athletes, {
      placeHolder: l10n.t('Whose next session?'),
    });
    if (athlete === undefined) return;
    answer = await server.ask({ ...here, athlete });
  }
  if (answer?.kind === 'refused') return tell(answer.why);
  if (answer?.kind !== 'written' || !(await server.apply(answer.edit))) return;
  const shown = await window.showTextDocument(await workspace.openTextDocument(Uri.parse(answer.uri)));
  const position = shown.document.validatePosition(new Position(answer.line, 0));
  shown.selection = new Selection(position, position);
  shown.revealRange(new Range(position, position), TextEditorRevealType.InCenterIfOutsideViewport);
}

function tell(sentence: string): void {
  void window.showInformationMessage(sentence);
}
