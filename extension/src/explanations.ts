import type { Position, TextDocument } from 'vscode';
import { commands, Hover, MarkdownString, Selection, Uri, window, workspace } from 'vscode';
import type { ExplainParams, Explanation } from '../../server/src/messages.ts';

/**
 * Shows why a number is what it is, in a hover at the number's own line: clicking `337 kg/min` over a block opens it.
 * A hover keeps the log in sight, closes with Escape, and is read aloud by screen readers.
 */
export class Explanations {
  #pending: { readonly uri: string; readonly position: Position; readonly markdown: string } | undefined;
  readonly #ask: (params: ExplainParams) => Promise<Explanation | null>;

  constructor(ask: (params: ExplainParams) => Promise<Explanation | null>) {
    this.#ask = ask;
  }

  async show(params: ExplainParams): Promise<void> {
    const explanation = await this.#ask(params);
    if (!explanation) return;
    const { line, markdown } = explanation;
    const uri = Uri.parse(explanation.uri);
    const editor = await window.showTextDocument(await workspace.openTextDocument(uri));
    const position = editor.document.validatePosition(editor.selection.active.with(line, 0));
    // The editor opens a hover at the cursor only.
    editor.selection = new Selection(position, position);
    this.#pending = markdown === null ? undefined : { uri: uri.toString(), position, markdown };
    await commands.executeCommand('editor.action.showHover');
  }

  /** The explanation that was just asked for at this place, once; later the place has its ordinary hover again. */
  takeHover(document: TextDocument, position: Position): Hover | undefined {
    const pending = this.#pending;
    if (!pending?.position.isEqual(position) || pending.uri !== document.uri.toString()) {
      return undefined;
    }
    this.#pending = undefined;
    return new Hover(new MarkdownString(pending.markdown));
  }
}
