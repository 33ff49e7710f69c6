import { type Disposable, languages, type TextEditor, window, workspace } from 'vscode';
import type { AthleteWeek, AthleteWeekParams } from '../../server/src/messages.ts';

/** How long the cursor must rest before the week is asked for. */
const REST_IN_MS = 300;

/**
 * The week of the athlete whose session the cursor is in, among the language's status items: there for whoever looks,
 * and nowhere else. Where no athlete is, the item says what the language is.
 */
export class WeekStatus implements Disposable {
  readonly #item = languages.createLanguageStatusItem('plimsoll.week', { language: 'plimsoll' });
  readonly #ask: (params: AthleteWeekParams) => Promise<AthleteWeek | null>;
  readonly #subscriptions: readonly Disposable[];
  #timer: ReturnType<typeof setTimeout> | undefined;
  #asked = 0;

  constructor(ask: (params: AthleteWeekParams) => Promise<AthleteWeek | null>) {
    this.#ask = ask;
    this.#item.name = 'Plimsoll';
    this.#show(null);
    this.#subscriptions = [
      this.#item,
      window.onDidChangeActiveTextEditor(() => this.#schedule()),
      window.onDidChangeTextEditorSelection(({ textEditor }) => this.#schedule(textEditor)),
      workspace.onDidChangeTextDocument(({ document }) => {
        // Also the log is a document, and asking writes to it.
        if (document.languageId === 'plimsoll') this.#schedule();
      }),
    ];
    this.#schedule();
  }

  dispose(): void {
    clearTimeout(this.#timer);
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  /** The numbers may be others, though nothing in sight was changed. */
  refresh(): void {
    this.#schedule();
  }

  #schedule(editor: TextEditor | undefined = window.activeTextEditor): void {
    if (editor?.document.languageId !== 'plimsoll') return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#update(editor), REST_IN_MS);
  }

  async #update({ document, selection }: TextEditor): Promise<void> {
    const asked = ++this.#asked;
    const { line, character } = selection.active;
    const params = { uri: document.uri.toString(), position: { line, character } };
    const week = await this.#ask(params).catch(() => null); // Without a server there is no week, which is said elsewhere.
    if (asked === this.#asked) this.#show(week);
  }

  #show(week: AthleteWeek | null): void {
    this.#item.text = week?.text ?? 'Plimsoll';
    this.#item.detail = week?.detail ?? '';
  }
}
