import { type Disposable, type TextEditor, window } from 'vscode';
import type { InSightParams } from '../../server/src/messages.ts';

/** Tells which lines of the logs are in sight, whenever that changes: the server looks to those first. */
export class Sight implements Disposable {
  readonly #tell: (params: InSightParams) => Promise<void>;
  readonly #subscriptions: readonly Disposable[];

  constructor(tell: (params: InSightParams) => Promise<void>) {
    this.#tell = tell;
    this.#subscriptions = [
      window.onDidChangeTextEditorVisibleRanges(({ textEditor }) => this.#tellOf(textEditor)),
      window.onDidChangeVisibleTextEditors(() => this.tellAll()),
    ];
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  /** A new server knows nothing of it. */
  tellAll(): void {
    for (const editor of window.visibleTextEditors) this.#tellOf(editor);
  }

  /** Where a log is open twice side by side, all that lies between counts too. */
  #tellOf({ document }: TextEditor): void {
    if (document.languageId !== 'plimsoll') return;
    const ranges = window.visibleTextEditors
      .filter((editor) => editor.document === document)
      .flatMap(({ visibleRanges }) => visibleRanges);
    if (ranges.length === 0) return;
    const first = Math.min(...ranges.map(({ start }) => start.line));
    const last = Math.max(...ranges.map(({ end }) => end.line));
    // Without a server nobody needs to know.
    this.#tell({ uri: document.uri.toString(), first, last }).catch(() => undefined);
  }
}
